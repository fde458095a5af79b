/**
 * What is fitted in a drive, read from its parameters: a diagram shows a valve only when the description has one.
 */
import { parameter } from "../core/live.js";

/** @typedef {import("../types.js").MachineState} MachineState */

/** A belt lets go at a few times the engine's torque; a joint that holds more than this many times of it is a rigid shaft. */
const RIGID = 20; // 1

/**
 * @typedef {object} Fitted
 * @property {boolean} chargePump
 * @property {boolean} bleedA
 * @property {boolean} bleedB
 * @property {boolean} reliefA
 * @property {boolean} reliefB
 * @property {"valve" | "block" | "none"} bypass a valve between the sides, a lifted motor block, or neither
 * @property {boolean} belt
 * @property {boolean} reverse the plate goes to both sides
 */

/**
 * @param {MachineState} state
 * @param {readonly string[]} keys atlas.parameters.keys
 * @returns {Fitted}
 */
export function fittedOf(state, keys) {
    const has = (/** @type {string} */ key) => parameter(state, keys, key) > 0;
    return {
        chargePump: has("makeUp.chargeDisplacement"),
        bleedA: has("loop.bleedA"),
        bleedB: has("loop.bleedB"),
        reliefA: has("loop.reliefA"),
        reliefB: has("loop.reliefB"),
        bypass: has("loop.bypassArea") ? "valve" : has("loop.bypassLift") ? "block" : "none",
        belt: parameter(state, keys, "belt.capacity") < RIGID * parameter(state, keys, "engine.ratedTorque"),
        reverse: has("control.reverseShare"),
    };
}

/**
 * How far the bypass is open: pulled by hand as far as it reaches, or left open by what keeps it from shutting.
 * @param {MachineState} state
 * @param {readonly string[]} keys
 * @param {number} pulled 0 … 1
 */
export function bypassOpening(state, keys, pulled) {
    const rest = parameter(state, keys, "loop.bypassRest");
    const reach = parameter(state, keys, "loop.bypassReach");
    return Math.min(1, Math.max(0, Number.isFinite(rest) ? rest : 0, pulled * (Number.isFinite(reach) ? reach : 1)));
}
