/**
 * How often a drawing is brought up to date: with every frame where frames come fast, else a few times a second. Where the browser paints in
 * software a line drawing costs as much as the scene, and both would stutter.
 */

const FAST = 22; // ms between frames: the device keeps up
const UNHURRIED = 300; // ms
const SHARE = 0.1; // of the newest gap in the mean

export class Rhythm {
    #last = 0;
    #drawn = 0;
    #gap = 16;

    /** Whether to draw now. @param {number} now ms, as frames come */
    due(now) {
        const gap = now - this.#last;
        this.#last = now;
        if (gap < 1000) this.#gap += SHARE * (gap - this.#gap);
        if (this.#gap > FAST && now - this.#drawn < UNHURRIED) return false;
        this.#drawn = now;
        return true;
    }
}
