/** From the engine to the pump: engine and belt as adjacent parts in lines, pulley with its key, fan, input shaft. About the pump's axis. */
import { Matrix4, Vector3 } from "three";
import { circle, hull, polar } from "./outlines.js";

/** @typedef {import("./model.js").Model} Model */

/** @param {Model} model @param {import("three").Object3D} pumpTurning the frame that turns with the pump */
export function addInput(model, pumpTurning) {
    const s = model.sizes;
    const i = s.input;
    const up = s.pump.blockLength * 5.6 + 3 * s.unit;
    const frame = model.frame(model.root, s.motorX, 0, s.pumpZ);
    const shaftDown = s.get("makeUp.chargeDisplacement") > 0 ? s.legBottom - 0.2 * s.unit : -0.2 * s.passage.radius;
    model.solid(
        "input-shaft",
        (b) => {
            const [low, high] = [shaftDown - s.faceY, i.shaftTop - s.faceY];
            b.turned(
                [
                    [0, low],
                    [i.shaftRadius, low],
                    [i.shaftRadius, s.pump.blockLength],
                    [i.shaftRadius * 0.94, s.pump.blockLength],
                    [i.shaftRadius * 0.94, high - 0.1 * s.unit],
                    [i.shaftRadius * 0.8, high],
                    [0, high],
                ],
                22,
            );
            for (let k = 0; k < 8; k++) {
                const [x, z] = polar(i.shaftRadius, (Math.PI * k) / 4);
                b.line([x, 0, z], [x, s.pump.blockLength, z]);
            }
            const key = s.get("belt.keyed") > 0.5 ? 1.3 : 1.02; // sheared: cut off flush with the shaft
            b.box(
                [-0.09 * s.unit, i.pulleyY - s.faceY, i.shaftRadius * 0.5],
                [0.09 * s.unit, i.pulleyY - s.faceY + i.pulleyHeight, i.shaftRadius * key],
            );
        },
        { tone: 0.15, whole: "y", parent: pumpTurning, away: [0, s.pump.blockLength * 2.9, 0] },
    );
    const pulleyTurning = model.frame(frame);
    const pulley = i.pulley;
    if (s.get("belt.keyed") < 0.5) addShearedKey(model, pulleyTurning);
    const driven = addPulley(model, pulleyTurning, {
        radius: pulley,
        bore: i.shaftRadius * 1.02,
        part: "input-pulley",
        y: i.pulleyY,
        away: [0, up, 0],
        tone: 0.3,
        phantom: false,
    });
    const fan = addFan(model, pulleyTurning, up);
    model.hazes([driven, fan], "pump_speed", (2 * Math.PI) / 3);
    addEngine(model, frame, up, pulleyTurning);
}

/**
 * @param {Model} model
 * @param {import("three").Object3D} parent
 * @param {{ radius: number, bore: number, part: string, y: number, away: number[], tone: number, phantom: boolean }} of
 */
function addPulley(model, parent, { radius, bore, part, y, away, tone, phantom }) {
    const s = model.sizes;
    const h = s.input.pulleyHeight;
    const groove = 0.42 * s.unit;
    const flange = s.input.direct;
    return model.solid(
        part,
        (b) => {
            if (flange)
                b.turned(
                    [
                        [bore, y],
                        [bore * 1.7, y],
                        [bore * 1.7, y + h * 0.6],
                        [radius, y + h * 0.6],
                        [radius, y + h],
                        [bore, y + h],
                    ],
                    30,
                );
            else
                b.turned(
                    [
                        [bore, y],
                        [bore * 2.2, y],
                        [bore * 2.2, y + h * 0.36],
                        [radius - groove, y + h * 0.36],
                        [radius + groove * 0.3, y],
                        [radius + groove * 0.3, y + 0.06 * s.unit],
                        [radius - groove * 0.7, y + h * 0.5],
                        [radius + groove * 0.3, y + h - 0.06 * s.unit],
                        [radius + groove * 0.3, y + h],
                        [radius - groove, y + h * 0.64],
                        [bore * 2.2, y + h * 0.64],
                        [bore * 2.2, y + h],
                        [bore, y + h],
                    ],
                    30,
                );
            // marks by which its turning is seen
            for (let k = 0; k < 3; k++) {
                const [x, z] = polar(radius * 0.6, (2 * Math.PI * k) / 3);
                b.at(new Matrix4().makeTranslation(x, y + h * (flange ? 1 : 0.64), z));
                b.ring(0, radius * 0.09, 0, 0.08 * s.unit, 12);
            }
            b.home();
            b.line([0, y + h * 0.65, bore * 2.2], [0, y + h * 0.65, radius - groove]);
        },
        { tone, parent, away, phantom },
    );
}

