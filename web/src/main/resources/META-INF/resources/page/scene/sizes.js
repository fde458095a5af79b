/**
 * The sizes of everything drawn, from the description of the drive: what a parameter gives is taken as it is, what none gives is
 * proportioned to what does (common practice, no source). Millimetres and radians; nothing here is a picture yet.
 *
 * Axes: x along the machine, y up, z across. The motor turns about z at x = motorX, y = 0; the pump about y at x = motorX, z = pumpZ; the
 * axle about z at x = 0. The case is parted at y = 0, in the plane of motor shaft, gears and axle.
 */

const MM = 1000; // mm per m

/** What is exaggerated so that it can be seen, and by how much; the scene says so in words. */
export const EXAGGERATION = Object.freeze({ faceGap: 60, boreGap: 20, scoreDepth: 25 });

/** @typedef {(key: string) => number} Get a parameter's value with its faults, SI */
/** @typedef {ReturnType<typeof unitSizes>} UnitSizes */
/** @typedef {ReturnType<typeof sizesOf>} Sizes */

/**
 * One rotating group in its own frame: y along the shaft from the port face (0) to the plate.
 * @param {Get} get @param {"pump" | "motor"} place
 */
function unitSizes(get, place) {
    const mm = (/** @type {string} */ key) => get(`${place}.${key}`) * MM;
    const diameter = mm("pistonDiameter");
    const pitch = mm("pitchRadius");
    const angle = get(`${place}.fullSwashAngle`);
    const engaged = mm("engagedLength");
    const landOuter = mm("landOuter");
    const kidneyInner = mm("kidneyInner");
    const kidneyOuter = mm("kidneyOuter");
    const halfStroke = pitch * Math.tan(angle);
    const floor = 0.35 * diameter;
    const dead = 0.12 * diameter; // left above the floor when the chamber is smallest
    const middle = floor + dead + halfStroke; // inner end of a piston at mid stroke
    const blockLength = floor + dead + halfStroke + engaged;
    const noseRadius = 0.42 * diameter;
    const plateHeight = blockLength + halfStroke + 0.3 * diameter; // the noses' plane crosses the axis here
    const plateRadius = Math.max(pitch + 0.62 * diameter, 1.25 * pitch);
    const slotWidth = kidneyOuter - kidneyInner;
    return {
        place,
        count: Math.round(get(`${place}.pistonCount`)),
        idle: Math.round(get(`${place}.idlePistons`)),
        springsBroken: Math.round(get(`${place}.idlePistons`)),
        diameter,
        pitch,
        angle,
        halfStroke,
        engaged,
        floor,
        middle,
        blockLength,
        blockRadius: Math.max(landOuter, pitch + 0.62 * diameter),
        shaftRadius: Math.min(Math.max(0.6 * (pitch - diameter / 2), 0.22 * pitch), 0.7 * diameter),
        noseRadius,
        plateHeight,
        plateRadius,
        plateThickness: 0.5 * diameter + 0.12 * plateRadius,
        pistonLength: plateHeight - middle,
        hollowRadius: 0.3 * diameter,
        landInner: mm("landInner"),
        kidneyInner,
        kidneyOuter,
        landOuter,
        kidneySpan: get(`${place}.kidneySpan`),
        slotSpan: Math.min((mm("portArea") * MM) / (slotWidth * ((kidneyInner + kidneyOuter) / 2)), (1.7 * Math.PI) / get(`${place}.pistonCount`)),
        faceGap: mm("faceGap"),
        clearance: mm("boreClearance"),
        badClearance: mm("badPistonClearance"),
        scores: {
            turning: { width: mm("caseScoreWidth"), depth: mm("caseScoreDepth") },
            a: { width: mm("sideAScoreWidth"), depth: mm("sideAScoreDepth") },
            b: { width: mm("sideBScoreWidth"), depth: mm("sideBScoreDepth") },
            bridge: { width: mm("bridgeScoreWidth"), depth: mm("bridgeScoreDepth") },
        },
        groove: { area: mm("grooveArea") * MM, angle: get(`${place}.grooveAngle`) },
        thrustFriction: get(`${place}.thrustFriction`),
    };
}

