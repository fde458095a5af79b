/** What a hand can do to the machine: plate, engine, ground, oil. */
import { LitElement, css, html, nothing } from "lit";
import { signal, parameter } from "../core/live.js";
import { store } from "../core/store.js";
import { marked } from "../core/units.js";
import { t, tOr } from "../core/words.js";
import { dialOf } from "./dial.js";
import { dialStyle } from "./dial-style.js";
import "./lever.js";
import { OILS } from "./oils.js";
import { controls } from "./styles.js";
import { watchGaze } from "./watching.js";

const CELSIUS = 273.15;
const DEGREE = Math.PI / 180;
/** The lever's dashed line follows the plate this often. */
const LEVER_EVERY = 80; // ms

export class SwashControls extends LitElement {
    static properties = { atlas: { attribute: false }, engine: { attribute: false } };
    static styles = [controls, dialStyle, css`
        fieldset { border: 0; border-top: 1px solid var(--hair); margin: var(--gap) 0 0; padding: calc(var(--gap) / 2) 0 0; }
        legend { font-weight: 600; padding: 0 0.4em 0 0; }
        fieldset .row { margin: 0 0 calc(var(--gap) / 2); }
        .caution { border: 1px solid var(--warn); border-left-width: 6px; padding: 0.3em 0.6em; margin: 0 0 var(--gap); }
        label.field { display: grid; gap: 2px; margin: 0 0 calc(var(--gap) / 2); }
    `];

    constructor() {
        super();
        /** @type {import("../types.js").Atlas | null} */
        this.atlas = null;
        /** @type {import("../engine/engine.js").Engine | null} */
        this.engine = null;
        /** How far the arm stood before it went to neutral. */
        this.far = 0.6;
        this.at = 0;
        store.addEventListener("bench", () => this.requestUpdate());
        watchGaze(this, ["units"]);
    }

    /** @param {import("../types.js").Frame} frame */
    follow(frame) {
        if (!this.atlas || performance.now() - this.at < LEVER_EVERY) return;
        this.at = performance.now();
        const machine = frame.machines[0];
        const lever = /** @type {import("./lever.js").SwashLever | null} */ (this.renderRoot.querySelector("swash-lever"));
        if (machine && lever) {
            lever.reached = signal(machine, "swash_angle") / parameter(machine, this.atlas.parameters.keys, "pump.fullSwashAngle");
        }
    }

    render() {
        const { hand } = store.bench;
        return html`
            <h2 class="unseen">${t("place.hand")}</h2>
            <swash-lever .stroke=${hand.stroke} @stroke=${(/** @type {CustomEvent<number>} */ event) => this.set({ stroke: event.detail }, "hand.stroke")}></swash-lever>
            ${this.dial("stroke", -1, 1, "share")}
            <div class="row even" role="group" aria-label=${t("hand.direction")}>
                ${[-1, 0, 1].map((way) => html`<button aria-pressed=${Math.sign(hand.stroke) === way} @click=${() => this.drive(way)}>
                    ${t(["hand.reverse", "hand.neutral", "hand.forward"][way + 1])}</button>`)}
            </div>
            <fieldset><legend>${t("hand.engine")}</legend>
                <div class="row" role="group" aria-label=${t("hand.engine")}>${["runs", "off"].map((key) => html`
                    <button aria-pressed=${hand.engine === key} @click=${() => this.turnKey(key)}>${t(`hand.engine.${key}`)}</button>`)}</div>
                ${this.dial("throttle", 0, 1, "share")}</fieldset>
            <fieldset><legend>${t("hand.ground")}</legend>
                <label class="field">${t("hand.footing")}
                    <select .value=${hand.footing} @change=${(/** @type {Event} */ event) => this.set({ footing: textOf(event) }, "hand.footing")}>
                        ${["ground", "lifted", "held", "pushed"].map((key) => html`<option value=${key} ?selected=${hand.footing === key}>${t(`hand.footing.${key}`)}</option>`)}
                    </select></label>
                ${hand.footing === "lifted" || hand.footing === "pushed" ? html`<p class="caution">${t(`hand.footing.${hand.footing}.caution`)}</p>` : nothing}
                ${hand.footing === "pushed" ? this.dial("groundSpeed", -2, 2, "m/s") : nothing}
                ${this.dial("slope", -20 * DEGREE, 20 * DEGREE, "slope", t("hand.slope.percent", marked((Math.tan(hand.slope) * 100).toFixed(1))))}
                ${this.dial("pull", -2000, 4000, "N")}
            </fieldset>
            <fieldset><legend>${t("hand.oil")}</legend>
                ${this.dial("oilTemperature", CELSIUS - 20, CELSIUS + 120, "K")}
                <label class="field">${t("hand.grade")}
                    <select @change=${(/** @type {Event} */ event) => this.grade(textOf(event))}>
                        <option value="">${t("hand.grade.own")}</option>
                        ${OILS.map((oil) => html`<option value=${oil.name} ?selected=${store.bench.changes["oil.viscosity40"] === oil.cool && store.bench.changes["oil.viscosity100"] === oil.warm}>${oil.name}</option>`)}
                    </select></label>
                ${this.air()}
            </fieldset>
            <fieldset><legend>${t("hand.hold")}</legend>
                ${this.dial("brake", 0, 1, "share")}
                ${this.dial("bypass", 0, 1, "share")}
                ${hand.bypass > 0 ? html`<p class="caution">${t("hand.bypass.caution")}</p>` : nothing}
            </fieldset>
            <fieldset><legend>${t("hand.duties")}</legend>
                <div class="row">${this.atlas?.duties.keys.map((key, place) => html`
                    <button title=${tOr(`duty.${key}.about`, this.atlas?.duties.meanings[place] ?? "")} @click=${() => this.engine?.duty(key)}>${tOr(`duty.${key}`, key)}</button>`)}
                    <button @click=${() => this.engine?.restart("rest")}>${t("hand.rest")}</button>
                </div>
                <p class="soft">${t("hand.duties.note")}</p>
            </fieldset>`;
    }

