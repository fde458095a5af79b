/**
 * Words with live values in them: {pressure_a} is what the drive shows, {sound:ground_speed} what the sound one beside it shows,
 * {angle:slope} and other hands come from the bench. A value that is not there shows as a dash, never as a guess.
 */
import { signal } from "../core/live.js";
import { show } from "../core/units.js";

const PLACE = /\{(?:(sound):)?([a-z_]+)\}/g;

/**
 * @param {string} words
 * @param {import("../types.js").Frame | null} frame
 * @param {{ keys: readonly string[], units: readonly string[] }} catalogue of signals, with SI units
 * @param {"si" | "us"} system
 */
export function filled(words, frame, catalogue, system) {
    return words.replace(PLACE, (_, sound, key) => {
        const machine = frame?.machines[sound ? 1 : 0];
        const value = machine ? signal(machine, key) : NaN;
        const unit = catalogue.units[catalogue.keys.indexOf(key)];
        return Number.isFinite(value) && unit !== undefined ? show(value, unit, system).text : "–";
    });
}

/**
 * Keys in words that no signal has: what an author mistyped.
 * @param {string} words
 * @param {readonly string[]} keys
 */
export const unknownKeys = (words, keys) => [...words.matchAll(PLACE)].map((match) => match[2]).filter((key) => !keys.includes(key));
