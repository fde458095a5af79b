/** Whether the page is kept on this device; /sw.js keeps it, once the page is usable and has nothing better to do. */

class Keeping extends EventTarget {
    /** @type {"not" | "keeping" | "kept"} */
    state = "not";

    /** @param {"not" | "keeping" | "kept"} state */
    become(state) {
        this.state = state;
        this.dispatchEvent(new Event("change"));
    }
}

/** How far it is; tells "change". */
export const keeping = new Keeping();

/** Has the page kept; a failure leaves what was kept before. */
export async function keepAll() {
    if (!("serviceWorker" in navigator)) return;
    keeping.become(navigator.serviceWorker.controller ? "kept" : "keeping");
    try {
        const worker = await navigator.serviceWorker.register("/sw.js");
        worker.installing?.addEventListener("statechange", (event) => {
            if (/** @type {ServiceWorker} */ (event.target).state === "redundant" && keeping.state !== "kept") keeping.become("not");
        });
        await navigator.serviceWorker.ready;
        keeping.become("kept");
    } catch {
        if (keeping.state !== "kept") keeping.become("not");
    }
}
