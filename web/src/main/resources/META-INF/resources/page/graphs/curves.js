/**
 * From recorded samples to what a graph draws: the last stretch of time, the last turn of a shaft folded onto one, one quantity over another.
 */

/** @typedef {import("./recording.js").Track} Track */

/**
 * @typedef {object} Curve
 * @property {Float64Array} x
 * @property {Float64Array[]} ys
 */

const TURN = 2 * Math.PI; // rad

/**
 * The last stretch of time.
 * @param {Track} track
 * @param {readonly string[]} keys
 * @param {number} span s
 * @param {number} until s
 * @returns {Curve}
 */
export function lastStretch(track, keys, span, until) {
    const times = track.times();
    const from = firstAtLeast(times, until - span);
    const to = firstAtLeast(times, until + 1e-12);
    return { x: times.slice(from, to), ys: keys.map((key) => track.column(key).slice(from, to)) };
}

/**
 * The last whole turn of a shaft, angles folded to 0 … 2π and rising; what there is when it has not turned that far.
 * @param {Track} track
 * @param {readonly string[]} keys
 * @param {"pump_angle" | "motor_angle"} shaft
 * @returns {Curve}
 */
export function lastTurn(track, keys, shaft) {
    const angles = track.column(shaft);
    const last = angles.length - 1;
    let from = last;
    while (from > 0 && Number.isFinite(angles[from - 1]) && Math.abs(angles[from - 1] - angles[last]) < TURN) from--;
    const places = Array.from({ length: last - from + 1 }, (_, i) => from + i).filter((i) => i >= 0 && Number.isFinite(angles[i]));
    const folded = places.map((i) => ({ i, angle: ((angles[i] % TURN) + TURN) % TURN })).sort((a, b) => a.angle - b.angle)
        .filter((each, i, all) => i === 0 || each.angle > all[i - 1].angle);
    return { x: Float64Array.from(folded, (each) => each.angle), ys: keys.map((key) => Float64Array.from(folded, (each) => track.column(key)[each.i])) };
}

/**
 * Quantities over another, in the order of time.
 * @param {Track} track
 * @param {readonly string[]} keys
 * @param {string} over
 * @param {number} span s
 * @param {number} until s
 * @returns {Curve}
 */
export function overAnother(track, keys, over, span, until) {
    const { ys } = lastStretch(track, [over, ...keys], span, until);
    return { x: ys[0], ys: ys.slice(1) };
}

/** The first place whose value is at least a limit; values rise. @param {Float64Array} values @param {number} limit */
export function firstAtLeast(values, limit) {
    let low = 0;
    let high = values.length;
    while (low < high) {
        const middle = (low + high) >> 1;
        if (values[middle] < limit) low = middle + 1;
        else high = middle;
    }
    return low;
}

/**
 * One table from the curves of several machines: all abscissas in rising order, a gap (null) where a machine has none.
 * @param {readonly Curve[]} curves
 * @returns {(number | null)[][]} abscissas, then the columns of every curve
 */
export function joined(curves) {
    const x = [...new Set(curves.flatMap((curve) => [...curve.x]))].filter(Number.isFinite).sort((a, b) => a - b);
    const place = new Map(x.map((value, i) => [value, i]));
    const columns = curves.flatMap((curve) => curve.ys.map((ys) => {
        const column = /** @type {(number | null)[]} */ (new Array(x.length).fill(null));
        ys.forEach((y, i) => {
            const at = place.get(curve.x[i]);
            if (at !== undefined && Number.isFinite(y)) column[at] = y;
        });
        return column;
    }));
    return [x, ...columns];
}
