/**
 * Moves what moves in a drawn diagram: colours and weights by pressure, dashes by flow, valves by what holds. Sets attributes of the nodes
 * that were drawn once; a frame costs no new drawing.
 */
import { bandOf, cssOf } from "../core/ramp.js";
import { dashWorth } from "./flowing.js";

/** @typedef {import("./flowing.js").LiveCircuit} LiveCircuit */
/** @typedef {import("./plan.js").Line} Line */
/** @typedef {import("./layout.js").Layout} Layout */

const DASH = 26; // length of a dash and its gap, drawing units
const EDGE = 2; // ink on both sides together, drawing units
const STILL = 1e-10; // m³/s: less is not shown as a flow

/**
 * Which way oil goes through a line whose own flow is not among the signals. 0 where nothing is known to go.
 * @param {string} key of the line
 * @param {number} bypass how far it is open
 */
export function wayOf(key, bypass) {
    if (bypass <= 0 || !key.startsWith("bypass-")) return 0;
    return key === "bypass-a" ? 1 : -1; // the lifted block: both sides run out
}

/** Weight of a line by the band of its pressure, drawing units. */
export const weightOf = (/** @type {number} */ band) => 2.6 + 0.6 * Math.max(0, Math.min(9, band));

export class Moving {
    /**
     * @param {ParentNode} root
     * @param {Line[]} lines
     */
    constructor(root, lines) {
        const one = (/** @type {string} */ selector) => root.querySelector(selector);
        this.lines = lines.map((line) => ({
            line,
            group: one(`[data-line="${line.key}"]`),
            pipe: pathOf(one(`[data-line="${line.key}"] .pipe`)),
            edge: pathOf(one(`[data-line="${line.key}"] .edge`)),
            oil: pathOf(one(`[data-line="${line.key}"] .oil`)),
            arrow: one(`[data-line="${line.key}"] .arrow`),
            phase: 0,
            drawn: "",
        }));
        this.one = one;
        /** @type {Map<string, string>} */
        this.set = new Map();
        this.time = NaN;
    }

    /**
     * @param {LiveCircuit} live
     * @param {{ time: number, pace: number, strongest: number, bypass: number, wheelTurn: number, calm: boolean, speeds: Record<string, number> }} now
     */
    update(live, now) {
        const passed = now.time - this.time;
        this.time = now.time;
        const worth = dashWorth(now.strongest, now.pace);
        for (const each of this.lines) this.flow(each, live, now, passed > 0 && passed < 1 ? passed / worth : 0);
        this.valves(live, now);
        return worth;
    }

    /** @private */
    flow(/** @type {Moving["lines"][number]} */ each, /** @type {LiveCircuit} */ live, /** @type {Parameters<Moving["update"]>[1]} */ now, /** @type {number} */ dashes) {
        const { line, pipe, edge, oil, arrow } = each;
        const flow = line.flow ? live.flows[/** @type {keyof LiveCircuit["flows"]} */ (line.flow)] : NaN;
        const known = Number.isFinite(flow);
        const way = known ? (Math.abs(flow) > STILL ? Math.sign(flow) : 0) : wayOf(line.key, now.bypass);
        if (known && !now.calm) each.phase = (((each.phase + flow * dashes) % 1) + 1) % 1;
        if (oil && line.kind === "working") this.put(oil, "stroke-dashoffset", (-each.phase * DASH).toFixed(1), line.key);
        const pressure = line.pressure === "case" ? NaN : live.pressures[line.pressure];
        const band = Number.isFinite(pressure) ? bandOf(pressure) : 0;
        const starves = (line.pressure === "a" && live.starvesA) || (line.pressure === "b" && live.starvesB);
        const drawn = `${line.pressure === "case" ? "" : cssOf(pressure)} ${band} ${way} ${starves} ${known}`;
        if (drawn === each.drawn) return;
        each.drawn = drawn;
        if (pipe && edge && oil) {
            const colour = cssOf(pressure);
            const weight = weightOf(band);
            pipe.style.stroke = colour;
            pipe.style.strokeWidth = String(weight);
            edge.style.strokeWidth = String(weight + EDGE);
            oil.style.strokeWidth = String(Math.max(1.6, weight * 0.36));
            oil.style.stroke = pale(colour) ? "#111" : "#fff";
        }
        each.group?.classList.toggle("starves", starves);
        each.group?.classList.toggle("flows", known && way !== 0);
        arrow?.classList.toggle("back", way < 0);
        arrow?.classList.toggle("none", way === 0);
    }

