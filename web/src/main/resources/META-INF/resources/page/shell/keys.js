/** The keyboard of the page: single keys, never while something is typed. */
import { parts } from "../core/parts.js";
import { store } from "../core/store.js";
import { t } from "../core/words.js";

const STROKE = 0.05;

/**
 * @param {KeyboardEvent} event
 * @param {import("./page.js").SwashPage} page
 */
export function keysOf(event, page) {
    const target = /** @type {HTMLElement} */ (event.composedPath()[0]);
    const typing = /^(input|select|textarea)$/i.test(target.tagName ?? "");
    if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "z" && !typing) {
        event.preventDefault();
        if (event.shiftKey) store.redo();
        else store.undo();
        return;
    }
    if (typing || event.ctrlKey || event.metaKey || event.altKey) return;
    const pressed = /^button$/i.test(target.tagName ?? "") && (event.key === " " || event.key === "Enter");
    const action = pressed ? undefined : ACTIONS[event.key];
    if (!action) return;
    event.preventDefault();
    action(page);
}

/** @type {Record<string, (page: import("./page.js").SwashPage) => void>} */
const ACTIONS = {
    " ": () => store.setGaze({ running: !store.gaze.running }),
    ".": (page) => step(page, 1),
    ":": (page) => step(page, 10),
    w: () => stroke(STROKE),
    s: () => stroke(-STROKE),
    n: () => store.setBench({ hand: { stroke: 0 } }, t("hand.neutral")),
    "]": () => part(1),
    "[": () => part(-1),
    u: () => store.setGaze({ units: store.gaze.units === "si" ? "us" : "si" }),
    t: () => store.setGaze({ theme: store.gaze.theme === "light" ? "dark" : store.gaze.theme === "dark" ? "projector" : "light" }),
    f: (page) => { page.alone = !page.alone; },
    "?": (page) => page.turnHelp(),
    Escape: (page) => {
        if (store.gaze.part !== "") store.setGaze({ part: "", isolated: false });
        else page.alone = false;
    },
};

/** @param {import("./page.js").SwashPage} page @param {number} degrees */
function step(page, degrees) {
    store.setGaze({ running: false });
    page.engine?.stepDegrees("pump", degrees);
}

/** @param {number} by */
function stroke(by) {
    const wanted = Math.round(Math.max(-1, Math.min(1, store.bench.hand.stroke + by)) * 100) / 100;
    store.setBench({ hand: { stroke: wanted } }, t("hand.stroke"));
}

/** @param {number} by */
function part(by) {
    const at = parts.findIndex((each) => each.key === store.gaze.part);
    store.setGaze({ part: parts[(at + by + parts.length) % parts.length].key });
}
