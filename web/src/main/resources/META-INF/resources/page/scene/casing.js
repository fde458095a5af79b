/**
 * The case, generated about what it holds: a rounded hull in plan round gears, motor and pump, parted at y = 0; a tower over the pump, horns
 * round the axle shafts, flanges with bolts at the parting, fins. Halves come off as one. In it the oil with its level, and the magnets.
 */
import { Matrix4 } from "three";
import { circle, hull, roundBox } from "./outlines.js";

/** @typedef {import("./model.js").Model} Model */
/** @typedef {import("./build.js").Pair} Pair */

const Z_AXIS = new Matrix4().makeRotationX(Math.PI / 2);

/** @param {Model} model */
export function addCase(model) {
    const s = model.sizes;
    const box = s.case;
    const corners = planCorners(s);
    const inner = hull(corners, 0.25 * s.unit);
    const outer = hull(corners, 0.25 * s.unit + s.wall);
    const flange = hull(corners, 0.25 * s.unit + s.wall + box.flange);
    const wheels = gearCorners(s);
    const humpInner = hull(wheels, 0.25 * s.unit);
    const humpOuter = hull(wheels, 0.25 * s.unit + s.wall);
    const bolts = boltPlaces(corners, 0.25 * s.unit + s.wall + box.flange * 0.5, 2.6 * s.unit).filter(([x]) => Math.abs(x) > box.hornRadius * 1.25);
    const holes = bolts.map(([x, z]) => circle(0.16 * s.unit, 10, x, z));
    const thick = 0.32 * s.unit;
    addUpper(model, { inner, outer, flange, humpInner, humpOuter, holes, thick });
    addLower(model, { inner, outer, flange, humpInner, humpOuter, holes, thick });
    model.solid(
        "case-upper",
        (b) => {
            for (const [x, z] of bolts) {
                b.at(new Matrix4().makeTranslation(x, thick, z));
                b.extruded(circle(0.28 * s.unit, 6), [], 0, 0.24 * s.unit);
            }
            b.home();
        },
        { tone: 0.5, away: [0, apartUp(s), 0] },
    );
    addMagnets(model);
    addOil(model, inner);
}

/** @param {import("./sizes.js").Sizes} s */
const apartUp = (s) => s.pump.blockLength * 4.4 + 2 * s.unit;

/** @param {import("./sizes.js").Sizes} s */
const apartDown = (s) => 7 * s.unit;

/** What the case must go round, in plan. @param {import("./sizes.js").Sizes} s @returns {Pair[]} */
function planCorners(s) {
    /** @type {Pair[]} */
    const corners = [];
    const rect = (/** @type {number} */ x0, /** @type {number} */ z0, /** @type {number} */ x1, /** @type {number} */ z1) =>
        corners.push([x0, z0], [x1, z0], [x1, z1], [x0, z1]);
    const half = Math.max(s.legHalf + 0.4 * s.unit, s.motor.blockRadius, s.case.towerHalfX) + s.margin - 0.25 * s.unit;
    rect(s.motorX - half, s.case.towerZ0, s.motorX + half, s.motorEnd);
    for (const stage of s.gears.stages) {
        const reach = stage.large + stage.module;
        rect(stage.wheelX - reach, stage.z0, stage.wheelX + reach, stage.z1);
        rect(stage.pinionX - stage.small * 1.5, stage.z0, stage.pinionX + stage.small * 1.5, stage.z1 + 0.3 * s.unit);
    }
    const d = s.gears.differential;
    rect(-d.radius, s.gears.last.z0 - d.length, d.radius, s.gears.last.z1);
    return corners;
}

/** What needs the height: the large gears and the differential. @param {import("./sizes.js").Sizes} s @returns {Pair[]} */
function gearCorners(s) {
    const d = s.gears.differential;
    const last = s.gears.last;
    return [
        ...s.gears.stages.map((stage) => ({ x: stage.wheelX, reach: stage.large + stage.module, z0: stage.z0, z1: stage.z1 })),
        { x: 0, reach: d.radius, z0: last.z0 - d.length, z1: last.z1 },
    ].flatMap(
        ({ x, reach, z0, z1 }) =>
            /** @type {Pair[]} */ ([
                [x - reach, z0],
                [x + reach, z0],
                [x + reach, z1],
                [x - reach, z1],
            ]),
    );
}

/** Evenly along an outline. @param {Pair[]} corners @param {number} offset @param {number} spacing @returns {Pair[]} */
function boltPlaces(corners, offset, spacing) {
    const loop = hull(corners, offset);
    /** @type {Pair[]} */
    const places = [];
    let walked = spacing * 0.6;
    loop.forEach(([x, z], i) => {
        const [x2, z2] = loop[(i + 1) % loop.length];
        const length = Math.hypot(x2 - x, z2 - z);
        while (walked < length) {
            places.push([x + ((x2 - x) * walked) / length, z + ((z2 - z) * walked) / length]);
            walked += spacing;
        }
        walked -= length;
    });
    return places;
}

