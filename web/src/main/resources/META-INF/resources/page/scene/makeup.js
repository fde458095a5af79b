/**
 * Where oil comes back into the loop: filter in the sump, gallery, a check valve under each passage; where fitted the charge pump on the input
 * shaft with its relief, and the loop's relief valves. Under the lying leg of the centre section.
 */
import { Matrix4, Vector3 } from "three";
import { circle, gear } from "./outlines.js";
import { moveMarks } from "./centre.js";
import { sphere } from "./plates.js";

/** @typedef {import("./model.js").Model} Model */
/** @typedef {import("./now.js").Now} Now */

const HATCH = Math.PI / 4;

/** @param {Model} model */
export function addMakeUp(model) {
    const s = model.sizes;
    const frame = model.frame(model.root, s.motorX, 0, s.pumpZ);
    for (const [key, side] of /** @type {const} */ ([
        ["a", 1],
        ["b", -1],
    ]))
        addCheck(model, frame, key, side);
    addGallery(model, frame);
    addFilter(model, frame);
    if (s.get("makeUp.chargeDisplacement") > 0) addChargePump(model, frame);
    for (const [key, side] of /** @type {const} */ ([
        ["a", 1],
        ["b", -1],
    ])) {
        if (s.get(`loop.relief${key.toUpperCase()}`) > 0) addRelief(model, key, side);
    }
}

/**
 * Opening of a check valve, as the physics has it: smoothly over its span, held between what it cannot leave and what it can reach.
 * @param {Now} now
 * @param {"a" | "b"} key
 */
function checkLift(now, key) {
    const upper = key.toUpperCase();
    const difference = now.signal("gallery_pressure") - now.signal(`pressure_${key}`);
    const x = (difference - now.parameter("loop.checkCrack")) / now.parameter("loop.checkSpan");
    const free = x <= 0 ? 0 : x >= 1 ? 1 : x * x * (3 - 2 * x);
    return Math.max(now.parameter(`loop.check${upper}Lift`), Math.min(free, now.parameter(`loop.check${upper}Reach`)));
}

/** @param {Model} model @param {import("three").Object3D} frame @param {"a" | "b"} key @param {1 | -1} side */
function addCheck(model, frame, key, side) {
    const s = model.sizes;
    const ball = s.check.ball;
    const seat = s.galleryY + 0.45 * s.check.height; // height of the ball's centre when shut
    const body = ball * 1.75;
    const at = model.frame(frame, side * s.pump.pitch, 0, 0);
    const away = [0, -2.2 * s.unit, 0];
    const look = { tone: 0.3, hatch: -HATCH, parent: at, away };
    const bleed = s.get(`loop.bleed${key.toUpperCase()}`) * 1000;
    const item = model.solid(
        `check-${key}`,
        (b) => {
            // body with a cone for the ball, then the chamber above it
            b.turned(
                [
                    [ball * 0.72, s.galleryY],
                    [body, s.galleryY],
                    [body, -s.passage.radius * 0.98],
                    [ball * 1.3, -s.passage.radius * 0.98],
                    [ball * 1.3, seat + ball * 0.2],
                    [ball * 0.72, seat - ball * 0.72],
                ],
                20,
            );
            if (bleed > 0) b.ring(0, Math.max(bleed / 2, 0.4), seat - ball * 1.2, seat + ball, 8);
        },
        look,
    );
    const moving = model.frame(item.group);
    model.body(item, (b) => sphere(b, ball, 10), { tone: 0.02, whole: "ball" }, moving);
    const top = -s.passage.radius * 0.98;
    const free = top - seat - ball;
    const spring = model.frame(item.group, 0, top, 0);
    model.body(
        item,
        (b) => {
            const path = Array.from(
                { length: 25 },
                (_, i) => new Vector3(ball * 0.55 * Math.sin(i * 0.9), (-i / 24) * free, ball * 0.55 * Math.cos(i * 0.9)),
            );
            b.swept(path, ball * 0.1, 3);
        },
        { tone: 0.8 },
        spring,
    );
    const oil = model.item(`passage-${key}`, { parent: at, inside: true });
    const upper = model.oil(
        oil,
        (b) =>
            void b.turned(
                [
                    [0, seat + ball * 0.1],
                    [ball * 1.27, seat + ball * 0.3],
                    [ball * 1.27, top],
                    [0, top],
                ],
                18,
                false,
            ),
    );
    const fill = /** @type {import("three").ShaderMaterial} */ (upper.material);
    const reach = ball * 0.7;
    const stuckOpen = s.get(`loop.check${key.toUpperCase()}Lift`);
    const stuckShut = 1 - s.get(`loop.check${key.toUpperCase()}Reach`);
    const leaks = s.get(`loop.check${key.toUpperCase()}Leak`);
    if (stuckOpen > 0 || stuckShut > 0 || leaks > 8e-9) {
        // what holds it or keeps it from sealing: dirt at the ball
        model.body(
            item,
            (b) => {
                for (let i = 0; i < 4; i++) {
                    b.at(
                        new Matrix4().makeTranslation(
                            ball * 0.95 * Math.sin(i * 1.7),
                            (stuckShut > 0 ? 0.55 : -0.55) * ball,
                            ball * 0.95 * Math.cos(i * 1.7),
                        ),
                    );
                    sphere(b, ball * 0.22, 6);
                }
                b.home();
            },
            { tone: 1.4 },
            moving,
        );
    }
    model.moves((now) => {
        const lift = checkLift(now, key);
        if (Number.isFinite(lift)) moving.position.y = seat + lift * reach;
        spring.scale.y = Math.max(0.2, (top - moving.position.y - ball) / free);
        const { rgb, band } = now.oil(now.signal(`pressure_${key}`));
        fill.uniforms.tone.value.setRGB(rgb[0], rgb[1], rgb[2], "");
        fill.uniforms.bandAll.value = band;
    });
    model.readings[`check${key.toUpperCase()}`] = () => (moving.position.y - seat) / reach;
}

