/**
 * Oil on its way where it should not be: drops at piston gaps, port faces, scores and cracks, each holding what leaked there in a third of a
 * second of the picture.
 */
import { Matrix4, Vector3 } from "three";
import { throughHole } from "./centre.js";
import { polar } from "./outlines.js";
import { sphere } from "./plates.js";
import { blockAway } from "./unit.js";

/** @typedef {import("./model.js").Model} Model */
/** @typedef {import("./now.js").Now} Now */

const EACH = 1 / 3; // s of the picture a drop stands for
const DROPS = 3; // on their way from a place at a time
const SMALLEST = 0.16; // mm: below this nothing is drawn
const LARGEST = 0.3; // of the unit: larger drops would hide the drive

/**
 * @typedef {object} Source
 * @property {Vector3} from
 * @property {Vector3} way where its drops go, mm
 * @property {(now: Now) => number} rate m³/s
 */

/** @param {Model} model @param {import("three").Object3D} pumpFrame @param {import("three").Object3D} motorFrame */
export function addLeaks(model, pumpFrame, motorFrame) {
    for (const [unit, frame] of /** @type {const} */ ([
        [model.sizes.pump, pumpFrame],
        [model.sizes.motor, motorFrame],
    ])) {
        const key = /** @type {"pump" | "motor"} */ (unit.place);
        addDrops(
            model,
            frame,
            `${key}-piston`,
            unit.count,
            (now, k) => now.chamber(key, k, "leak"),
            (now, k, from, way) => {
                const angle = (2 * Math.PI * k) / unit.count + now.signal(`${key}_angle`);
                const [x, z] = polar(unit.pitch + unit.diameter * 0.5, angle);
                from.set(x, unit.blockLength * 1.01, z);
                const [u, v] = polar(unit.diameter * 0.9, angle);
                way.set(u, unit.diameter * 0.15, v);
            },
            blockAway(unit),
        );
    }
    addFaceDrops(model, pumpFrame, motorFrame);
}

/**
 * @param {Model} model @param {import("three").Object3D} frame @param {string} part @param {number} places
 * @param {(now: Now, place: number) => number} rate m³/s
 * @param {(now: Now, place: number, from: Vector3, way: Vector3) => void} path
 * @param {number[]} [away] as the part beside them
 */
function addDrops(model, frame, part, places, rate, path, away = [0, 0, 0]) {
    const item = model.item(part, { parent: frame, away });
    const drops = model.manyOil(item, places * DROPS, (b) => sphere(b, 1, 6));
    for (const body of item.bodies) body.userData.drop = true;
    let phase = 0;
    const from = new Vector3();
    const way = new Vector3();
    const m = new Matrix4();
    const largest = LARGEST * model.sizes.unit;
    model.moves((now) => {
        phase = (phase + now.elapsed / Math.max(now.pace, 1e-9) / (EACH * DROPS)) % 1;
        let shown = 0;
        const caseOil = now.oil(101325);
        for (let k = 0; k < places; k++) {
            const volume = rate(now, k) * now.pace * EACH * 1e9; // mm³
            const radius = volume > 0 ? Math.min(largest, Math.cbrt((3 * volume) / (4 * Math.PI))) : 0;
            if (!(radius > SMALLEST)) continue;
            path(now, k, from, way);
            for (let i = 0; i < DROPS; i++) {
                const along = (phase + i / DROPS) % 1;
                const size = radius * (along < 0.15 ? along / 0.15 : 1);
                m.makeScale(size, size, size).setPosition(from.x + way.x * along, from.y + way.y * along, from.z + way.z * along);
                drops.setMatrixAt(shown, m);
                drops.instanceColor?.setXYZ(shown, caseOil.rgb[0], caseOil.rgb[1], caseOil.rgb[2]);
                shown++;
            }
        }
        drops.count = shown;
        drops.instanceMatrix.needsUpdate = true;
        if (drops.instanceColor) drops.instanceColor.needsUpdate = true;
    });
    model.readings[`drops-${part}-${model.items.length}`] = () => drops.count / DROPS;
}

