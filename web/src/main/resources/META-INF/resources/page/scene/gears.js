/** From the motor to the axle: motor shaft, reduction in stages on parallel shafts, differential, axle shafts, brake. All turn about z. */
import { Matrix4 } from "three";
import { circle, gear, rootOf, roundBox } from "./outlines.js";

/** @typedef {import("./model.js").Model} Model */

const Z_AXIS = new Matrix4().makeRotationX(Math.PI / 2); // built along y, lies along z

/** @param {Model} model */
export function addGears(model) {
    const s = model.sizes;
    const g = s.gears;
    const root = model.root;
    /** Frames that turn: 0 with the motor, then one a stage. */
    const shafts = [g.motorX, ...g.stages.map((stage) => stage.wheelX)].map((x) => model.frame(root, x, 0, 0));
    shafts.forEach((shaft, i) => {
        shaft.userData.phase = i ? meshPhase(g.stages[i - 1]) : 0;
    });
    const ratios = [1];
    for (const stage of g.stages) ratios.push(-ratios[ratios.length - 1] * stage.ratio); // outside teeth turn the other way
    addMotorShaft(model, shafts[0]);
    const loss = s.get("gears.toothLoss");
    g.stages.forEach((stage, i) => {
        const toothed =
            (
                /** @type {number} */ radius,
                /** @type {number} */ teeth,
                /** @type {number} */ wanted,
                /** @type {number} */ from,
                /** @type {number} */ to,
            ) =>
            (/** @type {import("./build.js").Build} */ b) => {
                const bore = Math.min(wanted, 0.7 * rootOf(radius, teeth));
                b.at(Z_AXIS);
                b.extruded(gear(radius, teeth, Math.ceil(loss * Math.min(teeth, 14))), [circle(bore, 18)], from, to, 1, "loops");
                if (radius > 3 * bore) {
                    // web of a large gear: hub and rim stand out a little
                    b.ring(bore, bore * 1.7, to, to + 0.15 * s.unit, 20);
                }
                b.home();
            };
        const away = [0, 0, 3 * s.unit * (g.stages.length - i)];
        const small = model.solid(
            "pinion",
            toothed(stage.small, stage.teeth, (i ? g.shaftRadius : s.motor.shaftRadius) * 0.6, stage.z0 - 0.06 * s.unit, stage.z1 + 0.06 * s.unit),
            {
                tone: 0.42,
                hatch: Math.PI / 4,
                parent: shafts[i],
                away,
            },
        );
        const last = i === g.stages.length - 1;
        const bore = last ? g.axleRadius * 1.2 : g.shaftRadius * 0.9;
        const large = model.solid("gears", toothed(stage.large, stage.wheelTeeth, bore, stage.z0, stage.z1), {
            tone: 0.28,
            hatch: -Math.PI / 4,
            parent: shafts[i + 1],
            away,
        });
        model.hazes([small, large], "motor_speed", (2 * Math.PI) / stage.teeth, 1 / Math.abs(ratios[i]));
        if (last) return;
        const next = g.stages[i + 1];
        model.solid(
            "gears",
            (b) => {
                b.at(Z_AXIS);
                b.ring(0, g.shaftRadius * 0.92, Math.min(next.z0, stage.z0) - 0.9 * s.unit, Math.max(next.z1, stage.z1) + 0.7 * s.unit, 20);
                b.home();
            },
            { tone: 0.18, whole: "z", parent: shafts[i + 1], away },
        );
    });
    const axle = shafts[shafts.length - 1];
    addDifferential(model, axle);
    addAxles(model, axle);
    addBrake(model, shafts[Math.min(1, shafts.length - 1)], g.stages.length > 1);
    model.moves((now) => {
        const motor = now.signal("motor_angle");
        if (!Number.isFinite(motor)) return;
        const sound = now.parameter("gears.connected") > 0.5;
        shafts.forEach((shaft, i) => {
            shaft.rotation.z = motor / ratios[i] + shaft.userData.phase;
        });
        now.connected = sound;
    });
    model.readings.motorShaft = () => shafts[0].rotation.z;
    model.readings.axleTurn = () => axle.rotation.z - axle.userData.phase;
    return axle;
}

/** A gear of teeth at angle 0, met by a pinion with a tooth towards it, needs a gap there. @param {{ teeth: number, wheelTeeth: number }} stage */
const meshPhase = (stage) => (stage.teeth % 2 === stage.wheelTeeth % 2 ? Math.PI / stage.wheelTeeth : 0);

