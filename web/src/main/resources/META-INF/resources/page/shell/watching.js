/**
 * Renders an element anew when something it shows of the look has changed. The look changes with every move of the pointer over a view; most
 * elements show nothing of that.
 */
import { store } from "../core/store.js";

/** @typedef {import("../types.js").Gaze} Gaze */

/**
 * @param {{ requestUpdate(): void }} element
 * @param {readonly (keyof Gaze)[]} keys what of the look it shows; language and theme are always among them
 * @param {() => void} [then] instead of rendering
 */
export function watchGaze(element, keys, then = () => element.requestUpdate()) {
    const now = () => JSON.stringify([...keys, "language", "theme"].map((key) => store.gaze[/** @type {keyof Gaze} */ (key)]));
    let seen = now();
    store.addEventListener("gaze", () => {
        const found = now();
        if (found === seen) return;
        seen = found;
        then();
    });
}
