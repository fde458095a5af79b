/**
 * What is wrong at this moment, by shape and word, over the picture's corner: oil missing, blocks lifting, belt and wheels slipping, shafts
 * stalled, relief valves open. What comes and goes with every piston stays long enough to be read.
 */
import { LitElement, css, html, nothing } from "lit";
import { t, tOr } from "../core/words.js";

/** Valves that open as they should are no news. */
const USUAL = new Set(["check_a_open", "check_b_open"]);
/** A notice stays this long after its event has ended. */
const LINGER = 1500; // ms

export class SwashNotices extends LitElement {
    static properties = { atlas: { attribute: false }, now: { state: true } };
    static styles = css`
        :host { display: block; pointer-events: none; }
        ul { list-style: none; margin: 0; padding: 0; display: grid; gap: 2px; justify-items: end; }
        li { background: var(--panel); color: var(--ink); border: 1px solid var(--warn); border-left-width: 5px; padding: 0.1em 0.5em; font-size: var(--size-2); }
        span { color: var(--warn); }
    `;

    constructor() {
        super();
        /** @type {import("../types.js").Atlas | null} */
        this.atlas = null;
        /** Kinds of event with the time until which each is shown. @type {Map<string, number>} */
        this.until = new Map();
        this.now = "";
    }

    /** @param {import("../types.js").Frame} frame */
    follow(frame) {
        const time = performance.now();
        for (const key of frame.machines[0]?.events ?? []) if (!USUAL.has(key)) this.until.set(key, time + LINGER);
        for (const [key, until] of this.until) if (until < time) this.until.delete(key);
        this.now = [...this.until.keys()].sort().join(" ");
    }

    render() {
        if (this.now === "" || !this.atlas) return nothing;
        const { keys, meanings } = this.atlas.events;
        return html`<ul role="status" aria-label=${t("page.now")}>${this.now.split(" ").map((key) => html`
            <li><span aria-hidden="true">▲</span> ${tOr(`notice.${key}`, meanings[keys.indexOf(key)] ?? key)}</li>`)}</ul>`;
    }
}

customElements.define("swash-notices", SwashNotices);
