/**
 * The picture in words and numbers, for who cannot see it and for who wants to read it: sentences spoken politely and seldom, and a table.
 */
import { css, html, nothing } from "lit";
import { LiveView } from "../circuit/live-view.js";
import { signal } from "../core/live.js";
import { show } from "../core/units.js";
import { store } from "../core/store.js";
import { t } from "../core/words.js";
import { describe } from "./describing.js";
import { look } from "./look.js";
import { Means } from "./means.js";
import { nameOf } from "./quantities.js";

/** How often the words may change, s of the clock; 0: only when asked. */
const RESTS = [4, 8, 20, 0];

export class SwashTelling extends LiveView {
    /** @type {Record<string, object>} */
    static properties = { told: { state: true }, toldBeside: { state: true }, rest: { state: true } };

    static styles = [look, css`
        .told { line-height: 1.5; margin: 0.3em 0; padding: 0; list-style: none; }
        .told li { margin: 0.15em 0; }
        table { border-collapse: collapse; width: 100%; } th { font-weight: 400; text-align: left; } thead th { color: var(--ink-soft); font-size: var(--size-1); }
        tbody tr { border-top: 1px solid var(--hair); } td.num, th.num { text-align: right; padding-left: 0.8em; }
    `];

    constructor() {
        super();
        this.rest = 4;
        /** @type {string[]} */
        this.told = [];
        /** @type {string[]} */
        this.toldBeside = [];
        this.at = -Infinity;
        this.time = NaN;
        this.means = [new Means(), new Means()];
        /** @type {import("../types.js").MachineState[]} */
        this.states = [];
    }

    gazed() {
        this.at = this.rest === 0 ? this.at : -Infinity;
    }

    /** @param {import("../types.js").Frame} frame */
    framed(frame) {
        const passed = frame.time - this.time;
        this.time = frame.time;
        frame.machines.forEach((machine, i) => this.means[i].add(machine, passed > 0 && passed < 1 ? passed : 0));
        const now = performance.now();
        const due = this.told.length === 0 || (this.rest > 0 && now - this.at > this.rest * 1000);
        if (due) this.tell();
    }

    /** Says what has been since it was last said. */
    tell() {
        const { atlas, frame } = this;
        if (!atlas || !frame) return;
        this.at = performance.now();
        const means = frame.machines.map((_, i) => this.means[i].take());
        this.means.forEach((each) => each.clear());
        this.states = means.flatMap((each) => (each ? [each.state] : []));
        const [shown, sound] = means;
        if (shown) this.told = describe(shown, atlas, store.bench, store.gaze.units);
        this.toldBeside = sound ? describe(sound, atlas, { ...store.bench, faults: {} }, store.gaze.units) : [];
    }

    render() {
        const atlas = this.atlas;
        if (!atlas || this.told.length === 0) return html`<p>${t("telling.wait")}</p>`;
        return html`
            <h3>${t("telling.title")}</h3>
            <div class="row">
                <label>${t("telling.rest")} <select @change=${(/** @type {Event} */ event) => (this.rest = Number(/** @type {HTMLSelectElement} */ (event.target).value))}>
                    ${RESTS.map((rest) => html`<option value=${rest} ?selected=${rest === this.rest}>${rest === 0 ? t("telling.rest.never") : t("telling.rest.every", rest)}</option>`)}</select></label>
                <button @click=${() => this.tell()}>${t("telling.now")}</button>
            </div>
            <div role="status" aria-live="polite" aria-atomic="true"><ul class="told">${this.told.map((sentence) => html`<li>${sentence}</li>`)}</ul></div>
            ${this.toldBeside.length > 0 ? html`<h3>${t("telling.beside")}</h3><ul class="told">${this.toldBeside.map((sentence) => html`<li>${sentence}</li>`)}</ul>` : nothing}
            <h3>${t("telling.table")}</h3>${this.table(atlas)}`;
    }

    /** @param {import("../types.js").Atlas} atlas */
    table(atlas) {
        const beside = this.states.length > 1;
        return html`<table><thead><tr><th>${t("telling.quantity")}</th><th class="num">${t(beside ? "ledger.shown" : "telling.value")}</th>${beside ? html`<th class="num">${t("ledger.sound")}</th>` : nothing}</tr></thead>
            <tbody>${atlas.channels.keys.map((key, i) => html`<tr><th scope="row">${nameOf(atlas, key)}</th>
                ${this.states.map((state) => html`<td class="num">${show(signal(state, key), atlas.channels.units[i], store.gaze.units).text}</td>`)}</tr>`)}</tbody></table>
            <p class="soft">${t("telling.means")}</p>`;
    }
}

customElements.define("swash-telling", SwashTelling);
