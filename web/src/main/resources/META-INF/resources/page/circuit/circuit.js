/**
 * The drive as a live diagram in ISO 1219-1 symbols, built from its description: what is fitted is drawn, what flows moves, what is open
 * opens. Pointing at a symbol lights the same part in every view, and the other way round.
 */
import { html, nothing, svg } from "lit";
import { parameter, signal } from "../core/live.js";
import { show } from "../core/units.js";
import { store } from "../core/store.js";
import { t, tOr } from "../core/words.js";
import { housingOf, lineOf, markOf, shaftsOf, signOf } from "./drawing.js";
import { faultsHere } from "./faults-here.js";
import { bypassOpening, fittedOf } from "./fitted.js";
import { labelsOf, wordsOf } from "./labels.js";
import { LiveView } from "./live-view.js";
import { layoutOf } from "./layout.js";
import { liveCircuit } from "./flowing.js";
import { Moving } from "./moving.js";
import { planOf } from "./plan.js";
import { styles } from "./style.js";
import { Rhythm } from "./rhythm.js";

/** Narrower than this the diagram stands upright. */
const NARROW = 700; // px
/** Written values change no faster than they can be read. */
const WORDS_EVERY = 160; // ms
const ATMOSPHERE = 101_325; // Pa

export class SwashCircuit extends LiveView {
    /** @type {Record<string, object>} */
    static properties = { tall: { state: true }, shape: { state: true }, worth: { state: true } };

    static styles = styles;

    constructor() {
        super();
        this.rhythm = new Rhythm();
        this.tall = false;
        this.shape = "";
        this.worth = 0;
        /** @type {Moving | null} */
        this.moving = null;
        this.drawn = "";
        this.written = 0;
        this.wheelTurn = 0;
        this.lastTime = NaN;
        this.calm = matchMedia("(prefers-reduced-motion: reduce)");
        this.sizes = new ResizeObserver(([entry]) => (this.tall = entry.contentRect.width < NARROW));
        this.how = "";
    }

    connectedCallback() {
        super.connectedCallback();
        this.sizes.observe(this);
    }

    disconnectedCallback() {
        super.disconnectedCallback();
        this.sizes.disconnect();
    }

    gazed() {
        const { units, theme } = store.gaze;
        if (`${units} ${theme}` !== this.how) {
            this.how = `${units} ${theme}`;
            this.requestUpdate();
        }
        this.light();
    }

    /** @param {import("../types.js").Frame} frame */
    framed(frame) {
        const shape = JSON.stringify(fittedOf(frame.machines[0], this.atlas?.parameters.keys ?? []));
        if (shape !== this.shape) this.shape = shape;
        if (this.rhythm.due(performance.now())) this.live();
    }

    /** Brings the drawn diagram up to the newest frame. */
    live() {
        const { atlas, frame, moving } = this;
        if (!atlas || !frame || !moving) return;
        const state = frame.machines[0];
        const keys = atlas.parameters.keys;
        const live = liveCircuit(state, keys);
        const bypass = bypassOpening(state, keys, store.bench.hand.bypass);
        const passed = frame.time - this.lastTime;
        this.lastTime = frame.time;
        if (passed > 0 && passed < 1) this.wheelTurn += (passed * signal(state, "ground_speed")) / (parameter(state, keys, "wheels.rollingRadius") || 1);
        const strongest = (parameter(state, keys, "pump.displacement") * parameter(state, keys, "engine.noLoadSpeed")) / (2 * Math.PI);
        const worth = moving.update(live, {
            time: frame.time,
            pace: store.gaze.pace,
            strongest,
            bypass,
            wheelTurn: this.wheelTurn,
            calm: this.calm.matches,
            speeds: {
                pump: signal(state, "pump_speed"),
                motor: signal(state, "motor_speed"),
                chargeSetting: parameter(state, keys, "makeUp.chargeRelief") + ATMOSPHERE,
            },
        });
        if (worth !== this.worth) this.worth = worth;
        const now = performance.now();
        if (now - this.written > WORDS_EVERY) {
            this.written = now;
            this.write(state, live);
        }
    }

    /** @param {import("../types.js").MachineState} state @param {import("./flowing.js").LiveCircuit} live */
    write(state, live) {
        const sound = this.frame?.machines[1];
        const how = { units: store.gaze.units, tall: this.tall, ratio: parameter(state, this.atlas?.parameters.keys ?? [], "gears.ratio") };
        for (const text of this.renderRoot.querySelectorAll("text[data-label]")) {
            const words = wordsOf(/** @type {SVGTextElement} */ (text).dataset.label ?? "", state, live, sound, how);
            text.querySelectorAll("tspan").forEach((line, i) => {
                if (line.textContent !== (words[i] ?? "")) line.textContent = words[i] ?? "";
            });
        }
    }

    updated() {
        const svg = this.renderRoot.querySelector("svg");
        const drawn = `${this.shape} ${this.tall}`;
        if (drawn !== this.drawn) {
            this.moving = svg && this.plan ? new Moving(svg, this.plan.lines) : null;
            this.drawn = drawn;
        }
        this.written = 0;
        this.light();
        this.live();
    }

    /** Lights the part that is pointed at or selected in any view. */
    light() {
        const { part, pointed } = store.gaze;
        for (const node of this.renderRoot.querySelectorAll("[data-part]")) {
            const own = /** @type {SVGElement} */ (node).dataset;
            const parts = this.plan?.signs.find((sign) => sign.key === own.sign)?.parts ?? [own.part];
            node.classList.toggle("pointed", pointed !== "" && parts.includes(pointed));
            node.classList.toggle("chosen", part !== "" && parts.includes(part));
        }
    }

