/**
 * The plan of a drive's circuit: which lines and symbols there are, where they stand and what part each shows. Nothing here is live.
 */
import * as symbol from "./symbols.js";

/** @typedef {import("./fitted.js").Fitted} Fitted */
/** @typedef {import("./layout.js").Layout} Layout */
/** @typedef {import("./layout.js").Spot} Spot */

/**
 * @typedef {object} Line
 * @property {string} key
 * @property {string} part
 * @property {"working" | "drain" | "suction"} kind
 * @property {Spot[]} spots in the direction of positive flow
 * @property {"a" | "b" | "gallery" | "case"} pressure
 * @property {string} flow key of LiveCircuit.flows; "" where only a direction is known
 * @property {number} [arrow] which leg carries the arrow, from 0
 */

/**
 * @typedef {object} Sign
 * @property {string} key
 * @property {string} part
 * @property {string[]} parts of the drive that this symbol stands for
 * @property {Spot} spot
 * @property {unknown} drawing
 * @property {boolean} [upright] never laid over
 * @property {boolean} [turned] stands the other way round across
 * @property {[number, number]} reach half its size along and across, for the pointer
 */

/**
 * @param {Fitted} fitted
 * @param {Layout} layout
 * @returns {{ lines: Line[], signs: Sign[], joints: Spot[] }}
 */
export function planOf(fitted, layout) {
    const { at, half, length, drain } = layout;
    const middle = length / 2;
    /** @type {Line[]} */
    const lines = [];
    /** @type {Sign[]} */
    const signs = [];
    /** @type {Spot[]} */
    const joints = [];
    const line = (/** @type {string} */ key, /** @type {string} */ part, /** @type {Line["pressure"]} */ pressure, /** @type {string} */ flow,
        /** @type {Spot[]} */ spots, /** @type {Line["kind"]} */ kind = "working", arrow = 0) => lines.push({ key, part, kind, spots, pressure, flow, arrow });
    const sign = (/** @type {string} */ key, /** @type {string[]} */ parts, /** @type {Spot} */ spot, /** @type {unknown} */ drawing,
        /** @type {[number, number]} */ reach, more = {}) => signs.push({ key, part: parts[0], parts, spot, drawing, reach, ...more });

    // The loop itself: A over the top, B back.
    line("a-pump", "passage-a", "a", "aPump", [[0, -symbol.UNIT], [0, -half], [middle, -half]], "working", 1);
    line("a-motor", "passage-a", "a", "aMotor", [[middle, -half], [length, -half], [length, -symbol.UNIT]], "working", 0);
    line("b-motor", "passage-b", "b", "bMotor", [[length, symbol.UNIT], [length, half], [middle, half]], "working", 1);
    line("b-pump", "passage-b", "b", "bPump", [[middle, half], [0, half], [0, symbol.UNIT]], "working", 0);

    shafts(fitted, layout, sign);
    crossings(fitted, layout, line, sign, joints);
    supply(fitted, layout, line, sign, joints);

    // The case line: what leaks leaves pump and motor and falls back into the case, which is the tank.
    const end = layout.tall ? length + 56 : middle;
    line("case-pump", "case-lower", "case", "case", [[-24, 24], [-24, drain], [end, drain]], "drain", 1);
    if (!layout.tall) line("case-motor", "case-lower", "case", "", [[length + 24, 24], [length + 24, drain], [end, drain]], "drain", 1);
    else line("case-motor", "case-lower", "case", "", [[length + 24, 24], [length + 24, drain]], "drain", 0);
    sign("case", ["case-lower", "case-upper", "oil", "magnets", "fan"], layout.tall ? [end + 12, drain] : [end, drain + 14], symbol.tank(), [18, 16], { upright: true });
    return { lines, signs, joints };
}

/** @typedef {(key: string, parts: string[], spot: Spot, drawing: unknown, reach: [number, number], more?: object) => void} AddSign */
/** @typedef {(key: string, part: string, pressure: Line["pressure"], flow: string, spots: Spot[], kind?: Line["kind"], arrow?: number) => void} AddLine */

/**
 * Engine, shafts, units, gears, wheel.
 * @param {Fitted} fitted
 * @param {Layout} layout
 * @param {AddSign} sign
 */
function shafts(fitted, layout, sign) {
    const { length, before, after } = layout;
    const far = -before + 28;
    sign("engine", ["engine"], [far, 0], symbol.primeMover(), [22, 22]);
    if (fitted.belt) sign("belt", ["input-pulley"], [far + (layout.tall ? 38 : 62), 0], symbol.belt(), [16, 20]);
    sign("input-shaft", ["input-shaft"], [-UNIT_AND_A_BIT, 0], symbol.turning(), [9, 20]);
    sign("pump", ["pump-block", "pump-face", "pump-piston", "pump-spring", "pump-thrust-bearing", "swash-plate", "trunnion", "control-arm"],
        [0, 0], symbol.pump(fitted.reverse), [38, 38]);
    sign("motor", ["motor-block", "motor-face", "motor-piston", "motor-spring", "fixed-plate", "motor-thrust-bearing"], [length, 0], symbol.motor(), [38, 38]);
    sign("motor-shaft", ["motor-shaft"], [length + UNIT_AND_A_BIT, 0], symbol.turning(), [9, 20]);
    const step = (after - 2 * UNIT_AND_A_BIT) / 2;
    sign("gears", ["gears", "pinion", "differential"], [length + UNIT_AND_A_BIT + 0.55 * step, 0], symbol.gears(), [34, 22]);
    sign("brake", ["brake"], [length + UNIT_AND_A_BIT + 1.32 * step, 0], symbol.brake(), [12, 24]);
    sign("wheel", ["wheel", "axle"], [length + after - 30, 0], symbol.wheel(), [24, 24]);
}

