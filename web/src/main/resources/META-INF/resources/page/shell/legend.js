/** What the colours mean, in the user's unit; the pattern beside each says the same without colour. */
import { LitElement, css, html, svg } from "lit";
import { BANDS, cssAt } from "../core/ramp.js";
import { store } from "../core/store.js";
import { show } from "../core/units.js";
import { t } from "../core/words.js";

const ATMOSPHERE = 101_325; // Pa
const BAR = 1e5; // Pa

export class SwashLegend extends LitElement {
    static styles = css`
        :host { display: block; font-size: var(--size-1); color: var(--ink); }
        svg { display: block; width: 100%; height: auto; }
        text { fill: var(--ink); font: 9px system-ui, sans-serif; text-anchor: middle; }
        rect { stroke: var(--ink); stroke-width: 0.5; }
        line { stroke: var(--paper); stroke-width: 1; mix-blend-mode: difference; }
    `;

    constructor() {
        super();
        store.addEventListener("gaze", () => this.requestUpdate());
    }

    render() {
        const wide = 300 / (BANDS.length - 1);
        const marks = BANDS.slice(0, -1);
        return html`<svg viewBox="0 0 304 30" role="img" aria-label=${t("legend.title")}>
            ${marks.map((band, place) => svg`
                <rect x=${2 + place * wide} y="1" width=${wide} height="14" fill=${cssAt((band.place + BANDS[place + 1].place) / 2)} />
                ${Array.from({ length: place }, (_, stripe) => svg`<line x1=${2 + place * wide + ((stripe + 1) * wide) / (place + 1)} y1="10" x2=${2 + place * wide + ((stripe + 1) * wide) / (place + 1)} y2="15" />`)}
                ${place === 0 ? null : svg`<text x=${2 + place * wide} y="26">${this.number(band.from)}</text>`}`)}
            <text x="12" y="26">${show(ATMOSPHERE, "Pa", store.gaze.units).unit}</text>
        </svg>`;
    }

    /** @param {number} bar gauge */
    number(bar) {
        const pascal = ATMOSPHERE + bar * BAR;
        const { number } = show(pascal, "Pa", store.gaze.units);
        return store.gaze.units === "si" ? number.replace(/\.0+$/, "") : String(Math.round(Number(number.replace("\u2212", "-")))).replace("-", "\u2212");
    }
}

customElements.define("swash-legend", SwashLegend);
