/**
 * The machine in words and numbers, from its state: one sentence a thing, from the engine to the ground. Says nothing that the state does not hold.
 */
import { signal } from "../core/live.js";
import { marked, show } from "../core/units.js";
import { t, tOr } from "../core/words.js";

/**
 * @typedef {import("../types.js").MachineState} MachineState
 * @typedef {import("../types.js").Bench} Bench
 * @typedef {import("../types.js").Atlas} Atlas
 *
 * @typedef {object} Told
 * @property {MachineState} state values may be means over a while
 * @property {(event: string) => number} held share of that while in which an event held
 */

const STILL = 0.02; // m/s: slower than this the machine stands
const TURNING = 0.5; // rad/s: slower than this a shaft stands
const LEVEL = 0.0035; // rad: 0.2°
const NEUTRAL = 0.0035; // rad
const ALIKE = 0.5e5; // Pa: closer than this neither side is the high one
const SLIPS = 0.02; // 1
/** An event is told when it held for this share of the time. */
const HELD = 0.05; // 1

/** Ledger items that end in the case. */
const TO_CASE = ["pistons", "bad_piston", "face", "scores", "shoes"].flatMap((item) => [`pump_${item}`, `motor_${item}`]).concat("crack_a", "crack_b");

/**
 * What leaks to the case in a settled state, and the item most of it goes by; null without a ledger.
 * @param {Atlas} atlas @param {Float64Array | null} ledger
 * @returns {{ flow: number, most: string, share: number } | null} m³/s
 */
export function caseLeak(atlas, ledger) {
    if (!ledger) return null;
    const leaks = TO_CASE.map((key) => ({ key, at: atlas.ledger.keys.indexOf(key) })).filter(({ at }) => at >= 0)
        .map(({ key, at }) => ({ key, flow: -(ledger[4 * at] + ledger[4 * at + 1]) }));
    const flow = leaks.reduce((sum, each) => sum + each.flow, 0);
    const most = leaks.reduce((best, each) => (each.flow > best.flow ? each : best), { key: "", flow: 0 });
    return { flow, most: most.key, share: flow > 0 ? most.flow / flow : 0 };
}

/**
 * @param {Told} told
 * @param {Atlas} atlas
 * @param {Bench} bench
 * @param {"si" | "us"} units
 * @returns {string[]} sentences
 */
export function describe({ state, held }, atlas, bench, units) {
    const value = (/** @type {string} */ key) => signal(state, key);
    const said = (/** @type {number} */ x, /** @type {string} */ unit) => show(x, unit, units).text;
    return [
        ...driven(value, said, held, bench),
        ...sides(value, said, held),
        ...leaks(value, said, atlas, state),
        ...ground(value, said, bench),
        ...events(held),
        t("telling.oil", said(value("oil_temperature"), "K")),
        ...faults(atlas, bench, units),
        ...(state.trouble ? [t("telling.trouble")] : []),
    ];
}

/** @typedef {(key: string) => number} Value */
/** @typedef {(x: number, unit: string) => string} Said */

/** Engine, belt, pump. @param {Value} value @param {Said} said @param {Told["held"]} held @param {Bench} bench */
function driven(value, said, held, bench) {
    const plate = value("swash_angle");
    const way = Math.abs(plate) < NEUTRAL ? t("telling.neutral") : t(plate > 0 ? "telling.plate.forward" : "telling.plate.reverse", said(Math.abs(plate), "rad"));
    const engine = held("engine_stalled") > HELD ? t("telling.engine.stalled")
        : bench.hand.engine === "off" ? t("telling.engine.off") : t("telling.engine", said(value("engine_speed"), "rad/s"));
    const slip = value("belt_slip");
    const pump = Math.abs(value("pump_speed")) < TURNING ? t("telling.pump.stands", way) : t("telling.pump", said(value("pump_speed"), "rad/s"), way);
    return [engine, ...(Math.abs(slip) > SLIPS ? [t("telling.belt", percent(slip))] : []), pump];
}

