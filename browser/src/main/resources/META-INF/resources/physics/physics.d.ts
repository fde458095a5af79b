/**
 * What the compiled physics exports to a page. SI throughout: Pa absolute, m³/s, rad, rad/s, N·m, K, s. Forward is positive.
 *
 * Every array handed over is a copy. What a function refuses it throws as an Error whose message says what, where, and what would be right.
 */

/** Which form of the physics to open: the first that loads, or one of the two. */
export type Target = "fastest" | "webassembly" | "javascript";

/** The physics, opened. */
export interface Opened {
    readonly physics: Physics;
    readonly target: "webassembly" | "javascript";
    /** Why JavaScript was taken; empty for WebAssembly. */
    readonly reason: string;
}

/** Loads the physics from beside this file. */
export function open(target?: Target): Promise<Opened>;

/** The entrance. */
export interface Physics {
    /** The light rider of the demos. */
    lightRider(): Drive;
    /** A drive of which some numbers are known; the rest becomes what is usual for its size. */
    drive(name: string, keys: string[], values: Float64Array): Drive;
    /** A drive of which every number is given, in the order of `parameters()`. */
    driveOf(name: string, values: Float64Array): Drive;
    /** Full throttle on the ground: stroke as a share of full travel (−1 … 1), slope in rad, oil in K. */
    driving(stroke: number, slope: number, oilTemperature: number): Duty;
    /** A duty that shows what a drive is like, by its key: launch, reverse, hill, … */
    namedDuty(key: string): Plan;
    /** Those duties; no units. */
    namedDuties(): WordList;
    /** Everything that describes a drive, in the order of its values. */
    parameters(): ParameterList;
    /** Everything that can be wrong. */
    faults(): FaultList;
    /** What can be followed of a whole drive; a run adds its chambers. */
    channels(): WordList;
    /** What a settled state says of itself. */
    pointQuantities(): WordList;
    /** The lines of a settled state's ledger, with the unit of power. */
    ledgerItems(): WordList;
    /** Where a chamber can stand: keys of the numbers that its port signal takes, from 0. */
    portZones(): string[];
    /** What can begin and end during a run; no units. */
    runEvents(): WordList;
    /** Keys of what is remarkable about a settled state. */
    pointEvents(): string[];
}

/** Keys with SI units and one plain line each, in one order. */
export interface WordList {
    keys(): string[];
    units(): string[];
    meanings(): string[];
}

/** The parameters of a drive and the range of each. */
export interface ParameterList extends WordList {
    lows(): Float64Array;
    highs(): Float64Array;
}

/** The faults; units and numbers are those of their severities. */
export interface FaultList extends WordList {
    /** Where in the drive: pump_block, motor_block, centre_section, make_up, bypass, control, oil, input, output, use. */
    places(): string[];
    severityMeanings(): string[];
    /** Smallest severities worth calling a fault. */
    least(): Float64Array;
    /** Middle severities of units that come back. */
    usual(): Float64Array;
    /** Largest severities considered; equal to the least where a fault is there or is not. */
    most(): Float64Array;
}

/** Why a drive cannot be, in parts, for a page's own words. One order. */
export interface Complaints {
    /** Stable names: out-of-range, radii-order, piston-leaves-bore, chamber-too-small, displacement-geometry, whole-number, viscosity-rises, torque-curve. */
    keys(): string[];
    /** Parameters at fault. */
    fields(): string[];
    given(): Float64Array;
    /** What would be right; `Number.MAX_VALUE` where there is no upper limit. */
    lows(): Float64Array;
    highs(): Float64Array;
}

