/**
 * The tones of pump and motor in what has been recorded: where they lie, how strong they are.
 */
import { signal } from "../core/live.js";
import { amplitudeAt, evenly, pistonPasses } from "./fft.js";

/** @typedef {import("../types.js").MachineState} MachineState */

/** Harmonics of the piston pass that are looked at. */
export const HARMONICS = 5;

/**
 * @typedef {object} Tone
 * @property {"pump" | "motor"} unit
 * @property {number} harmonic of the piston pass, from 1; 0 for what happens once a turn: one piston that is not like the others
 * @property {number} order turns of its shaft
 * @property {number} frequency Hz
 */

/** @param {MachineState} state @returns {Tone[]} */
export function tonesOf(state) {
    const of = (/** @type {"pump" | "motor"} */ unit, /** @type {number} */ pistons) => pistonPasses(signal(state, `${unit}_speed`), pistons, HARMONICS)
        .map(({ order, frequency }, i) => ({ unit, harmonic: i + 1, order, frequency }));
    const turn = (/** @type {"pump" | "motor"} */ unit) => ({ unit, harmonic: 0, order: 1, frequency: Math.abs(signal(state, `${unit}_speed`)) / (2 * Math.PI) });
    return [turn("pump"), ...of("pump", state.pumpPistons), turn("motor"), ...of("motor", state.motorPistons)];
}

/** Highest frequency of interest, Hz: the last harmonic of the faster shaft, and a little more. @param {MachineState} state */
export const highestOf = (state) => 1.08 * Math.max(50, ...tonesOf(state).map((tone) => tone.frequency));

/** Sampling so fine that what is looked at is far below what samples can tell, s; in steps of two, so that it stays as it is while speeds waver. @param {number} highest Hz */
export const intervalFor = (highest) => 2 ** Math.floor(Math.log2(1 / (4 * highest)));

/**
 * Amplitudes of tones in the newest samples of a signal; null while there are too few.
 * @param {import("./recording.js").Track} track
 * @param {string} key
 * @param {readonly Tone[]} tones
 * @param {number} count @param {number} interval s
 */
export function strengths(track, key, tones, count, interval) {
    const samples = evenly(track.times(), track.column(key), count, interval);
    return samples ? tones.map((tone) => amplitudeAt(samples, interval, tone.frequency)) : null;
}
