/**
 * The piston-pass spectrum: which tones are in a pressure, a torque or a flow, with marks where pump and motor pistons put theirs.
 */
import { css, html, nothing, svg } from "lit";
import { LiveView } from "../circuit/live-view.js";
import { marked, show, shownAs } from "../core/units.js";
import { signal } from "../core/live.js";
import { store } from "../core/store.js";
import { t } from "../core/words.js";
import { evenly, spectrumOf } from "./fft.js";
import { look } from "./look.js";
import { nameOf, unitOf } from "./quantities.js";
import { recorderOf } from "./recording.js";
import "./sound.js";
import { highestOf, intervalFor, strengths, tonesOf } from "./tones.js";

const LISTENED = ["pressure_a", "pressure_b", "pump_torque", "motor_torque", "pump_flow", "motor_flow"];
const LENGTHS = [512, 1024, 2048, 4096];
const DRAW_EVERY = 250; // ms
const HEIGHT = 230; // px

/** @typedef {{ frequencies: Float64Array, amplitudes: Float64Array, resolution: number }} Spectrum */
/** @typedef {{ spectrum: Spectrum | null, strengths: number[] | null, filled: number }} Heard */

export class SwashSpectrum extends LiveView {
    /** @type {Record<string, object>} */
    static properties = { engine: { attribute: false }, key: { state: true }, count: { state: true }, scale: { state: true }, heard: { state: true }, width: { state: true } };

    static styles = [look, css`
        .sheet { background: var(--paper); border: 1px solid var(--line); width: 100%; height: ${HEIGHT}px; display: block; }
        .sheet text { fill: var(--ink); font-size: 12px; } .grid { stroke: var(--hair); } .axis { stroke: var(--ink); }
        .line { fill: none; stroke: var(--ink); stroke-width: 1.6; } .line.sound { stroke-dasharray: 5 4; stroke: var(--ink-soft); }
        .mark { stroke-width: 1; stroke-dasharray: 2 3; } .mark.pump { stroke: var(--accent); } .mark.motor { stroke: var(--warn); }
        .tip.pump { fill: var(--accent); } .tip.motor { fill: var(--warn); }
        table { border-collapse: collapse; width: 100%; } th { text-align: left; font-weight: 400; } thead th { color: var(--ink-soft); font-size: var(--size-1); }
        th.num, td.num { text-align: right; padding-left: 0.6em; } tbody tr { border-top: 1px solid var(--hair); }
        td svg, th svg { width: 0.9em; height: 0.9em; }
    `];

    constructor() {
        super();
        /** @type {import("./recording.js").Recording | null} */
        this.engine = null;
        this.key = "pressure_a";
        this.count = 2048;
        /** @type {"Hz" | "pump" | "motor"} */
        this.scale = "Hz";
        /** @type {Heard[]} */
        this.heard = [];
        this.width = 400;
        this.drawn = 0;
        this.interval = 0;
        this.wanted = "";
        this.sizes = new ResizeObserver(([entry]) => (this.width = Math.max(260, Math.round(entry.contentRect.width))));
    }

    connectedCallback() {
        super.connectedCallback();
        this.sizes.observe(this);
    }

    disconnectedCallback() {
        super.disconnectedCallback();
        this.sizes.disconnect();
        if (this.engine) recorderOf(this.engine).drop(this);
        this.wanted = "";
    }

    /** @param {import("../types.js").Frame} frame */
    framed(frame) {
        if (!this.engine || !this.isConnected) return;
        const recorder = recorderOf(this.engine);
        recorder.take(frame);
        const now = performance.now();
        if (now - this.drawn < DRAW_EVERY) return;
        this.drawn = now;
        this.interval = intervalFor(highestOf(frame.machines[0]));
        const wanted = `${this.key} ${this.interval}`;
        if (wanted !== this.wanted) recorder.want(this, [this.key], this.interval);
        this.wanted = wanted;
        const span = this.count * this.interval;
        this.heard = frame.machines.map((machine, i) => {
            const track = recorder.tracks[i];
            const times = track.times();
            const samples = evenly(times, track.column(this.key), this.count, this.interval);
            const filled = times.length === 0 ? 0 : Math.min(1, (times[times.length - 1] - times[0]) / span);
            return { spectrum: samples && spectrumOf(samples, this.interval), strengths: samples && strengths(track, this.key, tonesOf(machine), this.count, this.interval), filled };
        });
    }

