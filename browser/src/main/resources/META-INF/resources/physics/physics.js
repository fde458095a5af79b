import { loaded } from "./loading.js";

/** Opens the physics. @type {typeof import("./physics.d.ts").open} */
export async function open(wanted = "fastest") {
    const { exports, target, reason } = await loaded("swashlight", wanted);
    return { physics: exports, target, reason };
}
