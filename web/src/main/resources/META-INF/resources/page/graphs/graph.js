/**
 * One graph: quantities over time, over one turn of a shaft, or over another quantity; live until it is frozen.
 */
import { LitElement, css, html, nothing, svg } from "lit";
import { show, shownAs } from "../core/units.js";
import { store } from "../core/store.js";
import { t } from "../core/words.js";
import { joined, lastStretch, lastTurn, overAnother } from "./curves.js";
import { look, plotLook } from "./look.js";
import "./picker.js";
import { Plot, TONES } from "./plot.js";
import { nameOf, quantitiesOf, unitOf } from "./quantities.js";
import { csvOf, pngOf, save } from "./saving.js";

/**
 * @typedef {object} GraphPlan what a graph shows
 * @property {number} id
 * @property {string} x "time", "pump_angle", "motor_angle" or a signal
 * @property {string[]} keys
 */

/** Abscissas that are folded onto one turn. */
const TURNS = ["pump_angle", "motor_angle"];
const HEIGHT = 250; // px

export class SwashGraph extends LitElement {
    /** @type {Record<string, object>} */
    static properties = { plan: { attribute: false }, atlas: { attribute: false }, keys: { attribute: false }, frozen: { state: true }, picking: { state: true }, place: { state: true }, last: { state: true } };

    static styles = [look, plotLook, css`
        label select { width: min(15rem, 100%); }
        :host { border-top: 1px solid var(--line); padding: 0.4em 0 0.6em; }
        table { border-collapse: collapse; width: 100%; font-size: var(--size-2); }
        td, th { padding: 0 0.4em 0 0; text-align: left; font-weight: 400; } thead th { color: var(--ink-soft); font-size: var(--size-1); }
        td.num, th.num { text-align: right; }
        td svg { width: 2.2em; height: 0.8em; vertical-align: middle; }
        td button { border: 0; background: none; min-width: 2rem; }
    `];

    constructor() {
        super();
        /** @type {GraphPlan} */
        this.plan = { id: 0, x: "time", keys: [] };
        /** @type {import("../types.js").Atlas | null} */
        this.atlas = null;
        /** @type {readonly string[]} signals of the machine */
        this.keys = [];
        this.frozen = false;
        this.picking = false;
        /** @type {number | null} */
        this.place = null;
        /** @type {Plot | null} */
        this.plot = null;
        this.built = "";
        /** @type {(number | null)[][]} */
        this.table = [];
        this.last = 0;
        this.sizes = new ResizeObserver(() => this.plot?.size());
    }

    disconnectedCallback() {
        super.disconnectedCallback();
        this.plot?.destroy();
        this.plot = null;
        this.built = "";
    }

    /** Brings the curves up to date. @param {import("./recording.js").Track[]} tracks @param {number} machines @param {{ span: number }} how */
    draw(tracks, machines, how) {
        if (this.frozen || !this.atlas || !this.isConnected) return;
        const shown = tracks.slice(0, machines);
        this.build(machines);
        if (!this.plot) return;
        const until = Math.max(...shown.map((track) => track.newest));
        const { x, keys } = this.plan;
        const curves = shown.map((track) => x === "time" ? lastStretch(track, keys, how.span, until)
            : TURNS.includes(x) ? lastTurn(track, keys, /** @type {"pump_angle"} */ (x)) : overAnother(track, keys, x, how.span, until));
        const system = store.gaze.units;
        const out = (/** @type {string} */ unit) => shownAs(unit, system).out;
        const xOut = out(this.xUnit());
        const yOuts = keys.map((key) => out(unitOf(/** @type {import("../types.js").Atlas} */ (this.atlas), key)));
        const seen = curves.map((curve) => ({ x: curve.x.map(xOut), ys: curve.ys.map((ys, i) => ys.map(yOuts[i])) }));
        this.table = joined(seen);
        if (this.wander()) this.plot.wandering = { x: this.table[0].map(Number), ys: [] };
        if (this.wander()) this.wanderOf(seen);
        this.plot.set(this.table, false);
        this.last++;
    }

    /** Curves that wander are drawn from the samples as they came, each over its own machine's abscissa. @param {{ x: Float64Array, ys: Float64Array[] }[]} seen */
    wanderOf(seen) {
        if (!this.plot) return;
        const length = seen.reduce((sum, curve) => sum + curve.x.length, 0);
        const x = new Float64Array(length);
        const ys = seen.flatMap((curve) => curve.ys.map(() => new Float64Array(length).fill(NaN)));
        let from = 0;
        let column = 0;
        for (const curve of seen) {
            x.set(curve.x, from);
            for (const values of curve.ys) ys[column++].set(values, from);
            from += curve.x.length;
        }
        this.plot.wandering = { x, ys };
    }

