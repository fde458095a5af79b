/**
 * What the physics refuses, in parts that the page says in its own words and units.
 */

/** @typedef {import("../types.js").Complaint} Complaint */

export class Refusal extends Error {
    /** @param {string} words the physics' own, in English @param {readonly Complaint[]} complaints */
    constructor(words, complaints) {
        super(words);
        this.complaints = complaints;
    }
}

/**
 * Makes something of a drive; a refusal carries what is wrong in parts.
 * @param {() => any} make
 * @param {() => any} ask for the complaints
 */
export function made(make, ask) {
    try {
        return make();
    } catch (failure) {
        const list = ask();
        const [keys, fields, given, lows, highs] = [list.keys(), list.fields(), list.given(), list.lows(), list.highs()];
        if (keys.length === 0) throw failure;
        const complaints = keys.map((/** @type {string} */ key, /** @type {number} */ at) => ({ key, field: fields[at], given: given[at], low: lows[at], high: highs[at] }));
        throw new Refusal(failure instanceof Error ? failure.message : String(failure), complaints);
    }
}
