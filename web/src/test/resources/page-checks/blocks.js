/**
 * A rotating group changed by one measure: what follows must be one that the physics can run, and that keeps V = 2·N·(π/4 d²)·R·tan α (closed
 * form). Answers with what is wrong.
 */
async () => {
    const base = /** @type {HTMLScriptElement} */ (document.querySelector("script[type=module]")).src.replace(/main\.js.*$/, ""); // as the page's own modules
    const wrong = [];
    const { following, fits } = await import(base + "core/block.js");
    const { store } = await import(base + "core/store.js");
    const { engine, drives } = document.querySelector("swash-page");
    const { keys } = engine.atlas.parameters;
    const before = store.bench;
    let refused = "";
    engine.addEventListener("trouble", (event) => { refused = event.detail.words; });
    const settled = async () => {
        for (let tries = 0; tries < 200; tries++) {
            await new Promise((done) => setTimeout(done, 50));
            if (refused || (engine.frame.bench === store.number && engine.frame.machines[0].point)) return;
        }
    };
    for (const unit of ["pump", "motor"]) {
        for (const [measure, factor] of [["pistonCount", 7 / 5], ["pistonCount", 9 / 5], ["pistonDiameter", 0.9], ["pitchRadius", 1.2], ["fullSwashAngle", 0.8], ["displacement", 1.3]]) {
            const built = (key) => drives[0].values[keys.indexOf(key)];
            const key = `${unit}.${measure}`;
            const changes = following(key, measure === "pistonCount" ? Math.round(built(key) * factor) : built(key) * factor, built);
            const now = (name) => changes[`${unit}.${name}`] ?? built(`${unit}.${name}`);
            const volume = 2 * now("pistonCount") * (Math.PI / 4) * now("pistonDiameter") ** 2 * now("pitchRadius") * Math.tan(now("fullSwashAngle"));
            if (Math.abs(volume / now("displacement") - 1) > 1e-9) wrong.push(`${key}: pistons give ${volume}, displacement says ${now("displacement")}`);
            if (!fits(now("pistonCount"), now("pistonDiameter"), now("pitchRadius"))) wrong.push(`${key}: pistons touch`);
            refused = "";
            store.setBench({ drive: drives[0].key, changes, faults: {} }, "check");
            await settled();
            const machine = engine.frame.machines[0];
            if (refused || machine.trouble || !machine.point) wrong.push(`${key} × ${factor}: ${refused || machine.trouble || "does not settle"}`);
            if (machine[`${unit}Pistons`] !== now("pistonCount")) wrong.push(`${key}: the run has ${machine[`${unit}Pistons`]} pistons`);
        }
    }
    store.setBench(before, "check");
    return wrong;
}
