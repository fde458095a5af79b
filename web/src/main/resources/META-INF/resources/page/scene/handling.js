/** What hand and keyboard do to the scene: the eye, selection, the control arm. Changes go to the store, never straight to the picture. */
import { Plane, Vector2, Vector3 } from "three";
import { parts } from "../core/parts.js";
import { Orbit } from "./orbit.js";

/** @typedef {import("./view.js").View} View */
/** @typedef {import("../core/store.js").Store} Store */

const USUAL = new Vector3(0.82, 0.42, 0.5).normalize(); // whence a drive is first looked at
const FILLS = 1.04; // a little is left about it

export class Handling {
    /** @param {View} view @param {HTMLCanvasElement} canvas @param {Store} store @param {(key: string) => string} words */
    constructor(view, canvas, store, words) {
        this.view = view;
        this.store = store;
        this.words = words;
        this.canvas = canvas;
        this.placed = "";
        this.easing = 0;
        this.hoverAsked = 0;
        this.orbit = new Orbit(canvas, view.camera, {
            moved: () => {
                cancelAnimationFrame(this.easing);
                view.draw();
            },
            rested: () => this.#keepEye(),
            clicked: (x, y) => this.#clicked(x, y),
            hovered: (x, y) => this.#hovered(x, y),
            left: () => store.setGaze({ pointed: "" }),
            grasped: (x, y) => !!view.pick(x, y)?.handle,
            pulled: (x, y) => this.#pulled(x, y),
            released: () => {},
        });
        view.target = this.orbit.target;
    }

    /** Another drive, perhaps of another size. */
    rebuilt() {
        const size = this.view.box.getSize(new Vector3()).length();
        const other = Math.abs(size - this.orbit.size) > 0.02 * size;
        this.orbit.size = size;
        if (other || !this.placed) this.gazed(true);
    }

    /** The picture has another shape: the first look fits it again; a place the reader chose stays. */
    refit() {
        if (this.placed && this.store.gaze.camera.length === 0) this.gazed(true);
    }

