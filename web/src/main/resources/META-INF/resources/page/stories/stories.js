/**
 * The place for stories: tell one, write one. Opening a state hands its bench and look to the store; from there on everything is computed as
 * always, and whoever listens may take the controls at any moment.
 */
import { LitElement, css, html, nothing } from "lit";
import { parts } from "../core/parts.js";
import { store } from "../core/store.js";
import { t, wording } from "../core/words.js";
import { filled } from "./live-words.js";
import { LONG_LINK, fromLink, isStoryLink, linkTo } from "./sending.js";
import { Shelf } from "./shelf.js";
import { StoryFault, emptyStory, freeze, read, write } from "./story.js";
import { pictureOf } from "./picture.js";
import { walk } from "./walk.js";
import { writer } from "./writer.js";

/** Reading speed of slow, calm speech. */
const LETTERS_A_SECOND = 13;
/** However short the words, there is something to look at. */
const LEAST_SECONDS = 8;
/** Live values in words change this often: readable, not flickering. */
const WORDS_EVERY = 400; // ms

export class SwashStories extends LitElement {
    static properties = {
        atlas: { attribute: false },
        scene: { attribute: false },
        engine: { attribute: false },
        marksView: { attribute: false },
        drives: { attribute: false },
        editing: { state: true },
        playing: { state: true },
        said: { state: true },
        faults: { state: true },
        spoken: { state: true },
    };

    static styles = css`
        :host { display: block; font-size: var(--size-2); color: var(--ink); }
        h2, h3 { font-size: var(--size-3); margin: 0 0 0.3em; font-weight: 600; }
        .tale { font-size: var(--size-3); line-height: 1.45; max-width: 60ch; white-space: pre-line; margin: 0 0 var(--gap); }
        .row { display: flex; flex-wrap: wrap; gap: calc(var(--gap) / 2); align-items: center; margin: 0 0 var(--gap); }
        button, select, input, textarea {
            font: inherit; color: inherit; background: var(--paper); border: 1px solid var(--line); border-radius: 3px;
            min-height: 2.4em; padding: 0.2em 0.7em; box-sizing: border-box;
        }
        button[aria-pressed="true"], li[aria-current="true"] button { border-color: var(--accent); box-shadow: inset 0 0 0 1px var(--accent); }
        button:disabled { color: var(--ink-soft); border-style: dashed; }
        :focus-visible { outline: 3px solid var(--focus); outline-offset: 1px; }
        ol { list-style: none; margin: 0 0 var(--gap); padding: 0; display: grid; gap: 4px; }
        li button { width: 100%; text-align: left; }
        .strong { border-color: var(--ink); font-weight: 600; }
        label { display: grid; gap: 2px; margin: 0 0 calc(var(--gap) / 2); }
        textarea { width: 100%; min-height: 9em; line-height: 1.4; }
        input[type="text"] { width: 100%; }
        fieldset { border: 1px solid var(--line); margin: 0 0 var(--gap); padding: var(--gap); }
        .soft { color: var(--ink-soft); }
        .wrong { border-left: 4px solid var(--warn); padding-left: 0.6em; }
        .wrong code { overflow-wrap: anywhere; }
        output { overflow-wrap: anywhere; }
        @media print { button, .row { display: none; } }
    `;

    constructor() {
        super();
        /** @type {import("../types.js").Atlas | null} */
        this.atlas = null;
        /** @type {any} the scene's element, or null where there is no WebGL */
        this.scene = null;
        /** @type {{ restart(from: "rest" | "settled"): void } | null} */
        this.engine = null;
        /** @type {import("./marks.js").SwashMarks | null} */
        this.marksView = null;
        /** @type {readonly string[]} keys of the drives there are */
        this.drives = ["light-rider"];
        this.shelf = new Shelf();
        this.editing = false;
        this.playing = false;
        this.said = "";
        this.spoken = "";
        /** @type {readonly import("./story.js").Fault[]} */
        this.faults = [];
        /** @type {import("../types.js").Frame | null} */
        this.frame = null;
        this.spokenAt = 0;
        /** @type {ReturnType<typeof setTimeout> | undefined} */
        this.timer = undefined;
        this.begun = false;
        this.shelf.addEventListener("change", () => this.turned());
        this.relabel = () => this.reworded();
    }

