// Seconds that the same work takes, one number a round: the light rider's launch of 1 s, and a settled state under many duties.
import { run } from "/launch.js";

const timed = (work) => {
    const begun = performance.now();
    work();
    return (performance.now() - begun) / 1000;
};

export default (physics, [rounds, until, pointRounds, points]) => {
    const seconds = [];
    for (let round = 0; round < rounds; round++) {
        const launch = run(physics, 1e-3);
        seconds.push(timed(() => launch.advance(until)));
    }
    const rider = physics.lightRider();
    for (let round = 0; round < pointRounds; round++) {
        seconds.push(timed(() => {
            for (let n = 0; n < points; n++) {
                const duty = physics.driving(-1 + (2 * n) / points, 0.1, 333.15);
                if (!rider.settled(duty, 0).converged()) throw new Error(`not settled at ${n}`);
            }
        }));
    }
    return new Float64Array(seconds);
};
