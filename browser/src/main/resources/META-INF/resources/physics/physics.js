/**
 * Opens the physics: WebAssembly where it loads, else JavaScript that computes the same, slower to start and larger to parse.
 *
 * WebAssembly's runtime builds functions from text, so the script that imports this must be allowed 'unsafe-eval'; load it in a
 * worker whose own response says so, and the page can keep a strict policy.
 */

/** @param {string} file */
const beside = (file) => new URL(file, import.meta.url).href;

async function webAssembly() {
    const { load } = await import(beside("swashlight.wasm-runtime.js"));
    return (await load(beside("swashlight.wasm"))).exports;
}

function javaScript() {
    return import(beside("swashlight-fallback.js"));
}

/** @type {import("./physics.d.ts").open} */
export async function open(target = "fastest") {
    if (target !== "javascript") {
        try {
            return { physics: await webAssembly(), target: "webassembly", reason: "" };
        } catch (failure) {
            if (target === "webassembly") throw failure;
            return { physics: await javaScript(), target: "javascript", reason: String(failure) };
        }
    }
    return { physics: await javaScript(), target: "javascript", reason: "asked for" };
}
