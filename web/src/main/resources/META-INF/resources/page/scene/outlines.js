/** Outlines in the plane: circles, kidneys, rounded hulls, teeth. Points are (x, z), millimetres; angle 0 is +z, a quarter turn is +x. */

/** @typedef {import("./build.js").Pair} Pair */

/** @param {number} radius @param {number} angle @returns {Pair} */
export const polar = (radius, angle) => [radius * Math.sin(angle), radius * Math.cos(angle)];

/** @param {number} radius @returns {Pair[]} */
export function circle(radius, segments = 32, x = 0, z = 0) {
    return Array.from({ length: segments }, (_, i) => {
        const [u, v] = polar(radius, (2 * Math.PI * i) / segments);
        return /** @type {Pair} */ ([x + u, z + v]);
    });
}

/**
 * A kidney: an arc slot of given radii about an angle, its ends round. `span` is from end to end.
 * @param {number} inner @param {number} outer @param {number} centre @param {number} span @returns {Pair[]}
 */
export function kidney(inner, outer, centre, span, segments = 16) {
    const middle = (inner + outer) / 2;
    const half = (outer - inner) / 2;
    const reach = Math.max(0, span / 2 - half / middle); // centre of the end arcs
    /** @type {Pair[]} */
    const points = [];
    if (reach < 1e-3) return circle(half, 4 * 4, ...polar(middle, centre));
    for (let i = 0; i <= segments; i++) points.push(polar(outer, centre - reach + (2 * reach * i) / segments));
    roundEnd(points, middle, half, centre + reach, 0);
    for (let i = segments; i >= 0; i--) points.push(polar(inner, centre - reach + (2 * reach * i) / segments));
    roundEnd(points, middle, half, centre - reach, Math.PI);
    return points;
}

/** @param {Pair[]} points @param {number} middle @param {number} half @param {number} angle @param {number} turn */
function roundEnd(points, middle, half, angle, turn) {
    const [x, z] = polar(middle, angle);
    for (let i = 1; i < 5; i++) {
        const [u, v] = polar(half, angle + turn + (Math.PI * i) / 5);
        points.push([x + u, z + v]);
    }
}

/** A sector of a ring. @param {number} inner @param {number} outer @param {number} from @param {number} to @returns {Pair[]} */
export function sector(inner, outer, from, to, segments = 12) {
    const steps = Array.from({ length: segments + 1 }, (_, i) => from + ((to - from) * i) / segments);
    return [...steps.map((angle) => polar(outer, angle)), ...steps.reverse().map((angle) => polar(inner, angle))];
}

/** A rectangle with rounded corners. @param {number} x0 @param {number} z0 @param {number} x1 @param {number} z1 @param {number} radius */
export const roundBox = (x0, z0, x1, z1, radius) =>
    hull(
        [
            [x0 + radius, z0 + radius],
            [x1 - radius, z0 + radius],
            [x1 - radius, z1 - radius],
            [x0 + radius, z1 - radius],
        ],
        radius,
    );

/** The rounded hull about points: every point of it keeps `offset` away from them. @param {Pair[]} points @param {number} offset @returns {Pair[]} */
export function hull(points, offset) {
    return convex(points.flatMap(([x, z]) => circle(offset, 24, x, z)));
}

/** Monotone chain. @param {Pair[]} points @returns {Pair[]} */
function convex(points) {
    const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
    const half = (/** @type {Pair[]} */ list) => {
        /** @type {Pair[]} */
        const chain = [];
        for (const p of list) {
            while (chain.length > 1 && cross(chain[chain.length - 2], chain[chain.length - 1], p) <= 1e-9) chain.pop();
            chain.push(p);
        }
        chain.pop();
        return chain;
    };
    return [...half(sorted), ...half(sorted.reverse())];
}

/** @param {Pair} o @param {Pair} a @param {Pair} b */
const cross = (o, a, b) => (a[0] - o[0]) * (b[1] - o[1]) - (a[1] - o[1]) * (b[0] - o[0]);

/** Radius between the teeth: what a bore must keep away from. @param {number} pitchRadius @param {number} teeth */
export const rootOf = (pitchRadius, teeth) => Math.max(pitchRadius - (2.4 * pitchRadius) / teeth, 0.3 * pitchRadius);

/**
 * A gear's outline: straight-sided teeth about the pitch circle, some of them broken off.
 * @param {number} pitchRadius
 * @param {number} teeth
 * @returns {Pair[]}
 */
export function gear(pitchRadius, teeth, broken = 0) {
    const tooth = (2 * pitchRadius) / teeth; // module
    const root = rootOf(pitchRadius, teeth);
    const tip = pitchRadius + tooth;
    const step = (2 * Math.PI) / teeth;
    return Array.from({ length: teeth }, (_, i) => [
        polar(root, (i - 0.3) * step),
        polar(i < broken ? root + (0.5 + 0.5 * (i % 2)) * tooth : tip, (i - 0.13) * step),
        polar(i < broken ? root + 0.3 * tooth : tip, (i + 0.13) * step),
        polar(root, (i + 0.3) * step),
    ]).flat();
}
