/**
 * The page's frame: the picture in the middle, what is asked on one side, what is shown on the other; on a phone one below the other, with
 * everything that is pressed often within reach of a thumb. Views are fetched when first looked at, and one that fails leaves the rest alone.
 */
import { LitElement, html, nothing } from "lit";
import { keep, kept, store } from "../core/store.js";
import { t, tOr, wording } from "../core/words.js";
import "./card.js";
import "./controls.js";
import "./drive.js";
import "./faults.js";
import { languageChoice, themeChoice } from "./help.js";
import { keysOf } from "./keys.js";
import "./legend.js";
import "./notices.js";
import "./opening.js";
import "./pace.js";
import "./readout.js";
import { refusedWords, troubleWords } from "./refused.js";
import { controls } from "./styles.js";
import { pageStyle } from "./page-style.js";
import { watchGaze } from "./watching.js";

/** Places for what is asked, and for what is shown: the element, and the module that brings it. */
const ASKED = [["hand", "swash-controls", ""], ["faults", "swash-faults", ""], ["drive", "swash-drive", ""], ["opening", "swash-opening", ""]];
const SHOWN = [["circuit", "swash-circuit", "../circuit/circuit.js"], ["curves", "swash-graphs", "../graphs/graphs.js"],
    ["balance", "swash-ledger", "../graphs/ledger.js"], ["tones", "swash-spectrum", "../graphs/spectrum.js"],
    ["telling", "swash-telling", "../graphs/telling.js"], ["stories", "swash-stories", "../stories/stories.js"]];
/** On a phone the card of the selected part has a place of its own. */
const PLACES = [...ASKED, ["part", "swash-card", ""], ...SHOWN];
/** Views whose update() takes a frame. */
const GIVEN = new Set(["swash-scene", "swash-circuit", "swash-graphs", "swash-ledger", "swash-spectrum", "swash-sound", "swash-telling"]);
const SCENE = "../scene/element.js";
const KEPT = "swashlight.places";
/** A phone, upright or lying: one place at a time. */
const NARROW = "(max-width: 820px), (max-height: 480px)";

export class SwashPage extends LitElement {
    static properties = {
        engine: { attribute: false }, drives: { attribute: false }, broken: { attribute: false },
        asked: { state: true }, shown: { state: true }, trouble: { state: true }, refused: { state: true }, alone: { type: Boolean, reflect: true }, missing: { state: true },
    };
    static styles = [controls, pageStyle];

    constructor() {
        super();
        /** @type {import("../engine/engine.js").Engine | null} */
        this.engine = null;
        /** @type {readonly import("../types.js").DemoDrive[]} */
        this.drives = [];
        this.broken = "";
        const { asked, shown } = placesKept();
        this.asked = asked;
        this.shown = location.hash.startsWith("#story=") ? "stories" : shown;
        this.trouble = "";
        /** The picture has the whole page: for a room full of people. */
        this.alone = false;
        /** Why the last change was not taken; null when it was. @type {import("../types.js").Refused | null} */
        this.refused = null;
        /** @type {readonly string[]} */
        this.missing = [];
        this.narrow = matchMedia(NARROW);
        this.narrow.addEventListener("change", () => this.requestUpdate());
        watchGaze(this, ["units", "part"], () => this.gazed());
        store.addEventListener("bench", () => { this.refused = null; this.requestUpdate(); });
        wording.addEventListener("language", () => this.reword());
        addEventListener("keydown", (event) => keysOf(event, this));
        this.fetched = new Set([""]);
        this.seen = store.gaze.part;
        if (this.narrow.matches && kept(KEPT) === null && this.shown === "circuit") this.shown = "hand";
    }

    /** Who selects a part on a phone wants to read of it. */
    gazed() {
        if (this.narrow.matches && store.gaze.part !== this.seen && store.gaze.part !== "") this.shown = "part";
        this.seen = store.gaze.part;
        this.requestUpdate();
    }

