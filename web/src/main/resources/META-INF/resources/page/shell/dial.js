/**
 * One number to turn: words, a slider, and a field to type in, in the user's unit. What is typed and is not possible is said beside it and
 * changes nothing.
 */
import { html, nothing } from "lit";
import { parse, show, shownAs } from "../core/units.js";
import { t } from "../core/words.js";

/**
 * @typedef {object} Dial
 * @property {string} id
 * @property {string} words
 * @property {number} value SI
 * @property {number} least SI
 * @property {number} most SI
 * @property {string} unit SI unit, as core/units.js knows it
 * @property {"si" | "us"} system
 * @property {(value: number) => void} turned
 * @property {boolean} [even] by even ratios: for numbers that span decades
 * @property {string} [note]
 * @property {boolean} [whole] whole numbers only
 * @property {(value: number) => string} [check] what is wrong with a value within the range, in words; empty for nothing
 * @property {readonly { words: string, value: number }[]} [marks] values worth one press
 */

const STEPS = 200;

/** @param {Dial} dial */
export function dialOf(dial) {
    const { id, words, value, least, most, unit, system } = dial;
    const shown = show(value, unit, system);
    const text = dial.whole ? { ...shown, number: String(Math.round(value)), text: String(Math.round(value)) } : shown;
    /** @param {number} share */
    const at = (share) => (dial.even ? least * (most / least) ** share : least + (most - least) * share);
    const share = dial.even ? Math.log(Math.max(value, least) / least) / Math.log(most / least) : (value - least) / (most - least || 1);
    /** Takes a value, or says beside the dial why not. @param {Event} event @param {number} wanted @param {string} [wrong] */
    const turn = (event, wanted, wrong = dial.check?.(wanted) ?? "") => {
        const box = /** @type {HTMLElement} */ (event.target).closest(".dial");
        const said = /** @type {HTMLElement} */ (box?.querySelector("output"));
        const field = /** @type {HTMLElement} */ (box?.querySelector(".typed input"));
        said.textContent = wrong;
        field.setAttribute("aria-invalid", String(wrong !== ""));
        if (wrong === "") dial.turned(wanted);
    };
    /** @param {Event} event */
    const slid = (event) => {
        const wanted = at(Number(/** @type {HTMLInputElement} */ (event.target).value) / STEPS);
        turn(event, dial.whole ? Math.round(wanted) : wanted);
    };
    /** @param {Event} event */
    const typed = (event) => {
        const field = /** @type {HTMLInputElement} */ (event.target);
        const wanted = parse(field.value, unit, system);
        const allowed = Number.isFinite(wanted) && wanted >= least - 1e-12 && wanted <= most + 1e-12 && (!dial.whole || Number.isInteger(wanted));
        if (allowed) turn(event, Math.min(most, Math.max(least, wanted)));
        else turn(event, wanted, t(dial.whole ? "dial.whole" : "dial.range", show(least, unit, system).text, show(most, unit, system).text));
    };
    return html`<div class="dial">
        <label for=${id}>${words}</label>
        <span class="typed"><input id=${`${id}-typed`} type="text" inputmode="decimal" autocomplete="off" aria-label=${`${words}, ${shownAs(unit, system).unit}`} aria-describedby=${`${id}-wrong`}
            .value=${text.number} @change=${typed} /><span class="unit">${text.unit}</span></span>
        <input id=${id} type="range" min="0" max=${STEPS} step="1" aria-valuetext=${text.text} .value=${String(Math.round(share * STEPS))} @input=${slid} />
        ${dial.marks ? html`<span class="marks">${dial.marks.map((mark) => html`
            <button aria-pressed=${Math.abs(mark.value - value) <= 1e-9 * Math.abs(most)} @click=${(/** @type {Event} */ event) => turn(event, mark.value)}>${mark.words}</button>`)}</span>` : nothing}
        <output id=${`${id}-wrong`} class="wrong" role="alert"></output>
        ${dial.note ? html`<small class="soft">${dial.note}</small>` : nothing}
    </div>`;
}
