/**
 * Drives that cannot be, one for each rule of the physics: what the page says of it must be in its own words, in every language, with the right
 * values in the user's units. Answers with what is wrong.
 */
async () => {
    const base = /** @type {HTMLScriptElement} */ (document.querySelector("script[type=module]")).src.replace(/main\.js.*$/, ""); // as the page's own modules
    const wrong = [];
    const { store } = await import(base + "core/store.js");
    const words = await import(base + "core/words.js");
    const page = document.querySelector("swash-page");
    const { engine, drives } = page;
    const before = store.bench;
    /** Each rule and a change that breaks it. */
    const broken = {
        "out-of-range": { "pump.boreClearance": 1 },
        "radii-order": { "pump.kidneyOuter": 0.0021 },
        "piston-leaves-bore": { "pump.engagedLength": 0.0031 },
        "chamber-too-small": { "motor.chamberMidVolume": 1e-8 },
        "displacement-geometry": { "pump.displacement": 3e-5 },
        "whole-number": { "pump.pistonCount": 5.5 },
        "viscosity-rises": { "oil.viscosity100": 5e-5, "oil.viscosity40": 4e-5 },
        "torque-curve": { "engine.peakTorque": 3.1 },
    };
    const { keys } = engine.atlas.parameters;
    for (const [rule, changes] of Object.entries(broken)) {
        const field = Object.keys(changes)[0];
        if (!keys.includes(field)) {
            wrong.push(`there is no parameter ${field}`);
            continue;
        }
        const heard = new Promise((done) => engine.addEventListener("trouble", (event) => done(event.detail), { once: true }));
        store.setBench({ drive: drives[0].key, changes, faults: {} }, "check");
        const refused = await Promise.race([heard, new Promise((done) => setTimeout(() => done(null), 5000))]);
        if (!refused?.complaints.some((complaint) => complaint.key === rule)) {
            wrong.push(`${rule}: ${field} was not refused for it, but ${JSON.stringify(refused)}`);
            continue;
        }
        for (const language of Object.keys(words.LANGUAGES)) {
            await words.setLanguage(language);
            page.requestUpdate();
            await page.updateComplete;
            const said = page.renderRoot.querySelector(".trouble")?.innerText ?? "";
            if (said.includes(rule) || said.includes(field) || said.includes("{") || words.missing.size > 0) wrong.push(`${rule}, ${language}: ${said} ${[...words.missing]}`);
            if (page.renderRoot.querySelector(".trouble li") === null) wrong.push(`${rule}, ${language}: not told in parts`);
        }
    }
    await words.setLanguage("en");
    store.setBench(before, "check");
    return wrong;
}
