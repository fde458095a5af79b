/**
 * What pump and motor sound like: their piston-pass tones at the computed frequencies, as strong as the computed ripple. Silent until it is asked for.
 */
import { css, html, nothing } from "lit";
import { LiveView } from "../circuit/live-view.js";
import { signal } from "../core/live.js";
import { t } from "../core/words.js";
import { look } from "./look.js";
import { recorderOf } from "./recording.js";
import { HARMONICS, highestOf, intervalFor, strengths, tonesOf } from "./tones.js";

const COUNT = 1024; // samples that a strength is taken from
const HEAR_EVERY = 300; // ms
const LOUDEST = 12e5; // Pa: a ripple that sounds as loud as it gets
const GLIDE = 0.08; // s, so that nothing clicks

export class SwashSound extends LiveView {
    /** @type {Record<string, object>} */
    static properties = { engine: { attribute: false }, on: { state: true }, volume: { state: true }, which: { state: true }, pumpOn: { state: true }, motorOn: { state: true }, told: { state: true }, ready: { state: true } };

    static styles = [look, css`
        input[type="range"] { width: min(14rem, 60vw); height: var(--target, 2.25rem); accent-color: var(--accent); }
    `];

    constructor() {
        super();
        /** @type {import("./recording.js").Recording | null} */
        this.engine = null;
        this.on = false;
        this.volume = 0.4;
        /** Which machine is heard. */
        this.which = 0;
        this.pumpOn = true;
        this.motorOn = true;
        this.ready = false;
        this.told = "";
        this.heardAt = 0;
        this.wanted = 0;
        /** @type {AudioContext | null} */
        this.audio = null;
        /** @type {Record<"pump" | "motor", { oscillator: OscillatorNode, gain: GainNode }> | null} */
        this.voices = null;
    }

    disconnectedCallback() {
        super.disconnectedCallback();
        this.silence();
    }

    /** Begins to sound; only ever after a press. */
    listen() {
        this.on = true;
        const audio = new AudioContext();
        const voice = () => {
            const oscillator = new OscillatorNode(audio, { frequency: 0 });
            const gain = new GainNode(audio, { gain: 0 });
            oscillator.connect(gain).connect(audio.destination);
            oscillator.start();
            return { oscillator, gain };
        };
        this.audio = audio;
        this.voices = { pump: voice(), motor: voice() };
    }

    silence() {
        this.on = false;
        this.ready = false;
        this.wanted = 0;
        this.audio?.close();
        this.audio = null;
        this.voices = null;
        if (this.engine) recorderOf(this.engine).drop(this);
    }

    /** @param {import("../types.js").Frame} frame */
    framed(frame) {
        if (!this.engine || !this.isConnected) return;
        const which = Math.min(this.which, frame.machines.length - 1);
        const state = frame.machines[which];
        const recorder = recorderOf(this.engine);
        recorder.take(frame);
        const now = performance.now();
        if (now - this.heardAt < HEAR_EVERY) return;
        this.heardAt = now;
        const tones = tonesOf(state).filter((tone) => tone.harmonic > 0);
        this.told = t("sound.tones", hertz(tones[0].frequency), state.pumpPistons, hertz(tones[HARMONICS].frequency), state.motorPistons);
        if (!this.on) return;
        const interval = intervalFor(highestOf(state));
        if (interval !== this.wanted) recorder.want(this, ["pressure_a", "pressure_b"], interval);
        this.wanted = interval;
        const a = strengths(recorder.tracks[which], "pressure_a", tones, COUNT, interval);
        const b = strengths(recorder.tracks[which], "pressure_b", tones, COUNT, interval);
        this.ready = a !== null && b !== null;
        if (!a || !b) return;
        const both = a.map((value, i) => value + b[i]);
        this.sing("pump", tones[0].frequency, both.slice(0, HARMONICS), this.pumpOn && signal(state, "pump_speed") !== 0);
        this.sing("motor", tones[HARMONICS].frequency, both.slice(HARMONICS), this.motorOn && signal(state, "motor_speed") !== 0);
    }

    /** @param {"pump" | "motor"} unit @param {number} frequency Hz @param {number[]} ripple Pa by harmonic @param {boolean} heard */
    sing(unit, frequency, ripple, heard) {
        const { audio, voices } = this;
        if (!audio || !voices) return;
        const { wave, loudness } = timbreOf(ripple);
        const { oscillator, gain } = voices[unit];
        oscillator.setPeriodicWave(audio.createPeriodicWave(new Float32Array(wave.length), wave, { disableNormalization: true }));
        oscillator.frequency.setTargetAtTime(frequency, audio.currentTime, GLIDE);
        gain.gain.setTargetAtTime(heard && frequency > 20 ? loudness * this.volume * this.volume : 0, audio.currentTime, GLIDE);
    }

    render() {
        const box = (/** @type {string} */ key, /** @type {boolean} */ on, /** @type {(on: boolean) => void} */ set) => html`
            <label><input type="checkbox" .checked=${on} @change=${(/** @type {Event} */ event) => set(/** @type {HTMLInputElement} */ (event.target).checked)} />${t(key)}</label>`;
        return html`
            <h3>${t("sound.title")}</h3>
            <div class="row">
                <button aria-pressed=${this.on} @click=${() => (this.on ? this.silence() : this.listen())}>${t(this.on ? "sound.stop" : "sound.listen")}</button>
                <label>${t("sound.volume")} <input type="range" min="0" max="1" step="0.01" .value=${String(this.volume)} @input=${(/** @type {Event} */ event) => (this.volume = Number(/** @type {HTMLInputElement} */ (event.target).value))} /></label>
                ${box("sound.pump", this.pumpOn, (on) => (this.pumpOn = on))}${box("sound.motor", this.motorOn, (on) => (this.motorOn = on))}
            </div>
            ${(this.frame?.machines.length ?? 0) > 1 ? html`<div class="row" role="group" aria-label=${t("sound.which")}>${["ledger.shown", "ledger.sound"].map((key, i) => html`
                <button aria-pressed=${this.which === i} @click=${() => (this.which = i)}>${t(key)}</button>`)}</div>` : nothing}
            <p>${this.told}</p>
            <p class="soft">${this.on && !this.ready ? t("sound.gathering") : ""} ${t("sound.about")}</p>`;
    }
}

/**
 * Timbre and loudness of a ripple: the wave's harmonics have its proportions and a greatest of one; loudness 0 … 1 with its strongest.
 * @param {readonly number[]} ripple Pa, from the first harmonic
 */
export function timbreOf(ripple) {
    const strongest = Math.max(...ripple);
    const wave = Float32Array.from([0, ...ripple.map((value) => (strongest > 0 ? value / strongest : 0))]);
    return { wave, loudness: Math.min(1, strongest / LOUDEST) };
}

const hertz = (/** @type {number} */ f) => `${f.toFixed(0)}\u202fHz`;

customElements.define("swash-sound", SwashSound);
