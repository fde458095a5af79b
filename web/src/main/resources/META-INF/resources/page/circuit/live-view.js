/**
 * A view that is given frames by update(frame). Lit's own update() has the same name and is given changed properties: they are told apart here,
 * once, together with what every view listens to.
 */
import { LitElement } from "lit";
import { store } from "../core/store.js";
import { wording } from "../core/words.js";

/**
 * @typedef {import("../types.js").Atlas} Atlas
 * @typedef {import("../types.js").Frame} Frame
 */

export class LiveView extends LitElement {
    /** @type {Record<string, object>} */
    static properties = { atlas: { attribute: false } };

    constructor() {
        super();
        /** @type {Atlas | null} */
        this.atlas = null;
        /** @type {Frame | null} the newest */
        this.frame = null;
        this.gazeChanged = () => this.gazed();
        this.askedAnew = () => this.requestUpdate();
    }

    connectedCallback() {
        super.connectedCallback();
        store.addEventListener("gaze", this.gazeChanged);
        store.addEventListener("bench", this.askedAnew);
        wording.addEventListener("language", this.askedAnew);
    }

    disconnectedCallback() {
        super.disconnectedCallback();
        store.removeEventListener("gaze", this.gazeChanged);
        store.removeEventListener("bench", this.askedAnew);
        wording.removeEventListener("language", this.askedAnew);
    }

    /** @param {Frame} frame or what Lit hands over */
    update(frame) {
        if (!("machines" in frame)) {
            /** @type {any} */ (LitElement.prototype).update.call(this, frame);
            return;
        }
        if (!this.atlas || !frame.machines[0] || frame.machines[0].values.length === 0) return;
        this.frame = frame;
        this.framed(frame);
    }

    /** A frame has come. @param {Frame} _frame */
    framed(_frame) {}

    /** The gaze is another. */
    gazed() {
        this.requestUpdate();
    }
}