/** @typedef {{ inner: Pair[], outer: Pair[], flange: Pair[], humpInner: Pair[], humpOuter: Pair[], holes: Pair[][], thick: number }} Plan */

/** @param {Model} model @param {Plan} plan */
function addUpper(model, { inner, outer, flange, humpInner, humpOuter, holes, thick }) {
    const s = model.sizes;
    const box = s.case;
    const half = box.towerHalfX;
    const tower = (/** @type {number} */ more) =>
        roundBox(s.motorX - half - more, box.towerZ0 - more, s.motorX + half + more, box.towerZ1 + more, 0.9 * s.unit + more);
    const shaft = circle(s.pump.shaftRadius * 1.25, 20, s.motorX, s.pumpZ);
    const apart = meet(humpOuter, tower(s.wall)) ? box.roof : box.base; // where hump and tower would run into each other they share one roof
    model.solid(
        "case-upper",
        (b) => {
            b.extruded(flange, [inner, ...holes], 0.02, thick);
            b.extruded(outer, [inner], thick, apart);
            if (apart === box.base) {
                b.extruded(outer, [tower(0), humpInner], box.base, box.base + s.wall);
                b.extruded(humpOuter, [humpInner], box.base + s.wall, box.roof);
                b.extruded(humpOuter, [], box.roof, box.roof + s.wall);
            } else b.extruded(outer, [tower(0)], apart, apart + s.wall);
            b.extruded(tower(s.wall), [tower(0)], apart + s.wall, Math.max(box.tower, apart + 1.2 * s.wall));
            b.extruded(tower(s.wall), [shaft], Math.max(box.tower, apart + 1.2 * s.wall), Math.max(box.tower, apart + 1.2 * s.wall) + s.wall);
            b.at(new Matrix4().makeTranslation(s.motorX, 0, s.pumpZ));
            b.ring(s.pump.shaftRadius * 1.25, s.pump.shaftRadius * 2.2, box.tower + s.wall, box.tower + 0.45 * s.unit, 24);
            b.home();
            horns(b, s, 1, outer);
            fins(b, s, humpInner);
        },
        { tone: 0.12, warmth: 0.5, hatch: Math.PI / 4, housing: true, away: [0, apartUp(s), 0] },
    );
}

/** Whether the boxes about two outlines overlap. @param {Pair[]} a @param {Pair[]} b */
function meet(a, b) {
    return [0, 1].every(
        (axis) =>
            Math.min(...a.map((p) => p[axis])) < Math.max(...b.map((p) => p[axis])) &&
            Math.min(...b.map((p) => p[axis])) < Math.max(...a.map((p) => p[axis])),
    );
}

/** @param {Model} model @param {Plan} plan */
function addLower(model, { inner, outer, flange, humpInner, humpOuter, holes, thick }) {
    const s = model.sizes;
    const box = s.case;
    const sump = (/** @type {number} */ more) => circle(box.sump.radius + more, 36, s.motorX, s.pumpZ);
    const shared = meet(humpOuter, sump(s.wall));
    const floor = shared ? Math.min(box.bottom, box.sump.bottom) : -box.base;
    model.solid(
        "case-lower",
        (b) => {
            b.extruded(flange, [inner, ...holes], -thick, -0.02);
            b.extruded(outer, [inner], floor, -thick);
            if (shared) b.extruded(outer, [], floor - s.wall, floor);
            else {
                b.extruded(outer, [sump(0), humpInner], floor - s.wall, floor);
                for (const [hole, wall, bottom] of /** @type {const} */ ([
                    [sump(0), sump(s.wall), box.sump.bottom],
                    [humpInner, humpOuter, -box.roof],
                ])) {
                    b.extruded(wall, [hole], bottom, floor - s.wall);
                    b.extruded(wall, [], bottom - s.wall, bottom);
                }
            }
            horns(b, s, -1, outer);
        },
        { tone: 0.17, warmth: 0.5, hatch: (3 * Math.PI) / 4, housing: true, away: [0, -apartDown(s), 0] },
    );
}

/**
 * Half tubes round the axle shafts, from the hull's side outwards.
 * @param {import("./build.js").Build} b
 * @param {import("./sizes.js").Sizes} s
 * @param {1 | -1} up
 * @param {Pair[]} outer
 */