    /** @private */
    valves(/** @type {LiveCircuit} */ live, /** @type {Parameters<Moving["update"]>[1]} */ now) {
        const move = (/** @type {string} */ sign, /** @type {string} */ part, /** @type {string} */ transform) => {
            const node = this.one(`[data-sign="${sign}"] [data-moves="${part}"]`);
            if (node) this.put(node, "transform", transform, sign + part);
        };
        const state = (/** @type {string} */ sign, /** @type {string} */ name, /** @type {boolean} */ on) => {
            const node = this.one(`[data-sign="${sign}"]`);
            if (node && node.classList.contains(name) !== on) node.classList.toggle(name, on);
        };
        move("check-a", "ball", live.checkAOpen ? "translate(0 -6)" : "translate(0 0)");
        move("check-b", "ball", live.checkBOpen ? "translate(0 -6)" : "translate(0 0)");
        state("check-a", "open", live.checkAOpen);
        state("check-b", "open", live.checkBOpen);
        // A shut relief's arrow stands beside its line, as the standard draws it; it comes into line when it opens.
        for (const side of /** @type {const} */ (["a", "b"])) {
            const open = side === "a" ? live.reliefAOpen : live.reliefBOpen;
            move(`relief-${side}`, "arrow", open ? "translate(0 0)" : "translate(7 0)");
            state(`relief-${side}`, "open", open);
        }
        const charged = live.pressures.gallery > now.speeds.chargeSetting;
        move("charge-relief", "arrow", charged ? "translate(0 0)" : "translate(7 0)");
        state("charge-relief", "open", charged);
        move("bypass", "boxes", `translate(${(-30 * now.bypass).toFixed(1)} 0)`);
        state("bypass", "open", now.bypass > 0);
        const way = (/** @type {number} */ speed) => (Math.abs(speed) < 1e-3 ? "scale(0)" : speed > 0 ? "scale(1 1)" : "scale(1 -1)");
        move("input-shaft", "turn", way(now.speeds.pump));
        move("motor-shaft", "turn", way(now.speeds.motor));
        move("wheel", "spoke", `rotate(${((now.wheelTurn * 180) / Math.PI % 360).toFixed(1)})`);
        for (const side of /** @type {const} */ (["a", "b"])) {
            const pumped = side === "a" ? live.flows.aPump : -live.flows.bPump;
            const taken = side === "a" ? live.flows.aMotor : -live.flows.bMotor;
            state("pump", `into-${side}`, pumped > STILL);
            state("motor", `from-${side}`, taken > STILL);
        }
    }

    /** @private */
    put(/** @type {Element} */ node, /** @type {string} */ name, /** @type {string} */ value, /** @type {string} */ key) {
        if (this.set.get(key) === value) return;
        this.set.set(key, value);
        node.setAttribute(name, value);
    }
}

/** @param {Element | null} node */
const pathOf = (node) => (node instanceof SVGPathElement ? node : null);

/** Whether dark marks stand out better on a colour than white ones: relative luminance (WCAG 2.2) above 0.18. @param {string} css rgb(r g b) */
export function pale(css) {
    const [r, g, b] = (css.match(/\d+/g) ?? []).map((part) => (Number(part) / 255) ** 2.2);
    return 0.2126 * r + 0.7152 * g + 0.0722 * b > 0.18;
}
