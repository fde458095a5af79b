/**
 * Bubbles where oil is missing: in chambers and passages whose pressure has fallen so far that air and vapour come out, and in the gallery where
 * air is drawn in or carried along.
 */
import { Matrix4 } from "three";
import { polar } from "./outlines.js";
import { sphere } from "./plates.js";
import { blockAway } from "./unit.js";

/** @typedef {import("./model.js").Model} Model */

/** @type {import("./model.js").PartLook} */
const AIR = { colour: [0.98, 0.98, 1], aside: true };
const BUBBLING = 70e3; // Pa absolute: below it the free air has grown to more than 1.3 times its volume at rest (isentropic)

/** @param {Model} model @param {import("three").Object3D} pumpFrame @param {import("three").Object3D} motorFrame */
export function addBubbles(model, pumpFrame, motorFrame) {
    addChamberBubbles(model, pumpFrame, model.sizes.pump);
    addChamberBubbles(model, motorFrame, model.sizes.motor);
    addPassageBubbles(model);
    addGalleryAir(model);
}

/** Growth of a bubble's size with falling pressure, held where it would fill the picture. @param {number} pressure Pa */
const grown = (pressure) => Math.min(2.2, Math.cbrt(101325 / Math.max(pressure, 1000)) * 0.9);

/** @param {Model} model */
function addPassageBubbles(model) {
    const s = model.sizes;
    const each = 14;
    const length = -s.pumpZ - 0.2 * s.motor.diameter;
    for (const [key, side] of /** @type {const} */ ([
        ["a", 1],
        ["b", -1],
    ])) {
        const item = model.item(`passage-${key}`, { parent: model.frame(model.root, s.motorX, 0, 0), inside: true });
        const bubbles = model.many(item, each, (b) => sphere(b, s.passage.radius * 0.16, 6), AIR);
        const m = new Matrix4();
        model.moves((now) => {
            const pressure = now.signal(`pressure_${key}`);
            const starves = now.events.has(`side_${key}_starves`);
            bubbles.count = pressure < BUBBLING || starves ? each : 0;
            const size = grown(pressure);
            for (let i = 0; i < bubbles.count; i++) {
                const z = s.pumpZ + (length * (i + 0.5)) / each;
                const x = s.pump.pitch + ((s.motor.pitch - s.pump.pitch) * (i + 0.5)) / each;
                m.makeScale(size, size, size).setPosition(
                    side * x + s.passage.radius * 0.92 * Math.sin(i * 2.4),
                    s.passage.radius * 0.92 * Math.cos(i * 2.4),
                    z,
                );
                bubbles.setMatrixAt(i, m);
            }
            bubbles.instanceMatrix.needsUpdate = true;
        });
        model.readings[`passage${key.toUpperCase()}Bubbles`] = () => bubbles.count;
    }
}

/** Air drawn in at the suction side, or carried by the oil, as bubbles in the gallery: their share of its volume. @param {Model} model */
function addGalleryAir(model) {
    const s = model.sizes;
    const share = Math.max(s.get("makeUp.airDrawn"), s.get("oil.freeAir") - 0.01);
    if (!(share > 0.002)) return;
    const bore = Math.max(0.22 * s.unit, s.check.ball * 0.72);
    const count = 24;
    const reach = s.pump.pitch * 1.6;
    const size = Math.cbrt((3 * share * Math.PI * bore * bore * 2 * reach) / (4 * Math.PI * count));
    const item = model.item("gallery", { parent: model.frame(model.root, s.motorX, s.galleryY - bore, s.pumpZ), away: [0, -3 * s.unit, 0] });
    const bubbles = model.many(item, count, (b) => sphere(b, size, 6), AIR);
    let gone = 0;
    const m = new Matrix4();
    model.moves((now) => {
        const flow = now.signal("make_up_flow");
        if (Number.isFinite(flow)) gone += ((flow * 1e9) / (Math.PI * bore * bore)) * now.elapsed;
        for (let i = 0; i < count; i++) {
            const along = (((i * 0.618 * reach + gone) % reach) + reach) % reach;
            bubbles.setMatrixAt(i, m.makeTranslation((i % 2 ? 1 : -1) * along, bore * 0.9 * Math.sin(i * 2.1), bore * 0.95 * Math.cos(i * 1.3)));
        }
        bubbles.instanceMatrix.needsUpdate = true;
    });
}

/**
 * Bubbles in chambers whose oil is missing.
 * @param {Model} model
 * @param {import("three").Object3D} frame
 * @param {import("./sizes.js").UnitSizes} unit
 */
function addChamberBubbles(model, frame, unit) {
    const key = /** @type {"pump" | "motor"} */ (unit.place);
    const each = 6;
    const item = model.item(`${key}-piston`, { parent: frame, away: blockAway(unit), inside: true });
    const bubbles = model.many(item, unit.count * each, (b) => sphere(b, unit.diameter * 0.09, 6), AIR);
    const m = new Matrix4();
    model.moves((now) => {
        let shown = 0;
        for (let k = 0; k < unit.count; k++) {
            const pressure = now.chamber(key, k, "pressure");
            if (!(pressure < BUBBLING)) continue;
            const room = unit.middle + now.chamber(key, k, "position") * 1000 - unit.floor;
            const angle = (2 * Math.PI * k) / unit.count + now.signal(`${key}_angle`);
            const size = grown(pressure);
            for (let i = 0; i < each; i++) {
                const [x, z] = polar(unit.pitch + unit.diameter * 0.5 * Math.sin(i * 2.4 + k), angle + 0.16 * Math.cos(i * 1.7));
                m.makeScale(size, size, size).setPosition(x, unit.floor + room * ((i + 0.5) / each), z);
                bubbles.setMatrixAt(shown++, m);
            }
        }
        bubbles.count = shown;
        bubbles.instanceMatrix.needsUpdate = true;
    });
    model.readings[`${key}Bubbles`] = () => bubbles.count / each;
}
