/**
 * From what is asked to runs of the physics: which drive, which faults, which duty, and whether a change can be taken on the way.
 */

/**
 * @typedef {import("../types.js").Bench} Bench
 * @typedef {import("../types.js").Hand} Hand
 */

import { made } from "./refusal.js";

/** Accuracy of the page's runs; docs/moving.md says what it gives. */
export const TOLERANCE = 1e-3;

/**
 * The drive of a bench, faults and all.
 * @param {any} physics
 * @param {readonly import("../types.js").DemoDrive[]} drives
 * @param {Bench} bench
 * @param {boolean} sound without its faults
 */
export function driveOf(physics, drives, bench, sound) {
    const demo = drives.find((each) => each.key === bench.drive) ?? drives[0];
    let drive = demo ? physics.driveOf(demo.name, Float64Array.from(demo.values)) : physics.lightRider();
    const changes = Object.entries(bench.changes);
    if (changes.length > 0) {
        const built = drive;
        const [keys, values] = [changes.map(([key]) => key), Float64Array.from(changes, ([, value]) => value)];
        drive = made(() => built.with(keys, values), () => built.complaintsWith(keys, values));
    }
    for (const [key, severity] of sound ? [] : Object.entries(bench.faults)) {
        const before = drive;
        drive = made(() => before.withFault(key, severity), () => before.complaintsWithFault(key, severity));
    }
    return drive;
}

/** Controls that a run takes over while it goes on, and where they stand in the hand. */
const CONTROLS = /** @type {const} */ ([["stroke", "stroke"], ["throttle", "throttle"], ["brake", "brake"], ["bypass", "bypass"],
    ["slope", "slope"], ["pull", "pull"], ["ground_speed", "groundSpeed"]]);

/**
 * The duty of a hand: everything constant from now on.
 * @param {any} physics
 * @param {Readonly<Hand>} hand
 */
export function dutyOf(physics, hand) {
    let duty = physics.driving(hand.stroke, hand.slope, hand.oilTemperature);
    for (const [control, key] of CONTROLS) duty = duty.line(control, Float64Array.of(0), Float64Array.of(hand[key]));
    duty = hand.engine === "runs" ? duty.engineRuns() : duty.engineOff();
    return duty.footing(hand.footing);
}

/**
 * What a change of benches calls for.
 * @param {Bench | null} before
 * @param {Bench} now
 * @returns {"nothing" | "redirect" | "takeUp" | "begin"}
 */
export function change(before, now) {
    if (!before || before.drive !== now.drive || shape(before) !== shape(now)) return "begin";
    const otherDrive = JSON.stringify([before.changes, before.faults]) !== JSON.stringify([now.changes, now.faults]);
    const otherRun = before.hand.engine !== now.hand.engine || before.hand.footing !== now.hand.footing
        || before.hand.oilTemperature !== now.hand.oilTemperature;
    if (otherDrive || otherRun) return "takeUp";
    return JSON.stringify(before.hand) === JSON.stringify(now.hand) ? "nothing" : "redirect";
}

/** Piston counts decide how many chambers a state has. @param {Bench} bench */
const shape = (bench) => `${bench.changes["pump.pistonCount"]} ${bench.changes["motor.pistonCount"]}`;
