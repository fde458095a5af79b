/**
 * The plate's arm as a lever to drag: from full reverse over neutral to full forward. A slider for the keyboard lies below it; both say how
 * far the arm is asked to go, and the drawing also shows where the plate really is.
 */
import { LitElement, css, html, svg } from "lit";
import { t, wording } from "../core/words.js";

const REACH = 62; // degrees the lever swings each way
const LENGTH = 74;
/** Neutral catches the hand: nobody sets it to the last per cent while dragging. */
const CATCH = 0.04;

export class SwashLever extends LitElement {
    static properties = { stroke: { type: Number }, reached: { type: Number } };

    static styles = css`
        :host { display: block; }
        svg { display: block; width: 100%; max-height: 8.5rem; touch-action: none; cursor: grab; user-select: none; }
        svg:active { cursor: grabbing; }
        path { fill: none; stroke: var(--line); stroke-width: 1.5; }
        .tick { stroke: var(--ink-soft); stroke-width: 1.5; }
        .arm { stroke: var(--ink); stroke-width: 5; stroke-linecap: round; }
        .real { stroke: var(--accent); stroke-width: 2; stroke-dasharray: 4 3; }
        circle { fill: var(--accent); stroke: var(--paper); stroke-width: 2; }
        text { fill: var(--ink); font: 600 10px system-ui, sans-serif; text-anchor: middle; }
        .left { text-anchor: start; }
        .right { text-anchor: end; }
    `;

    constructor() {
        super();
        this.stroke = 0;
        /** Share of full travel at which the plate is. */
        this.reached = NaN;
        this.reword = () => this.requestUpdate();
    }

    connectedCallback() {
        super.connectedCallback();
        wording.addEventListener("language", this.reword);
    }

    disconnectedCallback() {
        super.disconnectedCallback();
        wording.removeEventListener("language", this.reword);
    }

    render() {
        const [x, y] = end(this.stroke, LENGTH);
        const real = Number.isFinite(this.reached) ? end(this.reached, LENGTH + 10) : null;
        return html`<svg viewBox="0 0 200 112" aria-hidden="true" @pointerdown=${this.grip} @pointermove=${this.drag}>
            <path d=${arc()} />
            ${[-1, -0.5, 0, 0.5, 1].map((at) => {
                const [ax, ay] = end(at, LENGTH + 4);
                const [bx, by] = end(at, LENGTH + 12);
                return svg`<line class="tick" x1=${ax} y1=${ay} x2=${bx} y2=${by} />`;
            })}
            ${real ? svg`<line class="real" x1="100" y1="100" x2=${real[0]} y2=${real[1]} />` : null}
            <line class="arm" x1="100" y1="100" x2=${x} y2=${y} />
            <circle cx=${x} cy=${y} r="9" />
            <text class="left" x="4" y="100">${t("hand.reverse")}</text><text x="100" y="10">${t("hand.neutral")}</text><text class="right" x="196" y="100">${t("hand.forward")}</text>
        </svg>`;
    }

    /** @param {PointerEvent} event */
    grip(event) {
        /** @type {Element} */ (event.currentTarget).setPointerCapture(event.pointerId);
        this.pull(event);
    }

    /** @param {PointerEvent} event */
    drag(event) {
        if (event.buttons > 0) this.pull(event);
    }

    /** @param {PointerEvent} event */
    pull(event) {
        const box = /** @type {Element} */ (event.currentTarget).getBoundingClientRect();
        const scale = Math.min(box.width / 200, box.height / 112);
        const x = (event.clientX - box.left - box.width / 2) / scale;
        const y = 100 - (event.clientY - box.top - (box.height - 112 * scale) / 2) / scale;
        const asked = Math.max(-1, Math.min(1, (Math.atan2(x, Math.max(1, y)) * 180) / Math.PI / REACH));
        this.dispatchEvent(new CustomEvent("stroke", { detail: Math.abs(asked) < CATCH ? 0 : Math.round(asked * 100) / 100 }));
    }
}

/** @param {number} stroke @param {number} length */
function end(stroke, length) {
    const angle = (stroke * REACH * Math.PI) / 180;
    return [100 + length * Math.sin(angle), 100 - length * Math.cos(angle)];
}

function arc() {
    const [x1, y1] = end(-1, LENGTH + 4);
    const [x2, y2] = end(1, LENGTH + 4);
    return `M${x1} ${y1}A${LENGTH + 4} ${LENGTH + 4} 0 0 1 ${x2} ${y2}`;
}

customElements.define("swash-lever", SwashLever);
