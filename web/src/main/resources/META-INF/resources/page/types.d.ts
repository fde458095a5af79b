/**
 * What the rooms of the page hand each other. SI throughout (Pa absolute, m³/s, rad, m, K, s); units are changed only where they are shown.
 *
 * Data goes one way: Bench (what is asked) → engine (worker, computed physics) → Frame (what is) → views (scene, circuit, graphs, words).
 * Views never ask the engine for anything and never make up a number: what a Frame does not hold is not shown.
 */

/** Keys and SI units, as the physics exports them, in one order. */
export interface Catalogue {
    keys: string[];
    units: string[];
    meanings: string[];
}

export interface FaultCatalogue extends Catalogue {
    places: string[];
    severityMeanings: string[];
    least: number[];
    usual: number[];
    most: number[];
}

/** Everything the physics can say about itself, as plain arrays: read once, when the worker has opened it. */
export interface Atlas {
    target: "webassembly" | "javascript";
    parameters: Catalogue & { lows: number[]; highs: number[] };
    faults: FaultCatalogue;
    /** What can be followed of a whole drive; chambers are named pump_chamber_1_pressure and so on (Pa, m, m3/s). */
    channels: Catalogue;
    /** What a settled state says of itself. */
    points: Catalogue;
    ledger: Catalogue;
    events: { keys: string[]; meanings: string[] };
    portZones: string[];
    duties: { keys: string[]; meanings: string[] };
}

/** A demo drive as the server lists them in /drives.json. */
export interface DemoDrive {
    key: string;
    name: string;
    about: string;
    /** In the order of the physics' parameters, SI. */
    values: number[];
}

/** What is done to the machine now. */
export interface Hand {
    /** Share of full travel, −1 … 1. */
    stroke: number;
    /** 0 … 1 */
    throttle: number;
    /** 0 … 1 */
    brake: number;
    /** 0 shut … 1 pulled */
    bypass: number;
    /** rad, uphill positive */
    slope: number;
    /** Drawbar pull, N */
    pull: number;
    engine: "runs" | "off";
    footing: "ground" | "lifted" | "held" | "pushed";
    /** m/s; only with footing "pushed" */
    groundSpeed: number;
    /** K */
    oilTemperature: number;
}

/** Everything that decides what is computed. Immutable; a change makes another. It is what undo, links, stories and files hold. */
export interface Bench {
    /** Key of the demo drive it stands on. */
    drive: string;
    /** Parameters changed on it, SI, by parameter key (oil grade, free air, piston count, plate angle, …). */
    changes: Readonly<Record<string, number>>;
    /** Faults of the drive shown: severity by fault key, in the fault's own SI unit. */
    faults: Readonly<Record<string, number>>;
    /** Shows the same drive without faults beside it, under the same hand. */
    beside: boolean;
    hand: Readonly<Hand>;
}

/** How it is looked at: nothing here changes what is computed. */
export interface Gaze {
    /** Seconds of the machine in a second of the clock: 1 … 0.001. */
    pace: number;
    running: boolean;
    /** Selected part (core/parts.js), or none. */
    part: string;
    /** Part under the pointer in any view; the other views light it too. */
    pointed: string;
    /** 0 closed … 1 all parts apart */
    apart: number;
    lowerHalf: boolean;
    upperHalf: boolean;
    overturned: boolean;
    /** Section plane: axis, place along it as a share of the drive's size (−1 … 1); "none" for no section. */
    section: { axis: "none" | "x" | "y" | "z"; at: number };
    isolated: boolean;
    ghosted: boolean;
    /** Camera: position and target, m; empty for the usual. */
    camera: number[];
    units: "si" | "us";
    theme: "light" | "dark" | "projector";
    language: string;
}

/** Why a drive cannot be: a stable name, the parameter, what it is, what would be right (SI). */
export interface Complaint {
    key: string;
    field: string;
    given: number;
    low: number;
    /** `Number.MAX_VALUE`: no limit. */
    high: number;
}

/** What the engine refused: in the physics' English, and in parts where there are such. */
export interface Refused {
    words: string;
    complaints: readonly Complaint[];
}

/** One machine at one moment. */
export interface MachineState {
    /** In the order of `keys`. */
    values: Float64Array;
    keys: readonly string[];
    pumpPistons: number;
    motorPistons: number;
    /** Values of every parameter with faults, in the order of atlas.parameters. */
    parameters: Float64Array;
    /** Event keys that hold now. */
    events: readonly string[];
    /** The run could not go on: "failed" (no step was found), "unsettled" (nothing to begin from), or the physics' message; else empty. */
    trouble: string;
    /** Settled state under the present hand, for ledger and card: in the order of atlas.points; null until computed or when it did not settle. */
    point: Float64Array | null;
    /** Four numbers an item of atlas.ledger: flow into A, into B, into the gallery, power taken. */
    ledger: Float64Array | null;
    /** Rows since the last frame for graphs: [time, recorded signals …] each, see Engine.record. */
    rows: Float64Array;
    rowLength: number;
}

/** What is, at one moment. machines[0] is the drive shown; machines[1], when there, is the sound one beside it. */
export interface Frame {
    time: number;
    /** Seconds of the machine in one second of the clock that were really reached. */
    pace: number;
    machines: MachineState[];
    /** Number of the Bench it was computed with (store.js counts). */
    bench: number;
}
