/**
 * Where things stand. The diagram is thought along the power path (s, from pump to motor) and across it (c, side A negative, side B
 * positive); a wide picture lays s to the right, a tall one (phone) lays it down.
 */

/** @typedef {import("./fitted.js").Fitted} Fitted */
/** @typedef {[number, number]} Spot along, across */

/** Stations between pump and motor, in their order. */
export const STATIONS = /** @type {const} */ (["values", "bypass", "checks", "bleeds", "reliefA", "reliefB", "filter", "tank", "flows"]);

/** @typedef {(typeof STATIONS)[number]} Station */

/**
 * @typedef {object} Layout
 * @property {boolean} tall
 * @property {number} charge along, where a charge pump sits
 * @property {number} length from the pump's centre to the motor's
 * @property {number} half from the middle to side A or B
 * @property {number} drain across, where the case line runs
 * @property {number} before along, room for engine and shaft
 * @property {number} after along, room for gears and wheel
 * @property {number} width
 * @property {number} height
 * @property {Record<string, number>} at along, by station; absent ones are left out
 * @property {(spot: Spot) => [number, number]} place
 * @property {(spot: Spot) => string} frame transform that lays a symbol's own (s, c) drawing there
 */

/**
 * @param {Fitted} fitted
 * @param {boolean} tall
 * @returns {Layout}
 */
export function layoutOf(fitted, tall) {
    const fit = {
        values: tall,
        bypass: fitted.bypass !== "none",
        checks: true,
        bleeds: fitted.bleedA || fitted.bleedB,
        reliefA: fitted.reliefA,
        reliefB: fitted.reliefB,
        filter: true,
        tank: true,
        flows: tall,
    };
    const there = STATIONS.filter((each) => fit[each]);
    const end = tall ? 58 : 84;
    // A bypass is two boxes long and needs more room behind it.
    const rooms = there.slice(1).map((_, i) => (there[i] === "bypass" ? 1.4 : 1));
    const all = rooms.reduce((sum, room) => sum + room, 0);
    const length = tall ? 2 * end + all * 54 : 590;
    const step = (length - 2 * end) / all;
    const at = Object.fromEntries(there.map((each, i) => [each, end + step * rooms.slice(0, i).reduce((sum, room) => sum + room, 0)]));
    /** Where a charge pump sits on the input shaft. */
    const charge = tall ? -94 : -120;
    const [half, drain, before, after] = tall ? [118, 146, fitted.chargePump ? 190 : 150, 204] : [130, 168, 270, 248];
    const width = tall ? 360 : before + length + after;
    const top = tall ? before : half + 58;
    const height = tall ? before + length + after : top + drain + 56;
    /** @type {(spot: Spot) => [number, number]} */
    const place = tall ? ([s, c]) => [width / 2 + c - 4, top + s] : ([s, c]) => [before + s, top + c];
    /** @type {(spot: Spot) => string} */
    const frame = (spot) => (tall ? "matrix(0 1 1 0 " : "matrix(1 0 0 1 ") + place(spot).join(" ") + ")";
    return { tall, charge, length, half, drain, before, after, width, height, at, place, frame };
}