/** A drive and what is wrong with it. Never changes; a change gives another. */
export interface Drive {
    name(): string;
    /** Every value, with its faults, in the order of `parameters()`. */
    values(): Float64Array;
    /** One standard deviation of every value of the healthy drive. */
    spreads(): Float64Array;
    /** Where every value of the healthy drive came from: given, fitted or typical. */
    origins(): string[];
    with(keys: string[], values: Float64Array): Drive;
    /** One fault more. */
    withFault(key: string, severity: number): Drive;
    /** What would be wrong with it; none where it can be. */
    complaintsWith(keys: string[], values: Float64Array): Complaints;
    complaintsWithFault(key: string, severity: number): Complaints;
    repaired(): Drive;
    /** Keys of its faults, oldest first, and their severities. */
    faults(): string[];
    severities(): Float64Array;
    /** Begins a run with the machine standing; tolerance 1e-6 … 1e-2, usually 1e-3. */
    startAtRest(duty: Duty, tolerance: number): Run;
    /** Begins a run in the settled state of the duty at time 0. */
    startSettled(duty: Duty, tolerance: number): Run;
    /** Begins a run in the state another has reached, at time 0: a fault that comes on the way, an engine turned off. */
    takeUp(run: Run, duty: Duty, tolerance: number): Run;
    /** The settled state under the duty's controls at a time. */
    settled(duty: Duty, time: number): Point;
}

/** One of the two rotating groups. */
export type Unit = "pump" | "motor";

/** A control over time. */
export type Control = "stroke" | "throttle" | "brake" | "bypass" | "slope" | "pull" | "ground_speed";

/** What the wheels stand on. */
export type Footing = "ground" | "lifted" | "held" | "pushed";

/** What is done to a drive over time. Never changes; a change gives another. */
export interface Duty {
    /** Another course of one control, straight between corners; times in s must not fall. */
    line(control: Control, times: Float64Array, values: Float64Array): Duty;
    engineRuns(): Duty;
    engineOff(): Duty;
    /** The input shaft turns at a speed. */
    inputTurns(speed: number): Duty;
    footing(footing: Footing): Duty;
    oilTemperature(kelvin: number): Duty;
    ambientPressure(pascal: number): Duty;
    airTemperature(kelvin: number): Duty;
}

/** A duty with its beginning and its end. */
export interface Plan {
    duty(): Duty;
    duration(): number;
    /** Begins a run of a drive as the plan says. */
    begin(drive: Drive, tolerance: number): Run;
}

/** A run in progress. */
export interface Run {
    /**
     * What it can tell of itself: the channels; then of every chamber of pump and motor `pump_chamber_1_pressure`, `_position` of its
     * piston, `_from_side_a`, `_from_side_b`, `_leak` and `_port` (see `portZones()`).
     */
    signals(): WordList;
    /** Present values in the order of `signals()`. */
    values(): Float64Array;
    /** Present value of one signal by its place in `signals()`. */
    value(signal: number): number;
    pumpPistons(): number;
    motorPistons(): number;
    time(): number;
    /** Goes on to a time in steps of its own choice; false when it could not. */
    advance(until: number): boolean;
    /** From now on under another duty's controls over time, whose times are those of the run; the rest stays as it began. */
    redirect(duty: Duty): void;
    /** Goes on until a shaft has turned by an angle, or for at most a time; false when it could not. */
    turn(unit: Unit, angle: number, within: number): boolean;
    /** The step it would choose now. */
    nextStep(): number;
    /** Takes one step of at most a length; false when it could not. */
    step(length: number): boolean;
    /** Takes steps of given lengths; after each a row: time, then all signals. */
    steps(lengths: Float64Array): Float64Array;
    /** Goes on to a time; even rows of time and the chosen signals, the present state first. */
    trace(keys: string[], until: number, interval: number): Float64Array;
    failed(): boolean;
    /** Steps taken, steps taken back, oil that appeared from or vanished to nowhere over all oil in the loop. */
    account(): Float64Array;
    /** Events from a number on, four numbers each: time, place in `runEvents()`, 1 begins or 0 ends, how long it lasted. */
    events(from: number): Float64Array;
    /** Three numbers a kind of event: how often it began, when it first did, how long it lasted in all. */
    eventTotals(): Float64Array;
}

/** A settled state, or the best that was found. */
export interface Point {
    converged(): boolean;
    /** Worst balance over its magnitudes. */
    residual(): number;
    /** What to try when it did not converge. */
    advice(): string;
    /** Its quantities in the order of `pointQuantities()`. */
    values(): Float64Array;
    /** Four numbers an item, in the order of `ledgerItems()`: flow into A, into B, into the gallery, power taken. */
    ledger(): Float64Array;
    /** Keys of what is remarkable. */
    events(): string[];
}