    /** @param {keyof import("../types.js").Hand} key @param {number} least @param {number} most @param {string} unit @param {string} [note] */
    dial(key, least, most, unit, note) {
        return dialOf({
            id: key, words: t(`hand.${key}`), value: /** @type {number} */ (store.bench.hand[key]), least, most, unit, note,
            system: store.gaze.units, turned: (value) => this.set({ [key]: value }, `hand.${key}`),
        });
    }

    /** Free air belongs to the oil of the drive, so to its parameters. */
    air() {
        const place = this.atlas?.parameters.keys.indexOf("oil.freeAir") ?? -1;
        if (!this.atlas || place < 0) return nothing;
        const usual = this.engine?.frame?.machines[0]?.parameters[place] ?? 0.005;
        return dialOf({
            id: "air", words: t("hand.air"), value: store.bench.changes["oil.freeAir"] ?? usual, least: 0, most: 0.2, unit: "share",
            system: store.gaze.units, turned: (value) => store.setBench({ changes: { ...store.bench.changes, "oil.freeAir": value } }, t("hand.air")),
        });
    }

    /** @param {string} name */
    grade(name) {
        const { "oil.viscosity40": _cool, "oil.viscosity100": _warm, ...rest } = store.bench.changes;
        const oil = OILS.find((each) => each.name === name);
        store.setBench({ changes: oil ? { ...rest, "oil.viscosity40": oil.cool, "oil.viscosity100": oil.warm } : rest }, t("hand.grade"));
    }

    /** A stalled engine starts again, the machine at rest. @param {string} key */
    turnKey(key) {
        const machine = this.engine?.frame?.machines[0];
        if (key === "runs" && store.bench.hand.engine === "runs" && machine && signal(machine, "engine_speed") === 0) this.engine?.restart("rest");
        else this.set({ engine: key }, "hand.engine");
    }

    /** As far as before, the other way; from neutral as far as is usual. @param {number} way */
    drive(way) {
        const { stroke } = store.bench.hand;
        if (stroke !== 0) this.far = Math.abs(stroke);
        this.set({ stroke: way * this.far }, ["hand.reverse", "hand.neutral", "hand.forward"][way + 1]);
    }

    /** @param {any} patch @param {string} label */
    set(patch, label) {
        store.setBench({ hand: patch }, t(label));
    }
}

/** @param {Event} event @returns {any} */
const textOf = (event) => /** @type {HTMLSelectElement} */ (event.target).value;

customElements.define("swash-controls", SwashControls);
