/**
 * <swash-scene>: the drive in three dimensions. Fetches three.js once it is needed, so that the page's controls are there first; says in
 * words when there is no WebGL, and the rest of the page goes on without it.
 */
import { LitElement, css, html, nothing } from "lit";
import { parts } from "../core/parts.js";
import { store } from "../core/store.js";
import { styled } from "../core/styled.js";
import { t, tOr, wording } from "../core/words.js";
import { signsOf } from "./sign-words.js";

/** @typedef {import("../types.js").Frame} Frame */

const ROOMY = 560; // px: a picture so wide has room for notes

export class SwashScene extends LitElement {
    static properties = {
        atlas: { attribute: false },
        state: { state: true },
        notes: { state: true },
        label: { state: true },
        doubled: { state: true },
    };

    static styles = css`
        :host {
            display: block;
            position: relative;
            overflow: hidden;
            background: var(--paper);
            color: var(--ink);
            min-height: 12rem;
            touch-action: none;
        }
        canvas {
            position: absolute;
            inset: 0;
            width: 100%;
            height: 100%;
            display: block;
            outline: none;
            cursor: grab;
        }
        canvas:focus-visible {
            outline: 3px solid var(--focus);
            outline-offset: -3px;
        }
        canvas.handle {
            cursor: ns-resize;
        }
        p {
            margin: 0;
        }
        .words {
            position: absolute;
            inset: 0;
            display: grid;
            place-content: center;
            padding: var(--gap, 1rem);
            text-align: center;
        }
        .notes {
            position: absolute;
            left: var(--gap, 0.75rem);
            bottom: var(--gap, 0.75rem);
            max-width: 22rem;
            font-size: var(--size-1, 0.8rem);
            color: var(--ink-soft);
            pointer-events: none;
        }
        .notes p {
            background: color-mix(in srgb, var(--paper) 82%, transparent);
        }
        .notes summary {
            width: fit-content;
            min-height: 24px;
            padding: 0 0.3em;
            background: color-mix(in srgb, var(--paper) 82%, transparent);
            cursor: pointer;
            pointer-events: auto;
        }
        .notes .fast {
            color: var(--ink);
            font-weight: 600;
        }
        .tag {
            position: absolute;
            transform: translate(-50%, calc(-100% - 2.6rem));
            padding: 0.15em 0.5em;
            background: var(--paper);
            border: 1px solid var(--ink);
            font-size: var(--size-2, 0.9rem);
            pointer-events: none;
            white-space: nowrap;
        }
        .tag::after {
            content: "";
            position: absolute;
            left: 50%;
            top: 100%;
            width: 1px;
            height: 2.6rem;
            background: var(--ink);
        }
        .sides {
            position: absolute;
            inset: 0;
            pointer-events: none;
        }
        .sides span {
            position: absolute;
            top: var(--gap, 0.75rem);
            right: var(--gap, 0.75rem);
            padding: 0.1em 0.5em;
            background: var(--paper);
            border: 1px solid var(--line, currentcolor);
            font-size: var(--size-1, 0.8rem);
        }
        .sides::after {
            content: "";
            position: absolute;
            background: var(--ink-soft);
        }
        .sides.across span:nth-child(1) {
            right: calc(50% + var(--gap, 0.75rem));
        }
        .sides.across::after {
            left: 50%;
            top: 0;
            bottom: 0;
            width: 1px;
        }
        .sides.stacked span:nth-child(2) {
            top: calc(50% + var(--gap, 0.75rem));
        }
        .sides.stacked::after {
            top: 50%;
            left: 0;
            right: 0;
            height: 1px;
        }
    `;

    constructor() {
        super();
        /** @type {import("../types.js").Atlas | null} */
        this.atlas = null;
        /** @type {"wait" | "drawn" | "none" | "lost"} */
        this.state = "wait";
        /** @type {string[]} */
        this.notes = [];
        /** @type {{ text: string, x: number, y: number } | null} */
        this.label = null;
        this.doubled = "";
        /** @type {import("./view.js").View | null} */
        this.view = null;
        /** @type {import("./handling.js").Handling | null} */
        this.handling = null;
        /** @type {Frame | null} */
        this.frame = null;
        this.onGaze = () => this.#gazed();
        this.onWords = () => this.requestUpdate();
        this.theme = "";
        /** @type {Promise<void> | undefined} */
        this.opening = undefined;
        /** @type {ResizeObserver | undefined} */
        this.watcher = undefined;
    }

    connectedCallback() {
        super.connectedCallback();
        store.addEventListener("gaze", this.onGaze);
        wording.addEventListener("language", this.onWords);
    }

    disconnectedCallback() {
        super.disconnectedCallback();
        store.removeEventListener("gaze", this.onGaze);
        wording.removeEventListener("language", this.onWords);
        this.watcher?.disconnect();
        this.handling?.dispose();
        this.view?.dispose();
        this.view = null;
        this.handling = null;
        this.opening = undefined;
        this.state = "wait";
    }

    /** @param {Frame} frame or what Lit hands over */
    update(frame) {
        if (!("machines" in frame)) {
            /** @type {any} */ (LitElement.prototype).update.call(this, frame); // Lit's own update has the same name
            return;
        }
        if (!frame.machines[0]?.values.length) return;
        this.frame = frame;
        if (this.view) this.#show(frame);
        else this.opening ??= this.#open();
    }

