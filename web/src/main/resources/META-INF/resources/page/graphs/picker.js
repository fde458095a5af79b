/**
 * A list to choose quantities from: type a few letters, tick what is to be drawn.
 */
import { LitElement, css, html, nothing } from "lit";
import { t } from "../core/words.js";
import { shownAs } from "../core/units.js";
import { store } from "../core/store.js";
import { look } from "./look.js";
import { found } from "./quantities.js";

/** More are not listed until a letter narrows them down. */
const MOST = 60;

export class SwashQuantities extends LitElement {
    /** @type {Record<string, object>} */
    static properties = { quantities: { attribute: false }, chosen: { attribute: false }, typed: { state: true } };

    static styles = [look, css`
        ul { list-style: none; margin: 0.3em 0 0; padding: 0; max-height: 16rem; overflow-y: auto; border: 1px solid var(--line); background: var(--paper); }
        li label { display: flex; padding: 0 0.5em; cursor: pointer; }
        li label:hover { background: color-mix(in srgb, var(--accent) 12%, transparent); }
        li span { flex: 1; } li small { color: var(--ink-soft); }
        input[type="search"] { width: 100%; }
    `];

    constructor() {
        super();
        /** @type {readonly import("./quantities.js").Quantity[]} */
        this.quantities = [];
        /** @type {readonly string[]} */
        this.chosen = [];
        this.typed = "";
    }

    /** @param {string} key @param {boolean} on */
    tick(key, on) {
        this.dispatchEvent(new CustomEvent("choose", { detail: { key, on } }));
    }

    render() {
        const all = found(this.quantities, this.typed);
        const listed = [...all.filter((each) => this.chosen.includes(each.key)), ...all.filter((each) => !this.chosen.includes(each.key))].slice(0, MOST);
        return html`
            <input type="search" aria-label=${t("graphs.search")} placeholder=${t("graphs.search")} .value=${this.typed}
                @input=${(/** @type {Event} */ event) => (this.typed = /** @type {HTMLInputElement} */ (event.target).value)} />
            <ul aria-label=${t("graphs.quantities")}>${listed.map(({ key, name, unit }) => html`
                <li><label><input type="checkbox" .checked=${this.chosen.includes(key)} @change=${(/** @type {Event} */ event) => this.tick(key, /** @type {HTMLInputElement} */ (event.target).checked)} />
                    <span>${name}</span><small>${shownAs(unit, store.gaze.units).unit}</small></label></li>`)}</ul>
            ${all.length > MOST ? html`<p class="soft">${t("graphs.more", all.length - MOST)}</p>` : all.length === 0 ? html`<p class="soft">${t("graphs.notFound")}</p>` : nothing}`;
    }
}

customElements.define("swash-quantities", SwashQuantities);
