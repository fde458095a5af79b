/**
 * The centre section: an L whose lying leg bears the pump's port face and whose standing leg bears the motor's, with the two main passages
 * A (+x) and B (−x) between their kidneys, the bypass across them, and what is scored or cracked in it.
 */
import { Matrix4, Vector3 } from "three";
import { circle, kidney, polar, roundBox, sector } from "./outlines.js";
import { bypassShare } from "./unit.js";

/** @typedef {import("./model.js").Model} Model */
/** @typedef {import("./sizes.js").UnitSizes} UnitSizes */

const HATCH = (3 * Math.PI) / 4;
const Z_AXIS = new Matrix4().makeRotationX(Math.PI / 2); // what is built along y lies along z

/** @param {Model} model @param {import("three").Object3D} pumpFrame @param {import("three").Object3D} motorFrame */
export function addCentre(model, pumpFrame, motorFrame) {
    const s = model.sizes;
    const frame = model.frame(model.root, s.motorX, 0, 0);
    addLegs(model, frame);
    addFace(model, s.pump, pumpFrame);
    addFace(model, s.motor, motorFrame);
    addPassages(model, frame, pumpFrame, motorFrame);
    addBypass(model, frame);
    addCracks(model, frame);
}

/** @param {Model} model @param {import("three").Object3D} frame */
function addLegs(model, frame) {
    const s = model.sizes;
    const bore = s.passage.radius;
    const plate = 0.22 * s.pump.diameter; // the face itself stands out by this
    const top = Math.max(s.motor.landOuter + 0.3 * s.unit, s.faceY * 0.8);
    const bottom = Math.min(s.legBottom, -top);
    const look = { tone: 0.22, warmth: -0.2, hatch: HATCH, parent: frame, housing: true };
    model.solid(
        "centre-section",
        (b) => {
            // lying leg: extruded along z with the two passage bores through it
            b.at(Z_AXIS); // (x, z) of an outline become (x, −y); y becomes z
            const lying = roundBox(-s.legHalf, -(s.faceY - plate), s.legHalf, -s.legBottom, 0.3 * s.unit);
            const bores = [s.pump.pitch, -s.pump.pitch].map((x) => circle(bore, 20, x, 0));
            b.extruded(lying, bores, s.legEnd + 0.35 * s.unit, -s.legWall);
            b.extruded(roundBox(-s.legHalf, -(s.faceY - plate), s.legHalf, -s.legBottom, 0.3 * s.unit), [], s.legEnd, s.legEnd + 0.35 * s.unit);
            // standing leg, its bores leading into the motor's kidneys
            const standing = roundBox(-s.legHalf, -top, s.legHalf, -bottom, 0.45 * s.unit);
            const through = [s.motor.pitch, -s.motor.pitch].map((x) => circle(bore, 20, x, 0));
            b.extruded(standing, [...through, circle(s.motor.shaftRadius * 1.05, 18)], -s.legWall, -0.22 * s.motor.diameter);
            b.home();
        },
        look,
    );
}

/**
 * A port face: lands and kidneys, in the frame of its unit (face at y = 0).
 * @param {Model} model
 * @param {UnitSizes} unit
 * @param {import("three").Object3D} frame
 */
function addFace(model, unit, frame) {
    const depth = 0.22 * unit.diameter;
    const kidneys = [Math.PI / 2, -Math.PI / 2].map((centre) => kidney(unit.kidneyInner, unit.kidneyOuter, centre, unit.kidneySpan, 12));
    const look = { tone: 0.04, hatch: HATCH, parent: frame, housing: true };
    const item = model.solid(
        `${unit.place}-face`,
        (b) => {
            b.extruded(
                circle(unit.landOuter, 32),
                [circle(Math.max(unit.landInner, unit.shaftRadius * 1.05), 24), ...kidneys],
                -depth,
                0,
                1,
                "loops",
            );
        },
        look,
    );
    const dark = { ...look, tone: 1.35, housing: false };
    const { a, b: sideB, bridge } = unit.scores;
    for (const [score, centre] of /** @type {const} */ ([
        [a, Math.PI / 2],
        [sideB, -Math.PI / 2],
    ])) {
        if (score.depth <= 0) continue;
        const half = score.width / 2 / unit.kidneyOuter;
        model.body(item, (b) => b.extruded(sector(unit.kidneyOuter, unit.landOuter, centre - half, centre + half, 3), [], -0.1, 0.12), dark);
    }
    if (bridge.depth > 0) {
        const radius = (unit.kidneyInner + unit.kidneyOuter) / 2;
        const reach = (Math.PI - unit.kidneySpan) / 2 + 0.05;
        model.body(item, (b) => b.extruded(sector(radius - bridge.width / 2, radius + bridge.width / 2, -reach, reach, 8), [], -0.1, 0.12), dark);
    }
}

