// The light rider's launch in steps of given lengths: time and all signals after each.
export const run = (physics, tolerance) =>
    physics.lightRider().startAtRest(
        physics
            .driving(0, 0.1, 333.15)
            .line("stroke", new Float64Array([0, 0.08]), new Float64Array([0, 0.6])),
        tolerance);

export default (physics, lengths) => run(physics, 1e-3).steps(lengths);
