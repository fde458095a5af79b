/**
 * What the lines and valves of the diagram do now, from a machine's state. A flow that one line alone does not have is NaN: shown as a
 * direction at most, never as a number.
 */
import { chamber, parameter, signal } from "../core/live.js";

/** @typedef {import("../types.js").MachineState} MachineState */

/**
 * @typedef {object} LiveCircuit
 * @property {Record<"a" | "b" | "gallery", number>} pressures Pa
 * @property {Record<"aPump" | "aMotor" | "bPump" | "bMotor" | "makeUp" | "supply" | "checkA" | "checkB" | "bleedA" | "bleedB"
 *     | "bypass" | "reliefA" | "reliefB" | "chargeRelief" | "case", number>} flows m³/s; in A and B positive as oil goes round when the pump
 *     delivers into A, across from A to B, at checks and bleeds from the gallery into the side
 * @property {boolean} checkAOpen
 * @property {boolean} checkBOpen
 * @property {boolean} reliefAOpen
 * @property {boolean} reliefBOpen
 * @property {boolean} starvesA
 * @property {boolean} starvesB
 */

/**
 * @param {MachineState} state
 * @param {readonly string[]} keys atlas.parameters.keys
 * @returns {LiveCircuit}
 */
export function liveCircuit(state, keys) {
    const stuck = (/** @type {string} */ side) => parameter(state, keys, `loop.check${side}Lift`) > 0;
    const on = (/** @type {string} */ key) => state.events.includes(key);
    const a = signal(state, "pressure_a");
    const b = signal(state, "pressure_b");
    const makeUp = signal(state, "make_up_flow");
    const checkAOpen = on("check_a_open") || stuck("A");
    const checkBOpen = on("check_b_open") || stuck("B");
    const relief = signal(state, "relief_flow");
    const chargeRelief = signal(state, "charge_relief_flow");
    const lifts = parameter(state, keys, "loop.bypassLift") > 0;
    return {
        pressures: { a, b, gallery: signal(state, "gallery_pressure") },
        flows: {
            aPump: -sumOf(state, "pump", state.pumpPistons, "from_side_a"),
            aMotor: sumOf(state, "motor", state.motorPistons, "from_side_a"),
            bPump: sumOf(state, "pump", state.pumpPistons, "from_side_b"),
            bMotor: -sumOf(state, "motor", state.motorPistons, "from_side_b"),
            makeUp,
            supply: makeUp + chargeRelief, // before the charge relief valve takes its share
            checkA: signal(state, "check_a_flow"),
            checkB: signal(state, "check_b_flow"),
            bleedA: signal(state, "bleed_a_flow"),
            bleedB: signal(state, "bleed_b_flow"),
            bypass: lifts ? NaN : signal(state, "bypass_flow"), // a lifted block lets both sides out into the case
            reliefA: Math.max(0, relief),
            reliefB: Math.min(0, relief),
            chargeRelief,
            case: signal(state, "case_leak"),
        },
        checkAOpen,
        checkBOpen,
        reliefAOpen: on("relief_open") && a > b,
        reliefBOpen: on("relief_open") && b > a,
        starvesA: on("side_a_starves"),
        starvesB: on("side_b_starves"),
    };
}

/**
 * @param {MachineState} state
 * @param {"pump" | "motor"} unit
 * @param {number} count
 * @param {"from_side_a" | "from_side_b" | "leak"} what
 */
export function sumOf(state, unit, count, what) {
    let sum = 0;
    for (let i = 1; i <= count; i++) sum += chamber(state, unit, i, what);
    return sum;
}

/**
 * Oil that one dash of a moving line stands for, m³: of 1, 2, 5, 10 … mm³ the least at which the strongest flow moves no more than
 * a few dashes in a second of the clock, so that the eye can follow at every pace.
 * @param {number} strongest m³/s of the machine
 * @param {number} pace seconds of the machine in one of the clock
 */
export function dashWorth(strongest, pace) {
    const least = (strongest * pace) / DASHES_A_SECOND;
    if (!(least > 0)) return 1e-9;
    const decade = 10 ** Math.floor(Math.log10(least));
    return [1, 2, 5, 10].map((step) => step * decade).find((worth) => worth >= least * (1 - 1e-9)) ?? 10 * decade;
}

const DASHES_A_SECOND = 4; // 1/s
