/**
 * Notes on the picture, laid over the scene: a text where its author put it, and a line to the part it speaks of, which follows the part.
 */
import { LitElement, css, html, svg } from "lit";
import { styled } from "../core/styled.js";

/**
 * @typedef {import("./story.js").Mark} Mark
 * @typedef {{ anchor(part: string): { x: number, y: number, seen: boolean } | null }} Anchors
 */

/** The whole picture in the units of the overlay's drawing. */
const WHOLE = 1000;

export class SwashMarks extends LitElement {
    static properties = { marks: { attribute: false }, scene: { attribute: false } };

    static styles = css`
        :host { position: absolute; inset: 0; pointer-events: none; overflow: hidden; }
        svg { position: absolute; inset: 0; width: 100%; height: 100%; }
        line { stroke: var(--ink); stroke-width: 1.4; vector-effect: non-scaling-stroke; }
        line.under { stroke: var(--paper); stroke-width: 4; }
        p {
            position: absolute; margin: 0; max-width: min(16rem, 40%); padding: 0.2em 0.5em; transform: translate(-50%, -50%);
            background: var(--paper); color: var(--ink); border: 1px solid var(--ink); font-size: var(--size-2); line-height: 1.25;
        }
    `;

    constructor() {
        super();
        /** @type {readonly Mark[]} */
        this.marks = [];
        /** @type {Anchors | null} */
        this.scene = null;
        this.drawnAt = "";
    }

    /** Redraws only when an anchor has moved by a pixel or so. */
    follow() {
        const now = this.marks.map((mark) => this.anchor(mark)).map((at) => (at ? `${at.x.toFixed(3)},${at.y.toFixed(3)}` : "-")).join(" ");
        if (now !== this.drawnAt) {
            this.drawnAt = now;
            this.requestUpdate();
        }
    }

    /** @param {Mark} mark */
    anchor(mark) {
        return mark.part && this.scene ? this.scene.anchor(mark.part) : null;
    }

    render() {
        return html`
            <svg viewBox="0 0 ${WHOLE} ${WHOLE}" preserveAspectRatio="none" aria-hidden="true">
                ${this.marks.map((mark) => this.line(mark))}
            </svg>
            ${this.marks.map((mark) => html`<p ${styled({ left: `${mark.x * 100}%`, top: `${mark.y * 100}%` })}>${mark.text}</p>`)}
        `;
    }

    /** @param {Mark} mark */
    line(mark) {
        const to = this.anchor(mark);
        if (!to) return null;
        const ends = [mark.x, mark.y, to.x, to.y].map((share) => share * WHOLE);
        return svg`
            <line class="under" x1=${ends[0]} y1=${ends[1]} x2=${ends[2]} y2=${ends[3]} />
            <line x1=${ends[0]} y1=${ends[1]} x2=${ends[2]} y2=${ends[3]} />`;
    }
}

customElements.define("swash-marks", SwashMarks);
