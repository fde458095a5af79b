/**
 * Draws the machines of a frame with one eye: builds them from their descriptions, moves them by their states, cuts, opens and takes them
 * apart as the gaze says. Draws only when something has changed, coarser while it moves when the machine is slow, fine when it rests.
 */
import { Box3, LinearSRGBColorSpace, PerspectiveCamera, Raycaster, Scene, Vector2, Vector3, WebGLRenderer } from "three";
import { buildDrive } from "./drive.js";
import { lookAt } from "./looking.js";
import { Palette } from "./materials.js";
import { Now } from "./now.js";
import { Pace } from "./pace.js";
import { EXAGGERATION } from "./sizes.js";

/** @typedef {import("../types.js").Frame} Frame */
/** @typedef {import("../types.js").Gaze} Gaze */
/** @typedef {import("../types.js").Hand} Hand */
/** @typedef {import("./model.js").Model} Model */

const BETWEEN_BUILDS = 400; // ms

/** @typedef {{ model: Model, used: Map<string, number>, scene: Scene, time: number, box: Box3 }} Drawn */

export class View {
    /** @param {HTMLCanvasElement} canvas @param {Element} host whose style gives the colours @param {readonly string[]} parameterKeys */
    constructor(canvas, host, parameterKeys) {
        this.canvas = canvas;
        this.host = host;
        this.parameterKeys = parameterKeys;
        const wanted = { alpha: false, antialias: !isSoftware(), powerPreference: /** @type {const} */ ("high-performance"), stencil: false };
        const context = /** @type {WebGL2RenderingContext | null} */ (canvas.getContext("webgl2", wanted)); // made here because three would ask for a see-through one, dearer to put on the page
        if (!context) throw new Error("no WebGL 2");
        this.renderer = new WebGLRenderer({ canvas, context });
        this.renderer.outputColorSpace = LinearSRGBColorSpace; // all colours are sRGB numbers already: nothing is to be done to them
        this.renderer.info.autoReset = false;
        this.camera = new PerspectiveCamera(24, 1, 5, 20000);
        this.target = new Vector3();
        this.palette = new Palette(host);
        /** @type {Drawn[]} */
        this.machines = [];
        /** @type {Gaze | null} */
        this.gaze = null;
        this.tooFast = false;
        this.dirty = true;
        this.pace = new Pace(this);
        this.box = new Box3();
        this.ray = new Raycaster();
        /** Called after every picture. */
        this.onDrawn = () => {};
        this.trouble = "";
        this.told = "";
        this.builtAt = 0;
        /** @type {Hand | null} */
        this.hand = null;
    }

    /** Whether two drives stand one above the other rather than side by side. */
    get stacked() {
        return this.machines.length > 1 && this.canvas.clientHeight > this.canvas.clientWidth;
    }

    /** What the reader must know about the picture: keys of words with their values. @returns {[string, ...(string | number)[]][]} */
    notes() {
        /** @type {[string, ...(string | number)[]][]} */
        const notes = [];
        if (this.tooFast) notes.push(["scene.fast"]);
        if (this.trouble) notes.push(["scene.trouble"]);
        notes.push(["scene.gaps", EXAGGERATION.faceGap, EXAGGERATION.boreGap]);
        return notes;
    }

    resized() {
        this.pace.size = "";
        this.draw();
    }

    /** Whether the drive shown has a part. @param {string} part */
    has(part) {
        return !!this.machines[0]?.model.items.some((item) => item.part === part && item.bodies.length);
    }

    /** The picture as it stands. @returns {Promise<Blob>} */
    picture() {
        this.setRatio(2);
        this.pace.size = "";
        this.render();
        return new Promise((done, fail) => this.canvas.toBlob((blob) => (blob ? done(blob) : fail(new Error("no picture"))), "image/png"));
    }

    /** The page's colours have changed. */
    recolour() {
        this.palette = new Palette(this.host);
        for (const drawn of this.machines) drawn.model.dispose();
        this.machines = [];
        this.told = "";
    }

