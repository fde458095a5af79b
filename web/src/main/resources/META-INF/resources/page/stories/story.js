/**
 * A story: frozen states of the drive in an order, each with a name, words and marks on the picture. This is what is saved, sent and
 * later taught with; `story.schema.json` says the same to other programs.
 *
 * Words may hold live values: {pressure_a} becomes what the machine shows at that moment, {sound:ground_speed} what the sound one beside it
 * shows. So a story never states a number that the drive does not give.
 */

/**
 * @typedef {import("../types.js").Bench} Bench
 * @typedef {import("../types.js").Gaze} Gaze
 *
 * @typedef {object} Mark a note on the picture
 * @property {string} part the part its line leads to; empty for a note without a line
 * @property {number} x share of the picture's width where the note stands, 0 … 1
 * @property {number} y share of its height, 0 … 1
 * @property {string} text
 *
 * @typedef {object} StoryState
 * @property {string} name
 * @property {string} words paragraphs are parted by an empty line
 * @property {Bench} bench what is computed
 * @property {Partial<Gaze>} look how it is looked at; only LOOKS are kept
 * @property {"rest" | "settled"} from what the machine does when the state opens: begins from standstill, or is as it settles
 * @property {readonly Mark[]} marks
 *
 * @typedef {object} Story
 * @property {string} title
 * @property {readonly StoryState[]} states
 */

/** First line of a story file: says what it is and in which form. */
export const KIND = "swashlight-story";
export const FORM = 1;

/** What of a gaze belongs to a state; units, theme and language belong to whoever looks. */
export const LOOKS = /** @type {const} */ (["pace", "running", "part", "apart", "lowerHalf", "upperHalf", "overturned", "section",
    "isolated", "ghosted", "camera"]);

/** No story needs more; a file that claims to is a mistake. */
const MOST_STATES = 200;
const MOST_MARKS = 40;
const LONGEST_TEXT = 4000;

/** @returns {Story} */
export const emptyStory = () => ({ title: "", states: [] });

/**
 * The present moment as a state.
 * @param {string} name
 * @param {Bench} bench
 * @param {Gaze} gaze
 * @returns {StoryState}
 */
export function freeze(name, bench, gaze) {
    /** @type {Record<string, unknown>} */
    const look = {};
    for (const key of LOOKS) look[key] = structuredClone(gaze[key]);
    return { name, words: "", bench: structuredClone(bench), look, from: "settled", marks: [] };
}

/**
 * @param {Story} story
 * @returns {string} a file that reads well and compares well, a newline at its end
 */
export const write = (story) => `${JSON.stringify({ kind: KIND, form: FORM, ...story }, null, 2)}\n`;

/**
 * Reads a story file.
 * @param {string} text
 * @param {StoryLimits} limits what this page knows
 * @returns {Story}
 * @throws {StoryFault} with everything that is wrong, each with its place in the file
 */
export function read(text, limits) {
    let root;
    try {
        root = JSON.parse(text);
    } catch (failure) {
        throw new StoryFault([{ where: "", what: "not-json", detail: String(/** @type {Error} */ (failure).message) }]);
    }
    const check = new Check(limits);
    const story = check.story(root);
    if (check.faults.length > 0) throw new StoryFault(check.faults);
    return story;
}

/**
 * @typedef {object} StoryLimits
 * @property {readonly string[]} drives
 * @property {readonly string[]} parts
 * @property {readonly string[]} parameters
 * @property {readonly string[]} faults
 *
 * @typedef {{ where: string, what: string, detail: string }} Fault `what` is a word key below stories.fault
 */

/** Everything wrong with a story file. */
export class StoryFault extends Error {
    /** @param {readonly Fault[]} faults */
    constructor(faults) {
        super(faults.map((each) => `${each.where}: ${each.what} ${each.detail}`).join("\n"));
        this.name = "StoryFault";
        this.faults = faults;
    }
}

/** Reads a tree and notes what is wrong where; what comes out is only used when nothing was. */
class Check {
    /** @param {StoryLimits} limits */
    constructor(limits) {
        this.limits = limits;
        /** @type {Fault[]} */
        this.faults = [];
    }

    /** @param {unknown} tree @returns {Story} */
    story(tree) {
        const root = this.object(tree, "");
        if (root.kind !== KIND) this.fault("kind", "kind", KIND);
        if (root.form !== FORM) this.fault("form", "form", String(FORM));
        const states = this.list(root.states, "states", MOST_STATES).map((each, place) => this.state(each, `states[${place}]`));
        return { title: this.text(root.title, "title"), states };
    }

    /** @param {unknown} tree @param {string} where @returns {StoryState} */
    state(tree, where) {
        const state = this.object(tree, where);
        return {
            name: this.text(state.name, `${where}.name`),
            words: this.text(state.words ?? "", `${where}.words`),
            bench: this.bench(state.bench, `${where}.bench`),
            look: this.look(state.look ?? {}, `${where}.look`),
            from: /** @type {"rest" | "settled"} */ (this.oneOf(state.from ?? "settled", ["rest", "settled"], `${where}.from`)),
            marks: this.list(state.marks ?? [], `${where}.marks`, MOST_MARKS).map((each, place) => this.mark(each, `${where}.marks[${place}]`)),
        };
    }

