/**
 * The walk that comes along: from the power path, seen from outside, to a worn face on a hill. Words stand in core/words/stories.*.js
 * as walk.NAME.name, .words and .mark.N; here stands what is computed and how it is looked at.
 */
import { t } from "../core/words.js";

/**
 * @typedef {import("../types.js").Bench} Bench
 * @typedef {import("../types.js").Hand} Hand
 * @typedef {import("../types.js").Gaze} Gaze
 */

const DEGREE = Math.PI / 180;
const CELSIUS = 273.15;

/** The walk's own motor face: worn by 40 µm, as in docs/pictures. */
const WORN_FACE = { "motor-face-worn": 40e-6 };

/** @type {Hand} */
const LEVEL = {
    stroke: 0.6, throttle: 1, brake: 0, bypass: 0, slope: 0, pull: 0, engine: "runs", footing: "ground", groundSpeed: 0,
    oilTemperature: 60 + CELSIUS,
};

/** @type {Partial<Gaze>} */
const CLOSED = {
    pace: 0.02, running: true, part: "", apart: 0, lowerHalf: true, upperHalf: true, overturned: false,
    section: { axis: "none", at: 0 }, isolated: false, ghosted: false, camera: [],
};
/** @type {Partial<Gaze>} */
const OPEN = { ...CLOSED, lowerHalf: false, upperHalf: false };

/**
 * @typedef {object} Stage
 * @property {string} name
 * @property {Partial<Hand>} [hand]
 * @property {Record<string, number>} [faults]
 * @property {boolean} [beside]
 * @property {Partial<Gaze>} look
 * @property {"rest" | "settled"} [from]
 * @property {[part: string, x: number, y: number][]} [marks]
 */

/** @type {Stage[]} */
const stages = [
    { name: "outside", look: CLOSED, marks: [["input-pulley", 0.2, 0.14], ["wheel", 0.78, 0.82]] },
    { name: "opened", look: { ...OPEN, upperHalf: false }, marks: [["pump-block", 0.18, 0.16], ["centre-section", 0.5, 0.08], ["motor-block", 0.8, 0.2]] },
    { name: "piston", look: { ...OPEN, part: "pump-piston", ghosted: true, pace: 0.002 }, hand: { stroke: 1 }, marks: [["pump-piston", 0.24, 0.18]] },
    { name: "plate", look: { ...OPEN, part: "swash-plate", pace: 0.01 }, hand: { stroke: 0.25 }, marks: [["control-arm", 0.2, 0.2]] },
    { name: "reverse", look: { ...OPEN, part: "swash-plate", pace: 0.01 }, hand: { stroke: -0.6 }, marks: [["swash-plate", 0.22, 0.2]] },
    { name: "loop", look: { ...OPEN, part: "centre-section", ghosted: true, pace: 0.005 }, marks: [["passage-a", 0.2, 0.16], ["passage-b", 0.76, 0.16]] },
    { name: "load", look: { ...OPEN, part: "passage-a", ghosted: true, pace: 0.005 }, hand: { slope: 10 * DEGREE, oilTemperature: 80 + CELSIUS }, marks: [["passage-a", 0.22, 0.14]] },
    { name: "makeup", look: { ...OPEN, part: "check-b", ghosted: true, pace: 0.005 }, hand: { slope: 10 * DEGREE, oilTemperature: 80 + CELSIUS }, marks: [["check-b", 0.24, 0.82], ["filter", 0.7, 0.84]] },
    { name: "downhill", look: { ...OPEN, part: "passage-b", ghosted: true, pace: 0.005 }, hand: { slope: -10 * DEGREE, oilTemperature: 80 + CELSIUS }, marks: [["passage-b", 0.74, 0.14]] },
    { name: "pushing", look: { ...OPEN, part: "bypass", ghosted: true, pace: 0.02 }, hand: { stroke: 0, engine: "off", bypass: 1, footing: "pushed", groundSpeed: 0.6 }, marks: [["bypass", 0.24, 0.2]] },
    { name: "wornLevel", look: { ...OPEN, part: "motor-face", ghosted: true, pace: 0.005 }, faults: WORN_FACE, beside: true, hand: { stroke: 1, oilTemperature: 30 + CELSIUS }, marks: [] },
    { name: "wornHill", look: { ...OPEN, part: "motor-face", ghosted: true, pace: 0.005 }, faults: WORN_FACE, beside: true, hand: { stroke: 1, slope: 12 * DEGREE, oilTemperature: 90 + CELSIUS }, marks: [] },
    { name: "whatToRead", look: { ...CLOSED, pace: 0.02 }, faults: WORN_FACE, beside: true, hand: { stroke: 1, slope: 12 * DEGREE, oilTemperature: 90 + CELSIUS }, marks: [] },
];

/**
 * The walk in the language of the page.
 * @returns {import("./story.js").Story}
 */
export const walk = () => ({
    title: t("walk.title"),
    states: stages.map((stage) => ({
        name: t(`walk.${stage.name}.name`),
        words: t(`walk.${stage.name}.words`),
        bench: benchOf(stage),
        look: stage.look,
        from: stage.from ?? "settled",
        marks: (stage.marks ?? []).map(([part, x, y], place) => ({ part, x, y, text: t(`walk.${stage.name}.mark.${place + 1}`) })),
    })),
});

/** @param {Stage} stage @returns {Bench} */
const benchOf = (stage) => ({
    drive: "light-rider",
    changes: {},
    faults: stage.faults ?? {},
    beside: stage.beside ?? false,
    hand: { ...LEVEL, ...stage.hand },
});
