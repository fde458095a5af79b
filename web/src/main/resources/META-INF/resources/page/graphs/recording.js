/**
 * Keeps what the run is sampled for: one recorder an engine, shared by every view that wants rows, so that they ask for one set of signals
 * together and each finds its own columns.
 */

import { signal } from "../core/live.js";

/**
 * @typedef {import("../types.js").Frame} Frame
 * @typedef {{ record(keys: string[], interval: number): void }} Recording an engine
 */

/** Samples kept a machine: as many as a long window at the finest interval needs. */
export const KEPT = 32_768;

/** A machine's rows: columns of one length, oldest first. */
export class Track {
    /** @type {Map<string, Float64Array>} */
    #columns = new Map();
    #times = new Float64Array(KEPT);
    #begin = 0;
    #end = 0;

    get length() {
        return this.#end - this.#begin;
    }

    get newest() {
        return this.#end > this.#begin ? this.#times[this.#end - 1] : NaN;
    }

    /** Times, s. */
    times() {
        return this.#times.subarray(this.#begin, this.#end);
    }

    /** A signal's samples, SI; NaN while it was not recorded. @param {string} key */
    column(key) {
        return (this.#columns.get(key) ?? this.#opened(key)).subarray(this.#begin, this.#end);
    }

    clear() {
        this.#begin = this.#end = 0;
    }

    /**
     * Takes a frame's rows; what does not go on in time begins anew, what is sampled closer than half the interval is left out.
     * @param {readonly string[]} keys in the order of the rows
     * @param {Float64Array} rows
     * @param {number} interval s
     */
    add(keys, rows, interval) {
        const length = keys.length + 1;
        const columns = keys.map((key) => this.#columns.get(key) ?? this.#opened(key));
        for (let at = 0; at + length <= rows.length; at += length) {
            const time = rows[at];
            if (time < this.newest - interval) this.clear();
            if (!(time - this.newest < interval / 2)) this.#row(time, columns, rows, at);
        }
    }

    /** @param {number} time @param {Float64Array[]} columns @param {Float64Array} rows @param {number} at */
    #row(time, columns, rows, at) {
        if (this.#end === KEPT) this.#forget();
        this.#times[this.#end] = time;
        for (const column of this.#columns.values()) column[this.#end] = NaN;
        columns.forEach((column, i) => (column[this.#end] = rows[at + 1 + i]));
        this.#end++;
    }

    /** Makes room by dropping the older half. */
    #forget() {
        const half = this.#begin + ((this.#end - this.#begin) >> 1);
        for (const column of [this.#times, ...this.#columns.values()]) column.copyWithin(0, half, this.#end);
        this.#end -= half;
        this.#begin = 0;
    }

    /** @param {string} key */
    #opened(key) {
        const column = new Float64Array(KEPT).fill(NaN);
        this.#columns.set(key, column);
        return column;
    }
}

export class Recorder {
    /** @type {Map<object, { keys: readonly string[], interval: number }>} */
    #wants = new Map();
    /** @type {string[]} */
    #keys = [];
    #interval = 1e-3;
    /** A frame that was on its way when other signals were asked for still has the old ones. */
    #skip = 0;
    /** @type {Frame | null} */
    #taken = null;
    /** @type {Track[]} */
    tracks = [new Track(), new Track()];

    /** @param {Recording} engine */
    constructor(engine) {
        this.engine = engine;
    }

    get interval() {
        return this.#interval;
    }

    /** @param {object} owner who wants it, until it wants something else or drops it @param {readonly string[]} keys @param {number} interval s */
    want(owner, keys, interval) {
        this.#wants.set(owner, { keys, interval });
        this.#ask();
    }

    /** @param {object} owner */
    drop(owner) {
        this.#wants.delete(owner);
        this.#ask();
    }

    #ask() {
        const keys = [...new Set([...this.#wants.values()].flatMap((want) => want.keys))];
        const interval = Math.min(1, ...[...this.#wants.values()].map((want) => want.interval));
        if (keys.join() === this.#keys.join() && interval === this.#interval) return;
        this.#keys = keys;
        this.#interval = interval;
        this.#skip = 1;
        this.engine.record(keys, interval);
    }

    /** A machine turned on by degrees brings no rows: its state is the sample. @param {number} time @param {import("../types.js").MachineState} machine @param {string[]} keys @param {Track} track */
    #step(time, machine, keys, track) {
        if (Math.abs(time - track.newest) < 1e-9) return;
        track.add(keys, Float64Array.of(time, ...keys.map((key) => signal(machine, key))), 1e-9);
    }

    /** Takes a frame once, whoever hands it over. @param {Frame} frame */
    take(frame) {
        if (frame === this.#taken) return;
        this.#taken = frame;
        if (this.#skip > 0) {
            this.#skip--;
            return;
        }
        frame.machines.forEach((machine, i) => {
            const keys = this.#keys.filter((key) => machine.keys.includes(key));
            if (machine.rowLength === keys.length + 1) this.tracks[i].add(keys, machine.rows, this.#interval);
            else if (keys.length > 0 && machine.rows.length === 0) this.#step(frame.time, machine, keys, this.tracks[i]);
        });
        if (frame.machines.length < 2) this.tracks[1].clear();
    }
}

/** @type {WeakMap<Recording, Recorder>} */
const recorders = new WeakMap();

/** @param {Recording} engine */
export function recorderOf(engine) {
    const known = recorders.get(engine) ?? new Recorder(engine);
    recorders.set(engine, known);
    return known;
}
