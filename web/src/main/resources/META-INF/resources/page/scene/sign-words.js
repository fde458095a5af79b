/** What the signs of signs.js stand for, in words and numbers, for the notes in the picture. */
import { parameter, signal } from "../core/live.js";
import { show } from "../core/units.js";

/** @typedef {import("../types.js").MachineState} MachineState */

export const FIRM = 0.6; // rad/s: usual speed of return; a spring that gives it is drawn firm
export const TIGHT = 9; // N·m at the axle: more than sound gears, bearings and seals drag (2.5 usual) with the least fault added
export const THIN = 0.95; // of the oil's own viscosity: thinner is marked

/**
 * Heat of a drag at the axle, W.
 * @param {number} drag N·m at the axle
 * @param {number} motorSpeed rad/s
 * @param {number} ratio motor turns an axle turn
 */
export const axlePower = (drag, motorSpeed, ratio) => drag * Math.abs(motorSpeed / ratio);

/**
 * @param {MachineState} state
 * @param {readonly string[]} keys atlas.parameters.keys
 * @param {Readonly<Record<string, number>>} faults of the bench
 * @param {"si" | "us"} system
 * @returns {[string, ...(string | number)[]][]} word keys with their values
 */
export function signsOf(state, keys, faults, system) {
    const of = (/** @type {string} */ key) => parameter(state, keys, key);
    /** @type {[string, ...(string | number)[]][]} */
    const said = [];
    if ("return-weak" in faults) {
        const left = Math.round((1 - faults["return-weak"]) * 100);
        said.push(left > 0 ? ["scene.sign.return", left] : ["scene.sign.returnBroken"]);
    }
    if ("differential-tight" in faults) {
        const drag = of("gears.dragTorque");
        const heat = axlePower(drag, signal(state, "motor_speed"), of("gears.ratio"));
        if (Number.isFinite(heat)) said.push(["scene.sign.tight", show(drag, "N.m", system).text, show(Math.round(heat / 5) * 5, "W", system).text]);
    }
    if ("oil-too-thin" in faults || "oil-degraded" in faults) {
        const factor = of("oil.viscosityFactor");
        if (factor <= THIN) said.push(["scene.sign.thin", Math.round(factor * 100), show(Math.round(10 / factor) / 10, "1", system).text]);
    }
    return said;
}
