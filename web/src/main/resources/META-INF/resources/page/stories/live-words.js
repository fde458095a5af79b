/**
 * Words with live values in them: {pressure_a} is what the drive shows, {sound:ground_speed} what the sound one beside it shows, {hand:slope} what
 * is asked of it, {fault:motor-face-worn} how much is wrong. What is not there shows as a dash, never as a guess.
 */
import { signal } from "../core/live.js";
import { show } from "../core/units.js";

const PLACE = /\{(?:(sound|hand|fault):)?([A-Za-z_-]+)\}/g;

/** Units of what a hand sets. @type {Record<string, string>} */
const HAND = { stroke: "share", throttle: "share", brake: "share", bypass: "share", slope: "slope", pull: "N", groundSpeed: "m/s", oilTemperature: "K" };

/**
 * @typedef {object} Known
 * @property {import("../types.js").Frame | null} frame
 * @property {import("../types.js").Bench} bench
 * @property {import("../types.js").Atlas} atlas
 * @property {"si" | "us"} system
 */

/** @param {string} words @param {Known} known */
export const filled = (words, known) =>
    words.replace(PLACE, (_, of, key) => {
        const [value, unit] = found(of, key, known);
        return Number.isFinite(value) ? show(value, unit, known.system).text : "–";
    });

/** @param {string | undefined} of @param {string} key @param {Known} known @returns {[number, string]} value and SI unit */
function found(of, key, { frame, bench, atlas }) {
    if (of === "hand") return [key in HAND ? /** @type {any} */ (bench.hand)[key] : NaN, HAND[key] ?? "1"];
    if (of === "fault") {
        const unit = atlas.faults.units[atlas.faults.keys.indexOf(key)];
        return [bench.faults[key] ?? NaN, unit === "m" ? "m worn" : unit === "K" ? "K apart" : unit];
    }
    const machine = frame?.machines[of === "sound" ? 1 : 0];
    return [machine ? signal(machine, key) : NaN, atlas.channels.units[atlas.channels.keys.indexOf(key)] ?? "1"];
}

/**
 * What in words names nothing: what an author mistyped.
 * @param {string} words
 * @param {import("../types.js").Atlas} atlas
 */
export const unknownKeys = (words, atlas) =>
    [...words.matchAll(PLACE)]
        .filter(([, of, key]) => !(of === "hand" ? key in HAND : (of === "fault" ? atlas.faults : atlas.channels).keys.includes(key)))
        .map((match) => match[0]);