/**
 * The other half of the key stays in the pulley and goes round with it; it is seen above the hub.
 * @param {Model} model
 * @param {import("three").Object3D} parent
 */
function addShearedKey(model, parent) {
    const s = model.sizes;
    const { pulleyY, pulleyHeight, shaftRadius } = s.input;
    model.solid(
        "input-pulley",
        (b) => b.box([-0.09 * s.unit, pulleyY, shaftRadius * 1.04], [0.09 * s.unit, pulleyY + pulleyHeight * 1.25, shaftRadius * 1.34]),
        { tone: 1.2, warmth: 1, parent },
    );
}

/** @param {Model} model @param {import("three").Object3D} parent @param {number} up */
function addFan(model, parent, up) {
    const s = model.sizes;
    const { fanRadius, fanY, shaftRadius } = s.input;
    const left = s.get("heat.fanShare");
    const blades = 9;
    const whole = Math.round(blades * left); // a broken fan has lost its blades
    return model.solid(
        "fan",
        (b) => {
            b.ring(shaftRadius * 1.02, shaftRadius * 3, fanY, fanY + 0.4 * s.unit, 24);
            for (let k = 0; k < blades; k++) {
                const reach = k < whole ? fanRadius : fanRadius * 0.45;
                b.at(
                    new Matrix4()
                        .makeRotationY((2 * Math.PI * k) / blades)
                        .multiply(new Matrix4().makeTranslation(0, fanY + 0.2 * s.unit, 0))
                        .multiply(new Matrix4().makeRotationZ(0.5)),
                );
                b.extruded(
                    [
                        [-0.35 * s.unit, shaftRadius * 2.6],
                        [0.35 * s.unit, shaftRadius * 2.6],
                        [0.75 * s.unit, reach],
                        [-0.75 * s.unit, reach],
                    ],
                    [],
                    -0.04 * s.unit,
                    0.04 * s.unit,
                );
            }
            b.home();
        },
        { tone: 0.2, warmth: -0.8, parent, away: [0, up * 0.88, 0] },
    );
}

/**
 * Engine beside the drive with a belt, or above it on the same shaft.
 * @param {Model} model
 * @param {import("three").Object3D} frame
 * @param {number} up
 * @param {import("three").Object3D} pulleyTurning
 */
