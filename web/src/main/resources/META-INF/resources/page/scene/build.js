/**
 * Collects closed solids and their drawing lines as plain arrays, in millimetres: turned, extruded and swept bodies, all wound outwards, so
 * that a cut through them shows their inside as material (materials.js). Lines stand where a draughtsman draws them: at sharp corners.
 */
import { BufferGeometry, Float32BufferAttribute, Matrix3, Matrix4, ShapeUtils, Vector2, Vector3 } from "three";

/** @typedef {[number, number]} Pair */

const SHARP = Math.cos((28 * Math.PI) / 180); // corners flatter than this are drawn round
const FULL_TURN = 2 * Math.PI;

export class Build {
    constructor() {
        /** @type {number[]} */ this.positions = [];
        /** @type {number[]} */ this.normals = [];
        /** @type {number[]} */ this.along = [];
        /** @type {number[]} */ this.lines = [];
        this.matrix = new Matrix4();
        this.turning = new Matrix3();
        this.point = new Vector3();
        this.isSwept = false;
    }

    /** Where the next bodies stand. @param {Matrix4} matrix */
    at(matrix) {
        this.matrix.copy(matrix);
        this.turning.getNormalMatrix(matrix);
        return this;
    }

    /** Back to the part's own frame. */
    home() {
        return this.at(new Matrix4());
    }

    /**
     * @param {number} x @param {number} y @param {number} z
     * @param {number} nx @param {number} ny @param {number} nz
     */
    corner(x, y, z, nx, ny, nz, along = 0) {
        const p = this.point.set(x, y, z).applyMatrix4(this.matrix);
        this.positions.push(p.x, p.y, p.z);
        p.set(nx, ny, nz).applyMatrix3(this.turning).normalize();
        this.normals.push(p.x, p.y, p.z);
        this.along.push(along);
    }

    /** @param {number[]} a three numbers @param {number[]} b three numbers */
    line(a, b) {
        for (const end of [a, b]) {
            const p = this.point.set(end[0], end[1], end[2]).applyMatrix4(this.matrix);
            this.lines.push(p.x, p.y, p.z);
        }
    }

    /** A circle of lines about y. @param {number} radius @param {number} y */
    circle(radius, y, segments = 36) {
        for (let i = 0; i < segments; i++) {
            const a = (FULL_TURN * i) / segments;
            const b = (FULL_TURN * (i + 1)) / segments;
            this.line([radius * Math.sin(a), y, radius * Math.cos(a)], [radius * Math.sin(b), y, radius * Math.cos(b)]);
        }
    }

    /**
     * A closed profile of (radius, height) turned about y.
     * @param {Pair[]} profile
     */
    turned(profile, segments = 32, drawn = true) {
        const points = area(profile) < 0 ? [...profile].reverse() : profile;
        const count = points.length;
        /** @type {Pair[]} */
        const outward = points.map(([r, y], i) => {
            const [r2, y2] = points[(i + 1) % count];
            const length = Math.hypot(r2 - r, y2 - y) || 1;
            return [(y2 - y) / length, (r - r2) / length];
        });
        for (let i = 0; i < count; i++) {
            const before = outward[(i + count - 1) % count];
            const own = outward[i];
            const after = outward[(i + 1) % count];
            const [r1, y1] = points[i];
            const [r2, y2] = points[(i + 1) % count];
            const n1 = soft(before, own) ? middle(before, own) : own;
            const n2 = soft(own, after) ? middle(own, after) : own;
            for (let j = 0; j < segments; j++) {
                const a = (FULL_TURN * j) / segments;
                const b = (FULL_TURN * (j + 1)) / segments;
                const [sa, ca, sb, cb] = [Math.sin(a), Math.cos(a), Math.sin(b), Math.cos(b)];
                if (r1 > 1e-6) {
                    this.corner(r1 * sa, y1, r1 * ca, n1[0] * sa, n1[1], n1[0] * ca);
                    this.corner(r1 * sb, y1, r1 * cb, n1[0] * sb, n1[1], n1[0] * cb);
                    this.corner(r2 * sa, y2, r2 * ca, n2[0] * sa, n2[1], n2[0] * ca);
                }
                if (r2 > 1e-6) {
                    this.corner(r2 * sa, y2, r2 * ca, n2[0] * sa, n2[1], n2[0] * ca);
                    this.corner(r1 * sb, y1, r1 * cb, n1[0] * sb, n1[1], n1[0] * cb);
                    this.corner(r2 * sb, y2, r2 * cb, n2[0] * sb, n2[1], n2[0] * cb);
                }
            }
            if (drawn && r1 > 1e-6 && !soft(before, own)) this.circle(r1, y1, Math.min(segments, 24));
        }
        return this;
    }

    /** A tube or disc about y. @param {number} inner @param {number} outer @param {number} from @param {number} to */
    ring(inner, outer, from, to, segments = 32) {
        return this.turned(
            [
                [inner, from],
                [outer, from],
                [outer, to],
                [inner, to],
            ],
            segments,
        );
    }

