/**
 * The graphs: as many as are wanted, each of what is wanted, all drawn from one recording.
 */
import { html } from "lit";
import { LiveView } from "../circuit/live-view.js";
import { signal } from "../core/live.js";
import { show } from "../core/units.js";
import { store } from "../core/store.js";
import { t } from "../core/words.js";
import "./graph.js";
import { look } from "./look.js";
import { recorderOf } from "./recording.js";

/** @typedef {import("./graph.js").GraphPlan} GraphPlan */

const KEPT = "swashlight.graphs";
const DRAW_EVERY = 90; // ms
/** Stretches of time to choose from, s; 0 is as long as five seconds of the clock show. */
const SPANS = [0, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10];
const CLOCK = 5; // s
const SAMPLES = 900; // across a graph
const SAMPLES_A_TURN = 360;
/** Finer than this shows nothing that the run resolves. */
const FINEST = 2e-5; // s

/** What is drawn first: the sides against time, one chamber over a turn. @returns {GraphPlan[]} */
export const usualGraphs = () => [{ id: 1, x: "time", keys: ["pressure_a", "pressure_b"] }, { id: 2, x: "pump_angle", keys: ["pump_chamber_1_pressure"] }];

export class SwashGraphs extends LiveView {
    /** @type {Record<string, object>} */
    static properties = { engine: { attribute: false }, plans: { state: true }, span: { state: true }, keys: { state: true } };

    static styles = [look];

    constructor() {
        super();
        /** @type {(import("./recording.js").Recording & { restart?: () => void }) | null} */
        this.engine = null;
        this.plans = recalled();
        this.span = 0;
        /** @type {readonly string[]} */
        this.keys = [];
        this.drawn = 0;
        this.wanted = "";
    }

    disconnectedCallback() {
        super.disconnectedCallback();
        if (this.engine) recorderOf(this.engine).drop(this);
        this.wanted = "";
    }

    /** s of the machine */
    spanNow() {
        return this.span || CLOCK * store.gaze.pace;
    }

    /** @param {import("../types.js").Frame} frame */
    framed(frame) {
        const engine = this.engine;
        const state = frame.machines[0];
        if (!engine || !this.isConnected) return;
        if (this.keys.length !== state.keys.length) this.keys = state.keys;
        const recorder = recorderOf(engine);
        recorder.take(frame);
        const now = performance.now();
        if (now - this.drawn < DRAW_EVERY) return;
        this.drawn = now;
        this.want(state);
        for (const graph of this.renderRoot.querySelectorAll("swash-graph")) {
            /** @type {import("./graph.js").SwashGraph} */ (graph).draw(recorder.tracks, frame.machines.length, { span: this.spanNow() });
        }
    }

    /** Asks for the samples that the graphs need: finer for a turn of a fast shaft, coarser for a long stretch of time. @param {import("../types.js").MachineState} state */
    want(state) {
        const keys = [...new Set(this.plans.flatMap((plan) => (plan.x === "time" ? plan.keys : [plan.x, ...plan.keys])))];
        const intervals = this.plans.map((plan) => {
            const speed = plan.x === "pump_angle" ? signal(state, "pump_speed") : plan.x === "motor_angle" ? signal(state, "motor_speed") : 0;
            return Math.abs(speed) > 1 ? (2 * Math.PI) / (Math.abs(speed) * SAMPLES_A_TURN) : this.spanNow() / SAMPLES;
        });
        // Rounded to steps of two, so that a shaft that wavers does not ask anew with every frame.
        const interval = Math.max(FINEST, 2 ** Math.round(Math.log2(Math.min(...intervals, 1))));
        const wanted = `${keys} ${interval}`;
        if (wanted === this.wanted || !this.engine) return;
        this.wanted = wanted;
        recorderOf(this.engine).want(this, keys, interval);
    }

    gazed() {
        super.gazed();
        // A frozen graph takes the new theme's colours too.
        for (const graph of this.renderRoot.querySelectorAll("swash-graph")) /** @type {import("./graph.js").SwashGraph} */ (graph).plot?.plot.redraw();
    }

    /** @param {GraphPlan[]} plans */
    become(plans) {
        this.plans = plans;
        try {
            localStorage.setItem(KEPT, JSON.stringify(plans));
        } catch {
            // A browser that keeps nothing still draws.
        }
    }

    render() {
        return html`
            ${this.plans.map((plan, i) => html`<swash-graph .plan=${plan} .atlas=${this.atlas} .keys=${this.keys}
                @plan=${(/** @type {CustomEvent} */ event) => this.become(this.plans.map((each, at) => (at === i ? event.detail : each)))}
                @remove=${() => this.become(this.plans.filter((_, at) => at !== i))}></swash-graph>`)}
            <div class="row">
                <label>${t("graphs.span")} <select @change=${(/** @type {Event} */ event) => (this.span = Number(/** @type {HTMLSelectElement} */ (event.target).value))}>
                    ${SPANS.map((span) => html`<option value=${span} ?selected=${span === this.span}>${span === 0 ? t("graphs.span.auto") : show(span, "s", store.gaze.units).text}</option>`)}
                </select></label>
                <button @click=${() => this.become([...this.plans, { id: Math.max(0, ...this.plans.map((plan) => plan.id)) + 1, x: "time", keys: [] }])}>${t("graphs.add")}</button>
                <button @click=${() => this.become(usualGraphs())}>${t("graphs.usual")}</button>
            </div>
            <p class="soft">${t("graphs.hint")}</p>`;
    }
}

/** The graphs of last time. @returns {GraphPlan[]} */
function recalled() {
    try {
        const kept = JSON.parse(localStorage.getItem(KEPT) ?? "null");
        const sound = Array.isArray(kept) && kept.every((plan) => typeof plan?.x === "string" && Array.isArray(plan.keys) && plan.keys.every((/** @type {unknown} */ key) => typeof key === "string"));
        return sound ? kept : usualGraphs();
    } catch {
        return usualGraphs();
    }
}

customElements.define("swash-graphs", SwashGraphs);