    /** @param {Frame} frame @param {Hand} hand */
    update(frame, hand) {
        const told = `${frame.time}/${frame.bench}/${frame.machines.length}`;
        if (told === this.told && hand === this.hand && this.machines.length) return false; // the machine stands: nothing new to draw
        this.told = told;
        this.hand = hand;
        let rebuilt = false;
        const tooFast = [];
        frame.machines.forEach((state, i) => {
            let drawn = this.machines[i];
            const parameter = (/** @type {string} */ key) => state.parameters[this.parameterKeys.indexOf(key)];
            const other = !drawn || [...drawn.used].some(([key, value]) => parameter(key) !== value);
            // a slider being dragged asks for many pictures: one at a time
            if (other && drawn && performance.now() - this.builtAt < BETWEEN_BUILDS) this.told = "";
            else if (other) {
                drawn?.model.dispose();
                drawn = this.#build(parameter, drawn?.time ?? frame.time);
                this.machines[i] = drawn;
                this.builtAt = performance.now();
                rebuilt = true;
            }
            const now = new Now(state, this.parameterKeys, hand, { time: frame.time, last: drawn.time, pace: frame.pace });
            for (const move of drawn.model.movers) move(now);
            drawn.time = frame.time;
            if (now.tooFast) tooFast.push(i);
        });
        for (const gone of this.machines.splice(frame.machines.length)) gone.model.dispose();
        this.tooFast = tooFast.length > 0;
        this.trouble = frame.machines[0]?.trouble ?? "";
        if (rebuilt) this.box = this.machines[0].box;
        if (this.gaze) this.look(this.gaze);
        this.draw();
        return rebuilt;
    }

