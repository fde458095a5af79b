/**
 * What can be drawn: every signal of the machine, with its name in the page's language and its unit.
 */
import { t, tOr } from "../core/words.js";

/** Units of what a chamber tells. @type {Record<string, string>} */
const CHAMBER_UNITS = { pressure: "Pa", position: "m", from_side_a: "m3/s", from_side_b: "m3/s", leak: "m3/s", port: "1" };
const CHAMBER = /^(pump|motor)_chamber_(\d+)_([a-z_]+)$/;

/** @typedef {import("../types.js").Atlas} Atlas */
/** @typedef {{ key: string, name: string, unit: string }} Quantity */

/** SI unit of a signal. @param {Atlas} atlas @param {string} key */
export function unitOf(atlas, key) {
    const place = atlas.channels.keys.indexOf(key);
    return place >= 0 ? atlas.channels.units[place] : CHAMBER_UNITS[CHAMBER.exec(key)?.[3] ?? ""] ?? "1";
}

/** Name of a signal. @param {Atlas} atlas @param {string} key */
export function nameOf(atlas, key) {
    const [, unit, number, what] = CHAMBER.exec(key) ?? [];
    if (unit) return t(`quantity.chamber.${unit}`, number, t(`quantity.chamber.${what}`));
    const place = atlas.channels.keys.indexOf(key);
    return tOr(`signal.${key}`, atlas.channels.meanings[place] ?? key);
}

/** @param {Atlas} atlas @param {readonly string[]} keys of the machine @returns {Quantity[]} */
export const quantitiesOf = (atlas, keys) => keys.map((key) => ({ key, name: nameOf(atlas, key), unit: unitOf(atlas, key) }));

/** Those whose name, key or unit holds every word that was typed. @param {readonly Quantity[]} all @param {string} typed */
export function found(all, typed) {
    const words = typed.toLocaleLowerCase().split(/\s+/).filter(Boolean);
    return all.filter(({ key, name, unit }) => {
        const text = `${name} ${key} ${unit}`.toLocaleLowerCase();
        return words.every((word) => text.includes(word));
    });
}
