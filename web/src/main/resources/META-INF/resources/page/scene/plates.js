/**
 * The plates the pistons ride on, each with its thrust bearing: the pump's, tilted by its trunnions and arm, and the motor's, fixed.
 * In a unit's frame a tilt α about −x raises the side φ = 0; the motor's plate is tilted the other way (its chambers are largest at φ = π).
 */
import { Matrix4 } from "three";
import { circle, hull } from "./outlines.js";
import { apartOf } from "./unit.js";

/** @typedef {import("./model.js").Model} Model */
/** @typedef {import("./sizes.js").UnitSizes} UnitSizes */

const X_AXIS = new Matrix4().makeRotationZ(-Math.PI / 2); // what is built along y lies along x

/**
 * @param {Model} model @param {UnitSizes} unit @param {import("three").Object3D} tilting frame through the noses' plane
 * @param {string} key @param {number[]} away
 */
function addThrustBearing(model, unit, tilting, key, away) {
    const [low, high] = [unit.noseRadius, unit.noseRadius + 0.34 * unit.diameter];
    const inner = Math.max(unit.pitch - 0.52 * unit.diameter, unit.shaftRadius * 1.5);
    const outer = unit.pitch + 0.52 * unit.diameter;
    const race = 0.13 * unit.diameter;
    const look = { tone: 0.16, hatch: -Math.PI / 4, parent: tilting, away };
    const item = model.solid(
        key,
        (b) => {
            b.ring(inner, outer, low, low + race, 28);
            b.ring(inner, outer, high - race * 0.6, high, 28);
        },
        look,
    );
    const ball = (high - low - 1.6 * race) / 2;
    const count = Math.max(7, Math.floor((2 * Math.PI * unit.pitch) / (ball * 5)));
    const balls = model.many(item, count, (b) => sphere(b, ball, 6), { tone: 0.05, whole: "ball" });
    const m = new Matrix4();
    for (let i = 0; i < count; i++) {
        const angle = (2 * Math.PI * i) / count;
        balls.setMatrixAt(i, m.makeTranslation(unit.pitch * Math.sin(angle), low + race + ball, unit.pitch * Math.cos(angle)));
    }
    if (unit.thrustFriction > 0.006) {
        // a failing bearing: pits in the race the noses run on
        model.body(
            item,
            (b) => {
                for (let i = 0; i < 7; i++) {
                    const angle = 0.5 + i * 0.31;
                    b.extruded(
                        circle(0.05 * unit.diameter * (1 + (i % 3) * 0.5), 7, unit.pitch * Math.sin(angle), unit.pitch * Math.cos(angle)),
                        [],
                        low - 0.25,
                        low + 0.1,
                    );
                }
            },
            { ...look, tone: 1.35 },
        );
    }
    return { item, top: high };
}

/** @param {import("./build.js").Build} b @param {number} radius @param {number} segments */
export function sphere(b, radius, segments = 12, y = 0) {
    const steps = Math.ceil(segments / 2);
    /** @type {[number, number][]} */
    const profile = [];
    for (let i = 0; i <= steps; i++) {
        const angle = -Math.PI / 2 + (Math.PI * i) / steps;
        profile.push([i % steps ? radius * Math.cos(angle) : 0, y + radius * Math.sin(angle)]);
    }
    b.turned(profile, segments, false);
    if (b.lines.length === 0) b.circle(radius, y, segments);
}