/** @param {Get} get */
export function sizesOf(get) {
    const pump = unitSizes(get, "pump");
    const motor = unitSizes(get, "motor");
    const unit = (pump.diameter + motor.diameter) / 2; // the scale of all that has no parameter
    const wall = 0.3 * unit;
    const margin = 0.35 * unit;
    const trains = gearSizes(get, motor, unit);
    const legWall = 1.5 * motor.diameter; // thickness of the leg that bears the motor face
    const pumpZ = -(legWall + pump.blockRadius + margin);
    const passage = passageSizes(get, pump, motor, legWall, pumpZ);
    const faceY = passage.radius + 0.55 * pump.diameter; // of the pump's port face
    const plateTop = faceY + pump.plateHeight + pump.plateThickness + pump.noseRadius;
    const legEnd = pumpZ - pump.blockRadius - 0.9 * unit;
    const legBottom = -passage.radius - 0.45 * unit;
    const checkHeight = 0.95 * unit;
    const galleryY = legBottom - checkHeight;
    const filterBottom = galleryY - 1.5 * unit;
    const motorEnd = motor.plateHeight + motor.plateThickness + motor.noseRadius;
    const gears = trains.place(motorEnd + wall + margin);
    const caseSizes = caseSizesOf({ pump, motor, unit, wall, margin, pumpZ, legEnd, plateTop, filterBottom, gears });
    const wheelRadius = get("wheels.rollingRadius") * MM;
    return {
        pump,
        motor,
        unit,
        wall,
        margin,
        motorX: gears.motorX,
        pumpZ,
        faceY,
        legWall,
        legEnd,
        legBottom,
        legHalf: Math.max(pump.landOuter, motor.landOuter, Math.max(pump.pitch, motor.pitch) + passage.radius + wall) + 0.12 * unit,
        plateTop,
        passage,
        check: { height: checkHeight, ball: 0.5 * Math.sqrt((get("loop.checkArea") * MM * MM * 4) / Math.PI) * 1.25 },
        galleryY,
        filterBottom,
        motorEnd,
        gears,
        case: caseSizes,
        input: inputSizes(get, caseSizes, pump, unit),
        wheel: {
            radius: wheelRadius,
            width: 0.42 * wheelRadius,
            mismatch: get("wheels.radiusMismatch"),
        },
        get,
    };
}

/**
 * Bore of the main passages from the oil they hold.
 * @param {Get} get
 * @param {UnitSizes} pump
 * @param {UnitSizes} motor
 * @param {number} legWall
 * @param {number} pumpZ
 */
function passageSizes(get, pump, motor, legWall, pumpZ) {
    const length = legWall - pumpZ + pump.diameter;
    const volume = ((get("loop.volumeA") + get("loop.volumeB")) / 2) * MM ** 3;
    const room = Math.min(pump.pitch - 1.15 * pump.shaftRadius, motor.pitch - 1.15 * motor.shaftRadius) - 0.06 * pump.diameter;
    const radius = Math.min(Math.max(Math.sqrt(volume / (Math.PI * length)), 0.25 * pump.diameter), room);
    return { radius, length };
}

/**
 * Reduction in as many stages as the ratio asks for, all shafts in the plane y = 0.
 * @param {Get} get @param {UnitSizes} motor @param {number} unit
 */
