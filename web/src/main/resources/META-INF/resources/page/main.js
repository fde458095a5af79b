/**
 * Where the page begins: words, what was kept, the engine; then the views, each of which may be missing without the others suffering.
 */
import { setLanguage } from "./core/words.js";
import { store } from "./core/store.js";
import { rampFor } from "./core/ramp.js";
import { Engine } from "./engine/engine.js";
import { beginLook } from "./shell/look.js";
import { keepAll } from "./shell/offline.js";
import "./shell/page.js";

/** Keeping the page for later must not compete with opening it. */
const KEEP_AFTER = 4000; // ms

beginLook(store);
rampFor(store.gaze.theme);
const shell = /** @type {import("./shell/page.js").SwashPage} */ (/** @type {unknown} */ (document.querySelector("swash-page")));
const words = setLanguage(store.gaze.language);
try {
    const coming = fetch("/drives.json").then((answer) => {
        if (!answer.ok) throw new Error(`/drives.json: ${answer.status}`);
        return answer.json();
    });
    const engine = await Engine.open(coming);
    const drives = await coming;
    await words;
    takeLink();
    addEventListener("hashchange", takeLink);
    shell.drives = drives;
    shell.engine = engine;
    engine.follow(store);
} catch (failure) {
    await words;
    shell.broken = failure instanceof Error ? failure.message : String(failure);
}
setTimeout(keepAll, KEEP_AFTER);

/** A link's state is taken once: coming back finds what was made of it since. */
function takeLink() {
    if (store.fromLink(location.hash)) history.replaceState(null, "", location.pathname + location.search);
}
