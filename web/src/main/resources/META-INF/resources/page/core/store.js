/**
 * What is asked (bench) and how it is looked at (gaze): the only things of the page that change, with a way back for the first.
 *
 * Kept in the browser with every change, so that leaving and coming back finds it as it was.
 */

/**
 * @typedef {import("../types.js").Bench} Bench
 * @typedef {import("../types.js").Gaze} Gaze
 * @typedef {import("../types.js").Hand} Hand
 *
 * @typedef {Omit<Partial<Bench>, "hand"> & { hand?: Partial<Hand> }} BenchPatch
 */

const KEPT_BENCH = "swashlight.bench";
const KEPT_GAZE = "swashlight.gaze";
const MOST_STEPS_BACK = 200;
/** Dragging one control is one step back when its moves follow each other this closely. */
const SAME_MOVE = 1200; // ms
const CELSIUS = 273.15;

/** @type {Bench} */
export const FIRST_BENCH = deepFrozen({
    drive: "light-rider",
    changes: {},
    faults: {},
    beside: false,
    hand: {
        stroke: 0.6, throttle: 1, brake: 0, bypass: 0, slope: 0.087, pull: 0, engine: "runs", footing: "ground", groundSpeed: 0,
        oilTemperature: 60 + CELSIUS,
    },
});

/** @type {Gaze} */
export const FIRST_GAZE = deepFrozen({
    pace: 0.02, running: true, part: "", pointed: "", apart: 0, lowerHalf: false, upperHalf: false, overturned: false,
    section: { axis: "none", at: 0 }, isolated: false, ghosted: true, camera: [],
    units: "si", theme: "light", language: "en",
});

/** Tells "bench" and "gaze" when one of them is another. */
export class Store extends EventTarget {
    /** @type {Bench} */
    #bench = FIRST_BENCH;
    /** @type {Gaze} */
    #gaze = FIRST_GAZE;
    /** @type {{ bench: Bench, label: string }[]} */
    #before = [];
    /** @type {{ bench: Bench, label: string }[]} */
    #after = [];
    #label = "";
    #at = 0;
    #number = 0;

    get bench() {
        return this.#bench;
    }

    get gaze() {
        return this.#gaze;
    }

    /** Counts benches: a frame says with which it was computed. */
    get number() {
        return this.#number;
    }

    get canUndo() {
        return this.#before.length > 0;
    }

    get canRedo() {
        return this.#after.length > 0;
    }

    /** What undo would take back; empty for nothing. */
    get undoLabel() {
        return this.#before.at(-1)?.label ?? "";
    }

    get redoLabel() {
        return this.#after.at(-1)?.label ?? "";
    }

    /**
     * @param {BenchPatch} patch `hand` is merged into the hand, everything else replaces
     * @param {string} label what was done, in the words of the page
     */
    setBench(patch, label) {
        const bench = deepFrozen({ ...this.#bench, ...patch, hand: { ...this.#bench.hand, ...patch.hand } });
        if (JSON.stringify(bench) === JSON.stringify(this.#bench)) return;
        const now = performance.now();
        if (label !== this.#label || now - this.#at > SAME_MOVE || this.#before.length === 0) {
            this.#before.push({ bench: this.#bench, label });
            if (this.#before.length > MOST_STEPS_BACK) this.#before.shift();
        }
        this.#after = [];
        this.#label = label;
        this.#at = now;
        this.#become(bench);
    }

    /** @param {Partial<Gaze>} patch */
    setGaze(patch) {
        const gaze = deepFrozen({ ...this.#gaze, ...patch });
        if (JSON.stringify(gaze) === JSON.stringify(this.#gaze)) return;
        this.#gaze = gaze;
        keep(KEPT_GAZE, { ...gaze, pointed: "" });
        this.dispatchEvent(new Event("gaze"));
    }

    undo() {
        this.#step(this.#before, this.#after);
    }

    redo() {
        this.#step(this.#after, this.#before);
    }

    /** Finds what was kept. What no longer fits is left out. */
    recall() {
        this.#gaze = deepFrozen(fitting(FIRST_GAZE, kept(KEPT_GAZE)));
        this.#bench = deepFrozen(benchFrom(kept(KEPT_BENCH)));
    }

    /** The present bench in a form an address can hold behind its #. */
    link() {
        return `#bench=${encodeURIComponent(JSON.stringify(this.#bench))}`;
    }

    /**
     * @param {string} hash
     * @returns {boolean} whether it held a bench
     */
    fromLink(hash) {
        if (!hash.startsWith("#bench=")) return false;
        try {
            this.setBench(benchFrom(JSON.parse(decodeURIComponent(hash.slice("#bench=".length)))), "link");
            return true;
        } catch {
            return false;
        }
    }

    /**
     * @param {{ bench: Bench, label: string }[]} from
     * @param {{ bench: Bench, label: string }[]} to
     */
    #step(from, to) {
        const step = from.pop();
        if (!step) return;
        to.push({ bench: this.#bench, label: step.label });
        this.#label = "";
        this.#become(step.bench);
    }

    /** @param {Bench} bench */
    #become(bench) {
        this.#bench = bench;
        this.#number++;
        keep(KEPT_BENCH, bench);
        this.dispatchEvent(new Event("bench"));
    }
}

export const store = new Store();

/** @param {any} tree @returns {Bench} */
function benchFrom(tree) {
    const bench = fitting(FIRST_BENCH, tree);
    return { ...bench, hand: fitting(FIRST_BENCH.hand, tree?.hand), changes: numbers(tree?.changes), faults: numbers(tree?.faults) };
}

/**
 * The usual object with what another has of the same name and kind.
 * @template {object} T
 * @param {T} usual
 * @param {any} found
 * @returns {T}
 */
function fitting(usual, found) {
    const fitted = /** @type {any} */ ({ ...usual });
    for (const [key, value] of Object.entries(usual)) {
        const other = found?.[key];
        if (typeof other === typeof value && Array.isArray(other) === Array.isArray(value)) fitted[key] = other;
    }
    return fitted;
}

/** @param {any} tree @returns {Record<string, number>} */
const numbers = (tree) => Object.fromEntries(Object.entries(tree ?? {}).filter((entry) => Number.isFinite(entry[1]))) ;

/** Keeps something in the browser. @param {string} key @param {unknown} value */
export function keep(key, value) {
    try {
        localStorage.setItem(key, JSON.stringify(value));
    } catch {
        // A private window may keep nothing.
    }
}

/** What was kept, or null. @param {string} key */
export function kept(key) {
    try {
        return JSON.parse(localStorage.getItem(key) ?? "null");
    } catch {
        return null;
    }
}

/**
 * @template T
 * @param {T} value
 * @returns {T}
 */
function deepFrozen(value) {
    if (typeof value === "object" && value !== null && !Object.isFrozen(value)) {
        Object.values(value).forEach(deepFrozen);
        Object.freeze(value);
    }
    return value;
}