    /**
     * An outline of (x, z) with holes, extruded along y; the far end may be scaled about a centre (bevels).
     * @param {Pair[]} outline @param {Pair[][]} holes @param {number} from @param {number} to
     */
    extruded(outline, holes, from, to, scale = 1, /** @type {boolean | "loops" | "far"} */ drawn = true) {
        const outer = area(outline) < 0 ? [...outline].reverse() : outline;
        const inner = holes.map((hole) => (area(hole) > 0 ? [...hole].reverse() : hole));
        for (const loop of [outer, ...inner]) this.#walls(loop, from, to, scale, drawn);
        const flat = [outer, ...inner].flat();
        const faces = ShapeUtils.triangulateShape(
            outer.map(([x, z]) => new Vector2(x, z)),
            inner.map((hole) => hole.map(([x, z]) => new Vector2(x, z))),
        );
        for (const [a, b, c] of faces) {
            for (const i of [a, b, c]) this.corner(flat[i][0], from, flat[i][1], 0, -1, 0);
            for (const i of [a, c, b]) this.corner(flat[i][0] * scale, to, flat[i][1] * scale, 0, 1, 0);
        }
        return this;
    }

    /** @param {Pair[]} loop @param {number} from @param {number} to @param {number} scale @param {boolean | "loops" | "far"} drawn */
    #walls(loop, from, to, scale, drawn) {
        const count = loop.length;
        /** @type {Pair[]} */
        const outward = loop.map(([x, z], i) => {
            const [x2, z2] = loop[(i + 1) % count];
            const length = Math.hypot(x2 - x, z2 - z) || 1;
            return [(z2 - z) / length, (x - x2) / length];
        });
        for (let i = 0; i < count; i++) {
            const before = outward[(i + count - 1) % count];
            const own = outward[i];
            const after = outward[(i + 1) % count];
            const [x1, z1] = loop[i];
            const [x2, z2] = loop[(i + 1) % count];
            const n1 = soft(before, own) ? middle(before, own) : own;
            const n2 = soft(own, after) ? middle(own, after) : own;
            this.corner(x1, from, z1, n1[0], 0, n1[1]);
            this.corner(x1 * scale, to, z1 * scale, n1[0], 0, n1[1]);
            this.corner(x2, from, z2, n2[0], 0, n2[1]);
            this.corner(x2, from, z2, n2[0], 0, n2[1]);
            this.corner(x1 * scale, to, z1 * scale, n1[0], 0, n1[1]);
            this.corner(x2 * scale, to, z2 * scale, n2[0], 0, n2[1]);
            if (!drawn) continue;
            if (drawn !== "far") this.line([x1, from, z1], [x2, from, z2]);
            this.line([x1 * scale, to, z1 * scale], [x2 * scale, to, z2 * scale]);
            if (drawn === true && !soft(before, own)) this.line([x1, from, z1], [x1 * scale, to, z1 * scale]);
        }
    }

    /** A box. @param {number[]} low three numbers @param {number[]} high three numbers */
    box(low, high) {
        const outline = /** @type {Pair[]} */ ([
            [low[0], low[2]],
            [high[0], low[2]],
            [high[0], high[2]],
            [low[0], high[2]],
        ]);
        return this.extruded(outline, [], low[1], high[1]);
    }

    /**
     * A round bar along a path; `along` counts its length from the start, for what flows in it.
     * @param {Vector3[]} path @param {number} radius
     */
    swept(path, radius, sides = 12, drawn = false) {
        const rings = framesAlong(path);
        let length = 0;
        this.isSwept = true;
        const at = (/** @type {number} */ i, /** @type {number} */ j) => {
            const angle = (FULL_TURN * j) / sides;
            const n = rings[i].side.clone().multiplyScalar(Math.cos(angle)).addScaledVector(rings[i].up, Math.sin(angle));
            return { n, p: path[i].clone().addScaledVector(n, radius) };
        };
        for (let i = 0; i + 1 < path.length; i++) {
            const next = length + path[i].distanceTo(path[i + 1]);
            for (let j = 0; j < sides; j++) {
                const [a, b, c, d] = [at(i, j), at(i, j + 1), at(i + 1, j), at(i + 1, j + 1)];
                for (const [v, s] of /** @type {const} */ ([
                    [a, length],
                    [b, length],
                    [c, next],
                    [c, next],
                    [b, length],
                    [d, next],
                ])) {
                    this.corner(v.p.x, v.p.y, v.p.z, v.n.x, v.n.y, v.n.z, s);
                }
            }
            length = next;
        }
        for (const [i, sign] of /** @type {const} */ ([
            [0, -1],
            [path.length - 1, 1],
        ])) {
            const t = rings[i].forward;
            for (let j = 0; j < sides; j++) {
                const [a, b] = sign > 0 ? [at(i, j), at(i, j + 1)] : [at(i, j + 1), at(i, j)];
                for (const p of [path[i], a.p, b.p]) this.corner(p.x, p.y, p.z, sign * t.x, sign * t.y, sign * t.z, i ? length : 0);
                if (drawn) this.line(a.p.toArray(), b.p.toArray());
            }
        }
        return this;
    }

    /** Corners that are equal in all are kept once: a processor that draws shades each of them. */
    geometry() {
        const columns = this.isSwept ? [this.positions, this.normals, this.along] : [this.positions, this.normals];
        const { index, kept } = keptOnce(columns, [FINE, FINE * 0.1, FINE], this.along.length);
        const geometry = new BufferGeometry();
        geometry.setIndex(index);
        geometry.setAttribute("position", new Float32BufferAttribute(kept[0], 3));
        geometry.setAttribute("normal", new Float32BufferAttribute(kept[1], 3));
        if (this.isSwept) geometry.setAttribute("along", new Float32BufferAttribute(kept[2], 1));
        geometry.computeBoundingSphere();
        return geometry;
    }

    lineGeometry() {
        const { index, kept } = keptOnce([this.lines], [FINE], this.lines.length / 3);
        const geometry = new BufferGeometry();
        geometry.setIndex(index);
        geometry.setAttribute("position", new Float32BufferAttribute(kept[0], 3));
        return geometry;
    }
}