function gearSizes(get, motor, unit) {
    const ratio = get("gears.ratio");
    const stageCount = ratio > 40 ? 3 : ratio > 5 ? 2 : 1;
    /** @type {{ teeth: number, wheelTeeth: number, ratio: number, module: number, width: number }[]} */
    const stages = [];
    let rest = ratio;
    for (let i = 0; i < stageCount; i++) {
        const share = i === stageCount - 1 ? rest : Math.pow(ratio, 1 / stageCount) * (i === 0 ? 0.9 : 1);
        const teeth = Math.max(9, Math.round(11 / Math.min(1, share)) + 2 * i);
        const wheelTeeth = Math.max(9, Math.round(teeth * share));
        const module = (0.095 + 0.025 * i) * unit * (share > 1 ? 1 : 1 / share);
        stages.push({ teeth, wheelTeeth, ratio: i === stageCount - 1 ? rest : wheelTeeth / teeth, module, width: (0.75 + 0.2 * i) * unit });
        rest = ratio / stages.reduce((product, each) => product * each.ratio, 1);
    }
    return {
        /** @param {number} startZ */
        place(startZ) {
            let z = startZ;
            let x = 0;
            const placed = stages.map((stage, i) => {
                const small = (stage.teeth * stage.module) / 2;
                const large = small * stage.ratio;
                const at = { ...stage, small, large, pinionX: x, wheelX: x - small - large, z0: z, z1: z + stage.width };
                x = at.wheelX;
                z = i === 0 ? startZ - 0.35 * unit - (stages[1]?.width ?? 0) : z - 0.35 * unit - (stages[i + 1]?.width ?? 0);
                return at;
            });
            const motorX = -x; // so that the axle stands at x = 0
            for (const stage of placed) {
                stage.pinionX += motorX;
                stage.wheelX += motorX;
            }
            const last = placed[placed.length - 1];
            return {
                ratio,
                stages: placed,
                motorX,
                last,
                largest: Math.max(...placed.map((each) => each.large + each.module)),
                shaftRadius: Math.max(0.36 * unit, motor.shaftRadius),
                axleRadius: 0.55 * unit,
                differential: { radius: Math.min(0.62 * last.large, 1.7 * unit), length: 2.4 * unit },
                endZ: Math.max(...placed.map((each) => each.z1)),
                /** Sense of the axle for a motor that turns forward, about z. */
                sense: placed.length % 2 ? -1 : 1,
            };
        },
    };
}

/**
 * @param {{ pump: UnitSizes, motor: UnitSizes, unit: number, wall: number, margin: number, pumpZ: number, legEnd: number, plateTop: number, filterBottom: number, gears: ReturnType<ReturnType<typeof gearSizes>["place"]> }} from
 */
function caseSizesOf({ pump, motor, unit, wall, margin, pumpZ, legEnd, plateTop, filterBottom, gears }) {
    const roof = Math.max(gears.largest, motor.blockRadius) + margin;
    const base = motor.blockRadius + margin; // of the shallow part of the case, up and down
    const bottom = -Math.max(gears.largest + margin, margin - filterBottom + 0.2 * unit, motor.blockRadius + margin);
    const zLow = legEnd - margin;
    const zHigh = gears.endZ + margin + 0.2 * unit;
    return {
        roof: Math.max(roof, base + 0.3 * unit),
        bottom,
        base,
        sump: { radius: 1.5 * unit + margin, bottom: Math.min(filterBottom - 0.3 * unit, -base - 0.3 * unit) },
        zLow,
        zHigh,
        tower: Math.max(plateTop + margin + 0.25 * unit, base + 0.6 * unit),
        towerHalfX: Math.max(pump.plateRadius, pump.blockRadius) + margin,
        towerZ0: pumpZ - Math.max(pump.plateRadius, pump.blockRadius) - margin,
        towerZ1: pumpZ + Math.max(pump.plateRadius, pump.blockRadius) + margin,
        flange: 0.55 * unit,
        hornRadius: gears.axleRadius * 1.9,
        hornLow: zLow - 1.6 * unit,
        hornHigh: zHigh + 1.6 * unit,
    };
}

/** @param {Get} get @param {{ tower: number, towerHalfX: number }} box @param {UnitSizes} pump @param {number} unit */
function inputSizes(get, box, pump, unit) {
    const direct = get("belt.capacity") >= 4999; // the catalogue's "rigid shaft"
    const pulley = (direct ? 1.9 : 3.1) * unit; // without a belt a flange of a coupling
    return {
        pulley,
        enginePulley: pulley * get("belt.speedRatio"),
        direct,
        fanY: box.tower + 0.5 * unit,
        fanRadius: Math.min(3.9 * unit, Math.hypot(box.towerHalfX, 0.2 * unit) + 0.42 * unit), // clear of the control arm
        pulleyY: box.tower + 1.7 * unit,
        pulleyHeight: 0.9 * unit,
        engineX: Math.max(3.2 * pulley, pulley * (1 + get("belt.speedRatio")) + 2 * unit),
        shaftTop: box.tower + 3 * unit,
        shaftRadius: pump.shaftRadius,
    };
}
