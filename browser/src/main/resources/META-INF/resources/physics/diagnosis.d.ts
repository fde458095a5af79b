/**
 * What the compiled diagnosis exports to a page: a case in, ranked causes out. SI throughout; every array handed over is a copy.
 *
 * A module of its own, with the physics it needs inside: a page that only shows a drive need not load it.
 */
import type { Target, WordList } from "./physics.js";

/** The diagnosis, opened. */
export interface OpenedDiagnosis {
    readonly diagnosis: Diagnosis;
    readonly target: "webassembly" | "javascript";
    /** Why JavaScript was taken; empty for WebAssembly. */
    readonly reason: string;
}

/** Loads the diagnosis from beside this file. */
export function openDiagnosis(target?: Target): Promise<OpenedDiagnosis>;

/** The entrance. */
export interface Diagnosis {
    /** A machine, nothing read yet: name, values, spreads and origins of its drive as it should be, as a `Drive` tells them. */
    machine(drive: string, values: Float64Array, spreads: Float64Array, origins: string[]): Case;
    /** What can be read; meanings are the keys. */
    readingKinds(): WordList;
    /** How a reading may have been taken. */
    conditions(): WordList;
    /** What eyes, ears and nose report. */
    looks(): string[];
    /** What a finding may call for; no units. */
    actions(): WordList;
}

/** A machine with what was read and seen. Never changes; a change gives another. */
export interface Case {
    /** One reading more; an error (one standard deviation) of 0 takes the usual one; of the conditions, what is known. */
    reading(label: string, kind: string, value: number, error: number, conditions: string[], numbers: Float64Array): Case;
    /** A dimension measured at teardown, of the part whose parameter it is. */
    part(label: string, parameter: string, value: number, error: number): Case;
    seen(look: string): Case;
    notSeen(look: string): Case;
    /** What it comes to, with the reading to take next; same seed, same answer. */
    find(seed: number): Finding;
    /** A quick look, with less care and no next reading. */
    findQuickly(seed: number): Finding;
}

/** What a case comes to. */
export interface Finding {
    words(): string;
    /** Key of the likeliest action. */
    action(): string;
    /** True when that action is as good as certain. */
    sure(): boolean;
    /** Keys of all actions, likeliest first, and their probabilities. */
    actions(): string[];
    actionProbabilities(): Float64Array;
    /** Keys of all causes, likeliest first, and their probabilities with standard errors from chance in the computing. */
    causes(): string[];
    probabilities(): Float64Array;
    errors(): Float64Array;
    /** Three severities a fault of one cause (by its place): 5 %, half, 95 % lie below; none where it has none. */
    severities(cause: number): Float64Array;
    /** Readings that pay, best first; what each is expected to tell of the action, nat, and to save less its cost (invented prices). */
    nextReadings(): string[];
    gains(): Float64Array;
    pays(): Float64Array;
    /** How many groups of causes cannot be told apart yet; keys of one group's causes, whether it matters, the cheapest reading that would tell. */
    ties(): number;
    tied(tie: number): string[];
    tieMatters(tie: number): boolean;
    separator(tie: number): string;
}