const FINE = 500; // steps a mm: corners nearer than this are the same

/**
 * Rows of numbers without repeats, and where each row went.
 * @param {number[][]} columns each with its numbers row by row @param {number[]} fine steps a unit of each column @param {number} count rows
 */
function keptOnce(columns, fine, count) {
    const widths = columns.map((column) => column.length / count);
    const width = widths.reduce((sum, each) => sum + each, 0);
    const rounded = new Int32Array(count * width);
    let from = 0;
    columns.forEach((column, c) => {
        const own = widths[c];
        for (let row = 0; row < count; row++)
            for (let j = 0; j < own; j++) rounded[row * width + from + j] = Math.round(column[row * own + j] * fine[c]);
        from += own;
    });
    const size = 2 ** Math.ceil(Math.log2(count * 2 + 2));
    const table = new Int32Array(size).fill(-1);
    const index = new Array(count);
    /** @type {number[]} first row of each kept one */
    const first = [];
    for (let row = 0; row < count; row++) {
        let hash = 17;
        for (let j = row * width; j < (row + 1) * width; j++) hash = (Math.imul(hash, 0x01000193) ^ rounded[j]) | 0;
        let slot = (hash ^ (hash >>> 15)) & (size - 1);
        while (table[slot] >= 0 && !same(rounded, width, first[table[slot]], row)) slot = (slot + 1) & (size - 1);
        if (table[slot] < 0) {
            table[slot] = first.length;
            first.push(row);
        }
        index[row] = table[slot];
    }
    const kept = columns.map((column, c) => {
        const own = widths[c];
        const rows = new Array(first.length * own);
        first.forEach((row, i) => {
            for (let j = 0; j < own; j++) rows[i * own + j] = column[row * own + j];
        });
        return rows;
    });
    return { index, kept };
}

/** @param {Int32Array} rows @param {number} width @param {number} a @param {number} b */
function same(rows, width, a, b) {
    for (let j = 0; j < width; j++) if (rows[a * width + j] !== rows[b * width + j]) return false;
    return true;
}

/** Twice the area of a loop; positive when it turns from the first axis to the second. @param {Pair[]} loop */
function area(loop) {
    let sum = 0;
    loop.forEach(([x, y], i) => {
        const [x2, y2] = loop[(i + 1) % loop.length];
        sum += x * y2 - x2 * y;
    });
    return sum;
}

/** @param {Pair} a @param {Pair} b */
const soft = (a, b) => a[0] * b[0] + a[1] * b[1] > SHARP;

/** @param {Pair} a @param {Pair} b @returns {Pair} */
function middle(a, b) {
    const [x, y] = [a[0] + b[0], a[1] + b[1]];
    const length = Math.hypot(x, y) || 1;
    return [x / length, y / length];
}

/** A frame at every point of a path that does not twist. @param {Vector3[]} path */
function framesAlong(path) {
    /** @type {{ forward: Vector3, side: Vector3, up: Vector3 }[]} */
    const frames = [];
    for (let i = 0; i < path.length; i++) {
        const forward = path[Math.min(i + 1, path.length - 1)]
            .clone()
            .sub(path[Math.max(i - 1, 0)])
            .normalize();
        const last = frames[i - 1];
        const side = last ? last.side.clone() : Math.abs(forward.y) < 0.9 ? new Vector3(0, 1, 0) : new Vector3(1, 0, 0);
        side.addScaledVector(forward, -side.dot(forward)).normalize();
        frames.push({ forward, side, up: forward.clone().cross(side) });
    }
    return frames;
}
