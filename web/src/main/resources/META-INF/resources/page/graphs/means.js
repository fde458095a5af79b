/**
 * Means of a machine's signals over the time that has passed since they were last told: a reader wants the pressure, not the ripple's last whim.
 */

/** @typedef {import("../types.js").MachineState} MachineState */

export class Means {
    #sums = new Float64Array(0);
    #time = 0;
    /** @type {Map<string, number>} */
    #held = new Map();
    /** @type {MachineState | null} */
    #last = null;

    /** @param {MachineState} state @param {number} passed s of the machine since the last state */
    add(state, passed) {
        this.#last = state;
        if (!(passed > 0)) return;
        if (this.#sums.length !== state.values.length) this.clear(state.values.length);
        for (let i = 0; i < state.values.length; i++) this.#sums[i] += passed * state.values[i];
        for (const event of state.events) this.#held.set(event, (this.#held.get(event) ?? 0) + passed);
        this.#time += passed;
    }

    clear(length = this.#sums.length) {
        this.#sums = new Float64Array(length);
        this.#held.clear();
        this.#time = 0;
    }

    /** The last state with means for values, and the share of the time that each event held. @returns {{ state: MachineState, held: (event: string) => number } | null} */
    take() {
        const last = this.#last;
        if (!last) return null;
        const time = this.#time;
        if (time === 0) return { state: last, held: (event) => (last.events.includes(event) ? 1 : 0) };
        const held = new Map(this.#held);
        return { state: { ...last, values: this.#sums.map((sum) => sum / time) }, held: (event) => (held.get(event) ?? 0) / time };
    }
}