    /** Follows the store's camera when someone else has moved it. */
    gazed(anew = false) {
        const kept = this.store.gaze.camera.join() || "usual";
        if (!anew && kept === this.placed) return;
        const camera = this.store.gaze.camera;
        if (camera.length === 6)
            this.#goTo(
                new Vector3(camera[0], camera[1], camera[2]).multiplyScalar(1000),
                new Vector3(camera[3], camera[4], camera[5]).multiplyScalar(1000),
            );
        else this.#goTo(...this.#usual());
        this.placed = kept;
    }

    /** @returns {[Vector3, Vector3]} */
    #usual() {
        const box = this.view.box;
        const target = box.getCenter(new Vector3());
        const { clientWidth: w, clientHeight: h } = this.canvas;
        const count = this.view.machines.length || 1;
        const aspect = Math.max(0.3, (w || 1) / (h || 1)) / (count > 1 ? (this.view.stacked ? 1 / count : count) : 1);
        const half = Math.tan((this.view.camera.fov * Math.PI) / 360);
        const right = new Vector3(0, 1, 0).cross(USUAL).normalize();
        const up = USUAL.clone().cross(right);
        // as near as lets every corner of the drive into the picture
        let distance = 0;
        for (let i = 0; i < 8; i++) {
            const corner = new Vector3(i & 1 ? box.max.x : box.min.x, i & 2 ? box.max.y : box.min.y, i & 4 ? box.max.z : box.min.z).sub(target);
            const wide = Math.max(Math.abs(corner.dot(right)) / (half * aspect), Math.abs(corner.dot(up)) / half);
            distance = Math.max(distance, wide + corner.dot(USUAL));
        }
        return [target.clone().addScaledVector(USUAL, distance * FILLS), target];
    }

    /** @param {Vector3} position @param {Vector3} target */
    #goTo(position, target) {
        cancelAnimationFrame(this.easing);
        const { camera } = this.view;
        const still = matchMedia("(prefers-reduced-motion: reduce)").matches || camera.position.lengthSq() < 1;
        const from = { position: camera.position.clone(), target: this.orbit.target.clone() };
        const began = performance.now();
        const step = () => {
            const share = still ? 1 : Math.min(1, (performance.now() - began) / 450);
            const eased = share * share * (3 - 2 * share);
            camera.position.lerpVectors(from.position, position, eased);
            this.orbit.target.lerpVectors(from.target, target, eased);
            camera.lookAt(this.orbit.target);
            camera.updateMatrixWorld();
            this.view.draw();
            if (share < 1) this.easing = requestAnimationFrame(step);
        };
        step();
    }

    #keepEye() {
        const round = (/** @type {number} */ mm) => Math.round(mm * 10) / 1e4;
        const { camera } = this.view;
        const eye = [...camera.position.toArray(), ...this.orbit.target.toArray()].map(round);
        this.placed = eye.join();
        this.store.setGaze({ camera: eye });
    }

    /** @param {number} x @param {number} y */
    #clicked(x, y) {
        const part = this.view.pick(x, y)?.part ?? "";
        const known = parts.some((each) => each.key === part) ? part : "";
        this.store.setGaze({ part: known === this.store.gaze.part ? "" : known });
    }

    /** @param {number} x @param {number} y */
    #hovered(x, y) {
        if (this.hoverAsked) return;
        this.hoverAsked = requestAnimationFrame(() => {
            this.hoverAsked = 0;
            const hit = this.view.pick(x, y);
            this.canvas.classList.toggle("handle", !!hit?.handle);
            const known = hit && parts.some((each) => each.key === hit.part) ? hit.part : "";
            this.store.setGaze({ pointed: known });
        });
    }

    /** The arm follows the finger in its own plane; the stroke asked for is its angle over the full one. @param {number} x @param {number} y */
    #pulled(x, y) {
        const drawn = this.view.machines[0];
        if (!drawn) return;
        const { model } = drawn;
        const s = model.sizes;
        const width = this.canvas.clientWidth / (this.view.machines.length > 1 && !this.view.stacked ? 2 : 1);
        const height = this.canvas.clientHeight / (this.view.stacked ? 2 : 1);
        this.view.ray.setFromCamera(new Vector2((2 * (x % width)) / width - 1, 1 - (2 * (y % height)) / height), this.view.camera);
        const pivot = model.root.localToWorld(new Vector3(s.motorX + s.case.towerHalfX, s.faceY + s.pump.plateHeight, s.pumpZ));
        const normal = new Vector3(1, 0, 0).applyQuaternion(model.root.quaternion);
        const at = this.view.ray.ray.intersectPlane(new Plane().setFromNormalAndCoplanarPoint(normal, pivot), new Vector3());
        if (!at) return;
        const local = model.root.worldToLocal(at).sub(model.root.worldToLocal(pivot));
        const angle = Math.atan2(-local.z, Math.max(1, local.y)); // the arm stands upright at neutral
        const full = s.pump.angle;
        const stroke = Math.max(-1, Math.min(1, angle / full));
        this.store.setBench({ hand: { stroke: Math.round(stroke * 100) / 100 } }, this.words("scene.arm"));
    }

    /** @param {KeyboardEvent} event @returns {boolean} whether it was for the scene */
    key(event) {
        const gaze = this.store.gaze;
        const here = parts.findIndex((part) => part.key === gaze.part);
        const present = (/** @type {number} */ way) => {
            for (let i = 1; i <= parts.length; i++) {
                const key = parts[((((here < 0 && way < 0 ? 0 : here) + way * i) % parts.length) + parts.length) % parts.length].key;
                if (this.view.has(key)) return key;
            }
            return "";
        };
        if (event.key === "PageDown") this.store.setGaze({ part: present(1) });
        else if (event.key === "PageUp") this.store.setGaze({ part: present(-1) });
        else if (event.key === "Escape" && gaze.part) this.store.setGaze({ part: "" });
        else if (event.key === "Home") {
            this.store.setGaze({ camera: [] });
            this.placed = "";
            this.gazed(true);
        } else return this.orbit.key(event);
        return true;
    }

    dispose() {
        cancelAnimationFrame(this.easing);
        cancelAnimationFrame(this.hoverAsked);
        clearTimeout(this.orbit.resting);
    }
}
