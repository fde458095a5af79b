/**
 * What matters at a glance, beside the legend: both sides' pressure and the speed over ground, of the drive shown and of the sound one. The
 * same width whatever the numbers, so that nothing moves but the digits.
 */
import { LitElement, css, html, nothing } from "lit";
import { signal } from "../core/live.js";
import { cssOf } from "../core/ramp.js";
import { store } from "../core/store.js";
import { styled } from "../core/styled.js";
import { show } from "../core/units.js";
import { t } from "../core/words.js";
import { watchGaze } from "./watching.js";

/** Digits that change faster than this cannot be read. */
const EVERY = 250; // ms

const TOLD = /** @type {const} */ ([["pressure_a", "Pa"], ["pressure_b", "Pa"], ["ground_speed", "m/s"]]);

export class SwashReadout extends LitElement {
    static properties = { frame: { attribute: false } };
    static styles = css`
        :host { display: block; color: var(--ink); font-size: var(--size-2); }
        dl { display: flex; gap: var(--gap); margin: 0; }
        div { display: grid; grid-template-columns: auto auto; align-items: baseline; gap: 0 0.35em; }
        dt { color: var(--ink-soft); display: flex; align-items: center; gap: 0.25em; }
        dt i { width: 0.8em; height: 0.8em; border: 1px solid var(--ink); }
        dd { margin: 0; min-width: 4.6em; text-align: right; font-weight: 600; font-variant-numeric: tabular-nums; white-space: nowrap; }
        .sound { grid-column: 1 / -1; font-weight: 400; font-size: var(--size-1); color: var(--ink-soft); }
    `;

    constructor() {
        super();
        /** @type {import("../types.js").Frame | null} */
        this.frame = null;
        this.at = 0;
        watchGaze(this, ["units"]);
    }

    /** @param {import("../types.js").Frame} frame */
    follow(frame) {
        if (performance.now() - this.at < EVERY) return;
        this.at = performance.now();
        this.frame = frame;
    }

    render() {
        const [shown, sound] = this.frame?.machines ?? [];
        const names = ["A", "B", t("page.now.speed")];
        return html`<dl aria-label=${t("page.now")}>${TOLD.map(([key, unit], place) => {
            const value = shown ? signal(shown, key) : NaN;
            return html`<div>
                <dt>${unit === "Pa" && shown ? html`<i ${styled({ backgroundColor: cssOf(value) })}></i>` : nothing}${names[place]}</dt>
                <dd>${show(value, unit, store.gaze.units).text}</dd>
                ${sound ? html`<dd class="sound">${t("page.now.sound", show(signal(sound, key), unit, store.gaze.units).text)}</dd>` : nothing}
            </div>`;
        })}</dl>`;
    }
}

customElements.define("swash-readout", SwashReadout);