    /** What may stand in a story here. */
    limits() {
        return {
            drives: this.drives,
            parts: parts.map((each) => each.key),
            parameters: this.atlas?.parameters.keys ?? [],
            faults: this.atlas?.faults.keys ?? [],
        };
    }

    updated() {
        if (this.atlas && !this.begun) {
            this.begun = true;
            this.begin();
        }
    }

    /** A story in the address comes first, then what was being written, then the walk. */
    async begin() {
        this.shelf.recall(this.limits());
        if (isStoryLink(location.hash)) {
            try {
                this.shelf.put(await fromLink(location.hash, this.limits()), false);
                this.shelf.turnTo(0);
                this.open();
            } catch (failure) {
                if (failure instanceof StoryFault) this.faults = failure.faults;
                this.said = t("stories.link.broken");
            }
        } else if (this.shelf.story.states.length === 0) {
            this.shelf.put(walk(), true);
        }
        this.requestUpdate();
    }

    connectedCallback() {
        super.connectedCallback();
        wording.addEventListener("language", this.relabel);
    }

    disconnectedCallback() {
        super.disconnectedCallback();
        wording.removeEventListener("language", this.relabel);
    }

    /** Another language: the walk that comes along is told in it, where it was. */
    reworded() {
        if (this.shelf.ours) {
            const at = this.shelf.open;
            this.shelf.put(walk(), true);
            this.shelf.turnTo(at);
        }
        this.requestUpdate();
    }

    /** @param {import("../types.js").Frame} frame */
    follow(frame) {
        this.frame = frame;
        this.marksView?.follow();
        if (performance.now() - this.spokenAt > WORDS_EVERY) {
            this.spokenAt = performance.now();
            this.speak();
        }
    }

    speak() {
        const { state } = this.shelf;
        const known = { frame: this.frame, bench: store.bench, atlas: this.atlas, system: store.gaze.units };
        this.spoken = state && known.atlas ? filled(state.words, /** @type {import("./live-words.js").Known} */ (known)) : "";
    }

    /** The story or its open state changed. */
    turned() {
        if (this.marksView) this.marksView.marks = this.shelf.state?.marks ?? [];
        this.speak();
        this.requestUpdate();
    }

    /** Hands the open state to bench and look. */
    open() {
        const state = this.shelf.state;
        if (!state) return;
        store.setBench(state.bench, state.name);
        store.setGaze(state.look);
        this.engine?.restart(state.from);
        this.wait();
    }

    /** @param {number} place */
    turnTo(place) {
        this.shelf.turnTo(place);
        this.open();
    }

    /** While it goes on by itself: as long as the words take to say. */
    wait() {
        clearTimeout(this.timer);
        if (!this.playing) return;
        const seconds = Math.max(LEAST_SECONDS, (this.shelf.state?.words.length ?? 0) / LETTERS_A_SECOND);
        this.timer = setTimeout(() => {
            if (this.shelf.open + 1 < this.shelf.story.states.length) this.turnTo(this.shelf.open + 1);
            else this.playing = false;
        }, seconds * 1000);
    }

    play() {
        this.playing = !this.playing;
        if (this.playing && this.shelf.open < 0) this.turnTo(0);
        else this.wait();
    }

    keep() {
        const taken = this.shelf.story.states.length + 1;
        if (this.shelf.ours) this.shelf.put(emptyStory(), false);
        this.shelf.add(freeze(t("stories.place", taken, taken).split(" ")[0], store.bench, store.gaze));
        this.editing = true;
    }

    async send() {
        const link = await linkTo(this.shelf.story, location.href.split("#")[0]);
        try {
            await navigator.clipboard.writeText(link);
            this.said = link.length > LONG_LINK ? t("stories.link.long", link.length) : t("stories.link.copied");
        } catch {
            this.said = `${t("stories.link.refused")} ${link}`;
        }
    }

    save() {
        const name = (this.shelf.story.title || t("stories.untitled")).toLowerCase().replace(/[^\p{L}\p{N}]+/gu, "-");
        handOver(new Blob([write(this.shelf.story)], { type: "application/json" }), `${name}.story.json`);
    }

    /** @param {File} file */
    async load(file) {
        this.faults = [];
        this.said = "";
        try {
            this.shelf.put(read(await file.text(), this.limits()), false);
            this.turnTo(0);
        } catch (failure) {
            if (!(failure instanceof StoryFault)) throw failure;
            this.faults = failure.faults;
        }
    }

