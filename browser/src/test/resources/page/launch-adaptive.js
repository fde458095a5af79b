// The same launch in steps of its own choice, to the times given: time and all signals at each, then steps taken.
import { run } from "/launch.js";

export default (physics, input) => {
    const rows = [];
    const launch = run(physics, input[0]);
    for (const until of input.subarray(1)) {
        if (!launch.advance(until)) throw new Error(`stuck at ${launch.time()} s`);
        rows.push(launch.time(), ...launch.values());
    }
    return new Float64Array(rows);
};