function horns(b, s, up, outer) {
    const box = s.case;
    const reach = (/** @type {Pair[]} */ loop, /** @type {1 | -1} */ side) =>
        side *
        Math.max(
            ...loop.filter(([x]) => Math.abs(x) < box.hornRadius * 1.4).map(([, z]) => side * z),
            side * (side > 0 ? s.gears.last.z1 : s.gears.last.z0 - s.gears.differential.length),
        );
    const half = (/** @type {number} */ radius) =>
        Array.from(
            { length: 13 },
            (_, i) => /** @type {Pair} */ ([radius * Math.cos((Math.PI * i) / 12), -up * Math.max(0.02, radius * Math.sin((Math.PI * i) / 12))]),
        );
    const shell = [...half(box.hornRadius), ...half(s.gears.axleRadius * 1.12).reverse()];
    b.at(Z_AXIS);
    const [low, high] = [reach(outer, -1), reach(outer, 1)];
    b.extruded(shell, [], Math.min(box.hornLow, low - 0.8 * s.unit), low + s.wall * 0.5);
    b.extruded(shell, [], high - s.wall * 0.5, Math.max(box.hornHigh, high + 0.8 * s.unit));
    b.home();
}

/**
 * Ribs on the roof, as many as its size asks for; those clogged are filled (heat.finShare).
 * @param {import("./build.js").Build} b
 * @param {import("./sizes.js").Sizes} s
 * @param {Pair[]} inner
 */
function fins(b, s, inner) {
    const box = s.case;
    const zs = inner.map(([, z]) => z);
    const [z0, z1] = [Math.min(...zs), Math.max(...zs)];
    const count = Math.max(3, Math.floor((z1 - z0) / (0.75 * s.unit)) - 1);
    const packed = 1 - s.get("heat.finShare");
    for (let i = 1; i < count; i++) {
        const z = z0 + ((z1 - z0) * i) / count;
        const [left, right] = across(inner, z);
        const [from, to] = [left + 0.3 * s.unit, right - 0.3 * s.unit];
        if (!(to > from)) continue;
        const top = box.roof + s.wall + 0.4 * s.unit;
        b.box([from, box.roof + s.wall, z - 0.06 * s.unit], [to, top, z + 0.06 * s.unit]);
        if (i / count < packed) b.box([from, box.roof + s.wall, z + 0.06 * s.unit], [to, top * 0.985, z + (z1 - z0) / count - 0.06 * s.unit]);
    }
}

/** Where a line across meets a convex outline: least and greatest x. @param {Pair[]} loop @param {number} z */
function across(loop, z) {
    const xs = loop.flatMap(([x, at], i) => {
        const [x2, at2] = loop[(i + 1) % loop.length];
        return (at - z) * (at2 - z) < 0 ? [x + ((x2 - x) * (z - at)) / (at2 - at)] : [];
    });
    return [Math.min(...xs), Math.max(...xs)];
}

/** Two ring magnets on the sump's floor, beside the filter. @param {Model} model */
function addMagnets(model) {
    const s = model.sizes;
    model.solid(
        "magnets",
        (b) => {
            for (const [x, z] of [
                [s.motorX, -0.5 * s.legWall],
                [s.motorX, s.motor.blockLength],
            ]) {
                b.at(new Matrix4().makeTranslation(x, -s.case.base, z));
                b.ring(0.28 * s.unit, 0.62 * s.unit, 0, 0.3 * s.unit, 20);
            }
            b.home();
        },
        { tone: 0.85, hatch: -Math.PI / 4, away: [0, -apartDown(s) * 0.75, 0] },
    );
}

/**
 * The oil's surface: level with the world while the drive stands on a slope; lower when some of the filter is uncovered.
 * @param {Model} model
 * @param {Pair[]} inner
 */
function addOil(model, inner) {
    const s = model.sizes;
    const uncovered = s.get("makeUp.uncoveredShare");
    const full = Math.min(s.faceY * 0.4, s.case.roof * 0.5);
    const filterTop = s.galleryY;
    const level = uncovered > 0 ? filterTop - uncovered * (filterTop - s.filterBottom) : full;
    const item = model.item("oil", { away: [0, -apartDown(s), 0] });
    const build = (/** @type {import("./build.js").Build} */ b) => {
        b.extruded(hull(inner, 0.01), [], -0.05, 0, 1, true);
    };
    const mesh = model.body(item, build, { tone: 0.1, warmth: 1.6 });
    item.phantom = true;
    const surface = item.group;
    item.home.set(0, level, 0);
    const centre = s.motorX / 2;
    mesh.position.x = 0;
    model.moves((now) => {
        const slope = now.hand.slope * forward(s);
        surface.rotation.z = -slope;
        item.home.y = level + Math.sin(slope) * centre;
    });
    model.readings.oilTilt = () => surface.rotation.z;
}

/** Which way along x the machine drives forward. @param {import("./sizes.js").Sizes} s */
export const forward = (s) => -s.gears.sense;
