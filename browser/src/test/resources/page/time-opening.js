// Milliseconds from nothing to a first drive, fetched from this machine: WebAssembly, then JavaScript. Run before either is loaded.
export default async () => {
    const { loaded } = await import("/physics/loading.js");
    const took = [];
    for (const target of ["webassembly", "javascript"]) {
        const begun = performance.now();
        const { exports } = await loaded("swashlight", target);
        exports.lightRider().values();
        took.push(performance.now() - begun);
    }
    return new Float64Array(took);
};
