/**
 * One moment of one machine as the drawing needs it: signals by name, how far things have moved since the last picture, and what moves too
 * fast to be seen as separate pictures. Nothing is made up: what the state lacks is NaN and not drawn.
 */
import { chamber, parameter, signal } from "../core/live.js";
import { bandOf, colourOf } from "../core/ramp.js";

/** @typedef {import("../types.js").MachineState} MachineState */

const SEEN_SHARE = 0.45; // of a repeat: beyond this a picture-to-picture step looks like another speed or sense

export class Now {
    /**
     * @param {MachineState} state @param {readonly string[]} parameterKeys
     * @param {import("../types.js").Hand} hand
     * @param {{ time: number, last: number, pace: number }} clock this frame's and the last one's machine time, s
     */
    constructor(state, parameterKeys, hand, clock) {
        this.state = state;
        this.parameterKeys = parameterKeys;
        this.hand = hand;
        this.pace = clock.pace;
        /** Machine time since the last picture, s; 0 after a restart. */
        this.elapsed = clock.time > clock.last ? clock.time - clock.last : 0;
        this.events = new Set(state.events);
        /** Something moved too far between two pictures to be followed by eye. */
        this.tooFast = false;
        this.connected = true;
    }

    /** @param {string} key */
    signal(key) {
        return signal(this.state, key);
    }

    /** @param {string} key */
    parameter(key) {
        return parameter(this.state, this.parameterKeys, key);
    }

    /**
     * @param {"pump" | "motor"} unit @param {number} number from 0
     * @param {"pressure" | "position" | "from_side_a" | "from_side_b" | "leak" | "port"} what
     */
    chamber(unit, number, what) {
        return chamber(this.state, unit, number + 1, what);
    }

    /**
     * Colour and pattern of a pressure (Pa); grey where there is none.
     * @param {number} pressure
     * @returns {{ rgb: readonly number[], band: number }}
     */
    oil(pressure) {
        return Number.isFinite(pressure) ? { rgb: colourOf(pressure), band: bandOf(pressure) } : { rgb: [0.6, 0.6, 0.6], band: 1 };
    }

    /**
     * A step (any unit) against the distance after which the picture repeats: too fast to be told apart?
     * @param {number} step
     * @param {number} repeat
     */
    blurs(step, repeat) {
        return Math.abs(step) > SEEN_SHARE * repeat;
    }
}
