/**
 * The live values beside the diagram: where each stands and what it says.
 */
import { signal } from "../core/live.js";
import { show } from "../core/units.js";
import { t } from "../core/words.js";

/** @typedef {import("./layout.js").Layout} Layout */
/** @typedef {import("../types.js").MachineState} MachineState */
/** @typedef {import("./flowing.js").LiveCircuit} LiveCircuit */

/**
 * @typedef {object} Label
 * @property {string} key
 * @property {[number, number]} at
 * @property {"start" | "middle" | "end"} anchor
 * @property {number} lines
 * @property {boolean} [large]
 * @property {boolean} [inline] its second line stands behind the first
 */

/**
 * @param {Layout} layout
 * @param {import("./fitted.js").Fitted} fitted
 * @returns {Label[]}
 */
export function labelsOf(layout, fitted) {
    const { at, half, length, drain, place, before, after } = layout;
    const put = (/** @type {string} */ key, /** @type {import("./layout.js").Spot} */ spot, /** @type {[number, number]} */ by, /** @type {Label["anchor"]} */ anchor, lines = 1, large = false) => {
        const [x, y] = place(spot);
        return { key, at: /** @type {[number, number]} */ ([x + by[0], y + by[1]]), anchor, lines, large };
    };
    if (layout.tall) {
        const down = fitted.chargePump ? 8 : -10;
        return [
            put("a", [at.values, -half], [9, down], "start", 2, true),
            put("b", [at.values, half], [-9, down], "end", 2, true),
            put("gallery", [at.filter, 0], [44, -8], "start", 3),
            put("engine", [-before + 28, 0], [30, -8], "start", 2),
            put("engine-letter", [-before + 28, 0], [0, 5], "middle"),
            put("pump", [layout.charge + 10, -half], [-10, 0], "start", 3),
            put("motor", [length + 34, -half], [-10, 0], "start", 3),
            put("wheel", [length + after - 30, 0], [-34, 0], "end", 2),
            put("ratio", [length + 100, 0], [30, 14], "start"),
            put("case", [length + 56, drain], [14, 46], "end", 3),
            put("flow", [at.flows, -half], [9, 8], "start"),
            put("flow-b", [at.flows, half], [-9, 8], "end"),
        ];
    }
    return [
        { ...put("a", [length / 2, -half], [0, -15], "middle", 2, true), inline: true },
        { ...put("b", [length / 2, half], [0, 24], "middle", 2, true), inline: true },
        put("gallery", [at.filter - 14, -half / 2], [0, -24], "start", 3),
        put("engine", [-before + 6, 0], [0, -48], "start", 2),
        put("engine-letter", [-before + 28, 0], [0, 6], "middle"),
        put("pump", [-before + 6, -half], [0, 4], "start", 3),
        put("motor", [length + 78, -half], [0, 4], "start", 3),
        put("ratio", [length + 110, 0], [0, -34], "middle"),
        put("wheel", [length + after - 6, 0], [0, 46], "end"),
        put("case", [length / 2, drain], [26, 24], "start"),
        put("flow", [24, -half], [0, -13], "start"),
        put("flow-motor", [length - 24, -half], [0, -13], "end"),
        put("flow-b", [24, half], [0, 22], "start"),
    ];
}

/**
 * What a label says, line by line.
 * @param {string} key
 * @param {MachineState} state
 * @param {LiveCircuit} live
 * @param {MachineState | undefined} sound the sound machine beside it
 * @param {{ units: "si" | "us", tall: boolean, ratio: number }} how
 * @returns {string[]}
 */
export function wordsOf(key, state, live, sound, { units, tall, ratio }) {
    const said = (/** @type {string} */ name, /** @type {string} */ unit) => value(signal(state, name), unit, units);
    const beside = (/** @type {string} */ name, /** @type {string} */ unit) => (sound ? t("circuit.sound", value(signal(sound, name), unit, units)) : "");
    const flow = (/** @type {number} */ q) => value(Math.abs(q), "m3/s", units);
    switch (key) {
        case "a": return [`A  ${said("pressure_a", "Pa")}`, live.starvesA ? t("circuit.starves") : beside("pressure_a", "Pa")];
        case "b": return [`B  ${said("pressure_b", "Pa")}`, live.starvesB ? t("circuit.starves") : beside("pressure_b", "Pa")];
        case "gallery": return [t("circuit.gallery"), said("gallery_pressure", "Pa"), flow(live.flows.makeUp)];
        case "engine": return [t("circuit.engine"), said("engine_speed", "rad/s")];
        case "engine-letter": return ["M"];
        case "pump": return [t("circuit.pump"), said("pump_speed", "rad/s"), tall ? said("swash_angle", "rad") : t("circuit.plate", said("swash_angle", "rad"))];
        case "motor": return [t("circuit.motor"), said("motor_speed", "rad/s"), beside("motor_speed", "rad/s")];
        case "wheel": return tall ? [t("circuit.wheel"), said("ground_speed", "m/s")] : [said("ground_speed", "m/s")];
        case "ratio": return [`${show(ratio, "1", units).number} : 1`];
        case "case": return tall ? [t("circuit.case"), flow(live.flows.case), said("oil_temperature", "K")]
            : [`${t("circuit.case")} ${flow(live.flows.case)}   ${said("oil_temperature", "K")}`];
        case "flow": return [flow(live.flows.aPump)];
        case "flow-motor": return [flow(live.flows.aMotor)];
        case "flow-b": return [flow(live.flows.bPump)];
        default: return [];
    }
}

/** A value with its unit; a dash where there is none. */
const value = (/** @type {number} */ x, /** @type {string} */ unit, /** @type {"si" | "us"} */ units) => (Number.isFinite(x) ? show(x, unit, units).text : "–");