    render() {
        const state = this.frame?.machines[0];
        const atlas = this.atlas;
        if (!state || !atlas) return html`<p>${t("spectrum.wait")}</p>`;
        const select = (/** @type {string} */ name, /** @type {string | number} */ now, /** @type {(string | number)[]} */ choices, /** @type {(choice: any) => string} */ say, /** @type {(value: string) => void} */ set) => html`
            <label>${t(name)} <select @change=${(/** @type {Event} */ event) => set(/** @type {HTMLSelectElement} */ (event.target).value)}>
                ${choices.map((choice) => html`<option value=${choice} ?selected=${choice === now}>${say(choice)}</option>`)}</select></label>`;
        const span = this.count * this.interval;
        const filled = this.heard[0]?.filled ?? 0;
        return html`
            <h3>${t("spectrum.title")}</h3>
            <div class="row">
                ${select("spectrum.of", this.key, LISTENED, (key) => nameOf(atlas, key), (key) => (this.key = key))}
                ${select("spectrum.along", this.scale, ["Hz", "pump", "motor"], (scale) => t(`spectrum.scale.${scale}`), (scale) => (this.scale = /** @type {"Hz"} */ (scale)))}
                ${select("spectrum.length", this.count, LENGTHS, (count) => show(count * this.interval, "s", store.gaze.units).text, (count) => (this.count = Number(count)))}
            </div>
            ${this.sheet(state)}
            <p class="soft">${t("spectrum.window", show(span, "s", store.gaze.units).text, marked((1 / span).toFixed(1)), paceWords())}
                ${filled < 1 ? t("spectrum.filling", Math.floor(100 * filled), seconds((span * (1 - filled)) / Math.max(1e-6, this.frame?.pace || store.gaze.pace))) : nothing}
                ${this.heard.length > 1 ? t("graphs.dashed") : nothing}</p>
            ${this.table(state, unitOf(atlas, this.key))}
            <p class="soft">${t("spectrum.turn.about")}</p>`;
    }

    /** Hz on the axis for a place on it. @param {import("../types.js").MachineState} state */
    perUnit(state) {
        return this.scale === "Hz" ? 1 : Math.max(1e-6, Math.abs(signal(state, `${this.scale}_speed`)) / (2 * Math.PI));
    }

    /** @param {import("../types.js").MachineState} state */
    sheet(state) {
        const highest = highestOf(state);
        const per = this.perUnit(state);
        const unit = unitOf(/** @type {import("../types.js").Atlas} */ (this.atlas), this.key);
        const spectra = this.heard.map((each) => each.spectrum);
        let most = 0;
        for (const spectrum of spectra) spectrum?.amplitudes.forEach((a, i) => { if (spectrum.frequencies[i] <= highest) most = Math.max(most, a); });
        const shownMost = difference(most, unit) * 1.12 || 1;
        const [left, right, top, bottom] = [46, 8, 44, 34];
        const x = (/** @type {number} */ hz) => left + ((this.width - left - right) * hz) / highest;
        const y = (/** @type {number} */ shown) => HEIGHT - bottom - ((HEIGHT - top - bottom) * shown) / shownMost;
        const path = (/** @type {Spectrum} */ spectrum) => {
            let d = "";
            for (let i = 0; i < spectrum.frequencies.length && spectrum.frequencies[i] <= highest; i++) d += `${d ? "L" : "M"}${x(spectrum.frequencies[i]).toFixed(1)} ${y(difference(spectrum.amplitudes[i], unit)).toFixed(1)}`;
            return d;
        };
        /** Where the last number of each shaft stands: those that would write over it are left to the table. @type {Record<string, number>} */
        const last = {};
        const xStep = round(highest / per / Math.max(3, Math.floor(this.width / 90)));
        const yStep = round(shownMost / 4);
        const xs = Array.from({ length: Math.floor(highest / per / xStep) + 1 }, (_, i) => i * xStep);
        const ys = Array.from({ length: Math.floor(shownMost / yStep) + 1 }, (_, i) => i * yStep);
        return html`<svg class="sheet" viewBox=${`0 0 ${this.width} ${HEIGHT}`} preserveAspectRatio="none" role="img" aria-label=${t("spectrum.title")}>
            ${ys.map((v) => svg`<path class="grid" d=${`M${left} ${y(v)}H${this.width - right}`} /><text x=${left - 5} y=${y(v) + 4} text-anchor="end">${plain(v)}</text>`)}
            ${xs.map((v) => svg`<path class="grid" d=${`M${x(v * per)} ${top}V${HEIGHT - bottom}`} /><text x=${x(v * per)} y=${HEIGHT - bottom + 15} text-anchor="middle">${plain(v)}</text>`)}
            <text x=${this.width - right} y=${HEIGHT - 4} text-anchor="end">${this.scale === "Hz" ? "Hz" : t(`spectrum.scale.${this.scale}`)}</text>
            <text x="4" y="14">${shownAs(unit, store.gaze.units).unit}</text>
            ${tonesOf(state).filter((tone) => tone.frequency > 0 && tone.frequency <= highest).map((tone) => svg`
                <path class=${`mark ${tone.unit}`} d=${`M${x(tone.frequency)} ${top - 36 + ROW[tone.unit]}V${HEIGHT - bottom}`} />
                <g class=${`tip ${tone.unit}`} transform=${`translate(${x(tone.frequency)} ${top - 36 + ROW[tone.unit]})`}>${shape(tone.unit)}</g>
                ${x(tone.frequency) - (last[tone.unit] ?? -99) < 30 ? null : svg`<text x=${(last[tone.unit] = x(tone.frequency)) + 8} y=${top - 32 + ROW[tone.unit]}>${tone.order}</text>`}`)}
            ${spectra.map((spectrum, i) => (spectrum ? svg`<path class=${i > 0 ? "line sound" : "line"} d=${path(spectrum)} />` : null)).reverse()}
            <path class="axis" fill="none" d=${`M${left} ${top}V${HEIGHT - bottom}H${this.width - right}`} />
        </svg>`;
    }

