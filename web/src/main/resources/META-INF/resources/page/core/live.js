/**
 * Reads the signals of a machine's state by name: one index a set of keys, kept while the keys stay the same.
 */

/** @typedef {import("../types.js").MachineState} MachineState */

/** @type {WeakMap<readonly string[], Map<string, number>>} */
const indices = new WeakMap();

/** @param {readonly string[]} keys */
function indexOf(keys) {
    let index = indices.get(keys);
    if (!index) {
        index = new Map(keys.map((key, place) => [key, place]));
        indices.set(keys, index);
    }
    return index;
}

/**
 * A signal's present value, SI; NaN where the machine has no such signal, for callers to leave out.
 * @param {MachineState} state
 * @param {string} key
 */
export function signal(state, key) {
    const place = indexOf(state.keys).get(key);
    return place === undefined ? NaN : state.values[place];
}

/**
 * A signal of a chamber, numbered from 1.
 * @param {MachineState} state
 * @param {"pump" | "motor"} unit
 * @param {number} chamber
 * @param {"pressure" | "position" | "from_side_a" | "from_side_b" | "leak" | "port"} what
 */
export function chamber(state, unit, chamber, what) {
    return signal(state, `${unit}_chamber_${chamber}_${what}`);
}

/**
 * A parameter's value with its faults, SI.
 * @param {MachineState} state
 * @param {readonly string[]} parameterKeys atlas.parameters.keys
 * @param {string} key
 */
export function parameter(state, parameterKeys, key) {
    const place = indexOf(parameterKeys).get(key);
    return place === undefined ? NaN : state.parameters[place];
}