    /** The part under an event: a sign keeps the very part that is lit already when it stands for several. @param {Event} event */
    partAt(event) {
        const node = /** @type {Element} */ (event.target).closest("[data-part]");
        return node instanceof SVGElement ? (node.dataset.part ?? "") : "";
    }

    /** @param {Event} event */
    point(event) {
        const part = this.partAt(event);
        if (part !== store.gaze.pointed) store.setGaze({ pointed: part });
    }

    /** @param {Event} event */
    choose(event) {
        const part = this.partAt(event);
        if (part) store.setGaze({ part });
    }

    /** @param {KeyboardEvent} event */
    pressed(event) {
        if (event.key !== "Enter" && event.key !== " ") return;
        event.preventDefault();
        this.choose(event);
    }

    render() {
        if (!this.shape) return html`<p class="wait">${t("circuit.wait")}</p>`;
        const fitted = JSON.parse(this.shape);
        const layout = layoutOf(fitted, this.tall);
        const plan = planOf(fitted, layout);
        this.plan = plan;
        const faults = faultsHere(store.bench.faults, plan.signs, plan.lines);
        const name = (/** @type {string} */ part) => tOr(`part.${part}.name`, part);
        const stops = new Set();
        const stop = (/** @type {import("./plan.js").Line} */ line) => {
            const own = ["passage-a", "passage-b", "gallery"].includes(line.part) && !stops.has(line.part);
            stops.add(line.part);
            return own ? name(line.part) : "";
        };
        return html`
            <svg viewBox="0 0 ${layout.width} ${layout.height}" class="${this.tall ? "tall" : "wide"} ${store.gaze.theme === "projector" ? "heavy" : ""}" role="group" aria-label=${t("circuit.title")}
                @pointerover=${this.point} @pointerleave=${this.point} @focusin=${this.point} @focusout=${this.point} @click=${this.choose} @keydown=${this.pressed}>
                ${housingOf(layout, fitted.chargePump)}${shaftsOf(layout)}
                ${plan.lines.map((line) => lineOf(line, layout, stop(line)))}
                ${plan.joints.map((spot) => jointOf(layout.place(spot)))}
                ${plan.signs.map((sign) => signOf(sign, layout, OWN_NAMES[sign.key] ? t(OWN_NAMES[sign.key]) : name(sign.part)))}
                ${faults.map((fault) => this.mark(fault, faults, layout))}
                ${labelsOf(layout, fitted).map((label) => textOf(label))}
            </svg>
            ${faults.length === 0 ? nothing : html`<ol class="faults" aria-label=${t("circuit.faults")}>${faults.map((fault) => html`
                <li><button @click=${() => store.setGaze({ part: fault.part })} @pointerenter=${() => store.setGaze({ pointed: fault.part })} @pointerleave=${() => store.setGaze({ pointed: "" })}>
                    <b>▲ ${fault.number}</b> ${this.faultName(fault.fault)}</button></li>`)}</ol>`}
            <p class="key">${t("circuit.key", show(this.worth, "m3", store.gaze.units).text)}
                ${document.fullscreenEnabled ? html`<button @click=${() => this.enlarge()}>${t("circuit.enlarge")}</button>` : nothing}</p>`;
    }

    /** The whole screen for the diagram, and back. */
    enlarge() {
        if (document.fullscreenElement) document.exitFullscreen();
        else this.requestFullscreen();
    }

    /** @param {import("./faults-here.js").FaultHere} fault @param {import("./faults-here.js").FaultHere[]} all @param {import("./layout.js").Layout} layout */
    mark(fault, all, layout) {
        const sign = this.plan?.signs.find((each) => each.key === fault.sign);
        const line = this.plan?.lines.find((each) => each.key === fault.sign);
        if (!sign && !line) return nothing;
        const nth = all.filter((each) => each.sign === fault.sign).indexOf(fault);
        const [x, y] = layout.place(sign ? sign.spot : line?.spots[1] ?? [0, 0]);
        return markOf(fault.number, [x + (sign ? 24 : 30) + nth * 22, y + (sign ? -26 : 0)]);
    }

    /** @param {string} key */
    faultName(key) {
        const faults = this.atlas?.faults;
        return tOr(`fault.${key}.name`, tOr(`fault.${key}`, faults?.meanings[faults.keys.indexOf(key)] ?? key));
    }
}

/** @param {[number, number]} at */
const jointOf = ([x, y]) => svg`<circle class="joint" cx=${x} cy=${y} r="3.4" />`;

/** @param {import("./labels.js").Label} label */
function textOf(label) {
    const [x, y] = label.at;
    const spans = label.inline ? [svg`<tspan></tspan>`, svg`<tspan class="more" dx="12"></tspan>`]
        : Array.from({ length: label.lines }, (_, i) => svg`<tspan x=${x} class=${i > 0 && label.large ? "more" : ""} dy=${i === 0 ? 0 : "1.25em"}></tspan>`);
    return svg`<text class=${label.large ? "large" : ""} data-label=${label.key} x=${x} y=${y} text-anchor=${label.anchor}>${spans}</text>`;
}

/** Symbols that stand for more than one part, or for a part of a part. @type {Record<string, string>} */
const OWN_NAMES = {
    pump: "circuit.pump.name", motor: "circuit.motor.name", case: "circuit.tank", tank: "circuit.tank", "charge-tank": "circuit.tank",
    "bleed-a": "circuit.bleed-a", "bleed-b": "circuit.bleed-b",
};

customElements.define("swash-circuit", SwashCircuit);