/** @param {Model} model @param {import("three").Object3D} frame */
function addGallery(model, frame) {
    const s = model.sizes;
    const bore = Math.max(0.22 * s.unit, s.check.ball * 0.72);
    const y = s.galleryY - bore;
    const reach = s.pump.pitch + bore * 1.8;
    const away = [0, -3 * s.unit, 0];
    model.solid(
        "gallery",
        (b) => {
            b.at(new Matrix4().makeTranslation(0, y, 0).multiply(new Matrix4().makeRotationZ(-Math.PI / 2)));
            b.ring(bore * 1.02, bore * 1.6, -reach, reach, 18);
            b.ring(0, bore * 1.6, -reach - 0.2 * s.unit, -reach, 18);
            b.ring(0, bore * 1.6, reach, reach + 0.2 * s.unit, 18);
            b.home();
        },
        { tone: 0.2, hatch: -HATCH, parent: frame, away, housing: true },
    );
    const oil = model.item("gallery", { parent: frame, away, inside: true });
    const arms = [1, -1].map((side) => model.oil(oil, (b) => void b.swept([new Vector3(0, y, 0), new Vector3(side * reach * 0.99, y, 0)], bore, 12)));
    // with a charge pump the filter stands before it, in its suction
    const charged = s.get("makeUp.chargeDisplacement") > 0;
    const stemTop = charged ? y - bore * 1.02 : y;
    const stem = model.oil(oil, (b) => void b.swept([new Vector3(0, s.filterBottom + 0.3 * s.unit, 0), new Vector3(0, stemTop, 0)], bore, 12));
    const fills = [...arms, stem].map((mesh) => /** @type {import("three").ShaderMaterial} */ (mesh.material));
    const area = Math.PI * bore * bore;
    model.moves((now) => {
        const { rgb, band } = now.oil(now.signal("gallery_pressure"));
        const [a, b] = ["a", "b"].map((side) => now.signal(`check_${side}_flow`) + now.signal(`bleed_${side}_flow`));
        for (const fill of fills) {
            fill.uniforms.tone.value.setRGB(rgb[0], rgb[1], rgb[2], "");
            fill.uniforms.bandAll.value = band;
        }
        if (charged) {
            const suction = now.oil(101325);
            fills[2].uniforms.tone.value.setRGB(suction.rgb[0], suction.rgb[1], suction.rgb[2], "");
            fills[2].uniforms.bandAll.value = suction.band;
        }
        moveMarks(fills[0], now, a, area);
        moveMarks(fills[1], now, b, area);
        moveMarks(fills[2], now, now.signal("make_up_flow") + now.signal("charge_relief_flow"), area);
    });
    model.readings.gallery = () => {
        const tone = fills[0].uniforms.tone.value;
        return [tone.r, tone.g, tone.b];
    };
}

/** A pleated screen round the gallery's mouth; darker the more it is blocked. @param {Model} model @param {import("three").Object3D} frame */
function addFilter(model, frame) {
    const s = model.sizes;
    const radius = 1.35 * s.unit;
    const bore = Math.max(0.22 * s.unit, s.check.ball * 0.72);
    const top = s.galleryY - 2.7 * bore;
    const bottom = s.filterBottom;
    const clog = s.get("makeUp.filterClogging");
    const tone = 0.12 + Math.min(1.1, 0.32 * Math.log10(Math.max(1, clog)));
    const away = [0, -5 * s.unit, 0];
    const pleats = gear(radius, 20);
    model.solid(
        "filter",
        (b) => {
            b.extruded(pleats, [circle(radius * 0.72, 20)], bottom + 0.12 * s.unit, top, 1, "loops");
            b.ring(0, radius * 1.1, bottom, bottom + 0.12 * s.unit, 24);
            b.ring(bore, radius * 1.1, top, top + 0.12 * s.unit, 24);
        },
        { tone, warmth: clog > 1.5 ? 1.2 : 0.3, hatch: HATCH, parent: frame, away },
    );
}