/**
 * Where the ledger's items leave the loop, with the law of each (physics, section 3), at the present pressures.
 * @param {Model} model
 * @param {import("three").Object3D} pumpFrame
 * @param {import("three").Object3D} motorFrame
 */
function addFaceDrops(model, pumpFrame, motorFrame) {
    const s = model.sizes;
    for (const [unit, frame] of /** @type {const} */ ([
        [s.pump, pumpFrame],
        [s.motor, motorFrame],
    ])) {
        const sides = /** @type {const} */ (["a", "b"]);
        const perPressure = (/** @type {number} */ side) => {
            // Θ h³ / 12 (1/ln(r2/r1) + 1/ln(r4/r3)), and scores b s³ / (12 l), all over µ: m³
            const h = unit.faceGap / 1000;
            const lands = 1 / Math.log(unit.kidneyInner / unit.landInner) + 1 / Math.log(unit.landOuter / unit.kidneyOuter);
            const score = side ? unit.scores.b : unit.scores.a;
            const land = (unit.landOuter - unit.kidneyOuter) / 1000;
            const scored = [score, unit.scores.turning].reduce(
                (sum, each) => sum + ((each.width / 1000) * (each.depth / 1000) ** 3) / (12 * land),
                0,
            );
            return (unit.kidneySpan * h ** 3 * lands) / 12 + scored;
        };
        addDrops(
            model,
            frame,
            `${unit.place}-face`,
            6,
            (now, place) => {
                const side = place % 2;
                const pressure = now.signal(`pressure_${sides[side]}`) - 101325;
                return (pressure * perPressure(side)) / viscosity(now) / 3;
            },
            (_, place, from, way) => {
                const angle = (place % 2 ? -1 : 1) * (Math.PI / 2) + (Math.floor(place / 2) - 1) * 0.7;
                const [x, z] = polar(unit.landOuter * 1.02, angle);
                from.set(x, 0.2, z);
                const [u, v] = polar(unit.diameter * 0.8, angle);
                way.set(u, -unit.diameter * 0.2, v);
            },
        );
    }
    const frame = model.frame(model.root, s.motorX, 0, (s.pumpZ - s.legWall) / 2);
    for (const [key, side] of /** @type {const} */ ([
        ["A", 1],
        ["B", -1],
    ])) {
        const area = s.get(`loop.crack${key}`);
        if (area <= 0) continue;
        addDrops(
            model,
            frame,
            `passage-${key.toLowerCase()}`,
            1,
            (now) => {
                return throughHole(now, area, now.signal(`pressure_${key.toLowerCase()}`) - 101325);
            },
            (_, __, from, way) => {
                from.set(side * s.legHalf, 0, 0);
                way.set(side * s.unit * 1.6, -0.5 * s.unit, 0);
            },
        );
    }
}

/** Dynamic viscosity of the oil as it is now (ASTM D341 between its two points), Pa·s. @param {Now} now */
export function viscosity(now) {
    const lglg = (/** @type {number} */ nu) => Math.log10(Math.log10(nu * 1e6 + 0.7));
    const [t1, t2] = [313.15, 373.15];
    const [y1, y2] = [lglg(now.parameter("oil.viscosity40")), lglg(now.parameter("oil.viscosity100"))];
    const temperature = now.signal("oil_temperature");
    const slope = (y1 - y2) / (Math.log10(t2) - Math.log10(t1));
    const nu = (10 ** (10 ** (y1 - slope * (Math.log10(temperature) - Math.log10(t1)))) - 0.7) * 1e-6;
    const density = now.parameter("oil.density15") / (1 + now.parameter("oil.thermalExpansion") * (temperature - 288.15));
    return nu * density * now.parameter("oil.viscosityFactor");
}
