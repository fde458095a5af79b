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
 */

const STEPS = 200;

/** @param {Dial} dial */
export function dialOf(dial) {
    const { id, words, value, least, most, unit, system, turned } = dial;
    const text = show(value, unit, system);
    /** @param {number} share */
    const at = (share) => (dial.even ? least * (most / least) ** share : least + (most - least) * share);
    const share = dial.even ? Math.log(Math.max(value, least) / least) / Math.log(most / least) : (value - least) / (most - least || 1);
    /** @param {Event} event */
    const slid = (event) => {
        const wanted = at(Number(/** @type {HTMLInputElement} */ (event.target).value) / STEPS);
        turned(dial.whole ? Math.round(wanted) : wanted);
    };
    /** @param {Event} event */
    const typed = (event) => {
        const field = /** @type {HTMLInputElement} */ (event.target);
        const wanted = parse(field.value, unit, system);
        const allowed = Number.isFinite(wanted) && wanted >= least - 1e-12 && wanted <= most + 1e-12 && (!dial.whole || Number.isInteger(wanted));
        field.setCustomValidity(allowed ? "" : t("dial.range", show(least, unit, system).text, show(most, unit, system).text));
        if (allowed) turned(Math.min(most, Math.max(least, wanted)));
        else field.reportValidity();
    };
    return html`<div class="dial">
        <label for=${id}>${words}</label>
        <span class="typed"><input id=${`${id}-typed`} type="text" inputmode="decimal" autocomplete="off" aria-label=${`${words}, ${shownAs(unit, system).unit}`}
            .value=${text.number} @change=${typed} /><span class="unit">${text.unit}</span></span>
        <input id=${id} type="range" min="0" max=${STEPS} step="1" aria-valuetext=${text.text} .value=${String(Math.round(share * STEPS))} @input=${slid} />
        ${dial.note ? html`<small class="soft">${dial.note}</small>` : nothing}
    </div>`;
}
