/** What the gaze does to one machine: parts away, apart, seen through, lit; turned over; cut by a plane. */
import { InstancedMesh, Quaternion, Vector3 } from "three";

/** @typedef {import("./model.js").Model} Model */
/** @typedef {import("./model.js").Item} Item */
/** @typedef {import("../types.js").Gaze} Gaze */

/** Not housings, but with oil or springs to be seen in them. */
const SEEN_INTO = new Set([
    "pump-piston",
    "motor-piston",
    "pump-thrust-bearing",
    "motor-thrust-bearing",
    "check-a",
    "check-b",
    "gallery",
    "filter",
    "trunnion",
    "relief-a",
    "relief-b",
    "charge-pump",
    "charge-relief",
]);
const UPRIGHT = new Quaternion();
const OVER = new Quaternion().setFromAxisAngle(new Vector3(1, 0, 0), Math.PI);
const AXES = { x: new Vector3(1, 0, 0), y: new Vector3(0, 1, 0), z: new Vector3(0, 0, 1) };

/** @param {Model} model @param {import("three").Box3} box @param {Gaze} gaze @param {import("three").Camera} camera */
export function lookAt(model, box, gaze, camera) {
    const middle = box.getCenter(new Vector3());
    // turned over about the drive's own middle, so that it stays in the picture
    model.root.quaternion.copy(gaze.overturned ? OVER : UPRIGHT);
    model.root.position.copy(middle).sub(middle.clone().applyQuaternion(model.root.quaternion));
    for (const item of model.items) arrange(item, gaze);
    model.root.updateMatrixWorld();
    cut(model, box, gaze);
}

/** @param {Model} model @param {import("three").Box3} box @param {Gaze} gaze */
function cut(model, box, gaze) {
    const { axis, at } = gaze.section;
    const cutting = axis !== "none";
    if (model.looks.cutting && !cutting) for (const { body } of bodiesOf(model)) show(body, true);
    model.looks.setCutting(cutting);
    const plane = model.looks.cut.value;
    if (!cutting) {
        plane.set(1, 0, 0, 1e9);
        return;
    }
    // 0 is where a draughtsman would cut: through both shafts, in the parting plane, through the pump's axis
    const s = model.sizes;
    const middle = { x: s.motorX, y: 0, z: s.pumpZ }[axis];
    const end = at < 0 ? box.min[axis] : box.max[axis];
    const point = box.getCenter(new Vector3());
    point[axis] = middle + Math.abs(at) * (end - middle) - 0.01; // mm: between the case halves, not in the face of one
    const normal = AXES[axis].clone().applyQuaternion(model.root.quaternion);
    point.applyMatrix4(model.root.matrixWorld);
    plane.set(normal.x, normal.y, normal.z, normal.dot(point));
    const centre = new Vector3();
    for (const { body, stray } of bodiesOf(model)) {
        const { whole } = body.userData;
        const sphere = body.geometry.boundingSphere;
        const one = sphere && !(body instanceof InstancedMesh);
        if (one) centre.copy(sphere.center);
        else centre.set(0, 0, 0);
        const beyond = normal.dot(centre.applyMatrix4(body.matrixWorld)) - plane.w;
        // lengthways through a shaft, pin or ball it stays whole, as drawings have it; across, it is cut like all else
        const lengthways = !!whole && whole !== axis && Math.abs(beyond) < 0.45 * s.unit;
        // what the plane does not meet need not be asked at every pixel
        const met = !one || Math.abs(beyond) <= sphere.radius;
        if (!stray && one) show(body, lengthways || beyond <= sphere.radius);
        for (const material of [body.material, body.userData.lines?.material]) {
            if (material) model.looks.spare(/** @type {import("three").ShaderMaterial} */ (material), lengthways || (!met && beyond < 0));
        }
    }
}

/** @param {Model} model */
const bodiesOf = (model) =>
    model.items.flatMap((item) => item.bodies.map((body) => ({ body: /** @type {import("three").Mesh} */ (body), stray: item.strays.includes(body) })));

/** @param {import("three").Mesh} body @param {boolean} shown */
function show(body, shown) {
    body.visible = shown;
    if (body.userData.lines) body.userData.lines.visible = shown;
}

/** @param {Item} item @param {Gaze} gaze */
function arrange(item, gaze) {
    item.group.position.copy(item.home).addScaledVector(item.away, gaze.apart);
    const selected = item.part === gaze.part;
    const pointed = item.part === gaze.pointed;
    let shown = !(item.part === "case-lower" && !gaze.lowerHalf) && !(item.part === "case-upper" && !gaze.upperHalf);
    if ((item.part === "oil" || item.part === "magnets") && !gaze.lowerHalf) shown = item.part === "magnets";
    if (item.part === "ground" && (gaze.overturned || gaze.apart > 0.3)) shown = false;
    if (gaze.isolated && gaze.part && !selected && !(item.oil && item.part.startsWith("passage") && gaze.part.startsWith("passage"))) shown = false;
    item.shown = shown;
    const buried = item.inside && !gaze.ghosted && !gaze.isolated && gaze.apart < 0.01 && gaze.section.axis === "none";
    if (buried && !selected) shown = false;
    item.group.visible = shown;
    for (const stray of item.strays) stray.visible = shown;
    if (!shown) return;
    const ghost = gaze.ghosted && !item.oil && (!selected || item.housing);
    const fill = item.oil
        ? 1
        : item.phantom
          ? selected
              ? 0.22
              : pointed
                ? 0.1
                : 0
          : ghost
            ? item.housing
                ? selected
                    ? 0.34
                    : 0.07
                : SEEN_INTO.has(item.part)
                  ? 0.3
                  : 1
            : 1;
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
        material.uniforms.look.value.x =
            item.fade * (item.phantom ? (selected || pointed ? 0.7 : 0.22) : ghost && fill < 1 ? (item.housing ? 0.3 : 0.5) : 0.85);
    }
}
