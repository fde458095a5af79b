/**
 * What follows when one measure of a rotating group is changed: displacement, pistons, pitch circle and plate angle belong together,
 *
 *     V = 2 · N · (π/4 d²) · R · tan α
 *
 * with V displacement (m³/rev), N pistons, d their diameter (m), R pitch radius (m), α full swash angle (rad). A measure changed alone would
 * describe a group that cannot be built, and the physics refuses it.
 */

/** Radii on the port face, which stand and fall with the pitch circle. */
const RADII = ["landInner", "kidneyInner", "kidneyOuter", "landOuter"];
/** Pistons closer than this share of their distance leave no wall between bores. Common practice, no source. */
const FULLEST = 0.95;

/** Measures that bring others along. */
const MEASURES = ["displacement", "pistonCount", "pistonDiameter", "pitchRadius", "fullSwashAngle"];

/**
 * The change asked for, with everything that follows from it.
 * @param {string} key parameter, for example pump.pistonCount
 * @param {number} value SI
 * @param {(key: string) => number} now present value of a parameter, SI
 * @returns {Record<string, number>}
 */
export function following(key, value, now) {
    const [unit, measure] = key.split(".");
    if ((unit !== "pump" && unit !== "motor") || !MEASURES.includes(measure)) return { [key]: value };
    const of = (/** @type {string} */ name) => now(`${unit}.${name}`);
    const [pistons, diameter, radius, angle, displacement] = [of("pistonCount"), of("pistonDiameter"), of("pitchRadius"), of("fullSwashAngle"), of("displacement")];
    /** @type {Record<string, number>} */
    const changed = { [key]: value };
    /** @param {string} name @param {number} to */
    const set = (name, to) => { changed[`${unit}.${name}`] = to; };
    /** The whole face grows with its pitch circle. @param {number} scale */
    const grow = (scale) => {
        set("pitchRadius", radius * scale);
        for (const name of RADII) set(name, of(name) * scale);
    };
    if (measure === "pistonCount") {
        // The same displacement from another number of pistons that stand as close: R³ ~ 1 / (N sin²(π/N)).
        const scale = Math.cbrt((pistons * Math.sin(Math.PI / pistons) ** 2) / (value * Math.sin(Math.PI / value) ** 2));
        grow(scale);
        set("pistonDiameter", (diameter * scale * Math.sin(Math.PI / value)) / Math.sin(Math.PI / pistons));
        set("chamberMidVolume", (of("chamberMidVolume") * pistons) / value);
        set("engagedLength", of("engagedLength") * scale);
    } else if (measure === "displacement") {
        const scale = Math.cbrt(value / displacement);
        grow(scale);
        set("pistonDiameter", diameter * scale);
        set("chamberMidVolume", (of("chamberMidVolume") * value) / displacement);
        set("engagedLength", of("engagedLength") * scale);
    } else {
        const by = measure === "pistonDiameter" ? (value / diameter) ** 2 : measure === "pitchRadius" ? value / radius : Math.tan(value) / Math.tan(angle);
        if (measure === "pitchRadius") grow(value / radius);
        set("displacement", displacement * by);
        set("chamberMidVolume", of("chamberMidVolume") * by);
    }
    return changed;
}

/**
 * Whether the pistons have room beside each other.
 * @param {number} pistons
 * @param {number} diameter m
 * @param {number} radius m
 */
export const fits = (pistons, diameter, radius) => diameter <= FULLEST * 2 * radius * Math.sin(Math.PI / pistons);