    /** @param {Map<string, unknown>} changed */
    updated(changed) {
        if (changed.has("engine") && this.engine) {
            this.engine.addEventListener("frame", (event) => this.follow(/** @type {CustomEvent} */ (event).detail));
            this.engine.addEventListener("trouble", (event) => { this.refused = /** @type {CustomEvent} */ (event).detail; });
        }
        if (!this.fetched.has(SCENE)) {
            this.fetch(SCENE);
            this.fetch("../stories/marks.js");
        }
        if (changed.has("shown") || changed.has("asked")) {
            keep(KEPT, { asked: this.asked, shown: this.shown });
            this.renderRoot.querySelector('nav button[aria-pressed="true"]')?.scrollIntoView({ inline: "center", block: "nearest" });
        }
        this.placesNow().forEach(([, , module]) => this.fetch(module));
        this.join();
    }

    /** Brings a view once; a view that cannot come is named where it would stand. @param {string} module */
    async fetch(module) {
        if (this.fetched.has(module)) return;
        this.fetched.add(module);
        try {
            await import(module);
            this.requestUpdate();
        } catch (failure) {
            console.error(failure);
            this.missing = [...this.missing, module];
        }
    }

    placesNow() {
        return PLACES.filter(([key]) => key === this.shown || (key === this.asked && !this.narrow.matches));
    }

    /** @returns {any[]} every view in the page */
    views() {
        return [...this.renderRoot.querySelectorAll(".view")];
    }

    /** Hands the views what they read from. */
    join() {
        const scene = /** @type {any} */ (this.renderRoot.querySelector("swash-scene"));
        const marks = /** @type {any} */ (this.renderRoot.querySelector("swash-marks"));
        for (const view of this.views()) {
            if (view.atlas !== this.engine?.atlas) view.atlas = this.engine?.atlas ?? null;
            if (view.engine !== this.engine) view.engine = this.engine;
            if (view.localName === "swash-stories") Object.assign(view, { scene, marksView: marks, drives: this.drives.map((each) => each.key) });
            if (view.localName === "swash-drive") view.drives = this.drives;
        }
        if (marks && marks.scene !== scene) marks.scene = scene;
    }

    /** @param {import("../types.js").Frame} frame */
    follow(frame) {
        for (const view of this.views()) {
            if (view.follow) view.follow(frame);
            else if (GIVEN.has(view.localName) && customElements.get(view.localName)) view.update(frame);
        }
        const trouble = frame.machines.map((machine) => machine.trouble).find((words) => words) ?? "";
        if (trouble !== this.trouble) this.trouble = trouble;
    }

    /** Another language: every view says its words anew. */
    reword() {
        this.requestUpdate();
        for (const view of [...this.views(), ...this.renderRoot.querySelectorAll("swash-legend")]) /** @type {any} */ (view).requestUpdate?.();
    }

    render() {
        if (this.broken) return html`<main class="broken"><h1>Swashlight</h1><p class="wrong">${t("page.broken")} ${this.broken}</p></main>`;
        const narrow = this.narrow.matches;
        if (!narrow && this.shown === "part") this.shown = "circuit";
        return html`
            <header>${this.bar(narrow)}</header>
            ${narrow ? nothing : html`<section class="asked" aria-label=${t("page.asked")}>${this.choices(ASKED, "asked")}${this.place(this.asked)}</section>`}
            <main>
                <div class="picture">
                    <swash-scene class="view"></swash-scene>
                    <swash-marks></swash-marks>
                    <swash-notices class="view"></swash-notices>
                    ${this.missing.includes(SCENE) ? html`<p class="wrong">${t("page.view.missing")}</p>` : nothing}
                    ${this.refused || this.trouble ? this.said() : nothing}
                </div>
                <div class="reading"><swash-legend></swash-legend><swash-readout class="view"></swash-readout></div>
                <swash-pace class="view"></swash-pace>
            </main>
            ${narrow
                ? html`<section class="one" aria-label=${t("page.shown")}><h2 class="unseen">${t("page.shown")}</h2>${this.place(this.shown)}</section>
                    <nav aria-label=${t("page.places")}>${this.choices(PLACES, "shown")}</nav>`
                : html`<section class="shown" aria-label=${t("page.shown")}><h2 class="unseen">${t("page.shown")}</h2>${this.choices(SHOWN, "shown")}
                    ${this.shown === "stories" ? html`${this.place(this.shown)}<swash-card class="view"></swash-card>` : html`<swash-card class="view"></swash-card>${this.place(this.shown)}`}</section>`}
            <swash-help></swash-help>`;
    }

