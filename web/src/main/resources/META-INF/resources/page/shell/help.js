/** Keys, what this is, how it looks, a link to the present state, and whether it is kept for places without a network. */
import { LitElement, css, html } from "lit";
import { store } from "../core/store.js";
import { LANGUAGES, t, wording } from "../core/words.js";
import { controls } from "./styles.js";
import { keeping } from "./offline.js";
import { watchGaze } from "./watching.js";

const KEYS = ["space", "step", "stroke", "neutral", "undo", "redo", "part", "units", "theme", "alone", "help"];

export class SwashHelp extends LitElement {
    static properties = { said: { state: true } };
    static styles = [controls, css`
        dialog { max-width: min(38rem, 92vw); max-height: 88vh; box-sizing: border-box; overflow: auto; background: var(--panel); color: var(--ink); border: var(--stroke) solid var(--ink); }
        dialog::backdrop { background: rgb(0 0 0 / 45%); }
        dl { display: grid; grid-template-columns: auto 1fr; gap: 4px var(--gap); }
        dt { white-space: nowrap; }
        dd { margin: 0; }
        kbd { border: 1px solid var(--line); border-radius: 3px; padding: 0 0.35em; }
        output { display: block; overflow-wrap: anywhere; }
        label { display: inline-flex; align-items: center; gap: 0.4em; }
    `];

    constructor() {
        super();
        this.said = "";
        watchGaze(this, ["units"]);
        wording.addEventListener("language", () => this.requestUpdate());
        keeping.addEventListener("change", () => this.requestUpdate());
    }

    /** @returns {HTMLDialogElement} */
    get dialog() {
        return /** @type {HTMLDialogElement} */ (this.renderRoot.querySelector("dialog"));
    }

    turn() {
        if (this.dialog.open) this.dialog.close();
        else this.dialog.showModal();
    }

    render() {
        const { gaze } = store;
        return html`<dialog aria-label=${t("page.help")}>
            <h2>${t("page.help")}</h2>
            <p>${t("help.what")}</p>
            <div class="row">
                <label>${t("page.theme")} ${themeChoice()}</label>
                <label>${t("page.language")} ${languageChoice()}</label>
                <button @click=${() => store.setGaze({ units: gaze.units === "si" ? "us" : "si" })}>${t("page.units")}: ${gaze.units === "si" ? "bar, km/h" : "psi, mph"}</button>
            </div>
            <dl>${KEYS.map((key) => html`<dt><kbd>${t(`help.key.${key}`)}</kbd></dt><dd>${t(`help.${key}`)}</dd>`)}</dl>
            <p class="soft">${t("help.safety")}</p>
            <p class="soft" role="status">${t(`page.offline.${keeping.state}`)}</p>
            <div class="row"><button @click=${() => this.copyLink()}>${t("help.link")}</button>
                <button @click=${() => this.dialog.close()}>${t("card.close")}</button></div>
            <output role="status">${this.said}</output>
        </dialog>`;
    }

    async copyLink() {
        const link = location.href.split("#")[0] + store.link();
        try {
            await navigator.clipboard.writeText(link);
            this.said = t("help.link.copied");
        } catch {
            this.said = link;
        }
    }
}

export const themeChoice = () => html`<select aria-label=${t("page.theme")} .value=${store.gaze.theme} @change=${(/** @type {Event} */ event) => store.setGaze({ theme: valueOf(event) })}>
    ${["light", "dark", "projector"].map((theme) => html`<option value=${theme} ?selected=${store.gaze.theme === theme}>${t(`page.theme.${theme}`)}</option>`)}</select>`;

export const languageChoice = () => html`<select aria-label=${t("page.language")} .value=${store.gaze.language} @change=${(/** @type {Event} */ event) => store.setGaze({ language: valueOf(event) })}>
    ${Object.entries(LANGUAGES).map(([key, name]) => html`<option value=${key} lang=${key} ?selected=${store.gaze.language === key}>${name}</option>`)}</select>`;

/** @param {Event} event @returns {any} */
const valueOf = (event) => /** @type {HTMLSelectElement} */ (event.target).value;

customElements.define("swash-help", SwashHelp);