/**
 * @param {Model} model
 * @param {import("three").Object3D} frame
 * @param {import("three").Object3D} pumpFrame
 * @param {import("three").Object3D} motorFrame
 */
function addPassages(model, frame, pumpFrame, motorFrame) {
    const s = model.sizes;
    const radius = s.passage.radius * 0.985;
    for (const [key, side] of /** @type {const} */ ([
        ["a", 1],
        ["b", -1],
    ])) {
        const item = model.item(`passage-${key}`, { parent: frame, inside: true });
        const path = [
            ...bend(
                new Vector3(side * s.pump.pitch, s.faceY - 0.3 * s.pump.diameter, s.pumpZ),
                new Vector3(side * s.pump.pitch, 0, s.pumpZ),
                new Vector3(side * s.pump.pitch, 0, -s.legWall - 1),
                Math.min(s.faceY * 0.6, radius * 1.6),
            ),
            new Vector3(side * s.pump.pitch, 0, -s.legWall - 1),
            new Vector3(side * s.motor.pitch, 0, -s.legWall + 1),
            new Vector3(side * s.motor.pitch, 0, -0.2 * s.motor.diameter),
        ];
        const main = model.oil(item, (b) => void b.swept(path, radius, 12));
        const blind = model.oil(
            item,
            (b) =>
                void b.swept(
                    [new Vector3(side * s.pump.pitch, 0, s.pumpZ), new Vector3(side * s.pump.pitch, 0, s.legEnd + 0.35 * s.unit)],
                    radius * 0.98,
                    12,
                ),
        );
        const bodies = [main, blind];
        for (const [unit, parent] of /** @type {const} */ ([
            [s.pump, pumpFrame],
            [s.motor, motorFrame],
        ])) {
            const shape = kidney(unit.kidneyInner + 0.08, unit.kidneyOuter - 0.08, (side * Math.PI) / 2, unit.kidneySpan - 0.01, 12);
            bodies.push(model.oil(item, (b) => void b.extruded(shape, [], -0.24 * unit.diameter, -0.05, 1, false), parent));
        }
        const bore = Math.PI * s.passage.radius ** 2; // mm²
        const fills = bodies.map((body) => /** @type {import("three").ShaderMaterial} */ (body.material));
        model.moves((now) => {
            const { rgb, band } = now.oil(now.signal(`pressure_${key}`));
            for (const fill of fills) {
                fill.uniforms.tone.value.setRGB(rgb[0], rgb[1], rgb[2], "");
                fill.uniforms.bandAll.value = band;
            }
            // side A takes pump_flow in and gives motor_flow out; side B carries them back
            const flow = (side * (now.signal("pump_flow") + now.signal("motor_flow"))) / 2;
            moveMarks(fills[0], now, flow, bore);
        });
        model.readings[`passage${key.toUpperCase()}`] = () => {
            const tone = fills[0].uniforms.tone.value;
            return [tone.r, tone.g, tone.b];
        };
    }
}

/** Flow through a sharp hole, m³/s (physics, section 3). @param {import("./now.js").Now} now @param {number} area m² @param {number} difference Pa */
export const throughHole = (now, area, difference) =>
    (0.65 * area * Math.sqrt(2 / now.parameter("oil.density15")) * difference) / (difference * difference + 20e3 ** 2) ** 0.25 || 0;

export const MARK_SPACING = 9; // mm, as the shader draws them

/**
 * Moves the marks of a flowing body with the mean speed of its oil.
 * @param {import("three").ShaderMaterial} fill @param {import("./now.js").Now} now @param {number} flow m³/s along the body @param {number} bore mm²
 */
export function moveMarks(fill, now, flow, bore) {
    if (!Number.isFinite(flow)) return;
    const step = ((flow * 1e9) / bore) * now.elapsed; // mm
    const marks = fill.uniforms.flow.value;
    marks.x = (marks.x + step) % MARK_SPACING;
    marks.y = now.blurs(step, MARK_SPACING) ? 0 : 1;
    if (marks.y === 0) now.tooFast = true;
}

/** Two straight lines joined by an arc. @param {Vector3} from @param {Vector3} corner @param {Vector3} to @param {number} radius */
function bend(from, corner, to, radius) {
    const into = corner.clone().sub(from).normalize();
    const out = to.clone().sub(corner).normalize();
    const start = corner.clone().addScaledVector(into, -radius);
    const end = corner.clone().addScaledVector(out, radius);
    const points = [from, start];
    for (let i = 1; i < 6; i++) {
        const t = i / 6;
        points.push(
            start
                .clone()
                .multiplyScalar((1 - t) ** 2)
                .addScaledVector(corner, 2 * t * (1 - t))
                .addScaledVector(end, t * t),
        );
    }
    points.push(end);
    return points;
}

