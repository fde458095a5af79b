/**
 * Loads a compiled module: WebAssembly where it loads, else JavaScript that computes the same, two to three times slower.
 *
 * WebAssembly's runtime builds functions from text, so the script that imports this must be allowed 'unsafe-eval'; load it in a
 * worker whose own response says so, and the page can keep a strict policy.
 */

/** @param {string} file */
const beside = (file) => new URL(file, import.meta.url).href;

/** @param {string} name */
async function webAssembly(name) {
    const { load } = await import(beside("swashlight.wasm-runtime.js"));
    return (await load(beside(`${name}.wasm`))).exports;
}

/** @param {string} name */
const javaScript = (name) => import(beside(`${name}-fallback.js`));

/**
 * @param {string} name
 * @param {import("./physics.js").Target} target
 * @returns {Promise<{ exports: any, target: "webassembly" | "javascript", reason: string }>}
 */
export async function loaded(name, target) {
    if (target === "javascript") {
        return { exports: await javaScript(name), target: "javascript", reason: "asked for" };
    }
    try {
        return { exports: await webAssembly(name), target: "webassembly", reason: "" };
    } catch (failure) {
        if (target === "webassembly") throw failure;
        return { exports: await javaScript(name), target: "javascript", reason: String(failure) };
    }
}
