/**
 * One machine as three.js objects: every body is tagged with its part (core/parts.js) and knows where it goes when the drive is taken apart.
 * The files beside this one add the bodies; view.js moves them.
 */
import { Color, DynamicDrawUsage, Group, InstancedBufferAttribute, InstancedMesh, LineSegments, Matrix4, Mesh, Vector3 } from "three";
import { Build } from "./build.js";

/** @typedef {import("three").Object3D} Object3D */
/** @typedef {import("three").Material} Material */
/** @typedef {import("three").ShaderMaterial} ShaderMaterial */
/** @typedef {import("./sizes.js").Sizes} Sizes */

/** @typedef {"x" | "y" | "z" | "ball"} Whole its axis, or a ball */

/**
 * @typedef {object} PartLook
 * @property {number} [tone] 0 light … 1 dark
 * @property {number} [warmth]
 * @property {number} [hatch] rad
 * @property {Vector3 | number[]} [away] where it goes when all is apart, mm, in its parent's frame
 * @property {boolean} [housing] seen through when the drive is ghosted
 * @property {boolean} [inside] hidden by what holds it, unless that is seen through, cut or taken apart
 * @property {boolean} [phantom] an adjacent part: drawn in lines, hardly filled
 * @property {Whole} [whole] not cut along its axis: shafts, pins, balls (ISO 128 practice)
 * @property {Object3D} [parent]
 * @property {readonly [number, number, number]} [colour] instead of the tone, sRGB 0 … 1; of many bodies
 * @property {boolean} [aside] never what is pointed at; of many bodies
 */

/**
 * @typedef {object} Item
 * @property {string} part
 * @property {Group} group
 * @property {Vector3} home
 * @property {Vector3} away
 * @property {boolean} housing
 * @property {boolean} phantom
 * @property {ShaderMaterial[]} fills
 * @property {ShaderMaterial[]} lines
 * @property {Object3D[]} bodies
 * @property {Object3D[]} strays bodies that stand in another frame than the part's own
 * @property {boolean} inside
 * @property {boolean} shown whether the gaze lets it be seen
 * @property {boolean} oil
 * @property {number} fade 0 … 1: further share of its opacity, for what turns too fast to be seen
 * @property {boolean} seenThrough
 */

export class Model {
    /** @param {Sizes} sizes @param {import("./materials.js").Looks} looks */
    constructor(sizes, looks) {
        this.sizes = sizes;
        this.looks = looks;
        this.root = new Group();
        /** @type {Item[]} */
        this.items = [];
        /** Called with every state, in the order added. @type {((now: import("./now.js").Now) => void)[]} */
        this.movers = [];
        /** What the drawing says of itself, read back from the objects. @type {Record<string, () => unknown>} */
        this.readings = {};
    }

    /** A moving or standing frame of its own. @param {Object3D} parent */
    frame(parent, x = 0, y = 0, z = 0) {
        const group = new Group();
        group.position.set(x, y, z);
        parent.add(group);
        return group;
    }

    /** @param {string} part @param {PartLook} look @returns {Item} */
    item(part, look = {}) {
        const group = new Group();
        (look.parent ?? this.root).add(group);
        const away = Array.isArray(look.away) ? new Vector3(...look.away) : (look.away ?? new Vector3());
        /** @type {Item} */
        const item = {
            part,
            group,
            home: new Vector3(),
            away,
            housing: !!look.housing,
            phantom: !!look.phantom,
            inside: !!look.inside,
            shown: true,
            fills: [],
            lines: [],
            bodies: [],
            strays: [],
            oil: false,
            fade: 1,
            seenThrough: false,
        };
        this.items.push(item);
        return item;
    }

    /** Where a part stands when nothing is apart. @param {Item} item */
    place(item, x = 0, y = 0, z = 0) {
        item.home.set(x, y, z);
        item.group.position.copy(item.home);
        return item;
    }

    /**
     * A solid part from a build.
     * @param {string} part @param {(build: Build) => void} shape @param {PartLook} look
     */
    solid(part, shape, look = {}) {
        const item = this.item(part, look);
        this.body(item, shape, look);
        return item;
    }

    /** One more body of a part. @param {Item} item @param {(build: Build) => void} shape @param {PartLook} look @param {Object3D} [parent] */
    body(item, shape, look, parent = item.group) {
        const build = new Build();
        shape(build);
        const fill = this.looks.solid(this.looks.palette.tone(look.tone ?? 0.3, look.warmth ?? 0), look.hatch ?? Math.PI / 4);
        const mesh = new Mesh(build.geometry(), fill);
        this.#tag(mesh, item, look.whole);
        parent.add(mesh);
        item.fills.push(fill);
        if (build.lines.length) {
            const ink = this.looks.line(look.phantom ? 0.75 : 0.85);
            const lines = new LineSegments(build.lineGeometry(), ink);
            lines.raycast = () => {};
            parent.add(lines);
            item.lines.push(ink);
            mesh.userData.lines = lines;
        }
        return mesh;
    }

