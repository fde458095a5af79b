/** Walks the eye round the drive: mouse, touch and keyboard; a drag that began on the control arm moves the arm instead. */
import { Spherical, Vector3 } from "three";

const CLICK = 5; // px: less is a click, more a drag

/**
 * @typedef {object} Deeds
 * @property {() => void} moved the eye has moved
 * @property {() => void} rested the eye has come to rest
 * @property {(x: number, y: number) => void} clicked px on the canvas
 * @property {(x: number, y: number) => void} hovered
 * @property {() => void} left
 * @property {(x: number, y: number) => boolean} grasped true when a handle is under it
 * @property {(x: number, y: number) => void} pulled the handle
 * @property {() => void} released
 */

export class Orbit {
    /**
     * @param {HTMLCanvasElement} canvas
     * @param {import("three").PerspectiveCamera} camera
     * @param {Deeds} deeds
     */
    constructor(canvas, camera, deeds) {
        this.canvas = canvas;
        this.camera = camera;
        this.deeds = deeds;
        this.target = new Vector3();
        this.size = 300; // mm: what fills the picture
        /** @type {Map<number, { x: number, y: number }>} */
        this.fingers = new Map();
        this.travelled = 0;
        this.handle = false;
        this.resting = 0;
        canvas.addEventListener("pointerdown", (event) => this.#down(event));
        canvas.addEventListener("pointermove", (event) => this.#move(event));
        for (const end of /** @type {const} */ (["pointerup", "pointercancel"])) canvas.addEventListener(end, (event) => this.#up(event));
        canvas.addEventListener("pointerleave", () => deeds.left());
        canvas.addEventListener("contextmenu", (event) => event.preventDefault());
        canvas.addEventListener(
            "wheel",
            (event) => {
                event.preventDefault();
                this.zoom(Math.exp(event.deltaY * (event.deltaMode === 1 ? 0.04 : 0.0012)));
            },
            { passive: false },
        );
    }

    /** @param {PointerEvent} event */
    #place(event) {
        const box = this.canvas.getBoundingClientRect();
        return { x: event.clientX - box.left, y: event.clientY - box.top };
    }

    /** @param {PointerEvent} event */
    #down(event) {
        this.canvas.setPointerCapture(event.pointerId);
        const at = this.#place(event);
        this.fingers.set(event.pointerId, at);
        if (this.fingers.size === 1) {
            this.travelled = 0;
            this.handle = event.button === 0 && this.deeds.grasped(at.x, at.y);
        } else {
            this.handle = false;
            this.travelled = CLICK + 1;
        }
    }

    /** @param {PointerEvent} event */
    #move(event) {
        const at = this.#place(event);
        const before = this.fingers.get(event.pointerId);
        if (!before) {
            this.deeds.hovered(at.x, at.y);
            return;
        }
        const [dx, dy] = [at.x - before.x, at.y - before.y];
        this.travelled += Math.abs(dx) + Math.abs(dy);
        if (this.handle) this.deeds.pulled(at.x, at.y);
        else if (this.travelled <= CLICK) return;
        else if (this.fingers.size > 1) this.#pinch(event.pointerId, at);
        else if (event.buttons > 1 || event.shiftKey) this.pan(dx, dy);
        else this.turn(-dx * 0.0065, -dy * 0.0065);
        this.fingers.set(event.pointerId, at);
    }

    /** Two fingers: apart is nearer, together moved is moved. @param {number} id @param {{ x: number, y: number }} at */
    #pinch(id, at) {
        const other = [...this.fingers].find(([each]) => each !== id);
        const before = this.fingers.get(id);
        if (!other || !before) return;
        const [, still] = other;
        const old = Math.hypot(before.x - still.x, before.y - still.y);
        const now = Math.hypot(at.x - still.x, at.y - still.y);
        if (now > 10) this.zoom(old / now);
        this.pan((at.x - before.x) / 2, (at.y - before.y) / 2);
    }

    /** @param {PointerEvent} event */
    #up(event) {
        const at = this.fingers.get(event.pointerId);
        this.fingers.delete(event.pointerId);
        if (!at) return;
        if (this.handle) {
            this.handle = false;
            this.deeds.released();
        } else if (this.travelled <= CLICK && event.type === "pointerup") this.deeds.clicked(at.x, at.y);
    }

    /** @param {number} sideways rad @param {number} upwards rad */
    turn(sideways, upwards) {
        const arm = this.camera.position.clone().sub(this.target);
        const place = new Spherical().setFromVector3(arm);
        place.theta += sideways;
        place.phi = Math.max(0.02, Math.min(Math.PI - 0.02, place.phi + upwards));
        this.camera.position.setFromSpherical(place).add(this.target);
        this.#changed();
    }

    /** @param {number} dx px @param {number} dy px */
    pan(dx, dy) {
        const distance = this.camera.position.distanceTo(this.target);
        const pixel = (2 * distance * Math.tan((this.camera.fov * Math.PI) / 360)) / Math.max(1, this.canvas.clientHeight);
        const right = new Vector3().setFromMatrixColumn(this.camera.matrix, 0).multiplyScalar(-dx * pixel);
        const up = new Vector3().setFromMatrixColumn(this.camera.matrix, 1).multiplyScalar(dy * pixel);
        this.target.add(right).add(up);
        this.camera.position.add(right).add(up);
        this.#changed();
    }

    /** @param {number} factor of the distance */
    zoom(factor) {
        const arm = this.camera.position.clone().sub(this.target);
        const distance = Math.max(this.size * 0.12, Math.min(this.size * 12, arm.length() * factor));
        this.camera.position.copy(arm.setLength(distance).add(this.target));
        this.#changed();
    }

    #changed() {
        this.camera.lookAt(this.target);
        this.camera.updateMatrixWorld();
        this.deeds.moved();
        clearTimeout(this.resting);
        this.resting = window.setTimeout(() => this.deeds.rested(), 350);
    }

    /** @param {KeyboardEvent} event @returns {boolean} whether it was for the eye */
    key(event) {
        const step = event.shiftKey ? 40 : 0.12;
        /** @type {Record<string, () => void>} */
        const keys = {
            ArrowLeft: () => (event.shiftKey ? this.pan(step, 0) : this.turn(-step, 0)),
            ArrowRight: () => (event.shiftKey ? this.pan(-step, 0) : this.turn(step, 0)),
            ArrowUp: () => (event.shiftKey ? this.pan(0, step) : this.turn(0, -step)),
            ArrowDown: () => (event.shiftKey ? this.pan(0, -step) : this.turn(0, step)),
            "+": () => this.zoom(0.85),
            "=": () => this.zoom(0.85),
            "-": () => this.zoom(1.18),
        };
        const deed = event.ctrlKey || event.metaKey || event.altKey ? undefined : keys[event.key];
        deed?.();
        return !!deed;
    }
}