    xUnit() {
        return this.plan.x === "time" ? "s" : TURNS.includes(this.plan.x) ? "rad" : unitOf(/** @type {import("../types.js").Atlas} */ (this.atlas), this.plan.x);
    }

    wander() {
        return this.plan.x !== "time" && !TURNS.includes(this.plan.x);
    }

    /** A plot for what is to be drawn now, when it is another. @param {number} machines */
    build(machines) {
        const host = /** @type {HTMLElement | null} */ (this.renderRoot.querySelector(".plot"));
        if (!host || !this.atlas || host.clientWidth === 0) return;
        const { x, keys } = this.plan;
        const wanted = JSON.stringify([x, keys, machines, store.gaze.units]);
        if (wanted === this.built) return;
        this.plot?.destroy();
        this.plot = null;
        this.built = wanted;
        if (keys.length === 0) return;
        const atlas = this.atlas;
        const curves = Array.from({ length: machines }, (_, machine) => keys.map((key, tone) => ({ key, unit: unitOf(atlas, key), tone, sound: machine > 0 }))).flat();
        this.plot = new Plot(host, {
            x, xUnit: this.xUnit(), turn: TURNS.includes(x), wander: this.wander(), curves, height: HEIGHT,
            onCursor: (place) => (this.place = place), onZoom: () => (this.frozen = true),
        });
        this.sizes.disconnect();
        this.sizes.observe(host);
    }

    /** Arrows move the cursor along the curves. @param {KeyboardEvent} event */
    keyed(event) {
        const step = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
        const last = (this.table[0]?.length ?? 0) - 1;
        if (!step || last < 0 || !this.plot) return;
        event.preventDefault();
        this.frozen = true;
        const stride = Math.max(1, Math.round(last / 100));
        this.place = Math.min(last, Math.max(0, (this.place ?? last) + step * stride));
        this.plot.point(Number(this.table[0][this.place]));
    }

    /** @param {Partial<GraphPlan>} change */
    change(change) {
        this.frozen = false;
        this.dispatchEvent(new CustomEvent("plan", { detail: { ...this.plan, ...change } }));
    }

    /** @param {string} key @param {boolean} on */
    tick(key, on) {
        this.change({ keys: on ? [...this.plan.keys, key] : this.plan.keys.filter((each) => each !== key) });
    }

    /** @param {number} zoom @param {number} move */
    look(zoom, move) {
        this.frozen = true;
        this.plot?.look(zoom, move);
    }

    /** The title of the graph, in words. */
    caption() {
        if (!this.atlas) return "";
        const atlas = this.atlas;
        return t("graphs.over", this.plan.keys.map((key) => nameOf(atlas, key)).join(", "), this.xName());
    }

    xName() {
        const { x } = this.plan;
        return x === "time" ? t("graphs.time") : TURNS.includes(x) ? t(`graphs.${x}`) : nameOf(/** @type {import("../types.js").Atlas} */ (this.atlas), x);
    }

    csv() {
        const atlas = /** @type {import("../types.js").Atlas} */ (this.atlas);
        const head = (/** @type {string} */ name, /** @type {string} */ unit) => `${name} (${shownAs(unit, store.gaze.units).unit || "1"})`;
        const machines = Math.round((this.table.length - 1) / Math.max(1, this.plan.keys.length));
        const heads = Array.from({ length: machines }, (_, i) => this.plan.keys.map((key) => head(nameOf(atlas, key) + (i > 0 ? ` – ${t("ledger.sound")}` : ""), unitOf(atlas, key)))).flat();
        save(new Blob([csvOf([head(this.xName(), this.xUnit()), ...heads], this.table)], { type: "text/csv" }), "swashlight-graph.csv");
    }

    async png() {
        const canvas = this.renderRoot.querySelector("canvas");
        const style = getComputedStyle(this);
        const blob = canvas && (await pngOf(canvas, this.caption(), { ground: style.getPropertyValue("--paper"), ink: style.getPropertyValue("--ink") }));
        if (blob) save(blob, "swashlight-graph.png");
    }

