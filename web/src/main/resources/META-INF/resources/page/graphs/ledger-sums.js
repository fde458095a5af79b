/**
 * The ledger of a settled state, sorted so that it adds up: what comes in is what is lost and what is useful, to the last digit.
 */

/**
 * @typedef {import("../types.js").Catalogue} Catalogue
 *
 * @typedef {object} Entry
 * @property {string} key
 * @property {string} group
 * @property {number} power W, positive
 *
 * @typedef {object} PowerLedger
 * @property {Entry[]} given what feeds the machine: engine, a push, a slope it rolls down
 * @property {Entry[]} taken losses and useful work, in the order from engine to ground
 * @property {number} total W: sum of given
 * @property {number} rest W: given − taken; zero when the state settled
 * @property {number} useful W
 */

/** Groups in the order of the power path. */
export const GROUPS = Object.freeze(["input", "pump", "passages", "motor", "gears", "ground", "useful"]);

/** Work that leaves the machine, or comes to it: the rest is lost. */
const USEFUL = new Set(["pull", "grade", "push"]);
const PLACES = new Map([["engine", "input"], ["belt", "input"], ["gears", "gears"], ["axle_drag", "gears"], ["brake", "gears"], ["wheel_slip", "ground"], ["rolling", "ground"]]);

/** @param {string} key of the ledger */
export function groupOf(key) {
    if (USEFUL.has(key)) return "useful";
    if (key.startsWith("pump_")) return "pump";
    if (key.startsWith("motor_")) return "motor";
    return PLACES.get(key) ?? "passages";
}

/**
 * @param {Catalogue} items atlas.ledger
 * @param {Float64Array} ledger four numbers an item
 * @returns {PowerLedger}
 */
export function powerLedger(items, ledger) {
    /** @type {Entry[]} */
    const given = [];
    /** @type {Entry[]} */
    const taken = [];
    items.keys.forEach((key, i) => {
        const power = ledger[4 * i + 3];
        if (power < 0) given.push({ key, group: groupOf(key), power: -power });
        else if (power > 0) taken.push({ key, group: groupOf(key), power });
    });
    const total = sum(given);
    return { given, taken, total, rest: total - sum(taken), useful: sum(taken.filter((each) => each.group === "useful")) };
}

/**
 * Entries summed by group, in the order of the power path; groups without any are left out.
 * @param {readonly Entry[]} entries
 */
export function byGroup(entries) {
    return GROUPS.map((group) => ({ group, entries: entries.filter((each) => each.group === group) }))
        .filter((each) => each.entries.length > 0)
        .map((each) => ({ ...each, power: sum(each.entries) }));
}

/** Places in a ledger's four numbers where oil is counted. */
export const SIDES = /** @type {const} */ (["a", "b", "gallery"]);

/** What pump and motor carry by their strokes: all else is the difference between the two. */
const CARRIED = new Set(["pump_carry", "motor_carry"]);

/**
 * Oil into one side, m³/s: what the strokes of pump and motor bring and take, and what makes up the difference; sums to zero when settled.
 * @param {Catalogue} items
 * @param {Float64Array} ledger
 * @param {(typeof SIDES)[number]} side
 */
export function oilLedger(items, ledger, side) {
    const at = SIDES.indexOf(side);
    const all = items.keys.map((key, i) => ({ key, flow: ledger[4 * i + at] })).filter((each) => each.flow !== 0);
    const carried = all.filter((each) => CARRIED.has(each.key));
    const others = all.filter((each) => !CARRIED.has(each.key));
    const difference = carried.reduce((s, each) => s + each.flow, 0);
    return { carried, others, difference, rest: difference + others.reduce((s, each) => s + each.flow, 0) };
}

/** @param {readonly Entry[]} entries */
const sum = (entries) => entries.reduce((total, each) => total + each.power, 0);
