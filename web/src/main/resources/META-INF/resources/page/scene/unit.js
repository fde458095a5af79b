/**
 * A rotating group in its own frame: y along the shaft from the port face, chamber k at the angle φ_k = θ + 2πk/N from z towards x, φ = 0 on
 * +z; kidney A about +x, kidney B about −x. The same for pump and motor, from the sizes of each.
 */
import { Matrix4, Vector3 } from "three";
import { circle, kidney, polar, sector } from "./outlines.js";
import { EXAGGERATION } from "./sizes.js";

/** @typedef {import("./model.js").Model} Model */
/** @typedef {import("./sizes.js").UnitSizes} UnitSizes */

const TURN = 2 * Math.PI;

/**
 * @param {Model} model @param {UnitSizes} unit @param {import("three").Object3D} frame
 * @returns {import("three").Group} the frame that turns with the shaft
 */
export function addUnit(model, unit, frame) {
    const turning = model.frame(frame);
    const out = outOf(unit);
    addBlock(model, unit, turning);
    addPistons(model, unit, turning, out);
    const key = /** @type {"pump" | "motor"} */ (unit.place);
    model.moves((now) => {
        const angle = now.signal(`${key}_angle`);
        if (Number.isFinite(angle)) turning.rotation.y = angle % TURN;
    });
    model.readings[`${key}Angle`] = () => turning.rotation.y;
    return turning;
}

/** The motor's way out is a little longer: its shaft goes with it. @param {UnitSizes} unit */
const outOf = (unit) => (unit.place === "pump" ? 1 : 1.15);

/** @param {UnitSizes} unit */
export const blockAway = (unit) => [0, apartOf(unit) * 0.55 * outOf(unit), 0];

/** How far a unit's parts go along the shaft when all is apart, mm. @param {UnitSizes} unit */
export const apartOf = (unit) => unit.blockLength * 1.5;

/** @param {Model} model @param {UnitSizes} unit @param {import("three").Object3D} turning */
function addBlock(model, unit, turning) {
    const hole = circle(unit.shaftRadius * 1.03, 20);
    const step = TURN / unit.count;
    const bores = Array.from({ length: unit.count }, (_, k) => {
        const [x, z] = polar(unit.pitch, k * step);
        return circle(unit.diameter / 2, 16, x, z);
    });
    const slots = bores.map((_, k) => kidney(unit.kidneyInner, unit.kidneyOuter, k * step, slotSpan(unit), 3));
    const look = { tone: 0.34, hatch: Math.PI / 4, housing: true, parent: turning, away: blockAway(unit) };
    const item = model.solid(
        `${unit.place}-block`,
        (b) => {
            b.extruded(circle(unit.blockRadius, 32), [hole, ...slots], 0, unit.floor, 1, "loops");
            b.extruded(circle(unit.blockRadius, 32), [hole, ...bores], unit.floor, unit.blockLength, 1, "far");
        },
        look,
    );
    const gap = unit.faceGap * EXAGGERATION.faceGap;
    model.place(item, 0, gap, 0);
    model.moves((now) => {
        const pushed = unit.place === "motor" ? now.parameter("loop.bypassLift") * 1000 * bypassShare(now) : 0;
        const lifts = now.events.has(`${unit.place}_block_lifts`) ? 0.12 * unit.diameter : 0;
        item.home.y = gap + lifts + (pushed > 0 ? pushed * 2 : 0);
    });
    const score = unit.scores.turning;
    if (score.depth > 0) {
        const half = score.width / 2 / unit.kidneyOuter;
        model.body(item, (b) => b.extruded(sector(unit.kidneyOuter, unit.landOuter * 1.01, -half, half, 3), [], -0.15, 0.4), { ...look, tone: 1.3 });
    }
}

/** Share of the bypass that is open (loop of the physics: reach times pulled, at least what rests). @param {import("./now.js").Now} now */
export const bypassShare = (now) => Math.max(now.parameter("loop.bypassReach") * now.hand.bypass, now.parameter("loop.bypassRest")) || 0;