    render() {
        const { atlas, plan } = this;
        if (!atlas) return nothing;
        const button = (/** @type {string} */ key, /** @type {string} */ sign, /** @type {() => void} */ act) => html`<button title=${t(key)} aria-label=${t(key)} @click=${act}>${sign}</button>`;
        const options = quantitiesOf(atlas, this.keys.filter((key) => !TURNS.includes(key) && (key === plan.x || !key.includes("_chamber_"))));
        return html`
            <div class="plot" tabindex="0" role="group" aria-label=${`${this.caption()}. ${t("graphs.keys")}`} @keydown=${(/** @type {KeyboardEvent} */ event) => this.keyed(event)}></div>
            ${plan.keys.length === 0 ? html`<p>${t("graphs.empty")}</p>` : this.legend(atlas)}
            <div class="row">
                <label>${t("graphs.against")} <select @change=${(/** @type {Event} */ event) => this.change({ x: /** @type {HTMLSelectElement} */ (event.target).value })}>
                    ${["time", ...TURNS].map((key) => html`<option value=${key} ?selected=${plan.x === key}>${t(`graphs.${key}`)}</option>`)}
                    <optgroup label=${t("graphs.another")}>${options.map((each) => html`<option value=${each.key} ?selected=${plan.x === each.key}>${each.name}</option>`)}</optgroup>
                </select></label>
                <button aria-expanded=${this.picking} @click=${() => (this.picking = !this.picking)}>${t("graphs.choose")}</button>
            </div>
            ${this.picking ? html`<swash-quantities .quantities=${quantitiesOf(atlas, this.keys)} .chosen=${plan.keys}
                @choose=${(/** @type {CustomEvent} */ event) => this.tick(event.detail.key, event.detail.on)}></swash-quantities>` : nothing}
            <div class="row">
                <button aria-pressed=${this.frozen} @click=${() => (this.frozen = !this.frozen)}>${t(this.frozen ? "graphs.goOn" : "graphs.freeze")}</button>
                ${button("graphs.closer", "+", () => this.look(0.5, 0))}${button("graphs.wider", "−", () => this.look(2, 0))}
                ${button("graphs.earlier", "←", () => this.look(1, -0.25))}${button("graphs.later", "→", () => this.look(1, 0.25))}
                <button @click=${() => this.png()}>${t("graphs.png")}</button><button @click=${() => this.csv()}>${t("graphs.csv")}</button>
                ${button("graphs.remove", "×", () => this.dispatchEvent(new CustomEvent("remove")))}
            </div>`;
    }

    /** @param {import("../types.js").Atlas} atlas */
    legend(atlas) {
        const count = this.plan.keys.length;
        const machines = Math.max(1, Math.round((this.table.length - 1) / Math.max(1, count)));
        const x = this.table[0] ?? [];
        const at = this.place ?? x.length - 1;
        const value = (/** @type {number} */ column, /** @type {string} */ unit) => {
            const shown = nearest(this.table[column], at);
            return shown === null ? "–" : show(shownAs(unit, store.gaze.units).back(shown), unit, store.gaze.units).text;
        };
        const xUnit = this.xUnit();
        const xShown = x[at] === undefined || x[at] === null ? "–" : show(shownAs(xUnit, store.gaze.units).back(Number(x[at])), xUnit, store.gaze.units).text;
        return html`<table>
            <thead><tr><td></td><th>${this.place === null ? t("graphs.newest") : t("graphs.at", xShown)}</th>${machines > 1 ? html`<th class="num">${t("ledger.shown")}</th>` : html`<td></td>`}${machines > 1 ? html`<th class="num">${t("ledger.sound")}</th>` : nothing}<td></td></tr></thead>
            <tbody>${this.plan.keys.map((key, i) => html`<tr>
                <td>${swatch(i)}</td><td>${nameOf(atlas, key)}</td>
                <td class="num">${value(1 + i, unitOf(atlas, key))}</td>${machines > 1 ? html`<td class="num">${value(1 + count + i, unitOf(atlas, key))}</td>` : nothing}
                <td><button aria-label=${t("graphs.drop", nameOf(atlas, key))} @click=${() => this.tick(key, false)}>×</button></td></tr>`)}</tbody></table>
            ${machines > 1 ? html`<p class="soft">${t("graphs.dashed")}</p>` : nothing}`;
    }
}

/** @param {number} tone */
const swatch = (tone) => html`<svg viewBox="0 0 30 10" aria-hidden="true">${svg`<path class="tone-${tone % TONES.length}" d="M0 5L30 5" fill="none" stroke-width="2.5" stroke=${`var(${TONES[tone % TONES.length]})`} />`}</svg>`;

/** The value at a place, or the one before it where another machine's sample stands. @param {(number | null)[] | undefined} column @param {number} at */
function nearest(column, at) {
    for (let i = at; column && i >= 0 && i > at - 8; i--) {
        const value = column[i];
        if (value !== null && value !== undefined) return value;
    }
    return null;
}

customElements.define("swash-graph", SwashGraph);
