/**
 * One machine in the worker: its drive, its run, and what is told of it at a moment.
 */
import { TOLERANCE } from "./bench-runs.js";

/** More samples than a graph has pixels are not worth sending. */
const MOST_ROWS = 600;
/** The clock time one machine may take for a frame; what is not done then makes the machine slower, not the page. */
const BUDGET = 22; // ms
/** A run is advanced in so many parts, so that the budget can be kept. */
const PARTS = 8;

export class Machine {
    /**
     * @param {any} physics
     * @param {any} drive
     * @param {any} duty
     * @param {string[]} eventKeys
     */
    constructor(physics, drive, duty, eventKeys) {
        this.physics = physics;
        this.drive = drive;
        this.duty = duty;
        this.eventKeys = eventKeys;
        this.run = null;
        this.trouble = "";
        this.offset = 0; // s: what runs before this one have lasted
        /** @type {string[]} */
        this.keys = [];
        /** @type {Set<string>} */
        this.holding = new Set();
        this.told = 0;
        /** @type {Float64Array} */
        this.parameters = drive.values();
        this.point = null;
        this.ledger = null;
        this.pointDue = true;
    }

    /** @param {"rest" | "settled"} from */
    begin(from) {
        this.try(() => {
            const run = from === "rest" ? this.drive.startAtRest(this.duty, TOLERANCE) : this.drive.startSettled(this.duty, TOLERANCE);
            this.offset = 0;
            this.take(run);
        });
        if (this.trouble && from === "settled" && !this.settles()) this.trouble = "unsettled";
    }

    /**
     * Another drive or another kind of run, from the state reached. An engine that stands is started with the machine at rest.
     * @param {any} drive
     * @param {any} duty
     * @param {boolean} [starts] whether the key is turned
     */
    takeUp(drive, duty, starts = false) {
        const run = this.run;
        this.drive = drive;
        this.duty = duty;
        this.parameters = drive.values();
        this.pointDue = true;
        if (!run || this.trouble) return this.begin("settled");
        if (starts && run.value(this.keys.indexOf("engine_speed")) === 0) return this.begin("rest");
        this.try(() => {
            const passed = this.offset + run.time();
            this.take(drive.takeUp(run, duty, TOLERANCE));
            this.offset = passed;
        });
    }

    /** @param {any} duty */
    redirect(duty) {
        this.duty = duty;
        this.pointDue = true;
        if (!this.run || this.trouble) return this.begin("settled");
        this.try(() => this.run.redirect(duty));
    }

    /** @param {any} run */
    take(run) {
        this.run = run;
        this.keys = run.signals().keys();
        this.trouble = "";
        this.holding.clear();
        this.told = 0;
    }

    time() {
        return this.run ? this.offset + this.run.time() : 0;
    }

    /**
     * Goes on.
     * @param {number} span s of the machine
     * @param {{ keys: string[], interval: number }} wanted what is sampled on the way
     * @returns {{ rows: Float64Array, rowLength: number, reached: number }}
     */
    advance(span, wanted) {
        const nothing = { rows: new Float64Array(0), rowLength: 0, reached: 0 };
        if (!this.run || this.trouble || span <= 0) return nothing;
        const begun = this.run.time();
        const known = wanted.keys.filter((key) => this.keys.includes(key));
        const rowLength = known.length + 1;
        const interval = Math.max(wanted.interval, span / MOST_ROWS);
        /** @type {number[]} */
        const rows = [];
        const stop = performance.now() + BUDGET;
        this.try(() => {
            for (let part = 1; part <= PARTS && performance.now() < stop; part++) {
                const until = begun + (span * part) / PARTS;
                if (known.length === 0) {
                    if (!this.run.advance(until)) break;
                } else {
                    for (const value of this.run.trace(known, until, interval)) rows.push(value);
                }
                if (this.run.failed()) break;
            }
        });
        if (this.run.failed()) this.trouble = "failed";
        for (let at = 0; at < rows.length; at += rowLength) rows[at] += this.offset;
        return { rows: Float64Array.from(rows), rowLength: known.length === 0 ? 0 : rowLength, reached: this.run.time() - begun };
    }

    /** @param {"pump" | "motor"} unit @param {number} angle rad */
    turn(unit, angle) {
        if (this.run && !this.trouble) this.try(() => this.run.turn(unit, angle, 0.1));
    }

    settles() {
        try {
            return this.drive.settled(this.duty, 0).converged();
        } catch {
            return true; // it is refused for another reason
        }
    }

    settle() {
        this.pointDue = false;
        this.point = null;
        this.ledger = null;
        this.try(() => {
            const point = this.drive.settled(this.duty, 0);
            if (point.converged()) {
                this.point = point.values();
                this.ledger = point.ledger();
            }
        }, false);
    }

    /** @returns {import("../types.js").MachineState} without rows */
    state() {
        this.follow();
        return {
            values: this.run ? this.run.values() : new Float64Array(0),
            keys: this.keys,
            pumpPistons: this.run ? this.run.pumpPistons() : 0,
            motorPistons: this.run ? this.run.motorPistons() : 0,
            parameters: this.parameters,
            events: [...this.holding],
            trouble: this.trouble,
            point: this.point,
            ledger: this.ledger,
            rows: new Float64Array(0),
            rowLength: 0,
        };
    }

    /** Which events hold now: four numbers each, the second its place in the list, the third whether it begins. */
    follow() {
        if (!this.run) return;
        const happened = this.run.events(this.told);
        for (let at = 0; at < happened.length; at += 4) {
            const key = this.eventKeys[happened[at + 1]];
            if (happened[at + 2] === 1) this.holding.add(key);
            else this.holding.delete(key);
        }
        this.told += happened.length / 4;
    }

    /** What the physics refuses becomes words, never a broken page. @param {() => void} action @param {boolean} [grave] */
    try(action, grave = true) {
        try {
            action();
        } catch (failure) {
            if (grave) this.trouble = failure instanceof Error ? failure.message : String(failure);
        }
    }
}