    async #open() {
        await this.updateComplete;
        const canvas = this.renderRoot.querySelector("canvas");
        if (!canvas || !this.atlas) {
            this.opening = undefined;
            return;
        }
        try {
            const [{ View }, { Handling }] = await Promise.all([import("./view.js"), import("./handling.js")]);
            this.view = new View(canvas, this, this.atlas.parameters.keys);
            this.handling = new Handling(this.view, canvas, store, (words) => t(words));
            this.view.onDrawn = () => this.#drawn();
            canvas.addEventListener("webglcontextlost", (event) => {
                event.preventDefault();
                this.state = "lost";
            });
            canvas.addEventListener("webglcontextrestored", () => {
                this.view?.recolour();
                this.state = "drawn";
            });
            this.watcher = new ResizeObserver(() => {
                this.view?.resized();
                this.handling?.refit();
            });
            this.watcher.observe(canvas);
            this.theme = store.gaze.theme;
            this.state = "drawn";
            if (this.frame) this.#show(this.frame);
        } catch (failure) {
            this.view = null;
            this.state = "none";
            console.warn("the drive cannot be drawn:", failure);
        }
    }

    /** @param {Frame} frame */
    #show(frame) {
        const view = /** @type {import("./view.js").View} */ (this.view);
        view.gaze ??= store.gaze;
        const count = view.machines.length;
        const rebuilt = view.update(frame, store.bench.hand);
        if (rebuilt) this.handling?.rebuilt();
        if (view.machines.length !== count) this.handling?.refit();
        const signs = signsOf(frame.machines[0], this.atlas?.parameters.keys ?? [], store.bench.faults, store.gaze.units);
        const notes = [...view.notes(), ...signs].map((key) => t(...key));
        if (notes.join() !== this.notes.join()) this.notes = notes;
    }

    #gazed() {
        if (!this.view) return;
        if (store.gaze.theme !== this.theme) {
            this.theme = store.gaze.theme;
            // the page's style changes with the same event; its colours are there after it
            requestAnimationFrame(() => {
                this.view?.recolour();
                if (this.frame && this.view) this.#show(this.frame);
            });
        }
        this.handling?.gazed();
        this.view.look(store.gaze);
    }

    /** After each picture: the name stays with its part. */
    #drawn() {
        const key = store.gaze.pointed || store.gaze.part;
        const at = key && this.view ? this.view.anchor(key) : null;
        const label = at ? { text: tOr(`part.${key}.name`, key), ...at } : null;
        const old = this.label;
        const moved = !label !== !old || (label && old && (label.text !== old.text || Math.hypot(label.x - old.x, label.y - old.y) > 0.002));
        if (moved) this.label = label;
        const view = this.view;
        const doubled = !view || view.machines.length < 2 ? "" : view.stacked ? "stacked" : "across";
        if (doubled !== this.doubled) this.doubled = doubled;
    }

    /** What is drawn, machine by machine, read back from the objects, SI. */
    drawn() {
        return this.view?.drawn() ?? [];
    }

    framesPerSecond() {
        return this.view?.pace.framesPerSecond() ?? 0;
    }

    /** Where a part is seen, as shares of the picture. @param {string} part */
    anchor(part) {
        return this.view?.anchor(part) ?? null;
    }

    /** The picture as it stands, PNG. @returns {Promise<Blob>} */
    picture() {
        const view = this.view;
        if (!view) return Promise.reject(new Error(t("scene.none")));
        return view.picture();
    }

    /** @param {KeyboardEvent} event */
    onKey(event) {
        if (!this.view || !this.handling) return;
        if (this.handling.key(event)) event.preventDefault();
    }

    /** What must be known to read the picture; on a small one only when asked, so that it does not cover what it is about. */
    drawnHow() {
        const fast = this.view?.tooFast ? this.notes.slice(0, 1) : [];
        const rest = this.notes.slice(fast.length);
        return html`<div class="notes">
            ${fast.map((note) => html`<p class="fast">${note}</p>`)}
            ${rest.length === 0 ? nothing : html`<details ?open=${this.clientWidth >= ROOMY}><summary>${t("scene.notes")}</summary>${rest.map((note) => html`<p>${note}</p>`)}</details>`}
        </div>`;
    }

    render() {
        const words = { wait: "scene.wait", none: "scene.none", lost: "scene.lost", drawn: "" }[this.state];
        return html`
            <canvas tabindex="0" role="application" aria-label=${t("scene.label")} aria-describedby="keys" @keydown=${this.onKey}></canvas>
            <span id="keys" hidden>${t("scene.keys")}</span>
            ${this.doubled ? html`<div class="sides ${this.doubled}"><span>${t("scene.this")}</span><span>${t("scene.sound")}</span></div>` : nothing}
            ${words ? html`<p class="words">${t(words)}</p>` : nothing}
            ${this.drawnHow()}
            ${this.label ? html`<span class="tag" ${styled({ left: `${this.label.x * 100}%`, top: `${this.label.y * 100}%` })}>${this.label.text}</span>` : nothing}
        `;
    }
}

/** Keys in the order in which the keyboard goes through them. */
export const PART_ORDER = parts.map((part) => part.key);

customElements.define("swash-scene", SwashScene);
