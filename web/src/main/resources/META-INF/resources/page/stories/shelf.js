/**
 * The story being told or written: which state is open, what was changed, and the way back. Kept in the browser as it is typed.
 */
import { emptyStory, read, write } from "./story.js";

const KEPT = "swashlight.story";
const MOST_STEPS_BACK = 100;

/**
 * @typedef {import("./story.js").Story} Story
 * @typedef {import("./story.js").StoryState} StoryState
 */

/** Tells "change" when the story or the open state is another. */
export class Shelf extends EventTarget {
    /** @type {Story} */
    #story = emptyStory();
    /** @type {Story[]} */
    #before = [];
    /** @type {Story[]} */
    #after = [];
    #open = -1;
    /** True for the walk that comes along: it can be told, not changed; changing it makes a copy of one's own. */
    #ours = false;
    /** Typing in one field is one step back, not one a letter. */
    #field = "";

    get story() {
        return this.#story;
    }

    /** Place of the open state, −1 before the first. */
    get open() {
        return this.#open;
    }

    get ours() {
        return this.#ours;
    }

    /** @returns {StoryState | undefined} */
    get state() {
        return this.#story.states[this.#open];
    }

    get canUndo() {
        return this.#before.length > 0;
    }

    get canRedo() {
        return this.#after.length > 0;
    }

    /**
     * Another story on the shelf; the one before is a step back.
     * @param {Story} story
     * @param {boolean} ours
     */
    put(story, ours) {
        if (this.#story.states.length > 0 && !this.#ours) this.#remember("");
        this.#story = story;
        this.#ours = ours;
        this.#open = -1;
        if (!ours) this.#keep();
        this.#tell();
    }

    /** @param {number} place */
    turnTo(place) {
        this.#open = Math.max(-1, Math.min(this.#story.states.length - 1, place));
        this.#field = "";
        this.#tell();
    }

    /** @param {string} title */
    name(title) {
        this.#change({ ...this.#story, title }, "title");
    }

    /**
     * After the open state, and opens it.
     * @param {StoryState} state
     */
    add(state) {
        const at = this.#open < 0 ? this.#story.states.length : this.#open + 1;
        this.#change({ ...this.#story, states: this.#story.states.toSpliced(at, 0, state) }, "");
        this.turnTo(at);
    }

    /**
     * Changes the open state.
     * @param {Partial<StoryState>} patch
     * @param {string} field what is being typed in; empty for a step of its own
     */
    edit(patch, field) {
        const state = this.state;
        if (!state) return;
        this.#change({ ...this.#story, states: this.#story.states.with(this.#open, { ...state, ...patch }) }, field && `${field}.${this.#open}`);
    }

    /** @param {number} by −1 earlier, 1 later */
    move(by) {
        const to = this.#open + by;
        const state = this.state;
        if (!state || to < 0 || to >= this.#story.states.length) return;
        const states = this.#story.states.toSpliced(this.#open, 1).toSpliced(to, 0, state);
        this.#change({ ...this.#story, states }, "");
        this.turnTo(to);
    }

    remove() {
        if (!this.state) return;
        this.#change({ ...this.#story, states: this.#story.states.toSpliced(this.#open, 1) }, "");
        this.turnTo(Math.min(this.#open, this.#story.states.length - 1));
    }

    undo() {
        this.#step(this.#before, this.#after);
    }

    redo() {
        this.#step(this.#after, this.#before);
    }

    /**
     * What was kept when the page was left; nothing when there is none or it no longer reads.
     * @param {import("./story.js").StoryLimits} limits
     */
    recall(limits) {
        try {
            const text = localStorage.getItem(KEPT);
            if (text) this.put(read(text, limits), false);
        } catch {
            // A story from a page that knew other parts stays where it is; it is overwritten only when another is begun.
        }
    }

    /** @param {Story} story @param {string} field */
    #change(story, field) {
        this.#remember(field);
        this.#story = story;
        this.#ours = false;
        this.#keep();
        this.#tell();
    }

    /** @param {string} field */
    #remember(field) {
        if (field === "" || field !== this.#field) {
            this.#before.push(this.#story);
            if (this.#before.length > MOST_STEPS_BACK) this.#before.shift();
        }
        this.#after = [];
        this.#field = field;
    }

    /** @param {Story[]} from @param {Story[]} to */
    #step(from, to) {
        const story = from.pop();
        if (!story) return;
        to.push(this.#story);
        this.#story = story;
        this.#ours = false;
        this.#field = "";
        this.#open = Math.min(this.#open, story.states.length - 1);
        this.#keep();
        this.#tell();
    }

    #keep() {
        try {
            localStorage.setItem(KEPT, write(this.#story));
        } catch {
            // Private windows may keep nothing; the story lives as long as the page.
        }
    }

    #tell() {
        this.dispatchEvent(new Event("change"));
    }
}
