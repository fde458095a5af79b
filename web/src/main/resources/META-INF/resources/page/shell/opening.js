/** How the drive is opened up: halves, turned over, apart, cut, alone, ghosted. */
import { LitElement, css, html } from "lit";
import { store } from "../core/store.js";
import { t } from "../core/words.js";
import { controls } from "./styles.js";
import { watchGaze } from "./watching.js";

export class SwashOpening extends LitElement {
    static styles = [controls, css`
        .row { margin-bottom: calc(var(--gap) / 3); }
        label { display: flex; align-items: center; gap: 0.4em; }
        label.wide { flex: 1 1 12rem; }
    `];

    constructor() {
        super();
        watchGaze(this, ["lowerHalf", "upperHalf", "overturned", "ghosted", "isolated", "apart", "section", "part"]);
    }

    render() {
        const { gaze } = store;
        return html`
            <h2 class="unseen">${t("place.opening")}</h2>
            <div class="row">
                ${this.toggle("lowerHalf")}${this.toggle("upperHalf")}${this.toggle("overturned")}${this.toggle("ghosted")}
                <button aria-pressed=${gaze.isolated} ?disabled=${gaze.part === ""} @click=${() => store.setGaze({ isolated: !gaze.isolated })}>${t("opening.isolated")}</button>
                <button @click=${() => store.setGaze({ camera: [] })}>${t("opening.camera")}</button>
            </div>
            <div class="row">
                <label class="wide">${t("opening.apart")} <input type="range" min="0" max="1" step="0.01" .value=${String(gaze.apart)}
                    @input=${(/** @type {Event} */ event) => store.setGaze({ apart: Number(valueOf(event)) })} /></label>
                <label>${t("opening.section")} <select .value=${gaze.section.axis} @change=${(/** @type {Event} */ event) =>
                    store.setGaze({ section: { ...gaze.section, axis: /** @type {"x"} */ (valueOf(event)) } })}>
                    ${["none", "x", "y", "z"].map((axis) => html`<option value=${axis} ?selected=${gaze.section.axis === axis}>${t(`opening.section.${axis}`)}</option>`)}
                </select></label>
                <label class="wide">${t("opening.section.at")} <input type="range" min="-1" max="1" step="0.01" ?disabled=${gaze.section.axis === "none"} .value=${String(gaze.section.at)}
                    @input=${(/** @type {Event} */ event) => store.setGaze({ section: { ...gaze.section, at: Number(valueOf(event)) } })} /></label>
            </div>`;
    }

    /** @param {"lowerHalf" | "upperHalf" | "overturned" | "ghosted"} key */
    toggle(key) {
        const on = store.gaze[key];
        return html`<button aria-pressed=${on} @click=${() => store.setGaze({ [key]: !on })}>${t(`opening.${key}`)}</button>`;
    }
}

/** @param {Event} event */
const valueOf = (event) => /** @type {HTMLInputElement} */ (event.target).value;

customElements.define("swash-opening", SwashOpening);
