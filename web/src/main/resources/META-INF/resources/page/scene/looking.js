/** What the gaze does to one machine: parts away, apart, seen through, lit; turned over; cut by a plane. */
import { Quaternion, Vector3 } from "three";

/** @typedef {import("./model.js").Model} Model */
/** @typedef {import("./model.js").Item} Item */
/** @typedef {import("../types.js").Gaze} Gaze */

const UPRIGHT = new Quaternion();
const OVER = new Quaternion().setFromAxisAngle(new Vector3(0, 0, 1), Math.PI);
const AXES = { x: new Vector3(1, 0, 0), y: new Vector3(0, 1, 0), z: new Vector3(0, 0, 1) };

/** @param {Model} model @param {import("three").Box3} box @param {Gaze} gaze @param {import("three").Camera} camera */
export function lookAt(model, box, gaze, camera) {
    const middle = box.getCenter(new Vector3());
    // turned over about the drive's own middle, so that it stays in the picture
    model.root.quaternion.copy(gaze.overturned ? OVER : UPRIGHT);
    model.root.position.copy(middle).sub(middle.clone().applyQuaternion(model.root.quaternion));
    model.root.updateMatrixWorld();
    cut(model, box, gaze);
    for (const item of model.items) arrange(item, gaze);
}

/** @param {Model} model @param {import("three").Box3} box @param {Gaze} gaze */
function cut(model, box, gaze) {
    const { axis, at } = gaze.section;
    const cutting = axis !== "none";
    model.looks.setCutting(cutting);
    const plane = model.looks.cut.value;
    if (!cutting) {
        plane.set(1, 0, 0, 1e9);
        return;
    }
    const half = box.getSize(new Vector3()).multiplyScalar(0.5);
    const point = box.getCenter(new Vector3()).addScaledVector(AXES[axis], at * half[axis]);
    const normal = AXES[axis].clone().applyQuaternion(model.root.quaternion);
    point.applyMatrix4(model.root.matrixWorld);
    plane.set(normal.x, normal.y, normal.z, normal.dot(point));
}

/** @param {Item} item @param {Gaze} gaze */
function arrange(item, gaze) {
    item.group.position.copy(item.home).addScaledVector(item.away, gaze.apart);
    const selected = item.part === gaze.part;
    const pointed = item.part === gaze.pointed;
    let shown = !(item.part === "case-lower" && !gaze.lowerHalf) && !(item.part === "case-upper" && !gaze.upperHalf);
    if ((item.part === "oil" || item.part === "magnets") && !gaze.lowerHalf) shown = item.part === "magnets";
    if (gaze.isolated && gaze.part && !selected && !(item.oil && item.part.startsWith("passage") && gaze.part.startsWith("passage"))) shown = false;
    item.group.visible = shown;
    if (!shown) return;
    const ghost = gaze.ghosted && !selected && !item.oil;
    const fill = item.oil ? 1 : item.phantom ? (selected || pointed ? 0.35 : 0) : ghost ? (item.housing ? 0.07 : 0.4) : 1;
    const opacity = fill * item.fade;
    item.seenThrough = opacity < 0.5;
    for (const material of item.fills) {
        material.visible = opacity > 0.02; // adjacent parts are lines only, until they are pointed at
        const look = material.uniforms.look.value;
        look.x = opacity;
        look.y = selected ? 0.42 : pointed ? 0.24 : 0;
        if (item.oil) look.y *= 0.35; // its colour is its pressure
        const clear = opacity < 0.995;
        if (material.transparent !== clear) {
            material.transparent = clear;
            material.depthWrite = !clear;
            material.needsUpdate = true;
        }
    }
    for (const material of item.lines) {
        material.transparent = true;
        material.opacity = ghost ? (item.housing ? 0.3 : 0.55) : item.phantom ? (selected || pointed ? 0.7 : 0.28) : 0.85;
    }
}