/** Angle of a block's slot from end to end: what its area asks for, with room for its round ends. @param {UnitSizes} unit */
const slotSpan = (unit) => Math.max(unit.slotSpan, ((unit.kidneyOuter - unit.kidneyInner) * 1.05) / unit.pitch);

/** @param {Model} model @param {UnitSizes} unit @param {import("three").Object3D} turning @param {number} out */
function addPistons(model, unit, turning, out) {
    const key = /** @type {"pump" | "motor"} */ (unit.place);
    const count = unit.count;
    const away = [0, apartOf(unit) * out, 0];
    const pistons = model.item(`${key}-piston`, { parent: turning, away });
    const springs = model.item(`${key}-spring`, { inside: true, parent: turning, away: [0, apartOf(unit) * 0.8 * out, 0] });
    const oil = model.item(`${key}-piston`, { inside: true, parent: turning, away: blockAway(unit) });
    const radius = unit.diameter / 2;
    const drop = radius - unit.noseRadius;
    const hollowDepth = 0.66 * unit.pistonLength;
    const bodies = model.many(pistons, count, (b) => pistonProfile(b, unit, radius, drop, hollowDepth), { tone: 0.1, hatch: -Math.PI / 4 });
    const springFree = unit.middle - unit.floor + hollowDepth; // length at mid stroke
    const coils = model.many(springs, count, (b) => helix(b, unit.hollowRadius * 0.78, 4, unit.hollowRadius * 0.17), { tone: 0.75 });
    const columns = model.manyOil(
        oil,
        count,
        (b) =>
            void b.turned(
                [
                    [0, 0],
                    [radius * 0.985, 0],
                    [radius * 0.985, 1],
                    [0, 1],
                ],
                14,
                false,
            ),
    );
    const hollows = model.manyOil(
        oil,
        count,
        (b) =>
            void b.turned(
                [
                    [0, 0],
                    [unit.hollowRadius * 0.97, 0],
                    [unit.hollowRadius * 0.97, hollowDepth - 0.2],
                    [0, hollowDepth - 0.2],
                ],
                10,
                false,
            ),
    );
    const slots = model.manyOil(
        oil,
        count,
        (b) => void b.extruded(kidney(unit.kidneyInner + 0.1, unit.kidneyOuter - 0.1, 0, slotSpan(unit) - 0.02, 5), [], 0.1, unit.floor, 1, false),
    );
    const haze = addHaze(model, unit, turning);
    const hazy = model.hazes([pistons, springs, oil], `${key}_speed`, TURN / count);
    model.moves(() => {
        for (const item of haze) item.group.scale.setScalar(hazy() ? 1 : 0);
    });
    model.readings[`${key}Hazy`] = hazy;
    const positions = new Float64Array(count);
    const m = new Matrix4();
    const scale = new Vector3();
    model.moves((now) => {
        for (let k = 0; k < count; k++) {
            const position = now.chamber(key, k, "position") * 1000;
            if (!Number.isFinite(position)) continue;
            positions[k] = position;
            const angle = (TURN * k) / count;
            const [x, z] = polar(unit.pitch, angle);
            const inner = unit.middle + position;
            const clearance = Math.max(unit.clearance, k === count - 1 ? unit.badClearance : 0);
            const thinner = Math.max(0.6, 1 - (clearance * EXAGGERATION.boreGap) / radius);
            bodies.setMatrixAt(k, m.makeTranslation(x, inner, z).scale(scale.set(thinner, 1, thinner)));
            // a broken spring lies on the floor of its bore; the others reach from the floor to the roof of the hollow
            const whole = k >= unit.idle;
            const length = springFree + position;
            coils.setMatrixAt(k, m.makeTranslation(x, unit.floor, z).scale(scale.set(1, whole ? length : 0.42 * length, 1)));
            columns.setMatrixAt(k, m.makeTranslation(x, unit.floor, z).scale(scale.set(1, inner - unit.floor, 1)));
            hollows.setMatrixAt(k, m.makeTranslation(x, inner, z));
            slots.setMatrixAt(k, m.makeRotationY(angle));
            const { rgb, band } = now.oil(now.chamber(key, k, "pressure"));
            for (const body of [columns, hollows, slots]) {
                body.instanceColor?.setXYZ(k, rgb[0], rgb[1], rgb[2]);
                body.geometry.getAttribute("band").setX(k, band);
            }
        }
        for (const body of [bodies, coils, columns, hollows, slots]) body.instanceMatrix.needsUpdate = true;
        for (const body of [columns, hollows, slots]) {
            if (body.instanceColor) body.instanceColor.needsUpdate = true;
            body.geometry.getAttribute("band").needsUpdate = true;
        }
    });
    model.readings[`${key}Pistons`] = () =>
        Array.from({ length: count }, (_, k) => {
            bodies.getMatrixAt(k, m);
            return (m.elements[13] - unit.middle) / 1000;
        });
    model.readings[`${key}Chambers`] = () =>
        Array.from({ length: count }, (_, k) => {
            const colour = /** @type {import("three").InstancedBufferAttribute} */ (columns.instanceColor);
            return [colour.getX(k), colour.getY(k), colour.getZ(k)];
        });
}