/** @param {Model} model @param {import("three").Object3D} frame */
function addMotorShaft(model, frame) {
    const s = model.sizes;
    const first = s.gears.stages[0];
    model.solid(
        "motor-shaft",
        (b) => {
            b.at(Z_AXIS);
            b.turned(
                [
                    [0, -s.legWall * 0.75],
                    [s.motor.shaftRadius, -s.legWall * 0.75],
                    [s.motor.shaftRadius, s.motor.blockLength],
                    [s.motor.shaftRadius * 0.92, s.motor.blockLength],
                    [s.motor.shaftRadius * 0.92, first.z1 + 0.8 * s.unit],
                    [0, first.z1 + 0.8 * s.unit],
                ],
                22,
            );
            b.home();
            // splines that carry the block
            b.at(Z_AXIS);
            for (let i = 0; i < 8; i++) {
                const angle = (Math.PI * i) / 4;
                b.line(
                    [s.motor.shaftRadius * Math.sin(angle), 0, s.motor.shaftRadius * Math.cos(angle)],
                    [s.motor.shaftRadius * Math.sin(angle), s.motor.blockLength, s.motor.shaftRadius * Math.cos(angle)],
                );
            }
            b.home();
        },
        { tone: 0.16, whole: "z", parent: frame, away: [0, 0, s.motor.blockLength * 0.9] },
    );
}

/** @param {Model} model @param {import("three").Object3D} axle */
function addDifferential(model, axle) {
    const s = model.sizes;
    const d = s.gears.differential;
    const last = s.gears.last;
    const z = last.z0 - d.length / 2;
    const frame = model.frame(axle, 0, 0, z);
    const away = [-4 * s.unit, 0, 0];
    const look = { tone: 0.3, hatch: Math.PI / 4, parent: frame, away };
    const wall = 0.2 * s.unit;
    model.solid(
        "differential",
        (b) => {
            // carrier: two cheeks joined by two bars; the bevels are seen between them
            b.at(Z_AXIS);
            for (const side of [-1, 1])
                b.ring(
                    s.gears.axleRadius * 1.15,
                    d.radius,
                    (side * d.length) / 2 - (side > 0 ? wall : 0),
                    (side * d.length) / 2 + (side > 0 ? 0 : wall),
                    30,
                );
            b.home();
            for (const side of [-1, 1])
                b.box(
                    [-0.45 * d.radius, side > 0 ? d.radius * 0.78 : -d.radius, -d.length / 2],
                    [0.45 * d.radius, side > 0 ? d.radius : -d.radius * 0.78, d.length / 2],
                );
        },
        { ...look, housing: true },
    );
    const bevel = 0.62 * d.radius;
    const teeth = 10;
    model.solid(
        "differential",
        (b) => {
            for (const side of [-1, 1]) {
                b.at(new Matrix4().makeRotationX(side > 0 ? -Math.PI / 2 : Math.PI / 2)); // side gears on the axle
                b.extruded(
                    gear(bevel, teeth),
                    [circle(Math.min(s.gears.axleRadius * 0.8, 0.7 * rootOf(bevel, teeth)), 14)],
                    -d.length * 0.42,
                    -d.length * 0.2,
                    0.55,
                    "loops",
                );
                b.at(new Matrix4().makeRotationX(side > 0 ? Math.PI : 0)); // planets on their pin
                b.extruded(
                    gear(bevel * 0.92, teeth),
                    [circle(Math.min(0.2 * s.unit, 0.7 * rootOf(bevel * 0.92, teeth)), 10)],
                    -d.radius * 0.74,
                    -d.radius * 0.36,
                    0.55,
                    "loops",
                );
            }
            b.home();
            b.ring(0, 0.19 * s.unit, -d.radius * 0.95, d.radius * 0.95, 12);
            if (s.get("gears.differentialLocked") > 0.5) {
                b.at(Z_AXIS);
                b.ring(s.gears.axleRadius, bevel * 1.1, -d.length * 0.2, d.length * 0.2, 20); // locked: the side gears are joined
                b.home();
            }
        },
        { ...look, tone: 0.5, housing: false },
    );
}