    /** @param {unknown} tree @param {string} where @returns {Mark} */
    mark(tree, where) {
        const mark = this.object(tree, where);
        return {
            part: mark.part === "" || mark.part === undefined ? "" : this.oneOf(mark.part, this.limits.parts, `${where}.part`),
            x: this.number(mark.x, 0, 1, `${where}.x`),
            y: this.number(mark.y, 0, 1, `${where}.y`),
            text: this.text(mark.text, `${where}.text`),
        };
    }

    /** @param {unknown} tree @param {string} where @returns {Bench} */
    bench(tree, where) {
        const bench = this.object(tree, where);
        const hand = this.object(bench.hand, `${where}.hand`);
        const at = `${where}.hand`;
        return {
            drive: this.oneOf(bench.drive, this.limits.drives, `${where}.drive`),
            changes: this.numbers(bench.changes ?? {}, this.limits.parameters, `${where}.changes`),
            faults: this.numbers(bench.faults ?? {}, this.limits.faults, `${where}.faults`),
            beside: this.truth(bench.beside ?? false, `${where}.beside`),
            hand: {
                stroke: this.number(hand.stroke, -1, 1, `${at}.stroke`),
                throttle: this.number(hand.throttle, 0, 1, `${at}.throttle`),
                brake: this.number(hand.brake, 0, 1, `${at}.brake`),
                bypass: this.number(hand.bypass, 0, 1, `${at}.bypass`),
                slope: this.number(hand.slope, -1, 1, `${at}.slope`),
                pull: this.number(hand.pull, -1e5, 1e5, `${at}.pull`),
                engine: /** @type {"runs" | "off"} */ (this.oneOf(hand.engine, ["runs", "off"], `${at}.engine`)),
                footing: /** @type {"ground"} */ (this.oneOf(hand.footing, ["ground", "lifted", "held", "pushed"], `${at}.footing`)),
                groundSpeed: this.number(hand.groundSpeed, -20, 20, `${at}.groundSpeed`),
                oilTemperature: this.number(hand.oilTemperature, 233.15, 423.15, `${at}.oilTemperature`),
            },
        };
    }

    /** @param {unknown} tree @param {string} where @returns {Partial<Gaze>} */
    look(tree, where) {
        const look = this.object(tree, where);
        /** @type {Record<string, unknown>} */
        const kept = {};
        for (const key of ["running", "lowerHalf", "upperHalf", "overturned", "isolated", "ghosted"]) {
            if (key in look) kept[key] = this.truth(look[key], `${where}.${key}`);
        }
        if ("pace" in look) kept.pace = this.number(look.pace, 1e-3, 1, `${where}.pace`);
        if ("apart" in look) kept.apart = this.number(look.apart, 0, 1, `${where}.apart`);
        if ("part" in look) kept.part = look.part === "" ? "" : this.oneOf(look.part, this.limits.parts, `${where}.part`);
        if ("camera" in look) {
            kept.camera = this.list(look.camera, `${where}.camera`, 7).map((each, place) => this.number(each, -1e3, 1e3, `${where}.camera[${place}]`));
        }
        if ("section" in look) {
            const section = this.object(look.section, `${where}.section`);
            kept.section = {
                axis: this.oneOf(section.axis, ["none", "x", "y", "z"], `${where}.section.axis`),
                at: this.number(section.at, -1, 1, `${where}.section.at`),
            };
        }
        return kept;
    }

    /** @param {string} where @param {string} what @param {string} detail */
    fault(where, what, detail) {
        this.faults.push({ where, what, detail });
    }

    /** @param {unknown} value @param {string} where @returns {Record<string, unknown>} */
    object(value, where) {
        if (typeof value === "object" && value !== null && !Array.isArray(value)) return /** @type {Record<string, unknown>} */ (value);
        this.fault(where, "object", "");
        return {};
    }

    /** @param {unknown} value @param {string} where @param {number} most @returns {unknown[]} */
    list(value, where, most) {
        if (Array.isArray(value) && value.length <= most) return value;
        this.fault(where, "list", String(most));
        return [];
    }

    /** @param {unknown} value @param {string} where */
    text(value, where) {
        if (typeof value === "string" && value.length <= LONGEST_TEXT) return value;
        this.fault(where, "text", String(LONGEST_TEXT));
        return "";
    }

    /** @param {unknown} value @param {string} where */
    truth(value, where) {
        if (typeof value === "boolean") return value;
        this.fault(where, "truth", "");
        return false;
    }

    /** @param {unknown} value @param {number} least @param {number} most @param {string} where */
    number(value, least, most, where) {
        if (typeof value === "number" && value >= least && value <= most) return value;
        this.fault(where, "number", `${least} … ${most}`);
        return least;
    }

    /** @param {unknown} value @param {readonly string[]} known @param {string} where */
    oneOf(value, known, where) {
        if (typeof value === "string" && known.includes(value)) return value;
        this.fault(where, "oneOf", known.length > 12 ? `${known.slice(0, 12).join(", ")}, …` : known.join(", "));
        return known[0];
    }

    /** @param {unknown} value @param {readonly string[]} known @param {string} where @returns {Record<string, number>} */
    numbers(value, known, where) {
        /** @type {Record<string, number>} */
        const read = {};
        for (const [key, number] of Object.entries(this.object(value, where))) {
            this.oneOf(key, known, `${where}.${key}`);
            read[key] = this.number(number, -1e15, 1e15, `${where}.${key}`);
        }
        return read;
    }
}