/**
 * What is left to see when pistons pass too fast: a ring, half of it under the pressure of side A, half of B.
 * @param {Model} model @param {UnitSizes} unit @param {import("three").Object3D} turning
 */
function addHaze(model, unit, turning) {
    return [1, -1].map((side) => {
        const item = model.item(`${unit.place}-piston`, { parent: turning.parent ?? turning });
        const half = sector(
            unit.pitch - unit.diameter / 2,
            unit.pitch + unit.diameter / 2,
            side > 0 ? 0.04 : Math.PI + 0.04,
            side > 0 ? Math.PI - 0.04 : TURN - 0.04,
            16,
        );
        const ring = model.oil(item, (b) => void b.extruded(half, [], unit.floor, unit.middle + unit.pistonLength, 1, false));
        ring.userData.drop = true;
        item.fade = 0.45;
        const fill = /** @type {import("three").ShaderMaterial} */ (ring.material);
        model.moves((now) => {
            const { rgb, band } = now.oil(now.signal(side > 0 ? "pressure_a" : "pressure_b"));
            fill.uniforms.tone.value.setRGB(rgb[0], rgb[1], rgb[2], "");
            fill.uniforms.bandAll.value = band;
        });
        return item;
    });
}

/**
 * A hollow piston, open towards its chamber (y = 0), with a round nose.
 * @param {import("./build.js").Build} b
 * @param {UnitSizes} unit
 * @param {number} radius
 * @param {number} drop
 * @param {number} hollowDepth
 */
function pistonProfile(b, unit, radius, drop, hollowDepth) {
    const nose = unit.noseRadius;
    const centre = unit.pistonLength;
    /** @type {[number, number][]} */
    const round = [];
    for (let i = 0; i <= 4; i++) {
        const angle = (Math.PI / 2) * (i / 4);
        round.push([nose * Math.cos(angle), centre + nose * Math.sin(angle)]);
    }
    b.turned([[unit.hollowRadius, 0], [radius, 0], [radius, centre - drop * 2], ...round, [0, hollowDepth], [unit.hollowRadius, hollowDepth]], 16);
}

/** A coil spring of unit length. @param {import("./build.js").Build} b @param {number} radius @param {number} turns @param {number} wire */
function helix(b, radius, turns, wire) {
    const perTurn = 7;
    const path = Array.from({ length: turns * perTurn + 1 }, (_, i) => {
        const angle = (TURN * i) / perTurn;
        return new Vector3(radius * Math.sin(angle), i / (turns * perTurn), radius * Math.cos(angle));
    });
    // unit length would flatten the wire beyond recognition: sweep at full length, then shrink the axis
    const stretch = 30;
    b.at(new Matrix4().makeScale(1, 1 / stretch, 1));
    b.swept(
        path.map((p) => p.setY(p.y * stretch)),
        wire,
        3,
    );
    b.home();
}
