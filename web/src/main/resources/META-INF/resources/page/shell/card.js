/** The selected part: what it is, what it does, what it looks like when it fails, what it shows now, and what can be wrong with it. */
import { LitElement, css, html, nothing } from "lit";
import { signal } from "../core/live.js";
import { partOf, parts } from "../core/parts.js";
import { store } from "../core/store.js";
import { show } from "../core/units.js";
import { t, tOr } from "../core/words.js";
import { nameOf } from "./faults.js";
import { controls } from "./styles.js";
import { watchGaze } from "./watching.js";

/** Numbers that can be read while they change. */
const EVERY = 200; // ms

export class SwashCard extends LitElement {
    static properties = { atlas: { attribute: false }, frame: { attribute: false } };
    static styles = [controls, css`
        .head { display: flex; gap: calc(var(--gap) / 2); align-items: center; }
        .head select { flex: 1; font-weight: 600; min-width: 0; }
        dl { display: grid; grid-template-columns: 1fr auto; gap: 2px var(--gap); margin: 0 0 calc(var(--gap) / 2); }
        dd { margin: 0; text-align: right; font-variant-numeric: tabular-nums; white-space: nowrap; }
        .sound { color: var(--ink-soft); }
        p { margin: calc(var(--gap) / 2) 0 calc(var(--gap) / 2); }
        label { display: flex; align-items: center; min-height: var(--target); }
    `];

    constructor() {
        super();
        /** @type {import("../types.js").Atlas | null} */
        this.atlas = null;
        /** @type {import("../types.js").Frame | null} */
        this.frame = null;
        this.at = 0;
        watchGaze(this, ["units", "part"]);
        store.addEventListener("bench", () => this.requestUpdate());
    }

    /** @param {import("../types.js").Frame} frame */
    follow(frame) {
        if (performance.now() - this.at < EVERY) return;
        this.at = performance.now();
        this.frame = frame;
    }

    render() {
        const part = partOf(store.gaze.part);
        return html`<div class="head">
                <select aria-label=${t("card.choose")} .value=${store.gaze.part}
                    @change=${(/** @type {Event} */ event) => store.setGaze({ part: /** @type {HTMLSelectElement} */ (event.target).value })}>
                    <option value="" ?selected=${!part}>${t("card.choose")}</option>
                    ${parts.map((each) => html`<option value=${each.key} ?selected=${each.key === part?.key}>${t(`part.${each.key}.name`)}</option>`)}
                </select>
                ${part ? html`<button aria-label=${t("card.close")} @click=${() => store.setGaze({ part: "", isolated: false })}>×</button>` : nothing}
            </div>
            ${part ? this.about(part) : nothing}`;
    }

    /** @param {import("../core/parts.js").Part} part */
    about(part) {
        const faults = part.faults.filter((key) => this.atlas?.faults.keys.includes(key));
        return html`
            <p>${t(`part.${part.key}.does`)}</p>
            <dl>${part.signals.map((key) => this.value(key))}</dl>
            <h3>${t("card.fails")}</h3><p>${t(`part.${part.key}.fails`)}</p>
            ${faults.map((key) => this.fault(key))}`;
    }

    /** @param {string} key */
    value(key) {
        const place = this.atlas?.channels.keys.indexOf(key) ?? -1;
        if (place < 0 || !this.atlas) return nothing;
        const { units, meanings } = this.atlas.channels;
        const [shown, sound] = (this.frame?.machines ?? []).map((machine) => show(signal(machine, key), units[place], store.gaze.units).text);
        return html`<dt class="said">${tOr(`signal.${key}`, meanings[place])}</dt>
            <dd>${shown ?? "–"} ${sound ? html`<span class="sound">${t("card.sound", sound)}</span>` : nothing}</dd>`;
    }

    /** @param {string} key */
    fault(key) {
        const { faults } = /** @type {import("../types.js").Atlas} */ (this.atlas);
        const at = faults.keys.indexOf(key);
        const there = key in store.bench.faults;
        const name = nameOf(key, faults.meanings[at]);
        return html`<label><input type="checkbox" .checked=${there} @change=${() => {
            const { [key]: _before, ...rest } = store.bench.faults;
            store.setBench({ faults: there ? rest : { ...rest, [key]: faults.usual[at] } }, name);
        }} /><span class="said">${name}</span></label>`;
    }
}

customElements.define("swash-card", SwashCard);
