/** One machine, all of it, from its sizes. */
import { addBubbles } from "./bubbles.js";
import { addCase } from "./casing.js";
import { addCentre } from "./centre.js";
import { addGears } from "./gears.js";
import { addInput } from "./input.js";
import { addLeaks } from "./leaks.js";
import { addMakeUp } from "./makeup.js";
import { Looks } from "./materials.js";
import { Model } from "./model.js";
import { addFixedPlate, addSwashPlate } from "./plates.js";
import { addReturnSpring, addThinOil, addTightness } from "./signs.js";
import { sizesOf } from "./sizes.js";
import { addUnit } from "./unit.js";
import { addWheels } from "./wheels.js";

/**
 * @param {(key: string) => number} parameter
 * @param {import("./materials.js").Palette} palette
 */
export function buildDrive(parameter, palette) {
    /** Every parameter the picture was made from: another value of one of them asks for another picture. @type {Map<string, number>} */
    const used = new Map();
    const sizes = sizesOf((key) => {
        const value = parameter(key);
        if (!Number.isFinite(value)) throw new Error(`the drive says nothing of ${key}, which the picture needs`);
        used.set(key, value);
        return value;
    });
    const model = new Model(sizes, new Looks(palette));
    const pumpFrame = model.frame(model.root, sizes.motorX, sizes.faceY, sizes.pumpZ);
    const motorFrame = model.frame(model.root, sizes.motorX, 0, 0);
    motorFrame.rotation.x = Math.PI / 2; // its shaft lies along z
    const pumpTurning = addUnit(model, sizes.pump, pumpFrame);
    const motorTurning = addUnit(model, sizes.motor, motorFrame);
    const tilting = addSwashPlate(model, sizes.pump, pumpFrame);
    addReturnSpring(model, pumpFrame, tilting);
    addFixedPlate(model, sizes.motor, motorFrame);
    addCentre(model, pumpFrame, motorFrame);
    addMakeUp(model);
    const axle = addGears(model);
    addTightness(model, axle);
    addInput(model, pumpTurning);
    addWheels(model, axle);
    addCase(model);
    addLeaks(model, pumpFrame, motorFrame);
    addThinOil(model, sizes.pump, pumpTurning);
    addThinOil(model, sizes.motor, motorTurning);
    addBubbles(model, pumpFrame, motorFrame);
    return { model, used };
}