    /**
     * Many equal bodies of one part, each with a matrix of its own.
     * @param {Item} item @param {number} count @param {(build: Build) => void} shape @param {PartLook} look
     */
    many(item, count, shape, look = {}) {
        const build = new Build();
        shape(build);
        const fill = this.looks.solid(this.looks.palette.tone(look.tone ?? 0.2, look.warmth ?? 0), look.hatch ?? Math.PI / 4);
        const mesh = this.#instanced(item, build.geometry(), fill, count);
        this.#tag(mesh, item, look.whole);
        item.fills.push(fill);
        if (look.colour) fill.uniforms.tone.value = new Color(...look.colour);
        mesh.userData.drop = look.aside ?? false;
        /** @type {InstancedMesh | null} */
        let lines = null;
        if (build.lines.length) {
            const ink = this.looks.line(0.8);
            lines = this.#instanced(item, build.lineGeometry(), ink, count);
            Object.assign(lines, { isMesh: false, isLine: true, isLineSegments: true }); // three draws instanced lines when told so
            lines.raycast = () => {};
            lines.instanceMatrix = mesh.instanceMatrix;
            item.lines.push(ink);
        }
        return mesh;
    }

    /** @param {Item} item @param {import("three").BufferGeometry} geometry @param {Material} material @param {number} count */
    #instanced(item, geometry, material, count) {
        const mesh = new InstancedMesh(geometry, material, count);
        mesh.instanceMatrix.setUsage(DynamicDrawUsage);
        mesh.frustumCulled = false;
        const still = new Matrix4();
        for (let i = 0; i < count; i++) mesh.setMatrixAt(i, still);
        item.group.add(mesh);
        return mesh;
    }

    /** A body of oil. @param {Item} item @param {(build: Build) => void} shape @param {Object3D} [parent] */
    oil(item, shape, parent = item.group) {
        const { geometry, fill } = this.#oil(item, shape);
        const mesh = new Mesh(geometry, fill);
        this.#tag(mesh, item);
        parent.add(mesh);
        if (parent !== item.group) item.strays.push(mesh);
        return mesh;
    }

    /** @param {Item} item @param {(build: Build) => void} shape */
    #oil(item, shape) {
        const build = new Build();
        shape(build);
        const fill = this.looks.oil(build.isSwept);
        item.fills.push(fill);
        item.oil = true;
        return { geometry: build.geometry(), fill };
    }

    /** Many equal bodies of oil with colours of their own. @param {Item} item @param {number} count @param {(build: Build) => void} shape */
    manyOil(item, count, shape) {
        const { geometry, fill } = this.#oil(item, shape);
        geometry.setAttribute("band", new InstancedBufferAttribute(new Float32Array(count), 1));
        const mesh = this.#instanced(item, geometry, fill, count);
        mesh.instanceColor = new InstancedBufferAttribute(new Float32Array(3 * count).fill(1), 3);
        this.#tag(mesh, item);
        return mesh;
    }

    /** @param {Object3D} body @param {Item} item @param {Whole} [whole] */
    #tag(body, item, whole) {
        body.userData.part = item.part;
        body.userData.item = item;
        body.userData.whole = whole;
        item.bodies.push(body);
    }

    /**
     * Draws parts as a haze while they turn too far between two pictures to be followed.
     * @param {Item[]} items @param {string} speed key of the signal, rad/s @param {number} repeat angle after which they look the same @param {number} [share] of that speed
     */
    hazes(items, speed, repeat, share = 1) {
        let hazy = false;
        this.moves((now) => {
            const step = Math.abs(now.signal(speed) * share * now.elapsed);
            if (now.elapsed > 0) hazy = now.blurs(step, hazy ? repeat * 0.7 : repeat);
            for (const item of items) item.fade = hazy ? 0.3 : 1;
            if (hazy) now.tooFast = true;
        });
        return () => hazy;
    }

    /** @param {(now: import("./now.js").Now) => void} mover */
    moves(mover) {
        this.movers.push(mover);
    }

    /** Everything drawn from a drive goes when the drive goes. */
    dispose() {
        this.root.traverse((object) => {
            const body = /** @type {Mesh} */ (object);
            if (body.geometry) body.geometry.dispose();
            if (object instanceof InstancedMesh) object.dispose();
        });
        this.looks.dispose();
        this.root.removeFromParent();
    }
}
