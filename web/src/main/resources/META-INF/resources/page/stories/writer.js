/** The form in which the open state of a story is written: name, words, notes, place in the order. */
import { html, nothing } from "lit";
import { parts } from "../core/parts.js";
import { store } from "../core/store.js";
import { t } from "../core/words.js";
import { unknownKeys } from "./live-words.js";
import { freeze } from "./story.js";

/** Where a new note stands: left above, where it hides least. */
const NEW_NOTE = { x: 0.25, y: 0.2 };

/** @typedef {import("./story.js").Mark} Mark */

/** @param {import("./stories.js").SwashStories} host */
export function writer(host) {
    const { shelf } = host;
    const { state, story, open } = shelf;
    return html`<fieldset>
        <div class="row">
            <button ?disabled=${!shelf.canUndo} @click=${() => shelf.undo()}>${t("stories.undo")}</button>
            <button ?disabled=${!shelf.canRedo} @click=${() => shelf.redo()}>${t("stories.redo")}</button>
        </div>
        <label>${t("stories.mine")}
            <input type="text" .value=${story.title} maxlength="120" @input=${(/** @type {Event} */ event) => shelf.name(textOf(event))} /></label>
        ${state ? html`
            <label>${t("stories.name")}
                <input type="text" .value=${state.name} maxlength="120"
                    @input=${(/** @type {Event} */ event) => shelf.edit({ name: textOf(event) }, "name")} /></label>
            <label>${t("stories.words")}
                <textarea maxlength="4000" .value=${state.words}
                    @input=${(/** @type {Event} */ event) => shelf.edit({ words: textOf(event) }, "words")}></textarea></label>
            <p class="soft">${t("stories.words.hint", "{ground_speed}", "{sound:ground_speed}", "{hand:slope}", "{fault:motor-face-worn}")}</p>
            ${(host.atlas ? unknownKeys(state.words, host.atlas) : []).map((key) => html`<p class="wrong">${t("stories.words.unknown", key)}</p>`)}
            <label>${t("stories.from")}
                <select .value=${state.from} @change=${(/** @type {Event} */ event) =>
                    shelf.edit({ from: /** @type {"rest" | "settled"} */ (textOf(event)) }, "")}>
                    <option value="settled">${t("stories.from.settled")}</option>
                    <option value="rest">${t("stories.from.rest")}</option>
                </select></label>
            ${state.marks.map((mark, place) => note(host, mark, place))}
            <div class="row">
                <button @click=${() => shelf.edit({ marks: [...state.marks, { part: store.gaze.part, ...NEW_NOTE, text: "" }] }, "")}>
                    ${t("stories.mark.add")}</button>
                <button @click=${() => renew(host)}>${t("stories.renew")}</button>
                <button ?disabled=${open <= 0} @click=${() => shelf.move(-1)}>${t("stories.earlier")}</button>
                <button ?disabled=${open + 1 >= story.states.length} @click=${() => shelf.move(1)}>${t("stories.later")}</button>
                <button @click=${() => shelf.remove()}>${t("stories.remove")}</button>
            </div>` : nothing}
    </fieldset>`;
}

/** @param {import("./stories.js").SwashStories} host @param {Mark} mark @param {number} place */
function note(host, mark, place) {
    const { shelf } = host;
    const marks = shelf.state?.marks ?? [];
    /** @param {Partial<Mark>} patch @param {string} field */
    const edit = (patch, field) => shelf.edit({ marks: marks.with(place, { ...mark, ...patch }) }, field && `${field}${place}`);
    /** @param {"x" | "y"} axis @param {string} words */
    const slider = (axis, words) => html`<label>${words}
        <input type="range" min="0" max="1" step="0.01" .value=${String(mark[axis])}
            @input=${(/** @type {Event} */ event) => edit({ [axis]: Number(textOf(event)) }, axis)} /></label>`;
    return html`<fieldset>
        <legend>${t("stories.mark")} ${place + 1}</legend>
        <label>${t("stories.mark.text")}
            <input type="text" .value=${mark.text} maxlength="200" @input=${(/** @type {Event} */ event) => edit({ text: textOf(event) }, "text")} /></label>
        <label>${t("stories.mark.part")}
            <select .value=${mark.part} @change=${(/** @type {Event} */ event) => edit({ part: textOf(event) }, "")}>
                <option value="">${t("stories.mark.nothing")}</option>
                ${parts.map((part) => html`<option value=${part.key} ?selected=${part.key === mark.part}>${t(`part.${part.key}.name`)}</option>`)}
            </select></label>
        ${slider("x", t("stories.mark.left"))}${slider("y", t("stories.mark.top"))}
        <button @click=${() => shelf.edit({ marks: marks.toSpliced(place, 1) }, "")}>${t("stories.mark.remove")}</button>
    </fieldset>`;
}

/** The state as the drive is now, its name, words and notes kept. @param {import("./stories.js").SwashStories} host */
function renew(host) {
    const now = freeze("", store.bench, store.gaze);
    host.shelf.edit({ bench: now.bench, look: now.look }, "");
}

/** @param {Event} event */
const textOf = (event) => /** @type {HTMLInputElement} */ (event.target).value;