    /** @param {(key: string) => number} parameter @param {number} time */
    #build(parameter, time) {
        const { model, used } = buildDrive(parameter, this.palette);
        const scene = new Scene();
        scene.background = this.palette.paper;
        scene.add(model.root);
        return { model, used, scene, time, box: boxOf(model) };
    }

    /** @param {Gaze} gaze */
    look(gaze) {
        this.gaze = gaze;
        for (const drawn of this.machines) lookAt(drawn.model, drawn.box, gaze, this.camera);
        this.draw();
    }

    /** Something is to be drawn anew. */
    draw() {
        this.dirty = true;
        this.pace.wake();
    }

    /** Now, at the present size. */
    render() {
        this.dirty = false;
        const { renderer, canvas } = this;
        const width = canvas.clientWidth;
        const height = canvas.clientHeight;
        if (!width || !height || !this.machines.length) return;
        const count = this.machines.length;
        const { stacked } = this;
        const [w, h] = count === 1 ? [width, height] : stacked ? [width, height / 2] : [width / 2, height];
        this.camera.aspect = w / h;
        this.camera.updateProjectionMatrix();
        renderer.info.reset();
        renderer.setScissorTest(count > 1);
        this.machines.forEach((drawn, i) => {
            const [x, y] = stacked ? [0, (count - 1 - i) * h] : [i * w, 0];
            renderer.setViewport(x, y, w, h);
            renderer.setScissor(x, y, w, h);
            const distance = this.camera.position.distanceTo(this.target);
            const pixel = (2 * distance * Math.tan((this.camera.fov * Math.PI) / 360)) / (h * renderer.getPixelRatio());
            for (const material of drawn.model.looks.all) material.uniforms.look.value.w = pixel;
            renderer.render(drawn.scene, this.camera);
        });
        this.onDrawn();
    }

    /** @param {number} ratio of drawn to shown pixels */
    setRatio(ratio) {
        const { clientWidth, clientHeight } = this.canvas;
        if (!clientWidth || !clientHeight) return;
        this.renderer.setPixelRatio(ratio);
        this.renderer.setSize(clientWidth, clientHeight, false);
    }

    /** The part under a point of the canvas, px, or null. @param {number} x @param {number} y */
    pick(x, y) {
        const width = this.canvas.clientWidth;
        const height = this.canvas.clientHeight;
        const count = this.machines.length;
        if (!count) return null;
        const { stacked } = this;
        const [w, h] = count === 1 ? [width, height] : stacked ? [width, height / 2] : [width / 2, height];
        const which = Math.min(count - 1, stacked ? Math.floor(y / h) : Math.floor(x / w));
        const drawn = this.machines[which];
        const [px, py] = stacked ? [x, y - which * h] : [x - which * w, y];
        this.ray.setFromCamera(new Vector2((2 * px) / w - 1, 1 - (2 * py) / h), this.camera);
        const cut = drawn.model.looks.cut.value;
        const normal = new Vector3(cut.x, cut.y, cut.z);
        const bodies = drawn.model.items
            .filter((item) => item.group.visible)
            .flatMap((item) => item.bodies.filter((body) => body.visible && !body.userData.drop));
        const hits = this.ray.intersectObjects(bodies, false);
        const seen = hits.filter((hit) => hit.point.dot(normal) <= cut.w || !drawn.model.looks.cutting);
        // what is seen through is not hit while something solid stands behind it
        const solid = seen.find((hit) => hit.object.userData.item.seenThrough === false);
        const best = solid ?? seen[0];
        return best ? { part: String(best.object.userData.part), handle: !!best.object.userData.handle, model: drawn.model } : null;
    }

    /** Where a part is seen, as shares of the picture; null when it is not. @param {string} part */
    anchor(part) {
        const drawn = this.machines[0];
        const item = drawn?.model.items.find((each) => each.part === part && each.shown && each.bodies.length && !each.bodies[0].userData.drop);
        if (!item) return null;
        const point = new Vector3();
        item.group.updateWorldMatrix(true, true);
        const box = new Box3().setFromObject(item.bodies[0]);
        box.getCenter(point).project(this.camera);
        if (point.z > 1 || Math.abs(point.x) > 1 || Math.abs(point.y) > 1) return null;
        const share = { x: (point.x + 1) / 2, y: (1 - point.y) / 2 };
        if (this.machines.length > 1) {
            if (this.canvas.clientHeight > this.canvas.clientWidth) share.y /= 2;
            else share.x /= 2;
        }
        return share;
    }

    /**
     * What is drawn, machine by machine, read back from the objects: pumpPistons and motorPistons (m out of mid stroke), pumpTilt and motorTilt
     * (rad), pumpAngle, motorAngle, motorShaft, pulley (rad, within a turn), axleTurn and wheelTurn (rad), groundShift (m), pumpChambers,
     * motorChambers, passageA, passageB, gallery (red, green, blue 0 … 1), checkA, checkB, relief-a, … (share of full lift).
     */
    drawn() {
        return this.machines.map(({ model }) => Object.fromEntries(Object.entries(model.readings).map(([key, read]) => [key, read()])));
    }

    dispose() {
        this.pace.stop();
        for (const drawn of this.machines) drawn.model.dispose();
        this.machines = [];
        this.renderer.dispose();
    }
}

/** The drive's own size, without wheels and ground, mm. @param {Model} model */
function boxOf(model) {
    const s = model.sizes;
    const box = s.case;
    const x = Math.max(s.gears.largest, s.motorX + box.towerHalfX) + box.flange + s.wall;
    return new Box3(new Vector3(-s.gears.largest - box.flange - s.wall, box.bottom - s.wall, box.zLow), new Vector3(x, s.input.shaftTop, box.zHigh));
}

/** Drawn by the processor? Then every pixel counts. */
function isSoftware() {
    const gl = document.createElement("canvas").getContext("webgl2");
    const name = gl?.getExtension("WEBGL_debug_renderer_info") ? String(gl.getParameter(0x9246)) : "";
    gl?.getExtension("WEBGL_lose_context")?.loseContext();
    return /swiftshader|llvmpipe|software|basic render/i.test(name);
}
