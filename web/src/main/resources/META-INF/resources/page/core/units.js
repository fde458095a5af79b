/**
 * Numbers as people read them: SI inside, the user's system outside, real minus signs, thin spaces, as many digits as mean something.
 */

import { languageNow } from "./words.js";

const THIN = "\u202f";
const MINUS = "\u2212";
const CELSIUS = 273.15;
const ATMOSPHERE = 101_325; // Pa: pressures are shown as gauge readings, as a gauge on the drive would show them

/**
 * @typedef {object} Shown
 * @property {string} unit
 * @property {(si: number) => number} out
 * @property {(shown: number) => number} back
 * @property {number} step smallest difference worth showing, in the shown unit
 */

/** @param {string} unit @param {number} factor @param {number} step @param {number} [offset] @returns {Shown} */
const linear = (unit, factor, step, offset = 0) => ({
    unit,
    out: (si) => (si - offset) * factor,
    back: (shown) => shown / factor + offset,
    step,
});

const DEGREE = 180 / Math.PI;
const RPM = 30 / Math.PI;

/** @type {Record<string, { si: Shown, us: Shown }>} */
const systems = {
    Pa: { si: linear("bar", 1e-5, 0.1, ATMOSPHERE), us: linear("psi", 1 / 6894.757, 1, ATMOSPHERE) },
    "m3/s": { si: linear("L/min", 6e4, 0.01), us: linear("gpm", 15850.32, 0.001) },
    rad: { si: linear("°", DEGREE, 0.1), us: linear("°", DEGREE, 0.1) },
    "rad/s": { si: linear("rpm", RPM, 1), us: linear("rpm", RPM, 1) },
    "m/s": { si: linear("km/h", 3.6, 0.01), us: linear("mph", 2.236936, 0.01) },
    "N.m": { si: linear("N·m", 1, 0.1), us: linear("lbf·ft", 0.7375621, 0.1) },
    N: { si: linear("N", 1, 1), us: linear("lbf", 0.2248089, 0.1) },
    K: { si: linear("°C", 1, 0.1, CELSIUS), us: { unit: "°F", out: (k) => (k - CELSIUS) * 1.8 + 32, back: (f) => (f - 32) / 1.8 + CELSIUS, step: 0.1 } },
    /** Differences of temperature, and lengths as wear is read. */
    "K apart": { si: linear("K", 1, 0.1), us: linear("°F apart", 1.8, 0.1) },
    "m worn": { si: linear("µm", 1e6, 0.1), us: linear("mil", 39370.08, 0.01) },
    slope: { si: linear("°", DEGREE, 0.1), us: linear("°", DEGREE, 0.1) },
    share: { si: linear("%", 100, 0.1), us: linear("%", 100, 0.1) },
    W: { si: linear("W", 1, 1), us: linear("hp", 1 / 745.6999, 0.001) },
    m: { si: linear("mm", 1e3, 0.001), us: linear("in", 39.37008, 0.0001) },
    m2: { si: linear("mm²", 1e6, 0.01), us: linear("in²", 1550.003, 0.00001) },
    "m2/s": { si: linear("mm²/s", 1e6, 0.1), us: linear("cSt", 1e6, 0.1) },
    "m3/rev": { si: linear("cm³/rev", 1e6, 0.01), us: linear("in³/rev", 61023.74, 0.001) },
    m3: { si: linear("cm³", 1e6, 0.01), us: linear("in³", 61023.74, 0.001) },
    kg: { si: linear("kg", 1, 1), us: linear("lb", 2.204623, 1) },
    s: { si: linear("s", 1, 0.001), us: linear("s", 1, 0.001) },
    1: { si: linear("", 1, 0.001), us: linear("", 1, 0.001) },
};

/** @param {string} unit @param {"si" | "us"} system @returns {Shown} */
export const shownAs = (unit, system) => systems[unit]?.[system] ?? linear(unit, 1, 0.001);

/**
 * @param {number} value SI
 * @param {string} unit SI unit as the physics names it
 * @param {"si" | "us"} system
 * @returns {{ text: string, number: string, unit: string }}
 */
export function show(value, unit, system) {
    const shown = shownAs(unit, system);
    if (!Number.isFinite(value)) return { text: "–", number: "–", unit: shown.unit };
    const number = written(shown.out(value), shown.step);
    return { number, unit: shown.unit, text: shown.unit === "" ? number : shown.unit === "°" ? number + shown.unit : number + THIN + shown.unit };
}

/** @param {number} value @param {number} step */
function written(value, step) {
    const size = Math.abs(value);
    const digits = size === 0 ? 0 : Math.max(0, Math.min(Math.ceil(-Math.log10(step)), 2 - Math.floor(Math.log10(size))));
    const rounded = Number(value.toFixed(digits));
    return (rounded < 0 ? MINUS : "") + marked(Math.abs(rounded).toFixed(digits));
}

/** Languages that put a comma where others put a point. */
const COMMA = ["de"];

/** A number with the decimal mark of the page's language. @param {string} number with a point */
export const marked = (number) => (COMMA.includes(languageNow()) ? number.replace(".", ",") : number);

/**
 * @param {string} text as typed: comma or point, any minus, with or without the unit
 * @param {string} unit SI unit
 * @param {"si" | "us"} system
 * @returns {number} SI; NaN when it is no number
 */
export function parse(text, unit, system) {
    const plain = text.replace(MINUS, "-").replace(",", ".").replace(/[\s\u202f]/g, "");
    const match = /^([-+]?\d*\.?\d+(?:e[-+]?\d+)?)/i.exec(plain);
    return match ? shownAs(unit, system).back(Number(match[1])) : NaN;
}