/** The two sides and what feeds them. @param {Value} value @param {Said} said @param {Told["held"]} held */
function sides(value, said, held) {
    const a = value("pressure_a");
    const b = value("pressure_b");
    const [high, low] = a >= b ? ["A", "B"] : ["B", "A"];
    const pressures = Math.abs(a - b) < ALIKE ? t("telling.alike", said(a, "Pa"), said(b, "Pa"))
        : t("telling.high", high, said(Math.max(a, b), "Pa"), low, said(Math.min(a, b), "Pa"));
    const open = ["A", "B"].filter((side) => held(`check_${side.toLowerCase()}_open`) > HELD);
    const makeUp = open.length === 0 ? t("telling.makeUp.none")
        : t(open.length === 2 ? "telling.makeUp.both" : "telling.makeUp", said(Math.abs(value("make_up_flow")), "m3/s"), open[0]);
    const flow = value("pump_flow");
    return [pressures, t("telling.flow", said(Math.abs(flow), "m3/s"), flow >= 0 ? "A" : "B"), makeUp];
}

/** @param {Value} value @param {Said} said @param {Atlas} atlas @param {MachineState} state */
function leaks(value, said, atlas, state) {
    const leak = value("case_leak");
    const settled = caseLeak(atlas, state.ledger);
    if (!settled || !settled.most) return [t("telling.leak", said(leak, "m3/s"))];
    const unit = settled.most.startsWith("pump") ? "pump" : settled.most.startsWith("motor") ? "motor" : "";
    const where = unit ? t(`telling.leak.${unit}`, t(`ledger.item.unit.${settled.most.slice(unit.length + 1)}`)) : t(`ledger.item.${settled.most}`);
    return [t(settled.share > 0.5 ? "telling.leak.most" : "telling.leak.largest", said(leak, "m3/s"), where, percent(settled.share))];
}

/** Motor, wheels, ground. @param {Value} value @param {Said} said @param {Bench} bench */
function ground(value, said, bench) {
    const { slope, footing } = bench.hand;
    const motor = value("motor_speed");
    const speed = value("ground_speed");
    const told = Math.abs(motor) < TURNING ? t("telling.motor.stands", said(value("output_torque"), "N.m"))
        : t(motor > 0 ? "telling.motor" : "telling.motor.back", said(Math.abs(motor), "rad/s"), said(value("output_torque"), "N.m"));
    if (footing === "lifted") return [told, t("telling.lifted")];
    if (footing === "held") return [told, t("telling.held")];
    const pushed = footing === "pushed" ? "pushed." : "";
    const grade = Math.abs(slope) < LEVEL ? "level" : speed * slope > 0 ? "up" : "down";
    const key = Math.abs(speed) < STILL ? (grade === "level" ? "telling.stands" : "telling.stands.slope") : `telling.${pushed}${speed > 0 ? "on" : "back"}.${grade}`;
    const slip = value("wheel_slip");
    return [told, t(key, said(Math.abs(speed), "m/s"), said(Math.abs(slope), "rad")), ...(Math.abs(slip) > SLIPS ? [t("telling.slip", percent(slip))] : [])];
}

/** What is remarkable, and not told already. @param {Told["held"]} held */
const events = (held) => ["side_a_starves", "side_b_starves", "chamber_starves", "relief_open", "drive_stalled", "wheels_spin", "pump_block_lifts", "motor_block_lifts"]
    .filter((event) => held(event) > HELD).map((event) => t(`telling.event.${event}`));

/** @param {Atlas} atlas @param {Bench} bench @param {"si" | "us"} units */
function faults(atlas, bench, units) {
    const keys = Object.keys(bench.faults);
    if (keys.length === 0) return [t("telling.sound")];
    const named = keys.map((key) => {
        const at = atlas.faults.keys.indexOf(key);
        const severity = show(bench.faults[key], atlas.faults.units[at] ?? "1", units).text;
        return `${tOr(`fault.${key}`, atlas.faults.meanings[at] ?? key)} (${tOr(`severity.${key}`, atlas.faults.severityMeanings[at] ?? "")} ${severity})`;
    });
    return [t("telling.faults", named.join("; "))];
}

const percent = (/** @type {number} */ share) => `${marked((100 * Math.abs(share)).toFixed(Math.abs(share) < 0.1 ? 1 : 0))}\u202f%`;