/** A plunger across the passages, or the pin that lifts the motor block. @param {Model} model @param {import("three").Object3D} frame */
function addBypass(model, frame) {
    const s = model.sizes;
    const area = s.get("loop.bypassArea") * 1e6;
    const lift = s.get("loop.bypassLift") * 1000;
    if (area <= 0 && lift <= 0) return;
    const item = model.item("bypass", { parent: frame, away: [0, -4 * s.unit, -2 * s.unit] });
    const sliding = model.frame(item.group);
    const look = { tone: 0.5, warmth: 0.4, whole: /** @type {const} */ ("x") };
    if (area > 0) {
        const radius = Math.max(Math.sqrt(area / Math.PI), 0.16 * s.unit);
        const z = s.legEnd + 0.35 * s.unit + radius * 1.4;
        const x = s.pump.pitch;
        item.home.set(0, 0, z);
        model.body(
            item,
            (b) => {
                b.at(new Matrix4().makeRotationZ(-Math.PI / 2));
                b.ring(0, radius * 0.5, -x, s.legHalf + 1.1 * s.unit, 14); // stem
                b.ring(0, radius, -x * 0.45, x * 0.45, 18); // shuts the way across
                b.ring(0, radius * 0.9, s.legHalf + 1.1 * s.unit, s.legHalf + 1.5 * s.unit, 14); // knob
                b.home();
            },
            look,
            sliding,
        );
        const across = model.item("bypass", { parent: frame, inside: true });
        const way = model.oil(across, (b) => void b.swept([new Vector3(x, 0, z), new Vector3(-x, 0, z)], radius * 0.95, 12));
        const fill = /** @type {import("three").ShaderMaterial} */ (way.material);
        model.moves((now) => {
            const share = bypassShare(now);
            sliding.position.x = share * x * 0.9;
            across.group.scale.setScalar(share > 1e-3 ? 1 : 0);
            const [a, b] = [now.signal("pressure_a"), now.signal("pressure_b")];
            const { rgb, band } = now.oil(Math.max(a, b));
            fill.uniforms.tone.value.setRGB(rgb[0], rgb[1], rgb[2], "");
            fill.uniforms.bandAll.value = band;
            moveMarks(fill, now, throughHole(now, share * area * 1e-6, a - b), Math.PI * radius * radius);
        });
    } else {
        const radius = 0.18 * s.unit;
        model.body(
            item,
            (b) => {
                b.at(Z_AXIS);
                const [x, z] = polar(s.motor.landInner * 0.75, 0);
                b.extruded(circle(radius, 12, x, z), [], -s.legWall - 1.2 * s.unit, 0);
                b.home();
            },
            look,
            sliding,
        );
        model.moves((now) => {
            sliding.position.z = bypassShare(now) * lift * 2;
        });
    }
    item.group.position.copy(item.home);
    model.readings.bypass = () => Math.max(sliding.position.x, sliding.position.z);
}

/**
 * A crack is a jagged dark line where the oil goes: through the wall of A or B, or across between them.
 * @param {Model} model
 * @param {import("three").Object3D} frame
 */
function addCracks(model, frame) {
    const s = model.sizes;
    const z = (s.pumpZ - s.legWall) / 2;
    const look = { tone: 1.4, parent: frame };
    const size = (/** @type {number} */ area) => Math.min(1.2, 0.25 + 0.12 * Math.log10(Math.max(1, area / 1e-9))) * 0.1 * s.unit;
    for (const [key, side, part] of /** @type {const} */ ([
        ["A", 1, "passage-a"],
        ["B", -1, "passage-b"],
    ])) {
        const area = s.get(`loop.crack${key}`);
        if (area <= 0) continue;
        const [from, to] = [side * s.pump.pitch, side * (s.legHalf + 0.3)];
        model.solid(part, (b) => jag(b, from, to, z, size(area), s.passage.radius), look);
    }
    const across = s.get("loop.crackAB");
    if (across > 0) model.solid("centre-section", (b) => jag(b, -s.pump.pitch, s.pump.pitch, z, size(across), s.passage.radius), look);
}

/** @param {import("./build.js").Build} b @param {number} from @param {number} to @param {number} z @param {number} width @param {number} height */
function jag(b, from, to, z, width, height) {
    const steps = 7;
    const path = Array.from(
        { length: steps + 1 },
        (_, i) => new Vector3(from + ((to - from) * i) / steps, ((i % 2) - 0.5) * height * 0.5, z + ((i % 3) - 1) * width * 1.5),
    );
    b.swept(path, width, 5);
}
