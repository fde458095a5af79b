// Most of what a page does to a run: a named duty, a fault, a hand on the lever, a step by angle, another drive on the way.
export default (physics) => {
    const told = [];
    const tell = (run) => told.push(run.time(), ...run.values());
    const rider = physics.lightRider();
    const hill = physics.namedDuty("hill");
    const run = hill.begin(rider, 1e-3);
    run.advance(0.01);
    tell(run);
    run.redirect(hill.duty().line("stroke", new Float64Array([0, 0.02]), new Float64Array([1, 0.5])));
    run.advance(0.02);
    tell(run);
    run.turn("pump", Math.PI / 180, 1);
    tell(run);
    const sick = rider.withFault("pump-bad-piston", 60e-6).takeUp(run, hill.duty().engineOff(), 1e-3);
    sick.advance(0.01);
    tell(sick);
    told.push(...sick.eventTotals(), ...sick.events(0));
    const point = rider.withFault("pump-face-worn", 10e-6).settled(hill.duty(), 2);
    told.push(...point.values(), ...point.ledger());
    return new Float64Array(told);
};
