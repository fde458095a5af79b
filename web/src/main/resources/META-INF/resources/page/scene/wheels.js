/** Wheels as adjacent parts in lines, the ground they roll on, moving by the computed speed, and its slope against the level. */
import { Matrix4 } from "three";
import { circle, roundBox } from "./outlines.js";
import { forward } from "./casing.js";

/** @typedef {import("./model.js").Model} Model */

const Z_AXIS = new Matrix4().makeRotationX(Math.PI / 2);

/** @param {Model} model @param {import("three").Object3D} axle turns with the axle */
export function addWheels(model, axle) {
    const s = model.sizes;
    const far = 1.4 * s.unit;
    const turning = model.frame(model.root);
    for (const [side, z] of [
        [-1, s.case.hornLow - far],
        [1, s.case.hornHigh + far],
    ]) {
        const radius = s.wheel.radius * (1 + (side * s.wheel.mismatch) / 2);
        const [from, to] = side > 0 ? [z, z + s.wheel.width] : [z - s.wheel.width, z];
        const middle = (from + to) / 2;
        const tyre = model.solid(
            "wheel",
            (b) => {
                b.at(Z_AXIS);
                const rim = radius * 0.52;
                const half = s.wheel.width / 2;
                b.turned(
                    [
                        [rim, middle - half * 0.8],
                        [radius * 0.86, middle - half],
                        [radius * 0.97, middle - half * 0.85],
                        [radius, middle - half * 0.5],
                        [radius, middle + half * 0.5],
                        [radius * 0.97, middle + half * 0.85],
                        [radius * 0.86, middle + half],
                        [rim, middle + half * 0.8],
                    ],
                    40,
                    false,
                );
                b.circle(radius, middle, 40);
                b.circle(rim, middle + side * half * 0.8, 28);
                for (let i = 0; i < 8; i++) {
                    const angle = (2 * Math.PI * i) / 8;
                    const [x, y] = [radius * 1.003 * Math.sin(angle), radius * 1.003 * Math.cos(angle)];
                    b.line([x, middle - half * 0.45, y], [x, middle + half * 0.45, y]);
                }
                b.home();
            },
            { tone: 0.75, parent: turning, away: [0, 0, side * 8 * s.unit], phantom: true },
        );
        for (const body of tyre.bodies) body.userData.drop = true; // it is all over the picture: the disc is what is pointed at
        model.solid(
            "wheel",
            (b) => {
                b.at(Z_AXIS);
                const holes = Array.from({ length: 5 }, (_, i) =>
                    circle(radius * 0.1, 10, radius * 0.34 * Math.sin((2 * Math.PI * i) / 5), radius * 0.34 * Math.cos((2 * Math.PI * i) / 5)),
                );
                b.extruded(circle(radius * 0.52, 28), holes, middle - 0.2 * s.unit, middle + 0.2 * s.unit, 1, "far");
                b.ring(0, s.gears.axleRadius * 1.8, middle - 0.7 * s.unit, middle + 0.7 * s.unit, 24);
                b.home();
            },
            { tone: 0.08, parent: turning, away: [0, 0, side * 8 * s.unit], phantom: true },
        );
    }
    model.moves((now) => {
        // with a sheared key the wheels no longer follow the axle: they go by the ground
        if (now.connected) turning.rotation.z = axle.rotation.z - axle.userData.phase;
        else if (Number.isFinite(now.signal("ground_speed")))
            turning.rotation.z -= (forward(s) * now.signal("ground_speed") * 1000 * now.elapsed) / s.wheel.radius;
    });
    model.readings.wheelTurn = () => turning.rotation.z;
    addGround(model);
}

/** @param {Model} model */
function addGround(model) {
    const s = model.sizes;
    const reach = s.wheel.radius * 2.2;
    const [z0, z1] = [s.case.hornLow - 3 * s.unit - s.wheel.width * 1.2, s.case.hornHigh + 3 * s.unit + s.wheel.width * 1.2];
    const y = -s.wheel.radius;
    const item = model.item("ground", {});
    model.body(
        item,
        (b) =>
            b.extruded(
                [
                    [-reach, z0],
                    [reach, z0],
                    [reach, z1],
                    [-reach, z1],
                ],
                [],
                y - 0.5 * s.unit,
                y,
                1,
                "far",
            ),
        { tone: 0.06, phantom: true },
    );
    item.phantom = true;
    const spacing = 50;
    const strips = model.many(
        item,
        Math.floor((2 * reach) / spacing),
        (b) => {
            b.line([0, y + 0.3, z1 - 3 * s.unit], [0, y + 0.3, z1]);
            b.line([0, y + 0.3, z0], [0, y + 0.3, z0 + 3 * s.unit]);
            b.extruded(
                [
                    [-2, z1 - 8],
                    [2, z1 - 8],
                    [2, z1],
                    [-2, z1],
                ],
                [],
                y - 0.5,
                y + 0.4,
            );
        },
        { tone: 0.6 },
    );
    const arrow = model.item("ground", {});
    arrow.phantom = true;
    const f = forward(s);
    model.body(
        arrow,
        (b) => {
            const tip = f * reach * 0.96;
            const z = z1 - 2.4 * s.unit;
            b.extruded(
                [
                    [tip, z],
                    [tip - f * 3 * s.unit, z - 1.4 * s.unit],
                    [tip - f * 3 * s.unit, z + 1.4 * s.unit],
                ],
                [],
                y,
                y + 0.6,
            );
        },
        { tone: 0.9 },
    );
    // the level: a wedge between the ground and the horizontal through the lower end
    const level = model.item("ground", {});
    level.phantom = true;
    const line = model.frame(level.group);
    model.body(
        level,
        (b) => {
            for (let i = 0; i < 16; i += 2) b.line([(f * 2 * reach * i) / 16, 0, z1], [(f * 2 * reach * (i + 1)) / 16, 0, z1]);
            b.extruded(roundBox(-0.4, z1 - 0.4, 0.4, z1 + 0.4, 0.3), [], -0.2, 0.2);
        },
        { tone: 0.6 },
        line,
    );
    let gone = 0;
    const m = new Matrix4();
    model.moves((now) => {
        const under = now.hand.footing === "lifted" ? -0.18 * s.wheel.radius : 0; // on stands the wheels turn above it
        for (const each of [item, arrow, level]) each.home.y = under;
        const speed = now.signal("ground_speed");
        const step = Number.isFinite(speed) ? speed * 1000 * now.elapsed : 0;
        gone = (gone + step) % spacing;
        if (now.blurs(step, spacing)) now.tooFast = true;
        for (let i = 0; i < strips.count; i++) {
            const at = -reach + spacing * (i + 0.5) - f * gone;
            strips.setMatrixAt(i, m.makeTranslation(at, 0, 0));
        }
        strips.instanceMatrix.needsUpdate = true;
        // the drive stays put and the level turns under it
        line.position.set(-f * reach, y, 0);
        line.rotation.z = -f * now.hand.slope;
        line.visible = Math.abs(now.hand.slope) > 1e-4;
    });
    model.readings.groundShift = () => gone / 1000;
}