    /** What could not be computed, and the way out. */
    said() {
        return html`<div class="wrong trouble" role="alert">
            <p>${t(this.refused ? "page.refused" : "page.trouble")} ${this.refused ? nothing : troubleWords(this.trouble)}</p>
            ${store.canUndo ? html`<button @click=${() => store.undo()}>${t("page.take.back")}</button>` : nothing}
            ${this.refused ? nothing : html`<button @click=${() => this.engine?.restart("settled")}>${t("pace.again")}</button>`}
            ${this.refused ? refusedWords(this.refused, this.engine?.atlas ?? null) : nothing}
        </div>`;
    }

    /** @param {boolean} narrow */
    bar(narrow) {
        const { gaze } = store;
        return html`
            <h1>Swashlight</h1>
            <span class="which">${tOr(`drive.${store.bench.drive}`, store.bench.drive)}${this.wrongs()}</span>
            <button ?disabled=${!store.canUndo} title=${store.undoLabel} aria-label=${t("page.undo", store.undoLabel)} @click=${() => store.undo()}>↶</button>
            <button ?disabled=${!store.canRedo} title=${store.redoLabel} aria-label=${t("page.redo", store.redoLabel)} @click=${() => store.redo()}>↷</button>
            <button aria-label=${`${gaze.units === "si" ? "bar" : "psi"}: ${t("page.units")}`} @click=${() => store.setGaze({ units: gaze.units === "si" ? "us" : "si" })}>${gaze.units === "si" ? "bar" : "psi"}</button>
            ${narrow ? nothing : html`${themeChoice()}${languageChoice()}`}
            <button aria-label=${t("page.alone")} aria-pressed=${this.alone} @click=${() => { this.alone = !this.alone; }}>⤢</button>
            <button aria-label=${t("page.help")} aria-haspopup="dialog" @click=${() => this.turnHelp()}>?</button>`;
    }

    turnHelp() {
        /** @type {import("./help.js").SwashHelp | null} */ (this.renderRoot.querySelector("swash-help"))?.turn();
    }

    wrongs() {
        const count = Object.keys(store.bench.faults).length;
        return count === 0 ? html` <span class="soft">${t("page.sound")}</span>` : html` <b class="ill">${t("page.faulty", count)}</b>`;
    }

    /** @param {string[][]} places @param {"asked" | "shown"} side */
    choices(places, side) {
        return html`<div class="choices" role="group" aria-label=${t("page.places")}>${places.map(([key]) => html`
            <button aria-pressed=${this[side] === key} @click=${() => { this[side] = key; }}>${t(`place.${key}`)}</button>`)}</div>`;
    }

    /** @param {string} key */
    place(key) {
        const module = PLACES.find((each) => each[0] === key)?.[2] ?? "";
        if (this.missing.includes(module)) return html`<p class="wrong">${t("page.view.missing")}</p>`;
        switch (key) {
            case "hand": return html`<swash-controls class="view"></swash-controls>`;
            case "faults": return html`<swash-faults class="view"></swash-faults>`;
            case "drive": return html`<swash-drive class="view"></swash-drive>`;
            case "part": return html`<swash-card class="view"></swash-card>`;
            case "opening": return html`<swash-opening class="view"></swash-opening>`;
            case "circuit": return html`<swash-circuit class="view"></swash-circuit>`;
            case "curves": return html`<swash-graphs class="view"></swash-graphs>`;
            case "balance": return html`<swash-ledger class="view"></swash-ledger>`;
            case "tones": return html`<swash-spectrum class="view"></swash-spectrum><swash-sound class="view"></swash-sound>`;
            case "telling": return html`<swash-telling class="view"></swash-telling>`;
            default: return html`<swash-stories class="view"></swash-stories>`;
        }
    }
}

/** Where the page was left. */
function placesKept() {
    const known = (/** @type {string[][]} */ places, /** @type {string} */ key) => places.some((each) => each[0] === key);
    const { asked, shown } = kept(KEPT) ?? {};
    return { asked: known(ASKED, asked) ? asked : "hand", shown: known(PLACES, shown) ? shown : "circuit" };
}

customElements.define("swash-page", SwashPage);