/** Inner and outer rotor under the leg, turned by the input shaft. @param {Model} model @param {import("three").Object3D} frame */
function addChargePump(model, frame) {
    const s = model.sizes;
    const radius = Math.min(0.85 * s.unit, s.pump.pitch - s.check.ball * 1.9);
    const volume = s.get("makeUp.chargeDisplacement") * 1e9;
    const height = Math.min(0.7 * s.check.height, Math.max(0.2 * s.unit, volume / (Math.PI * radius * radius * 0.45)));
    const [low, high] = [s.legBottom - height, s.legBottom - 0.05 * s.unit];
    const away = [0, -2.6 * s.unit, 3.4 * s.unit];
    const off = radius * 0.1;
    const look = { hatch: -HATCH, parent: frame, away };
    model.solid(
        "charge-pump",
        (b) => {
            b.ring(radius, radius * 1.14, low, high, 26);
            b.extruded(circle(radius * 1.14, 26), [], low - 0.14 * s.unit, low);
        },
        { ...look, tone: 0.24, housing: true },
    );
    const outer = model.solid("charge-pump", (b) => b.extruded(circle(radius * 0.98, 26), [gear(radius * 0.72, 7)], low, high), {
        ...look,
        tone: 0.1,
    });
    const inner = model.solid("charge-pump", (b) => b.extruded(gear(radius * 0.58, 6), [circle(radius * 0.22, 10)], low, high), {
        ...look,
        tone: 0.5,
    });
    inner.home.set(off, 0, 0);
    model.moves((now) => {
        const angle = now.signal("pump_angle");
        if (!Number.isFinite(angle)) return;
        inner.group.rotation.y = angle % (2 * Math.PI);
        outer.group.rotation.y = ((angle * 6) / 7) % (2 * Math.PI);
    });
    if (s.get("makeUp.chargeRelief") <= 0) return;
    const bore = Math.max(0.22 * s.unit, s.check.ball * 0.72);
    const at = model.frame(frame, 0, s.galleryY - bore, bore * 1.5);
    at.rotation.x = Math.PI / 2;
    addPoppet(
        model,
        "charge-relief",
        at,
        0.34 * s.unit,
        (now) => {
            const over = now.signal("gallery_pressure") - 101325 - now.parameter("makeUp.chargeRelief");
            return (over * now.parameter("makeUp.chargeReliefSlope")) / 2e-4;
        },
        [0, 2 * s.unit, 0],
    );
}

/** @param {Model} model @param {"a" | "b"} key @param {1 | -1} side */
function addRelief(model, key, side) {
    const s = model.sizes;
    const at = model.frame(model.root, s.motorX + side * s.legHalf, 0, (s.pumpZ - s.legWall) / 2 - 0.2 * s.unit);
    at.rotation.z = (-side * Math.PI) / 2;
    const other = key === "a" ? "b" : "a";
    addPoppet(
        model,
        `relief-${key}`,
        at,
        0.42 * s.unit,
        (now) => {
            const over = now.signal(`pressure_${key}`) - now.signal(`pressure_${other}`) - now.parameter(`loop.relief${key.toUpperCase()}`);
            return (over * now.parameter("loop.reliefSlope")) / 2e-4; // full lift drawn at 12 l/min
        },
        [0, 3 * s.unit, 0],
    );
}

/**
 * A spring-loaded cone in a cartridge, outwards along y.
 * @param {Model} model @param {string} part @param {import("three").Object3D} at @param {number} radius @param {(now: Now) => number} opening @param {number[]} away
 */
function addPoppet(model, part, at, radius, opening, away) {
    const length = radius * 4;
    const item = model.solid(
        part,
        (b) => {
            b.turned(
                [
                    [radius * 0.4, -radius * 0.4],
                    [radius, -radius * 0.4],
                    [radius, length],
                    [0, length],
                    [0, length * 0.9],
                    [radius * 0.72, length * 0.9],
                    [radius * 0.72, radius * 0.5],
                    [radius * 0.4, radius * 0.2],
                ],
                18,
            );
        },
        { tone: 0.26, hatch: -HATCH, parent: at, away },
    );
    const moving = model.frame(item.group);
    model.body(
        item,
        (b) =>
            void b.turned(
                [
                    [0, -radius * 0.1],
                    [radius * 0.6, radius * 0.75],
                    [radius * 0.6, radius * 1.2],
                    [0, radius * 1.2],
                ],
                14,
            ),
        { tone: 0.6, warmth: 0.5, whole: "ball" },
        moving,
    );
    const free = length * 0.9 - radius * 1.2;
    const spring = model.frame(item.group, 0, length * 0.9, 0);
    model.body(
        item,
        (b) =>
            void b.swept(
                Array.from(
                    { length: 25 },
                    (_, i) => new Vector3(radius * 0.5 * Math.sin(i * 0.9), (-i / 24) * free, radius * 0.5 * Math.cos(i * 0.9)),
                ),
                radius * 0.09,
                3,
            ),
        { tone: 0.8 },
        spring,
    );
    model.moves((now) => {
        const share = Math.max(0, Math.min(1, opening(now) || 0));
        moving.position.y = share * radius;
        spring.scale.y = (free - share * radius) / free;
    });
    model.readings[part] = () => moving.position.y / radius;
}
