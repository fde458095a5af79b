/** What the physics refused or could not go on from, in the page's words and the user's units. */
import { html, nothing } from "lit";
import { store } from "../core/store.js";
import { show } from "../core/units.js";
import { t, tOr } from "../core/words.js";
import { meaningOf } from "./meaning.js";

/** Troubles that the page has words for; any other is the physics' own message. */
const TROUBLES = ["failed", "unsettled"];

/** @param {string} trouble of a machine */
export const troubleWords = (trouble) => (TROUBLES.includes(trouble) ? t(`trouble.${trouble}`) : html`<span lang="en">${trouble}</span>`);

/**
 * @param {import("../types.js").Refused} refused
 * @param {import("../types.js").Atlas | null} atlas
 */
export function refusedWords(refused, atlas) {
    if (!atlas || refused.complaints.length === 0) return refused.words === "" ? nothing : html`<span lang="en">${refused.words}</span>`;
    return html`<ul>${refused.complaints.map((complaint) => html`<li>${complaintWords(complaint, atlas)}</li>`)}</ul>`;
}

/** @param {import("../types.js").Complaint} complaint @param {import("../types.js").Atlas} atlas */
export function complaintWords({ key, field, given, low, high }, atlas) {
    const at = atlas.parameters.keys.indexOf(field);
    const value = (/** @type {number} */ si) => show(si, atlas.parameters.units[at], store.gaze.units).text;
    const right = high === Number.MAX_VALUE ? t("refused.least", value(low)) : low === high ? t("refused.one", value(low)) : t("refused.between", value(low), value(high));
    return `${meaningOf(field, atlas.parameters.meanings[at] ?? field)}: ${tOr(`refused.${key}`, t("refused.out-of-range")).replace("{0}", value(given))} ${right}`;
}
