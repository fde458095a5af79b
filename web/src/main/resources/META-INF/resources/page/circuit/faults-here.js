/**
 * Where the faults of a bench sit in the diagram: numbered, so that a mark at a symbol and a line in words below it belong together.
 */
import { partWithFault } from "../core/parts.js";

/**
 * @typedef {object} FaultHere
 * @property {string} fault
 * @property {number} number from 1
 * @property {string} sign key of the symbol it is marked at; "" where the diagram has none for it
 * @property {string} part
 */

/**
 * @param {Readonly<Record<string, number>>} faults of the bench
 * @param {readonly { key: string, parts: string[] }[]} signs
 * @param {readonly { key: string, part: string }[]} lines
 * @returns {FaultHere[]}
 */
export function faultsHere(faults, signs, lines) {
    return Object.keys(faults).map((fault, i) => {
        const part = partWithFault(fault)?.key ?? "";
        const near = fault.startsWith("bleed-") ? signs.find((each) => each.key === fault.slice(0, 7)) : undefined;
        const sign = near ?? signs.find((each) => each.parts.includes(part));
        const line = sign ? undefined : lines.find((each) => each.part === PASSAGES[part]);
        return { fault, number: i + 1, sign: sign?.key ?? line?.key ?? "", part };
    });
}

/** A crack in the centre section is marked at the passage it begins in. */
const PASSAGES = /** @type {Record<string, string>} */ ({ "centre-section": "passage-a", "passage-a": "passage-a", "passage-b": "passage-b" });
