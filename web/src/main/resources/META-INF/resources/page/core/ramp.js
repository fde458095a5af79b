/**
 * The colour of pressure: a ramp of our own, even in lightness (CIELAB), readable without telling red from green, from pale to deep on
 * paper and from deep to bright on dark ground. The scale is opened below 5 bar, where cavitation, make-up and idle sides differ by little.
 *
 * A band number goes with every colour, for patterns and line weights: pressure is never told by hue alone.
 */

const BAR = 1e5; // Pa
const ATMOSPHERE = 101_325; // Pa

/** Gauge pressures (bar) at which a new band begins, and their place on the ramp: 0 starved … 1 highest. */
export const BANDS = Object.freeze([
    { from: -1.1, place: 0 }, // no oil left: cavitation
    { from: -0.5, place: 0.08 }, // drawn in through filter and valve
    { from: -0.05, place: 0.16 }, // as the case
    { from: 1, place: 0.26 },
    { from: 5, place: 0.36 },
    { from: 20, place: 0.5 },
    { from: 50, place: 0.64 },
    { from: 100, place: 0.78 },
    { from: 180, place: 0.9 },
    { from: 300, place: 1 },
]);

/** Corners of the ramp in CIELAB (D65): lightness falls evenly on paper; hue goes from sea-blue grey over violet to rust, never red beside green. */
const PAPER = [[94, -4, -4], [80, -8, -16], [66, -2, -32], [52, 24, -38], [38, 44, -8], [24, 40, 30]];
const DARK = [[24, 0, -6], [38, 2, -26], [52, 20, -40], [66, 40, -8], [80, 24, 40], [94, -2, 54]];

/** @type {number[][]} */
let corners = PAPER;

/** @param {"light" | "dark" | "projector"} theme */
export function rampFor(theme) {
    corners = theme === "light" ? PAPER : DARK;
}

/** Where a pressure lies on the ramp, 0 … 1. @param {number} pascal absolute */
export function placeOf(pascal) {
    const bar = (pascal - ATMOSPHERE) / BAR;
    if (!(bar > BANDS[0].from)) return 0;
    for (let band = 1; band < BANDS.length; band++) {
        const low = BANDS[band - 1];
        const high = BANDS[band];
        if (bar < high.from) return low.place + ((high.place - low.place) * (bar - low.from)) / (high.from - low.from);
    }
    return 1;
}

/** Number of the band, 0 the lowest. @param {number} pascal absolute */
export function bandOf(pascal) {
    const bar = (pascal - ATMOSPHERE) / BAR;
    let band = 0;
    while (band + 1 < BANDS.length && bar >= BANDS[band + 1].from) band++;
    return band;
}

/** Colour, 0 … 1 each of red, green, blue (sRGB). @param {number} pascal absolute @returns {[number, number, number]} */
export const colourOf = (pascal) => colourAt(placeOf(pascal));

/** As CSS writes it. @param {number} pascal absolute */
export const cssOf = (pascal) => cssAt(placeOf(pascal));

/** @param {number} place 0 … 1 */
export const cssAt = (place) => `rgb(${colourAt(place).map((part) => Math.round(part * 255)).join(" ")})`;

/** @param {number} place 0 … 1 @returns {[number, number, number]} */
export function colourAt(place) {
    const along = Math.min(1, Math.max(0, place)) * (corners.length - 1);
    const corner = Math.min(corners.length - 2, Math.floor(along));
    const share = along - corner;
    return fromLab(corners[corner].map((part, axis) => part + (corners[corner + 1][axis] - part) * share));
}

/** CIELAB (D65) to sRGB: IEC 61966-2-1 and CIE 15. @param {number[]} lab @returns {[number, number, number]} */
function fromLab([lightness, a, b]) {
    const fy = (lightness + 16) / 116;
    /** @param {number} f */
    const back = (f) => (f > 6 / 29 ? f ** 3 : 3 * (6 / 29) ** 2 * (f - 4 / 29));
    const x = 0.95047 * back(fy + a / 500);
    const y = back(fy);
    const z = 1.08883 * back(fy - b / 200);
    return [
        encoded(3.2404542 * x - 1.5371385 * y - 0.4985314 * z),
        encoded(-0.969266 * x + 1.8760108 * y + 0.041556 * z),
        encoded(0.0556434 * x - 0.2040259 * y + 1.0572252 * z),
    ];
}

/** @param {number} linear */
function encoded(linear) {
    const bounded = Math.min(1, Math.max(0, linear));
    return bounded <= 0.0031308 ? 12.92 * bounded : 1.055 * bounded ** (1 / 2.4) - 0.055;
}