/** The pump's plate with trunnions and control arm. @param {Model} model @param {UnitSizes} unit @param {import("three").Object3D} frame */
export function addSwashPlate(model, unit, frame) {
    const tilting = model.frame(frame, 0, unit.plateHeight, 0);
    const up = apartOf(unit);
    const bearing = addThrustBearing(model, unit, tilting, "pump-thrust-bearing", [0, up * 1.35, 0]);
    const { case: box, unit: scale } = model.sizes;
    const top = bearing.top + unit.plateThickness;
    const hole = Math.max(unit.shaftRadius * 2.1, unit.pitch - 0.75 * unit.diameter);
    const trunnion = 0.42 * unit.diameter;
    const wallX = box.towerHalfX;
    model.solid(
        "swash-plate",
        (b) => {
            b.extruded(circle(unit.plateRadius, 32), [circle(hole, 24)], bearing.top, top);
            b.ring(unit.pitch + 0.53 * unit.diameter, unit.plateRadius, bearing.top - 0.3 * unit.diameter, bearing.top, 32); // rim that holds the race
            for (const side of [-1, 1]) {
                const x = side * (unit.plateRadius - 0.25 * unit.diameter);
                b.box(
                    [Math.min(x, x + side * 0.3 * unit.diameter), -trunnion, -trunnion * 1.2],
                    [Math.max(x, x + side * 0.3 * unit.diameter), top, trunnion * 1.2],
                );
            }
        },
        { tone: 0.45, hatch: Math.PI / 4, parent: tilting, away: [0, up * 1.6, 0], housing: true },
    );
    model.solid(
        "trunnion",
        (b) => {
            const reach = wallX + 0.5 * scale;
            b.at(X_AXIS);
            b.ring(0, trunnion, unit.plateRadius, reach, 20);
            b.ring(0, trunnion, -reach, -unit.plateRadius, 20);
            b.home();
        },
        { tone: 0.2, whole: "x", parent: tilting, away: [0, up * 1.6, 0] },
    );
    const armX = wallX + 0.62 * scale;
    const eye = armLength(model.sizes);
    const pin = trunnion * 0.3;
    const play = model.sizes.get("control.play");
    const eyeRadius = pin + Math.min(play * eye, 0.7 * scale); // worn by as much as the plate loses, true to scale
    const arm = model.solid(
        "control-arm",
        (b) => {
            b.at(new Matrix4().makeRotationZ(-Math.PI / 2));
            // outline in the plane across the trunnion: (x, z) here are (−y, z) of the plate
            b.extruded(
                hull(
                    [
                        [0, 0],
                        [-eye * 0.55, 0],
                    ],
                    trunnion * 1.25,
                ),
                [circle(trunnion * 0.55, 16)],
                armX,
                armX + 0.32 * scale,
            );
            b.extruded(
                hull(
                    [
                        [-eye * 0.5, 0],
                        [-eye, 0],
                    ],
                    Math.max(trunnion * 0.72, eyeRadius + 0.14 * scale),
                ),
                [circle(eyeRadius, 14, -eye, 0)],
                armX,
                armX + 0.32 * scale,
            );
            b.home();
        },
        { tone: 0.55, warmth: 0.6, parent: tilting, away: [up * 1.1, up * 1.6, 0] },
    );
    arm.group.userData.handle = true;
    for (const body of arm.bodies) body.userData.handle = true;
    const rod = model.frame(frame, 0, unit.plateHeight, 0);
    model.solid(
        "control-arm",
        (b) => {
            b.at(new Matrix4().makeTranslation(0, eye, 0).multiply(X_AXIS));
            b.ring(0, pin, armX - 0.1 * scale, armX + 0.75 * scale, 12);
            b.at(new Matrix4().makeTranslation(armX + 0.58 * scale, eye, 0).multiply(new Matrix4().makeRotationX(Math.PI / 2)));
            b.ring(0, pin * 0.8, -pin, 4.5 * scale, 10); // the rod from pedal or lever
            b.home();
        },
        { tone: 0.2, parent: rod, away: [up * 1.1, up * 1.6, 0] },
    );
    model.moves((now) => {
        const angle = now.signal("swash_angle");
        if (!Number.isFinite(angle)) return;
        tilting.rotation.x = -angle;
        // the rod goes where the hand has it, as far as the eye of the arm lets it
        const { stroke } = now.hand;
        const wanted = stroke * now.parameter(stroke > 0 ? "control.forwardShare" : "control.reverseShare") * now.parameter("pump.fullSwashAngle");
        const middle = angle - now.parameter("control.neutralOffset");
        rod.rotation.x = -Math.max(middle - play, Math.min(middle + play, wanted));
    });
    model.readings.pumpTilt = () => -tilting.rotation.x;
    return tilting;
}

/** From the trunnion to the eye of the arm, mm. @param {import("./sizes.js").Sizes} sizes */
export const armLength = (sizes) =>
    Math.max(1.6 * sizes.unit, Math.min(4.2 * sizes.unit, sizes.input.pulleyY - 0.45 * sizes.unit - sizes.faceY - sizes.pump.plateHeight));

/** The motor's plate, fixed in the case. @param {Model} model @param {UnitSizes} unit @param {import("three").Object3D} frame */
export function addFixedPlate(model, unit, frame) {
    const up = apartOf(unit) * 1.15;
    const tilting = model.frame(frame, 0, unit.plateHeight, 0);
    tilting.rotation.x = unit.angle;
    const bearing = addThrustBearing(model, unit, tilting, "motor-thrust-bearing", [0, up * 1.35, 0]);
    const thickness = unit.plateThickness;
    const hole = Math.max(unit.shaftRadius * 2.1, unit.pitch - 0.75 * unit.diameter);
    model.solid(
        "fixed-plate",
        (b) => {
            b.extruded(circle(unit.plateRadius, 32), [circle(hole, 24)], bearing.top, bearing.top + thickness * 0.7);
            // feet by which it sits in the case
            for (const side of [-1, 1]) {
                const x = side * unit.plateRadius * 0.92;
                b.box(
                    [Math.min(x, x + side * 0.22 * unit.plateRadius), bearing.top, -0.3 * unit.plateRadius],
                    [Math.max(x, x + side * 0.22 * unit.plateRadius), bearing.top + thickness * 0.7, 0.3 * unit.plateRadius],
                );
            }
        },
        { tone: 0.45, hatch: Math.PI / 4, parent: tilting, away: [0, up * 1.6, 0], housing: true },
    );
    model.readings.motorTilt = () => tilting.rotation.x;
}
