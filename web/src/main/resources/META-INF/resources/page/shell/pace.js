/** Time in the machine: run, wait, slower, by degrees. */
import { LitElement, css, html } from "lit";
import { store } from "../core/store.js";
import { show } from "../core/units.js";
import { t } from "../core/words.js";
import { controls } from "./styles.js";
import { watchGaze } from "./watching.js";

/** Paces offered, seconds of the machine in one of the clock. */
export const PACES = Object.freeze([1, 0.3, 0.1, 0.05, 0.02, 0.01, 0.005, 0.002, 0.001]);
const EVERY = 150; // ms

export class SwashPace extends LitElement {
    static properties = { engine: { attribute: false }, frame: { attribute: false } };
    static styles = [controls, css`
        :host { container-type: inline-size; padding: calc(var(--gap) / 3) calc(var(--gap) / 2); }
        .row { flex-wrap: nowrap; overflow-x: auto; }
        .short { display: none; }
        button { flex: none; }
        .run { min-width: 5.5em; font-weight: 600; }
        input[type="range"] { min-width: 5rem; flex: 1; max-width: 16rem; }
        .told { white-space: nowrap; font-variant-numeric: tabular-nums; color: var(--ink-soft); }
        @container (max-width: 34rem) { .time, .wide { display: none; } .short { display: inline; } input[type="range"] { max-width: none; } .run { min-width: 4.6em; } button { padding: 0 0.4em; } }
    `];

    constructor() {
        super();
        /** @type {import("../engine/engine.js").Engine | null} */
        this.engine = null;
        /** @type {import("../types.js").Frame | null} */
        this.frame = null;
        this.at = 0;
        watchGaze(this, ["pace", "running"]);
    }

    /** @param {import("../types.js").Frame} frame */
    follow(frame) {
        if (performance.now() - this.at < EVERY) return;
        this.at = performance.now();
        this.frame = frame;
    }

    render() {
        const { pace, running } = store.gaze;
        const place = nearest(pace);
        const reached = this.frame?.pace ?? 0;
        return html`<div class="row" role="group" aria-label=${t("pace.title")}>
            <button class="run" aria-pressed=${running} @click=${() => store.setGaze({ running: !running })}>${running ? t("pace.wait") : t("pace.run")}</button>
            <button title=${t("pace.degree.hint")} @click=${() => this.step(1)}>+1°</button>
            <button title=${t("pace.degree.hint")} @click=${() => this.step(10)}>+10°</button>
            <input type="range" min="0" max=${PACES.length - 1} step="1" aria-label=${t("pace.title")} aria-valuetext=${told(PACES[place])}
                .value=${String(PACES.length - 1 - place)} @input=${(/** @type {Event} */ event) =>
                    store.setGaze({ pace: PACES[PACES.length - 1 - Number(/** @type {HTMLInputElement} */ (event.target).value)] })} />
            <span class="told"><b>${told(pace)}</b><span class="time"> · ${show(this.frame?.time ?? 0, "s", "si").text}</span>${running && reached < 0.7 * pace && reached > 0 ? html` · ${t("pace.slow", told(reached))}` : ""}</span>
            <button aria-label=${t("pace.again")} @click=${() => this.engine?.restart("settled")}><span class="wide">${t("pace.again")}</span><span class="short" aria-hidden="true">⟲</span></button>
        </div>`;
    }

    /** @param {number} degrees */
    step(degrees) {
        store.setGaze({ running: false });
        this.engine?.stepDegrees("pump", degrees);
    }
}

/** @param {number} pace */
export const nearest = (pace) => PACES.reduce((best, each, place) => (Math.abs(Math.log(each / pace)) < Math.abs(Math.log(PACES[best] / pace)) ? place : best), 0);

/** A pace as people say it: 1×, 1/50. @param {number} pace */
const told = (pace) => (pace > 0.95 ? "1×" : `1/${Math.round(1 / pace)}`);

customElements.define("swash-pace", SwashPace);
