import { loaded } from "./loading.js";

/** Opens the diagnosis. @type {typeof import("./diagnosis.d.ts").openDiagnosis} */
export async function openDiagnosis(wanted = "fastest") {
    const { exports, target, reason } = await loaded("diagnosis", wanted);
    return { diagnosis: exports, target, reason };
}
