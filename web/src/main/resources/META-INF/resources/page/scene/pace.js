/**
 * When to draw and how finely: nothing while nothing changes; fine once all rests; while it moves, coarser only where that makes it faster. On a
 * graphics card pixels decide, in software corners and lines do: there a coarser picture would be uglier for nothing.
 */

const WANTED = 20; // ms a picture: faster than this there is room for finer ones
const SLOW = 44; // ms
const REST = 260; // ms without change until the fine picture
const RATIOS = [0.5, 0.75, 1, 1.5, 2];
const TRIAL = 14; // pictures by which a step is judged
const HELPS = 0.85; // of the time before: a coarser picture that takes longer than this is not worth it
const SETTLED = 20_000; // ms until it is tried again

export class Pace {
    /** @param {import("./view.js").View} view */
    constructor(view) {
        this.view = view;
        this.asked = 0;
        this.resting = 0;
        this.moving = RATIOS.indexOf(1);
        /** Ends of the last pictures, ms. @type {number[]} */
        this.ends = [];
        this.size = "";
        this.mean = 33;
        this.since = 0; // pictures since the last step
        this.before = 0; // ms a picture before a step down that is on trial
        this.heldUntil = 0;
    }

    wake() {
        if (this.asked) return;
        this.asked = requestAnimationFrame((time) => this.#picture(time));
    }

    /** @param {number} time */
    #picture(time) {
        this.asked = 0;
        if (!this.view.dirty) return;
        const last = this.ends[this.ends.length - 1] ?? 0;
        const gap = time - last;
        this.ends.push(time);
        if (this.ends.length > 40) this.ends.shift();
        const flowing = gap < 1500; // pictures in a row, however slow
        if (flowing) this.#judge(gap, time);
        this.#draw(RATIOS[this.moving]);
        clearTimeout(this.resting);
        const fine = Math.min(2, devicePixelRatio < 1.5 ? 1.5 * devicePixelRatio : devicePixelRatio);
        this.resting = window.setTimeout(() => this.#draw(fine), flowing ? Math.max(REST, 3 * gap) : REST);
    }

    /** @param {number} gap ms since the last picture @param {number} time ms */
    #judge(gap, time) {
        this.mean += 0.15 * (gap - this.mean);
        if (++this.since < TRIAL) return;
        if (this.before > 0 && this.mean > HELPS * this.before) {
            this.#step(1, 0);
            this.heldUntil = time + SETTLED;
        } else if (this.mean > SLOW && this.moving > 0 && time > this.heldUntil) this.#step(-1, this.mean);
        else if (this.mean < WANTED && RATIOS[this.moving + 1] <= devicePixelRatio) this.#step(1, 0);
        else this.before = 0;
    }

    /** @param {number} by @param {number} before */
    #step(by, before) {
        this.moving += by;
        this.before = before;
        this.since = 0;
    }

    /** @param {number} ratio */
    #draw(ratio) {
        const { clientWidth, clientHeight } = this.view.canvas;
        const size = `${clientWidth}×${clientHeight}×${ratio}`;
        if (size !== this.size) {
            this.size = size;
            this.view.setRatio(ratio);
        }
        this.view.render();
    }

    /** Pictures a second over the last ones drawn in a row; 0 when it rests. */
    framesPerSecond() {
        const ends = this.ends.filter((end) => performance.now() - end < 2000);
        return ends.length < 3 ? 0 : ((ends.length - 1) * 1000) / (ends[ends.length - 1] - ends[0]);
    }

    stop() {
        cancelAnimationFrame(this.asked);
        clearTimeout(this.resting);
    }
}