    /** @param {import("../types.js").MachineState} state @param {string} unit */
    table(state, unit) {
        const tones = tonesOf(state);
        const shown = (/** @type {number | undefined} */ a) => (a === undefined ? "–" : amplitude(a, unit));
        return html`<table><thead><tr><th>${t("spectrum.tone")}</th><th class="num">${t("spectrum.order")}</th><th class="num">Hz</th><th class="num">${t(this.heard.length > 1 ? "ledger.shown" : "spectrum.amplitude")}</th>
            ${this.heard.length > 1 ? html`<th class="num">${t("ledger.sound")}</th>` : nothing}</tr></thead>
            <tbody>${tones.map((tone, i) => html`<tr><th scope="row"><svg viewBox="-7 -7 14 14" aria-hidden="true">${svg`<g class=${`tip ${tone.unit}`}>${shape(tone.unit)}</g>`}</svg> ${tone.harmonic === 0 ? t(`spectrum.${tone.unit}.turn`) : t(`spectrum.${tone.unit}`, tone.harmonic)}</th>
                <td class="num">${tone.order}</td><td class="num">${marked(tone.frequency.toFixed(tone.frequency < 100 ? 1 : 0))}</td>
                ${this.heard.map((each) => html`<td class="num">${shown(each.strengths?.[i])}</td>`)}</tr>`)}</tbody></table>`;
    }
}

/** Rows of the marks above the sheet, so that pump and motor do not write over each other. */
const ROW = { pump: 0, motor: 20 };

/** Pump marks are triangles, motor marks squares. @param {"pump" | "motor"} unit */
const shape = (unit) => (unit === "pump" ? svg`<path d="M-5.5 -5H5.5L0 5Z" />` : svg`<rect x="-4.5" y="-4.5" width="9" height="9" />`);

/** A difference in shown units: without the offset of gauge pressures and temperatures. @param {number} value @param {string} unit */
function difference(value, unit) {
    const { out } = shownAs(unit, store.gaze.units);
    return out(value) - out(0);
}

/** @param {number} value @param {string} unit */
const amplitude = (value, unit) => show(value + shownAs(unit, store.gaze.units).back(0), unit, store.gaze.units).text;

/** A round number near a step. @param {number} step */
function round(step) {
    const decade = 10 ** Math.floor(Math.log10(step || 1));
    return ([1, 2, 2.5, 5, 10].find((each) => each * decade >= step * 0.999) ?? 10) * decade;
}

const plain = (/** @type {number} */ value) => marked(String(Number(value.toPrecision(4))));
const seconds = (/** @type {number} */ s) => marked(s < 10 ? s.toFixed(1) : s.toFixed(0));

/** The pace in words: samples are of the machine's own time, whatever the pace. */
const paceWords = () => (store.gaze.pace >= 1 ? "1 : 1" : `1 : ${plain(1 / store.gaze.pace)}`);

customElements.define("swash-spectrum", SwashSpectrum);
