// What is really there: one line "interface member" for each function of the module and of what it hands over.
const functions = (thing) =>
    Object.getOwnPropertyNames(thing).filter((name) => name !== "constructor" && typeof thing[name] === "function");

export default (physics) => {
    const rider = physics.lightRider();
    const duty = physics.driving(0.5, 0, 333.15);
    const things = {
        WordList: physics.channels(),
        ParameterList: physics.parameters(),
        FaultList: physics.faults(),
        Drive: rider,
        Duty: duty,
        Run: rider.startAtRest(duty, 1e-3),
        Point: rider.settled(duty, 0),
    };
    // The compiler also exports the classes of what is handed over; they cannot be built from outside.
    const lines = functions(physics)
        .filter((name) => !name.startsWith("Page"))
        .map((name) => `Physics ${name}`);
    for (const [type, thing] of Object.entries(things)) {
        lines.push(...functions(Object.getPrototypeOf(thing)).map((name) => `${type} ${name}`));
    }
    return lines.join("\n");
};
