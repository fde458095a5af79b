/**
 * Signs of faults that have no shape of their own: the return spring by the speed it gives, a tight differential by the heat it makes, thin oil by
 * the gaps that leak now. Each is drawn from a parameter or a computed signal; sign-words.js says by which law.
 */
import { Color, Matrix4, Vector3 } from "three";
import { circle, polar } from "./outlines.js";
import { axlePower, FIRM, THIN, TIGHT } from "./sign-words.js";
import { blockAway, apartOf } from "./unit.js";

/** @typedef {import("./model.js").Model} Model */
/** @typedef {import("three").Object3D} Object3D */

const X_AXIS = new Matrix4().makeRotationZ(-Math.PI / 2); // what is built along y lies along x
const Z_AXIS = new Matrix4().makeRotationX(Math.PI / 2);

/**
 * A coil round the trunnion with two legs: between them a pin that stands and one that goes with the arm. Wire of a bent spring gives with the
 * fourth power of its thickness (any textbook), so it is drawn as thick as the fourth root of the speed it gives the plate; its coils touch
 * when it is firm. One that gives none is drawn broken.
 * @param {Model} model @param {Object3D} frame the pump's @param {Object3D} tilting goes with the plate
 */
export function addReturnSpring(model, frame, tilting) {
    const s = model.sizes;
    const trunnion = 0.42 * s.pump.diameter;
    const rate = s.get("control.returnRate");
    const share = Math.min(1, rate / FIRM);
    const turns = 5;
    const full = 0.17 * s.unit; // thickness of a firm spring's wire
    const wire = full * Math.max(0.3, share ** 0.25);
    const from = s.case.towerHalfX + 1.02 * s.unit;
    const radius = 0.72 * trunnion + full;
    const reach = 2.7 * trunnion;
    const pin = 0.16 * s.unit;
    const half = Math.asin((pin + wire / 2) / (reach * 0.9));
    const away = [apartOf(s.pump) * 1.1, apartOf(s.pump) * 1.6, 0];
    const still = model.frame(frame, 0, s.pump.plateHeight, 0);
    // spigot the coil sits on, and the arm's tail with its pin
    model.solid(
        "control-arm",
        (b) => {
            b.at(X_AXIS);
            b.ring(0, 0.62 * trunnion, from - 0.1 * s.unit, from + turns * full + 0.25 * s.unit, 18);
            b.at(new Matrix4().makeTranslation(0, -reach, 0).multiply(X_AXIS));
            b.ring(0, pin, from - 0.1 * s.unit, from + turns * full + 0.2 * s.unit, 10);
            b.home();
            b.box([from - 0.4 * s.unit, -reach - 1.6 * pin, -1.6 * pin], [from - 0.08 * s.unit, -trunnion, 1.6 * pin]);
        },
        { tone: 0.45, warmth: 0.6, parent: tilting, away },
    );
    // the standing pin, from the case beside the arm
    model.solid(
        "control-arm",
        (b) => {
            b.at(new Matrix4().makeTranslation(0, -reach * 0.8, 0).multiply(X_AXIS));
            b.ring(0, pin, s.case.towerHalfX, from + turns * full + 0.2 * s.unit, 10);
            b.home();
        },
        { tone: 0.2, parent: still, away },
    );
    const coil = (/** @type {number} */ first, /** @type {number} */ last) =>
        Array.from({ length: Math.ceil((last - first) * 16) + 1 }, (_, i) => {
            const at = Math.min(last, first + i / 16);
            const [z, y] = [Math.sin(2 * Math.PI * at), -Math.cos(2 * Math.PI * at)];
            return new Vector3(from + full * (0.5 + at * ((turns - 1) / turns + 0.2)), radius * y, radius * z);
        });
    const look = { tone: 1.1, parent: still, away };
    const broken = rate <= 0;
    model.solid(
        "control-arm",
        (b) => {
            if (broken) {
                b.swept(coil(0, 2.1), wire, 8, true);
                b.swept(coil(2.75, turns), wire, 8, true);
            } else b.swept(coil(0, turns), wire / 2, 8, true);
        },
        look,
    );
    const legs = [1, -1].map((side) => {
        const leg = model.frame(still);
        model.solid(
            "control-arm",
            (b) => {
                const x = side > 0 ? from + full * 0.5 : from + full * (turns + 0.5);
                b.swept([new Vector3(x, -radius * 0.9, 0), new Vector3(x, -reach * 1.12, 0)], wire / 2, 8, true);
            },
            { ...look, parent: leg },
        );
        return { leg, side };
    });
    model.moves((now) => {
        const angle = now.signal("swash_angle");
        if (!Number.isFinite(angle)) return;
        // the leg on the side the arm leans to is taken along by its pin, the other stays at the standing pin; a broken one takes nothing along
        const arm = tilting.rotation.x;
        for (const { leg, side } of legs) leg.rotation.x = broken ? side * half : side > 0 ? Math.max(0, arm) + half : Math.min(0, arm) - half;
    });
    model.readings.springWire = () => wire / full;
    model.readings.springOpen = () => legs[0].leg.rotation.x - legs[1].leg.rotation.x - 2 * half;
}

