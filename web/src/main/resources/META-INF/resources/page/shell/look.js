/** Theme and language of the page follow the gaze; at the first visit they are what the browser prefers. */
import { LANGUAGES, languageNow, setLanguage } from "../core/words.js";
import { rampFor } from "../core/ramp.js";
import { kept } from "../core/store.js";

/** @param {import("../core/store.js").Store} store */
export function beginLook(store) {
    const before = kept("swashlight.gaze");
    store.recall();
    if (!before) {
        const spoken = navigator.language.slice(0, 2);
        store.setGaze({
            theme: matchMedia("(prefers-color-scheme: dark)").matches ? "dark" : "light",
            language: spoken in LANGUAGES ? spoken : "en",
            units: ["US", "LR", "MM"].includes(navigator.language.slice(3, 5)) ? "us" : "si",
        });
    }
    const follow = () => {
        document.documentElement.dataset.theme = store.gaze.theme;
        rampFor(store.gaze.theme);
        if (store.gaze.language !== languageNow()) setLanguage(store.gaze.language);
    };
    store.addEventListener("gaze", follow);
    follow();
}
