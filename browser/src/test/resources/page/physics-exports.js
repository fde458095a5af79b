import { listed } from "/functions.js";

export default (physics) => {
    const rider = physics.lightRider();
    const duty = physics.driving(0.5, 0, 333.15);
    return listed("Physics", physics, {
        WordList: physics.channels(),
        ParameterList: physics.parameters(),
        FaultList: physics.faults(),
        Complaints: rider.complaintsWith(["pump.boreClearance"], Float64Array.of(1)),
        Drive: rider,
        Duty: duty,
        Plan: physics.namedDuty("launch"),
        Run: rider.startAtRest(duty, 1e-3),
        Point: rider.settled(duty, 0),
    });
};