/**
 * Bands at the bearings of a differential that runs tight: the more drag, the more score marks; the colour goes with the heat made there now.
 * @param {Model} model @param {Object3D} axle
 */
export function addTightness(model, axle) {
    const s = model.sizes;
    const drag = s.get("gears.dragTorque");
    if (drag < TIGHT) return;
    const { differential: d, last, axleRadius } = s.gears;
    const away = [-4 * s.unit, 0, 0];
    const frame = model.frame(axle, 0, 0, last.z0 - d.length / 2);
    const thick = 0.3 * s.unit;
    const outer = Math.max(axleRadius * 1.8, d.radius * 0.72);
    const bands = model.solid(
        "differential",
        (b) => {
            b.at(Z_AXIS);
            for (const side of [-1, 1]) {
                const z = (side * d.length) / 2;
                b.ring(axleRadius * 1.16, outer, side > 0 ? z : z - thick, side > 0 ? z + thick : z, 30);
            }
            b.home();
        },
        { tone: 0.4, hatch: -Math.PI / 4, parent: frame, away },
    );
    const marks = Math.min(16, Math.ceil(drag / 8));
    model.solid(
        "differential",
        (b) => {
            b.at(Z_AXIS);
            for (const side of [-1, 1])
                for (let k = 0; k < marks; k++) {
                    const angle = (2 * Math.PI * k) / marks;
                    const z = side * (d.length / 2 + thick);
                    const [x, y] = polar((outer + axleRadius) * 0.52, angle);
                    b.extruded(circle(0.09 * s.unit, 7, x, y), [], z - 0.06 * s.unit, z + 0.06 * s.unit);
                    const [u, v] = polar(outer * 1.005, angle);
                    b.line([u, side > 0 ? z - thick : z, v], [u, side > 0 ? z : z + thick, v]);
                }
            b.home();
        },
        { tone: 1.35, parent: frame, away },
    );
    const shade = /** @type {Color} */ (bands.fills[0].uniforms.tone.value);
    const cold = shade.clone();
    const hot = new Color(0.72, 0.3, 0.16);
    let heat = 0;
    model.moves((now) => {
        heat = axlePower(now.parameter("gears.dragTorque"), now.signal("motor_speed"), now.parameter("gears.ratio"));
        shade.copy(cold).lerp(hot, Number.isFinite(heat) ? Math.min(1, heat / HOT) : 0);
    });
    model.readings.tightHeat = () => heat;
    model.readings.tightMarks = () => marks;
}

const HOT = 300; // W at both bearings: shown as hot as it gets (own choice)
const LEAKS = 1e-9; // m³/s: less is not marked

/**
 * Thin oil: a ring round every bore that leaks now, as much wider as the same gap leaks more.
 * @param {Model} model @param {import("./sizes.js").UnitSizes} unit @param {Object3D} turning with the block
 */
export function addThinOil(model, unit, turning) {
    const factor = model.sizes.get("oil.viscosityFactor");
    if (factor > THIN) return;
    const key = /** @type {"pump" | "motor"} */ (unit.place);
    const wide = unit.diameter * 0.1 * Math.min(3, 1 / factor - 1);
    const item = model.item(`${key}-piston`, { parent: turning, away: blockAway(unit) });
    const rings = model.many(item, unit.count, (b) => b.ring(unit.diameter * 0.5, unit.diameter * 0.5 + Math.max(wide, 0.02 * unit.diameter), 0, 0.05 * unit.diameter, 20), { colour: [0.9, 0.56, 0.1], aside: true });
    const m = new Matrix4();
    model.moves((now) => {
        let shown = 0;
        for (let k = 0; k < unit.count; k++) {
            if (!(now.chamber(key, k, "leak") > LEAKS)) continue;
            const [x, z] = polar(unit.pitch, (2 * Math.PI * k) / unit.count);
            rings.setMatrixAt(shown++, m.makeTranslation(x, unit.blockLength * 1.005 + 0.2, z));
        }
        rings.count = shown;
        rings.instanceMatrix.needsUpdate = true;
    });
    model.readings[`${key}LeakingBores`] = () => rings.count;
}