function addEngine(model, frame, up, pulleyTurning) {
    const s = model.sizes;
    const i = s.input;
    const y = i.pulleyY;
    const x = i.direct ? 0 : i.engineX;
    const at = model.frame(frame, x, 0, 0);
    const turning = model.frame(at);
    const base = y + i.pulleyHeight + 1.2 * s.unit;
    model.solid(
        "engine",
        (b) => {
            b.extruded(
                hull(
                    [
                        [-1.8 * s.unit, -1.6 * s.unit],
                        [2.4 * s.unit, -1.6 * s.unit],
                        [2.4 * s.unit, 1.6 * s.unit],
                        [-1.8 * s.unit, 1.6 * s.unit],
                    ],
                    0.8 * s.unit,
                ),
                [],
                base,
                base + 3.4 * s.unit,
            );
            for (let k = 0; k < 5; k++)
                b.box(
                    [-3.2 * s.unit + k * 0.05, base + (0.6 + k * 0.5) * s.unit, -1.4 * s.unit],
                    [-2.4 * s.unit, base + (0.75 + k * 0.5) * s.unit, 1.4 * s.unit],
                );
        },
        { tone: 0.02, parent: at, away: [0, up, 0], phantom: true },
    );
    model.solid("engine", (b) => b.ring(0, i.shaftRadius, y - 0.2 * s.unit, base, 16), {
        tone: 0.15,
        parent: turning,
        away: [0, up, 0],
        phantom: true,
    });
    const ratio = s.get("belt.speedRatio");
    let belt = /** @type {import("./model.js").Item | null} */ (null);
    if (!i.direct) {
        addPulley(model, turning, {
            radius: i.enginePulley,
            bore: i.shaftRadius,
            part: "input-pulley",
            y,
            away: [0, up, 0],
            tone: 0.2,
            phantom: true,
        });
        belt = addBelt(model, frame, up, y + i.pulleyHeight / 2);
    }
    let engine = 0; // turned since it was drawn, rad: the physics has the engine's speed, not its angle
    let loop = 0;
    model.moves((now) => {
        const speed = now.signal("engine_speed");
        const pump = now.signal("pump_angle");
        if (Number.isFinite(speed)) engine += speed * now.elapsed;
        turning.rotation.y = engine % (2 * Math.PI);
        const keyed = now.parameter("belt.keyed") > 0.5;
        if (Number.isFinite(pump)) pulleyTurning.rotation.y = keyed ? pump % (2 * Math.PI) : (engine * ratio) % (2 * Math.PI);
        if (belt) {
            const step = speed * i.enginePulley * now.elapsed;
            const marks = /** @type {import("three").Mesh} */ (belt.bodies[1]);
            loop += step;
            marks.userData.shift?.(loop);
            if (now.blurs(step, marks.userData.spacing)) now.tooFast = true;
        }
    });
    model.readings.pulley = () => pulleyTurning.rotation.y;
}

/**
 * A belt round both pulleys, with marks that go with it: where it slips they fall behind the pulley's.
 * @param {Model} model
 * @param {import("three").Object3D} frame
 * @param {number} up
 * @param {number} y
 */
function addBelt(model, frame, up, y) {
    const s = model.sizes;
    const i = s.input;
    const [r1, r2, distance] = [i.pulley, i.enginePulley, i.engineX];
    const loop = hull([...circle(r1, 40), ...circle(r2, 40, distance, 0)], 0.01);
    const path = [...loop, loop[0]].map(([x, z]) => new Vector3(x, y, z));
    const slack = Math.max(0, 1 - s.get("belt.capacity") / 30);
    const item = model.item("input-pulley", { parent: frame, away: [0, up, 0] });
    model.body(item, (b) => void b.swept(path, 0.2 * s.unit, 6), { tone: 0.85 + 0.2 * slack, warmth: 0.4 });
    const lengths = [0];
    for (let k = 1; k < path.length; k++) lengths.push(lengths[k - 1] + path[k].distanceTo(path[k - 1]));
    const total = lengths[lengths.length - 1];
    const count = Math.max(6, Math.round(total / (3 * s.unit)));
    const marks = model.many(
        item,
        count,
        (b) => b.box([-0.21 * s.unit, -0.21 * s.unit, -0.1 * s.unit], [0.21 * s.unit, 0.21 * s.unit, 0.1 * s.unit]),
        { tone: 0.25 },
    );
    const m = new Matrix4();
    marks.userData.spacing = total / count;
    const sign = area(loop) > 0 ? -1 : 1; // with the pulleys' own sense, about y
    marks.userData.shift = (/** @type {number} */ moved) => {
        for (let k = 0; k < count; k++) {
            const at = (((sign * moved + (k * total) / count) % total) + total) % total;
            let n = 1;
            while (lengths[n] < at) n++;
            const share = (at - lengths[n - 1]) / (lengths[n] - lengths[n - 1]);
            const p = path[n - 1].clone().lerp(path[n], share);
            const direction = path[n].clone().sub(path[n - 1]);
            m.makeRotationY(Math.atan2(direction.x, direction.z)).setPosition(p);
            marks.setMatrixAt(k, m);
        }
        marks.instanceMatrix.needsUpdate = true;
    };
    marks.userData.shift(0);
    return item;
}

/** @param {import("./build.js").Pair[]} loop */
const area = (loop) => loop.reduce((sum, [x, z], k) => sum + x * loop[(k + 1) % loop.length][1] - loop[(k + 1) % loop.length][0] * z, 0);