const UNIT_AND_A_BIT = symbol.UNIT + 18;

/**
 * What stands between A and B: bypass, make-up checks, bleeds, reliefs.
 * @param {Fitted} fitted
 * @param {Layout} layout
 * @param {AddLine} line
 * @param {AddSign} sign
 * @param {Spot[]} joints
 */
function crossings(fitted, { at, half }, line, sign, joints) {
    const mid = half / 2;
    const across = (/** @type {string} */ key, /** @type {string} */ part, /** @type {string} */ flow, /** @type {number} */ s, /** @type {number} */ c, /** @type {number} */ gap) => {
        line(`${key}-a`, part, "a", flow, [[s, -half], [s, c - gap]]);
        line(`${key}-b`, part, "b", flow, [[s, c + gap], [s, half]]);
        joints.push([s, -half], [s, half]);
    };
    if (fitted.bypass !== "none") {
        across("bypass", "bypass", "bypass", at.bypass, mid, 15);
        sign("bypass", ["bypass"], [at.bypass, mid], symbol.twoTwo(), [34, 22]);
    }
    if (fitted.reliefA) {
        across("relief-a", "relief-a", "reliefA", at.reliefA, -mid, 15);
        sign("relief-a", ["relief-a"], [at.reliefA, -mid], symbol.relief(), [30, 26]);
    }
    if (fitted.reliefB) {
        across("relief-b", "relief-b", "reliefB", at.reliefB, mid, 15);
        sign("relief-b", ["relief-b"], [at.reliefB, mid], symbol.relief(), [30, 26], { turned: true });
    }
    for (const side of /** @type {const} */ (["a", "b"])) {
        const to = side === "a" ? -1 : 1;
        const flow = side === "a" ? "checkA" : "checkB";
        const bled = side === "a" ? "bleedA" : "bleedB";
        line(`check-${side}-in`, `check-${side}`, "gallery", flow, [[at.checks, 0], [at.checks, to * (mid - 13)]]);
        line(`check-${side}-out`, `check-${side}`, side, flow, [[at.checks, to * (mid + 23)], [at.checks, to * half]]);
        sign(`check-${side}`, [`check-${side}`], [at.checks, to * mid], symbol.check(), [18, 26], { turned: to > 0 });
        joints.push([at.checks, to * half]);
        if (side === "a" ? fitted.bleedA : fitted.bleedB) {
            line(`bleed-${side}-in`, `check-${side}`, "gallery", bled, [[at.bleeds, 0], [at.bleeds, to * mid]]);
            line(`bleed-${side}-out`, `check-${side}`, side, bled, [[at.bleeds, to * mid], [at.bleeds, to * half]]);
            sign(`bleed-${side}`, [`check-${side}`], [at.bleeds, to * mid], symbol.orifice(), [18, 18]);
            joints.push([at.bleeds, to * half], [at.bleeds, 0]);
        }
    }
}

/**
 * The make-up side: filter and tank, or charge pump with its relief valve.
 * @param {Fitted} fitted
 * @param {Layout} layout
 * @param {AddLine} line
 * @param {AddSign} sign
 * @param {Spot[]} joints
 */
function supply(fitted, { at, tall, charge }, line, sign, joints) {
    /** Into a tank from above: along when the picture is tall, else down to it. */
    const tankAt = (/** @type {number} */ s, /** @type {number} */ c) => /** @type {Spot} */ (tall ? [s + 26, c] : [s, c + 26]);
    joints.push([at.checks, 0]);
    if (!fitted.chargePump) {
        const end = tankAt(at.tank, 0);
        line("suction", "filter", "case", "makeUp", [...(tall ? [] : [/** @type {Spot} */ ([end[0], end[1] - 4])]), [at.tank, 0], [at.filter + 18, 0]], "suction", tall ? 0 : 1);
        line("gallery", "gallery", "gallery", "makeUp", [[at.filter - 18, 0], [at.checks, 0]]);
        sign("filter", ["filter"], [at.filter, 0], symbol.filter(), [20, 20]);
        sign("tank", ["oil"], end, symbol.tank(), [18, 14], { upright: true });
        return;
    }
    const s = charge;
    const c = 62;
    line("suction", "filter", "case", "supply", [[s, c + 44], [s, c + 18]], "suction");
    line("charge-in", "filter", "case", "supply", [[s, c - 18], [s, 20]], "suction");
    sign("filter", ["filter"], [s, c], symbol.filter(), [20, 20], { across: true });
    sign("tank", ["oil"], tall ? [s + 24, c + 44] : [s, c + 44], symbol.tank(), [18, 14], { upright: true });
    if (tall) line("suction-down", "filter", "case", "supply", [[s + 20, c + 44], [s, c + 44]], "suction");
    sign("charge-pump", ["charge-pump"], [s, 0], symbol.chargePump(), [22, 22]);
    const over = tall ? -48 : -52;
    const foot = tall ? 46 : 52;
    line("charge-out", "gallery", "gallery", "supply", [[s, -20], [s, over], [foot, over], [foot, 0], [at.checks, 0]], "working", 1);
    line("gallery", "gallery", "gallery", "chargeRelief", [[at.checks, 0], [at.filter - 15, 0]]);
    line("charge-relief-out", "charge-relief", "case", "chargeRelief", [[at.filter + 15, 0], [at.tank, 0], ...(tall ? [] : [/** @type {Spot} */ ([at.tank, 22])])], "suction");
    sign("charge-relief", ["charge-relief"], [at.filter, 0], symbol.relief(), [26, 26], { along: true });
    sign("charge-tank", ["oil"], tankAt(at.tank, 0), symbol.tank(), [18, 14], { upright: true });
}
