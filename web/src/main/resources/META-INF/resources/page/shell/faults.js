/** Everything that can be wrong, by where it sits, each with its severity in its own unit. */
import { LitElement, css, html, nothing } from "lit";
import { store } from "../core/store.js";
import { t, tOr } from "../core/words.js";
import { dialOf } from "./dial.js";
import { dialStyle } from "./dial-style.js";
import { controls } from "./styles.js";
import { watchGaze } from "./watching.js";

export class SwashFaults extends LitElement {
    static properties = { atlas: { attribute: false }, sought: { state: true } };
    static styles = [controls, dialStyle, css`
        details { border-top: 1px solid var(--hair); }
        summary { cursor: pointer; padding: 0.5em 0; min-height: var(--target); box-sizing: border-box; font-weight: 600; }
        .fault { margin: 0 0 calc(var(--gap) / 2) 0.3em; }
        .fault > label { display: flex; align-items: center; min-height: var(--target); }
        .dial { margin-left: 1.8em; }
        input[type="search"] { width: 100%; }
        .count { font-weight: 400; color: var(--warn); }
    `];

    constructor() {
        super();
        /** @type {import("../types.js").Atlas | null} */
        this.atlas = null;
        this.sought = "";
        store.addEventListener("bench", () => this.requestUpdate());
        watchGaze(this, ["units"]);
    }

    render() {
        if (!this.atlas) return nothing;
        const { faults } = this.atlas;
        const there = Object.keys(store.bench.faults);
        const places = [...new Set(faults.places)];
        return html`
            <h2 class="unseen">${t("place.faults")}</h2>
            <div class="row">
                <button ?disabled=${there.length === 0} @click=${() => store.setBench({ faults: {} }, t("faults.repair"))}>${t("faults.repair")}</button>
                <button aria-pressed=${store.bench.beside} @click=${() => store.setBench({ beside: !store.bench.beside }, t("faults.beside"))}>${t("faults.beside")}</button>
            </div>
            <p class="soft">${t("faults.note")}</p>
            <input type="search" aria-label=${t("faults.seek")} placeholder=${t("faults.seek")} .value=${this.sought}
                @input=${(/** @type {Event} */ event) => { this.sought = /** @type {HTMLInputElement} */ (event.target).value; }} />
            ${places.map((place) => this.group(place, there))}`;
    }

    /** @param {string} place @param {string[]} there */
    group(place, there) {
        const { faults } = /** @type {import("../types.js").Atlas} */ (this.atlas);
        const sought = this.sought.trim().toLocaleLowerCase();
        const here = faults.keys.filter((key, at) => faults.places[at] === place && nameOf(key, faults.meanings[at]).toLocaleLowerCase().includes(sought));
        if (here.length === 0) return nothing;
        const count = here.filter((key) => there.includes(key)).length;
        return html`<details ?open=${count > 0 || sought !== ""}>
            <summary>${t(`where.${place}`)} ${count > 0 ? html`<span class="count">● ${count}</span>` : nothing}</summary>
            ${here.map((key) => this.fault(key))}
        </details>`;
    }

    /** @param {string} key */
    fault(key) {
        const { faults } = /** @type {import("../types.js").Atlas} */ (this.atlas);
        const at = faults.keys.indexOf(key);
        const severity = store.bench.faults[key];
        const there = severity !== undefined;
        const name = nameOf(key, faults.meanings[at]);
        const graded = faults.most[at] > faults.least[at];
        return html`<div class="fault">
            <label><input type="checkbox" .checked=${there} @change=${() => this.turn(key, there ? undefined : faults.usual[at], name)} /><span class="said">${name}</span></label>
            ${there && graded ? dialOf({
                id: `fault-${key}`, words: tOr(`severity.${key}`, faults.severityMeanings[at]), value: severity,
                least: faults.least[at], most: faults.most[at], unit: severityUnit(faults.units[at], faults.most[at]),
                even: faults.units[at] !== "1" && faults.most[at] / faults.least[at] > 20, whole: /spring|sticks/.test(key),
                system: store.gaze.units, turned: (value) => this.turn(key, value, name),
                marks: ["least", "usual", "most"].map((mark) => ({ words: t(`faults.${mark}`), value: faults[/** @type {"least"} */ (mark)][at] })),
            }) : nothing}
        </div>`;
    }

    /** @param {string} key @param {number | undefined} severity @param {string} name */
    turn(key, severity, name) {
        const { [key]: _before, ...rest } = store.bench.faults;
        store.setBench({ faults: severity === undefined ? rest : { ...rest, [key]: severity } }, name);
    }
}

/** @param {string} key @param {string} meaning */
export const nameOf = (key, meaning) => tOr(`fault.${key}`, meaning);

/** Wear is read in micrometres, and a severity in kelvin is a difference. @param {string} unit @param {number} most */
export const severityUnit = (unit, most) => (unit === "m" && most < 1e-3 ? "m worn" : unit === "K" ? "K apart" : unit);

customElements.define("swash-faults", SwashFaults);
