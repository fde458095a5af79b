// What a page may write, and what the types refuse. Checked by .ci/types; never run.
import { openDiagnosis } from "../../main/resources/META-INF/resources/physics/diagnosis.js";
import { open, type Run } from "../../main/resources/META-INF/resources/physics/physics.js";

const { physics, target } = await open();
const slow: boolean = target === "javascript";

const sick = physics.lightRider().withFault("pump-bad-piston", 60e-6);
const duty = physics.driving(0, 0.1, 333.15).line("stroke", new Float64Array([0, 0.08]), new Float64Array([0, 0.6]));
const run: Run = sick.startAtRest(duty, 1e-3);
const row: Float64Array = run.steps(new Float64Array([1e-5, 1e-5]));
run.turn("pump", Math.PI / 180, 1);
const ledger: number | undefined = sick.settled(duty, 1).ledger()[0];

const { diagnosis } = await openDiagnosis("webassembly");
const finding = diagnosis
    .machine(sick.name(), sick.values(), sick.spreads(), sick.origins())
    .reading("level run", "runTime", 11, 0, ["distance"], new Float64Array([20]))
    .find(1);
const words: string = finding.words();

// @ts-expect-error: there is no such control
duty.line("steering", new Float64Array([0]), new Float64Array([0]));
// @ts-expect-error: a run is advanced to a number
run.advance("soon");
// @ts-expect-error: numbers cross as Float64Array
run.steps([1e-5]);
// @ts-expect-error: there is no such form
await open("native");

export { ledger, row, slow, words };
