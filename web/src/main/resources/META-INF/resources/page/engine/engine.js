/**
 * The page's side of the engine: sends what is asked to the worker, hands on what it answers, a frame at a time.
 */

/**
 * @typedef {import("../types.js").Atlas} Atlas
 * @typedef {import("../types.js").Frame} Frame
 * @typedef {import("../core/store.js").Store} Store
 */

/** Tells "frame" (detail: Frame) at most once a drawn frame, and "trouble" (detail: Refused) when the worker refuses or breaks. */
export class Engine extends EventTarget {
    #worker;
    /** @type {Atlas} */
    atlas;
    /** @type {Frame | null} the newest */
    frame = null;
    #asked = false;
    #at = 0;
    /** @type {Store | null} */
    #store = null;

    /**
     * @param {Worker} worker
     * @param {Atlas} atlas
     */
    constructor(worker, atlas) {
        super();
        this.#worker = worker;
        this.atlas = atlas;
        worker.onmessage = (event) => this.#answered(event.data);
        worker.onerror = (event) => this.dispatchEvent(new CustomEvent("trouble", { detail: { words: event.message, complaints: [] } }));
    }

    /**
     * Opens the physics in a worker, which begins to load while the drives may still be on their way.
     * @param {readonly import("../types.js").DemoDrive[] | Promise<readonly import("../types.js").DemoDrive[]>} drives
     * @returns {Promise<Engine>}
     */
    static open(drives) {
        const worker = new Worker(new URL("./worker.js", import.meta.url), { type: "module", name: "physics" });
        return new Promise((done, fail) => {
            worker.onerror = (event) => fail(new Error(event.message || "the physics worker could not be loaded"));
            worker.onmessage = (event) => {
                if (event.data.kind === "open") done(new Engine(worker, event.data.atlas));
                else if (event.data.kind === "broken") fail(new Error(event.data.words));
            };
            Promise.resolve(drives).then((all) => worker.postMessage({ kind: "open", drives: all }), fail);
        });
    }

    /** Computes what the store asks for, from now on. @param {Store} store */
    follow(store) {
        this.#store = store;
        const asked = () => this.#worker.postMessage({ kind: "bench", bench: store.bench, number: store.number });
        store.addEventListener("bench", asked);
        asked();
        requestAnimationFrame((now) => this.#tick(now));
    }

    /** What graphs want sampled. @param {readonly string[]} keys @param {number} interval s of the machine */
    record(keys, interval) {
        this.#worker.postMessage({ kind: "record", keys: [...keys], interval });
    }

    /** Goes on by an angle of a shaft; the machine should stand still otherwise. @param {"pump" | "motor"} unit @param {number} degrees */
    stepDegrees(unit, degrees) {
        this.#worker.postMessage({ kind: "turn", unit, angle: (degrees * Math.PI) / 180 });
    }

    /** Begins anew under the present bench. @param {"rest" | "settled"} [from] */
    restart(from = "settled") {
        this.#worker.postMessage({ kind: "restart", from });
    }

    /** Follows one of the physics' own duties instead of the hand, until the hand is moved. @param {string} key */
    duty(key) {
        this.#worker.postMessage({ kind: "duty", key });
    }

    close() {
        this.#worker.terminate();
    }

    /** Asks for the next frame when the last one has come: frames never queue up. @param {number} now ms */
    #tick(now) {
        const gaze = this.#store?.gaze;
        const passed = Math.min(0.1, Math.max(0, (now - this.#at) / 1000)); // s; after a sleeping tab it goes on, it does not race
        if (gaze && !this.#asked) {
            this.#at = now;
            this.#asked = true;
            this.#worker.postMessage({ kind: "frame", span: gaze.running ? passed * gaze.pace : 0, passed });
        }
        requestAnimationFrame((next) => this.#tick(next));
    }

    /** @param {any} answer */
    #answered(answer) {
        if (answer.kind === "frame") {
            this.#asked = false;
            this.frame = answer.frame;
            this.dispatchEvent(new CustomEvent("frame", { detail: answer.frame }));
        } else if (answer.kind === "broken") {
            this.#asked = false;
            this.dispatchEvent(new CustomEvent("trouble", { detail: { words: answer.words, complaints: answer.complaints } }));
        }
    }
}
