/**
 * The parts of the drive: one key each, shared by the scene, the circuit, the cards and the words, so that every view means the same thing.
 * Names, what a part does and what it looks like when it fails stand in the word lists as part.KEY.name, .does, .fails.
 */

/**
 * @typedef {object} Part
 * @property {string} key
 * @property {string} group where it sits: case, pump, centre, motor, make-up, gears, wheels, input, control
 * @property {string[]} signals keys of live values that belong on its card, first the most telling
 * @property {string[]} faults keys of faults that sit in it
 */

/** @type {readonly Part[]} */
export const parts = [
    part("case-upper", "case", ["oil_temperature"], ["fins-packed"]),
    part("case-lower", "case", ["oil_temperature", "case_leak"], ["oil-low"]),
    part("centre-section", "centre", ["pressure_a", "pressure_b"], ["crack-a", "crack-b", "crack-ab"]),
    part("passage-a", "centre", ["pressure_a", "pump_flow", "motor_flow"], ["crack-a"]),
    part("passage-b", "centre", ["pressure_b", "pump_flow", "motor_flow"], ["crack-b"]),
    part("pump-face", "pump", ["pressure_a", "pressure_b", "pump_hold_down"], ["pump-face-worn", "pump-face-scored", "pump-bridge-scored"]),
    part("pump-block", "pump", ["pump_speed", "pump_torque", "pump_hold_down"], ["pump-bores-worn", "pump-piston-sticks"]),
    part("pump-piston", "pump", ["lowest_chamber", "case_leak"], ["pump-bores-worn", "pump-bad-piston"]),
    part("pump-spring", "pump", ["lowest_chamber"], ["pump-spring-broken"]),
    part("swash-plate", "control", ["swash_angle", "swash_moment"], ["linkage-play", "forward-travel-short", "reverse-travel-short", "neutral-forward", "neutral-reverse"]),
    part("trunnion", "control", ["swash_angle", "swash_moment"], ["linkage-play"]),
    part("control-arm", "control", ["swash_angle", "swash_moment"], ["linkage-play", "return-weak"]),
    part("pump-thrust-bearing", "pump", ["swash_moment", "pump_torque"], ["pump-thrust-worn"]),
    part("motor-face", "motor", ["pressure_a", "pressure_b", "motor_hold_down"], ["motor-face-worn", "motor-face-scored", "motor-bridge-scored"]),
    part("motor-block", "motor", ["motor_speed", "motor_torque", "motor_hold_down"], ["motor-bores-worn", "motor-piston-sticks"]),
    part("motor-piston", "motor", ["lowest_chamber", "case_leak"], ["motor-bores-worn", "motor-bad-piston"]),
    part("motor-spring", "motor", ["lowest_chamber"], ["motor-spring-broken"]),
    part("fixed-plate", "motor", ["motor_torque"], ["motor-thrust-worn"]),
    part("motor-thrust-bearing", "motor", ["motor_torque"], ["motor-thrust-worn"]),
    part("check-a", "make-up", ["check_a_flow", "pressure_a", "gallery_pressure", "bleed_a_flow"], ["check-a-leaks", "check-a-stuck-open", "check-a-stuck-shut", "bleed-a-wrong"]),
    part("check-b", "make-up", ["check_b_flow", "pressure_b", "gallery_pressure", "bleed_b_flow"], ["check-b-leaks", "check-b-stuck-open", "check-b-stuck-shut", "bleed-b-wrong"]),
    part("gallery", "make-up", ["gallery_pressure", "make_up_flow"], []),
    part("filter", "make-up", ["make_up_flow", "gallery_pressure"], ["filter-blocked", "air-leak", "oil-low"]),
    part("charge-pump", "make-up", ["gallery_pressure", "make_up_flow"], []),
    part("charge-relief", "make-up", ["charge_relief_flow", "gallery_pressure"], []),
    part("relief-a", "make-up", ["relief_flow", "pressure_a"], []),
    part("relief-b", "make-up", ["relief_flow", "pressure_b"], []),
    part("magnets", "case", ["oil_temperature"], []),
    part("oil", "case", ["oil_temperature"], ["oil-too-thin", "oil-degraded", "oil-wet", "oil-aerated", "oil-overheated"]),
    part("bypass", "centre", ["bypass_flow", "lifted_block_flow", "pressure_a", "pressure_b", "motor_hold_down"], ["bypass-not-closed", "bypass-left-open", "bypass-stuck"]),
    part("input-shaft", "input", ["pump_speed", "input_torque"], ["input-key-sheared"]),
    part("input-pulley", "input", ["belt_slip", "engine_speed", "pump_speed"], ["belt-worn", "pulley-wrong"]),
    part("engine", "input", ["engine_speed", "input_torque"], ["engine-slow", "engine-weak"]),
    part("fan", "input", ["oil_temperature", "pump_speed"], ["fan-broken"]),
    part("motor-shaft", "gears", ["motor_speed", "output_torque"], []),
    part("pinion", "gears", ["motor_speed", "output_torque"], ["gears-damaged"]),
    part("gears", "gears", ["output_torque", "motor_speed"], ["gears-damaged"]),
    part("differential", "gears", ["ground_force"], ["differential-tight", "axle-key-sheared"]),
    part("axle", "gears", ["ground_force", "ground_speed"], ["axle-key-sheared"]),
    part("brake", "gears", ["ground_force"], ["brake-drags", "brake-weak"]),
    part("wheel", "wheels", ["ground_speed", "wheel_slip", "ground_force"], ["tyre-small", "tyre-grip-poor", "overload", "duty-steep"]),
];

const byKey = new Map(parts.map((each) => [each.key, each]));

/**
 * @param {string} key
 * @returns {Part | undefined}
 */
export const partOf = (key) => byKey.get(key);

/**
 * The part a fault sits in; the first that names it.
 * @param {string} fault
 * @returns {Part | undefined}
 */
export const partWithFault = (fault) => parts.find((each) => each.faults.includes(fault));

/**
 * @param {string} key
 * @param {string} group
 * @param {string[]} signals
 * @param {string[]} faults
 * @returns {Part}
 */
function part(key, group, signals, faults) {
    return Object.freeze({ key, group, signals, faults });
}
