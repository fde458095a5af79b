/**
 * The physics' own thread: opens it, keeps the machines, answers each wish for a frame with one.
 *
 * Its response may carry 'unsafe-eval', which the WebAssembly runtime needs; the page does without.
 */
import { change, driveOf, dutyOf } from "./bench-runs.js";
import { Machine } from "./machine.js";
import { Refusal } from "./refusal.js";

/** The settled state is worked out when the hand has rested so long: it is for reading, not for watching. */
const REST = 120; // ms

/** Opened at once, while the page still fetches what it wants computed. */
const opening = import(/** @type {string} */ (new URL("../../physics/physics.js", import.meta.url).href)).then(({ open }) => open("fastest"));
opening.catch(() => {}); // told when it is asked for

/** @type {any} */
let physics = null;
/** @type {import("../types.js").Atlas | null} */
let atlas = null;
/** @type {readonly import("../types.js").DemoDrive[]} */
let drives = [];
/** @type {import("../types.js").Bench | null} */
let bench = null;
let number = 0;
let changed = 0;
/** @type {Machine[]} */
let machines = [];
/** @type {{ keys: string[], interval: number }} */
let wanted = { keys: [], interval: 1e-3 };
let pace = 0;
/** A named duty moves the controls; the hand takes over with the next bench. */
let planned = false;

/** @type {Record<string, (message: any) => void | Promise<void>>} */
const answers = {
    async open(message) {
        const opened = await opening;
        physics = opened.physics;
        drives = message.drives;
        atlas = atlasOf(opened.target);
        self.postMessage({ kind: "open", atlas });
    },
    bench(message) {
        const asked = message.bench;
        number = message.number;
        changed = performance.now();
        follow(asked);
        bench = asked;
    },
    record(message) {
        wanted = { keys: message.keys, interval: message.interval };
    },
    turn(message) {
        for (const machine of machines) machine.turn(message.unit, message.angle);
    },
    restart(message) {
        planned = false;
        for (const machine of machines) {
            if (bench) machine.duty = dutyOf(physics, bench.hand);
            machine.begin(message.from);
        }
    },
    duty(message) {
        planned = true;
        const plan = physics.namedDuty(message.key);
        for (const machine of machines) machine.try(() => {
            machine.duty = plan.duty();
            machine.pointDue = false;
            machine.offset = 0;
            machine.take(plan.begin(machine.drive, 1e-3));
        });
    },
    frame(message) {
        if (performance.now() - changed > REST) machines.find((machine) => machine.pointDue)?.settle();
        const steps = machines.map((machine) => machine.advance(message.span, wanted));
        const reached = Math.min(...steps.map((step) => step.reached));
        if (message.passed > 0) pace = 0.8 * pace + 0.2 * (reached / message.passed);
        const states = machines.map((machine, place) => ({ ...machine.state(), rows: steps[place].rows, rowLength: steps[place].rowLength }));
        self.postMessage(
            { kind: "frame", frame: { time: machines[0]?.time() ?? 0, pace, machines: states, bench: number } },
            { transfer: states.flatMap((state) => [state.values.buffer, state.rows.buffer]) },
        );
    },
};

self.onmessage = async (event) => {
    try {
        await answers[event.data.kind](event.data);
    } catch (failure) {
        const complaints = failure instanceof Refusal ? failure.complaints : [];
        self.postMessage({ kind: "broken", words: failure instanceof Error ? failure.message : String(failure), complaints });
    }
};

/** @param {import("../types.js").Bench} asked */
function follow(asked) {
    // A duty may have its own engine, footing and oil: coming back from it is another run.
    const usual = change(bench, asked);
    const how = planned && usual === "redirect" ? "takeUp" : usual;
    const starts = asked.hand.engine === "runs" && (planned || bench?.hand.engine === "off");
    if (how !== "nothing") planned = false;
    const roles = asked.beside ? [false, true] : [false];
    const duty = dutyOf(physics, asked.hand);
    if (how === "begin") {
        machines = roles.map((sound) => begun(asked, sound, duty));
        return;
    }
    machines.length = Math.min(machines.length, roles.length);
    machines.forEach((machine, place) => {
        if (how === "takeUp") machine.takeUp(driveOf(physics, drives, asked, roles[place]), duty, starts);
        else if (how === "redirect") machine.redirect(duty);
    });
    while (machines.length < roles.length) {
        for (const machine of machines) machine.begin("settled");
        machines.push(begun(asked, roles[machines.length], duty));
    }
}

/** @param {import("../types.js").Bench} asked @param {boolean} sound @param {any} duty */
function begun(asked, sound, duty) {
    const machine = new Machine(physics, driveOf(physics, drives, asked, sound), duty, atlas?.events.keys ?? []);
    machine.begin("settled");
    return machine;
}

/** @param {"webassembly" | "javascript"} target @returns {import("../types.js").Atlas} */
function atlasOf(target) {
    const parameters = physics.parameters();
    const faults = physics.faults();
    return {
        target,
        parameters: { ...catalogue(parameters), lows: [...parameters.lows()], highs: [...parameters.highs()] },
        faults: {
            ...catalogue(faults),
            places: faults.places(),
            severityMeanings: faults.severityMeanings(),
            least: [...faults.least()],
            usual: [...faults.usual()],
            most: [...faults.most()],
        },
        channels: catalogue(physics.channels()),
        points: catalogue(physics.pointQuantities()),
        ledger: catalogue(physics.ledgerItems()),
        events: words(physics.runEvents()),
        portZones: physics.portZones(),
        duties: words(physics.namedDuties()),
    };
}

/** @param {any} list */
const words = (list) => ({ keys: list.keys(), meanings: list.meanings() });

/** @param {any} list */
const catalogue = (list) => ({ ...words(list), units: list.units() });
