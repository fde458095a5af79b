/** What the colours mean, in the user's unit; the stripes below each colour count the same without it. */
import { LitElement, css, html } from "lit";
import { BANDS, cssAt } from "../core/ramp.js";
import { store } from "../core/store.js";
import { styled } from "../core/styled.js";
import { show } from "../core/units.js";
import { t } from "../core/words.js";
import { watchGaze } from "./watching.js";

const ATMOSPHERE = 101_325; // Pa
const BAR = 1e5; // Pa

export class SwashLegend extends LitElement {
    static styles = css`
        :host { display: block; font-size: var(--size-1); line-height: 1.2; color: var(--ink); }
        .bands { display: grid; grid-auto-flow: column; grid-auto-columns: minmax(0, 1fr); padding: 0 0.4em 0 1.4em; }
        .colour { height: 0.8em; border: solid var(--ink); border-width: 1px 1px 1px 0; }
        .band:first-child .colour { border-left-width: 1px; }
        .count { height: 0.35em; display: flex; gap: 2px; justify-content: center; margin-top: 1px; }
        .count i { width: 2px; background: var(--ink); }
        .from { display: block; transform: translateX(-50%); text-align: center; font-variant-numeric: tabular-nums; white-space: nowrap; }
    `;

    constructor() {
        super();
        watchGaze(this, ["units"]);
    }

    render() {
        const marks = BANDS.slice(0, -1);
        return html`<div class="bands" role="img" aria-label=${t("legend.title")}>${marks.map((band, place) => html`<span class="band">
            <span class="colour" ${styled({ display: "block", backgroundColor: cssAt((band.place + BANDS[place + 1].place) / 2) })}></span>
            <span class="count">${Array.from({ length: place }, () => html`<i></i>`)}</span>
            <span class="from">${place === 0 ? show(ATMOSPHERE, "Pa", store.gaze.units).unit : this.number(band.from)}</span>
        </span>`)}</div>`;
    }

    /** @param {number} bar gauge */
    number(bar) {
        const { number } = show(ATMOSPHERE + bar * BAR, "Pa", store.gaze.units);
        return store.gaze.units === "si" ? number.replace(/\.0+$/, "") : number;
    }
}

customElements.define("swash-legend", SwashLegend);
