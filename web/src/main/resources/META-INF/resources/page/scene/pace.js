/** When to draw and how finely: nothing while nothing changes; coarser while pictures come too slowly, fine once all rests. */

const WANTED = 33; // ms a picture that counts as fluent
const SLOW = 44; // ms
const REST = 260; // ms without change until the fine picture
const RATIOS = [0.6, 0.72, 0.85, 1, 1.25, 1.5, 2];

export class Pace {
    /** @param {import("./view.js").View} view */
    constructor(view) {
        this.view = view;
        this.asked = 0;
        this.resting = 0;
        this.moving = RATIOS.indexOf(1);
        this.ratio = 0;
        /** Ends of the last pictures, ms. @type {number[]} */
        this.ends = [];
        this.size = "";
        this.mean = WANTED;
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
        if (flowing) {
            this.mean += 0.15 * (gap - this.mean);
            if (this.mean > SLOW && this.moving > 0) this.#step(-1);
            else if (this.mean < WANTED * 0.62 && this.moving < RATIOS.length - 1 && RATIOS[this.moving + 1] <= devicePixelRatio) this.#step(1);
        }
        this.#draw(RATIOS[this.moving]);
        clearTimeout(this.resting);
        this.resting = window.setTimeout(() => this.#draw(Math.min(2, Math.max(1, devicePixelRatio) * (devicePixelRatio < 1.5 ? 1.5 : 1))), flowing ? Math.max(REST, 3 * gap) : REST);
    }

    /** @param {number} by */
    #step(by) {
        this.moving += by;
        this.mean = WANTED;
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