/** @param {Model} model @param {import("three").Object3D} axle */
function addAxles(model, axle) {
    const s = model.sizes;
    const { hornLow, hornHigh } = s.case;
    const z = s.gears.last.z0 - s.gears.differential.length / 2;
    const gap = 0.12 * s.unit;
    const broken = s.get("gears.connected") < 0.5;
    const far = 1.4 * s.unit + s.wheel.width * 0.75;
    for (const [from, to] of [
        [hornLow - far, z - gap],
        [z + gap, hornHigh + far],
    ]) {
        model.solid(
            "axle",
            (b) => {
                b.at(Z_AXIS);
                if (broken && from < z) {
                    // a sheared shaft: two ends that no longer meet, cut askew
                    const at = z - 2.4 * s.unit;
                    b.extruded(circle(s.gears.axleRadius, 18), [], from, at - 0.5 * s.unit, 1);
                    b.extruded(circle(s.gears.axleRadius, 7), [], at - 0.5 * s.unit, at - 0.2 * s.unit, 0.4);
                    b.extruded(circle(s.gears.axleRadius, 18), [], at, to);
                } else b.ring(0, s.gears.axleRadius, from, to, 20);
                b.home();
            },
            { tone: 0.14, whole: "z", parent: axle, away: [0, 0, from < z ? -3 * s.unit : 3 * s.unit] },
        );
    }
}

/**
 * A disc with two pads that close as the brake is applied.
 * @param {Model} model
 * @param {import("three").Object3D} shaft
 * @param {boolean} onCounterShaft
 */
function addBrake(model, shaft, onCounterShaft) {
    const s = model.sizes;
    const g = s.gears;
    const z = Math.max(...g.stages.map((stage) => stage.z1)) + (onCounterShaft ? 1.15 : 2.1) * s.unit + s.margin;
    const radius = 1.9 * s.unit;
    const thickness = 0.16 * s.unit;
    const away = [0, 0, 6.5 * s.unit];
    model.solid(
        "brake",
        (b) => {
            b.at(Z_AXIS);
            const slots = Array.from({ length: 5 }, (_, i) =>
                circle(0.22 * s.unit, 8, radius * 0.66 * Math.sin(i * 0.4 * Math.PI), radius * 0.66 * Math.cos(i * 0.4 * Math.PI)),
            );
            b.extruded(circle(radius, 28), [...slots, circle(g.shaftRadius * 0.9, 14)], z - thickness, z + thickness);
            b.ring(0, g.shaftRadius * 0.9, z - 0.9 * s.unit, z + 0.4 * s.unit, 16);
            b.home();
        },
        { tone: 0.24, parent: shaft, away },
    );
    const still = model.frame(model.root, shaft.position.x, 0, z);
    const pads = [-1, 1].map((side) => {
        const item = model.solid(
            "brake",
            (b) => {
                b.at(Z_AXIS);
                b.extruded(
                    roundBox(-0.8 * s.unit, -radius * 1.12, 0.8 * s.unit, -radius * 0.42, 0.2 * s.unit),
                    [],
                    side > 0 ? 0 : -0.35 * s.unit,
                    side > 0 ? 0.35 * s.unit : 0,
                );
                b.home();
            },
            { tone: 0.6, warmth: 0.7, parent: still, away },
        );
        return { item, side };
    });
    model.solid(
        "brake",
        (b) => {
            // the saddle that carries both pads, over the disc's rim
            b.at(Z_AXIS);
            const reach = thickness + 0.75 * s.unit;
            b.extruded(roundBox(-0.62 * s.unit, -radius * 1.32, 0.62 * s.unit, -radius * 1.1, 0.08 * s.unit), [], -reach, reach);
            for (const side of [-1, 1])
                b.extruded(
                    roundBox(-0.62 * s.unit, -radius * 1.12, 0.62 * s.unit, -radius * 0.6, 0.1 * s.unit),
                    [],
                    side > 0 ? reach - 0.18 * s.unit : -reach,
                    side > 0 ? reach : -reach + 0.18 * s.unit,
                );
            b.home();
        },
        { tone: 0.4, parent: still, away, hatch: -Math.PI / 4 },
    );
    const open = 0.2 * s.unit;
    model.moves((now) => {
        const drag = now.parameter("brake.dragTorque") > 0;
        for (const { item, side } of pads) item.home.z = side * (thickness + open * (1 - now.hand.brake) * (drag ? 0.25 : 1));
    });
    model.readings.brakePads = () => pads[1].item.home.z;
}