    async draw() {
        const state = this.shelf.state;
        if (!this.scene || !state) return;
        const look = getComputedStyle(this);
        const picture = await pictureOf(await this.scene.picture(), this.scene, state.marks, state.name, this.spoken, {
            paper: look.getPropertyValue("--paper") || "white",
            ink: look.color,
            family: look.fontFamily,
        });
        handOver(picture, `${state.name.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, "-")}.png`);
    }

    render() {
        const { story, state, open } = this.shelf;
        return html`
            <h2>${story.title || t("stories.untitled")}</h2>
            ${state ? this.tale(state) : nothing}
            <div class="row">
                <button class="strong" ?disabled=${open + 1 >= story.states.length} @click=${() => this.turnTo(open + 1)}>
                    ${open < 0 ? t("stories.first") : t("stories.next")}</button>
                <button ?disabled=${open <= 0} @click=${() => this.turnTo(open - 1)}>${t("stories.previous")}</button>
                <button aria-pressed=${this.playing} ?disabled=${story.states.length === 0} @click=${() => this.play()}>
                    ${this.playing ? t("stories.pause") : t("stories.play")}</button>
                ${open < 0 ? nothing : html`<span class="soft">${t("stories.place", open + 1, story.states.length)}</span>`}
            </div>
            <div class="row">
                <button title=${t("stories.freeze.hint")} @click=${() => this.keep()}>${t("stories.freeze")}</button>
                <button aria-pressed=${this.editing} ?disabled=${story.states.length === 0} @click=${() => { this.editing = !this.editing; }}>
                    ${this.editing ? t("stories.done") : t("stories.edit")}</button>
            </div>
            ${this.editing ? writer(this) : nothing}
            ${story.states.length === 0 ? html`<p class="soft">${t("stories.empty")}</p>` : this.list()}
            <div class="row">
                <button ?disabled=${story.states.length === 0} @click=${() => this.send()}>${t("stories.link")}</button>
                <button ?disabled=${!state || !this.scene} @click=${() => this.draw()}>${t("stories.picture")}</button>
                <button ?disabled=${story.states.length === 0} @click=${() => this.save()}>${t("stories.file.save")}</button>
                <button @click=${() => this.renderRoot.querySelector("input[type=file]")?.dispatchEvent(new MouseEvent("click"))}>
                    ${t("stories.file.open")}</button>
                <input type="file" hidden accept=".json,application/json" aria-label=${t("stories.file.open")}
                    @change=${(/** @type {Event} */ event) => this.chosen(event)} />
                <button @click=${() => this.shelf.put(emptyStory(), false)}>${t("stories.new")}</button>
                <button ?disabled=${this.shelf.ours} @click=${() => this.shelf.put(walk(), true)}>${t("stories.walk")}</button>
            </div>
            <output role="status">${this.said}</output>
            ${this.faults.length > 0 ? this.wrong() : nothing}
        `;
    }

    /** @param {import("./story.js").StoryState} state */
    tale(state) {
        return html`<h3>${state.name}</h3><p class="tale">${this.spoken}</p>`;
    }

    list() {
        return html`<ol aria-label=${t("stories.list")}>
            ${this.shelf.story.states.map((state, place) => html`
                <li aria-current=${place === this.shelf.open ? "true" : "false"}>
                    <button @click=${() => this.turnTo(place)}>${place + 1}. ${state.name}</button>
                </li>`)}
        </ol>`;
    }

    wrong() {
        return html`<div class="wrong" role="alert">
            <p>${t("stories.faults")}</p>
            <ul>${this.faults.slice(0, 20).map((fault) => html`
                <li><code>${fault.where || t("stories.fault.top")}</code>: ${t(`stories.fault.${fault.what}`, fault.detail)}</li>`)}</ul>
        </div>`;
    }

    /** @param {Event} event */
    chosen(event) {
        const input = /** @type {HTMLInputElement} */ (event.target);
        const file = input.files?.[0];
        input.value = "";
        if (file) this.load(file);
    }
}

/** Gives a file to whoever sits there. @param {Blob} blob @param {string} name */
function handOver(blob, name) {
    const link = document.createElement("a");
    link.href = URL.createObjectURL(blob);
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}


customElements.define("swash-stories", SwashStories);
