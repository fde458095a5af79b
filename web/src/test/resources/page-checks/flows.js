/**
 * Oil that moves in the circuit, on the mean of some hundred pictures from a settled start, beside the settled ledger: through each valve and
 * orifice, and summed for what stands under pressure (side A, side B, gallery). Answers with what is wrong.
 */
async () => {
    const base = /** @type {HTMLScriptElement} */ (document.querySelector("script[type=module]")).src.replace(/main\.js.*$/, ""); // as the page's own modules
    const wrong = [];
    const { store } = await import(base + "core/store.js");
    const { liveCircuit } = await import(base + "circuit/flowing.js");
    const { engine } = document.querySelector("swash-page");
    const before = store.bench;
    const PICTURES = 120;
    const SHARE = 0.1; // ports, which the ledger leaves out, move pressures by some hundredths
    const SMALL = 8e-7; // m³/s, 0.05 L/min: what pictures at chance moments leave of the pulsation
    const PULSE = 0.04; // of a unit's flow: the same for the sum of its chambers
    const { keys } = engine.atlas.ledger;
    const later = (ms) => new Promise((done) => setTimeout(done, ms));
    let told = 0;
    for (const [drive, bypass] of [["zero-turn-side", 0.05], ["small-loader", 0]]) {
        store.setBench({ drive, changes: {}, faults: {}, hand: { stroke: 0.5, bypass, slope: 0.087 } }, "check");
        store.setGaze({ pace: 0.02, running: true });
        for (let i = 0; i < 60 && engine.frame?.bench !== store.number; i++) await later(200);
        engine.restart("settled");
        await later(2500);
        /** @type {Record<string, number>} */
        const mean = {};
        for (let i = 0; i < PICTURES; i++) {
            await new Promise((done) => engine.addEventListener("frame", done, { once: true }));
            const { flows } = liveCircuit(engine.frame.machines[0], engine.atlas.parameters.keys);
            for (const [key, flow] of Object.entries(flows)) mean[key] = (mean[key] ?? 0) + flow / PICTURES;
        }
        const ledger = engine.frame.machines[0].ledger;
        if (!ledger) {
            wrong.push(`${drive}: nothing settled`);
            continue;
        }
        const into = (key, volume) => ledger[4 * keys.indexOf(key) + volume]; // 0 side A, 1 side B, 2 gallery
        const near = (what, flow, there, within) => {
            if (!(Math.abs(flow - there) <= within)) wrong.push(`${drive}, ${what}: ${flow * 6e4} L/min in the circuit, ${there * 6e4} in the ledger`);
            if (Math.abs(there) > 3 * within) told++;
        };
        const of = { checkA: into("check_a", 0), checkB: into("check_b", 1), bleedA: into("bleed_a", 0), bleedB: into("bleed_b", 1), bypass: into("bypass", 1), chargeRelief: -into("charge_relief", 2) };
        for (const [key, there] of Object.entries(of)) near(key, mean[key], there, SHARE * Math.abs(there) + SMALL);
        near("relief valves", mean.reliefA + mean.reliefB, into("relief", 1), SHARE * Math.abs(into("relief", 1)) + SMALL);
        near("gallery, all its ways out", mean.checkA + mean.checkB + mean.bleedA + mean.bleedB, mean.makeUp, SMALL / 2);
        // what pump, motor and valves leave over in a side is what the ledger has going to the case, across bridges and past faces
        const drawn = new Set(["bypass", "lifted_block", "relief", "check_a", "check_b", "bleed_a", "bleed_b"]);
        const rest = (volume) => keys.reduce((sum, key, i) => sum - (drawn.has(key) || /_(carry|switching|pistons|bad_piston)$/.test(key) ? 0 : ledger[4 * i + volume]), 0);
        const across = mean.bypass + mean.reliefA + mean.reliefB;
        near("side A", mean.aPump - mean.aMotor - across + mean.checkA + mean.bleedA, rest(0), PULSE * Math.abs(mean.aPump) + SMALL);
        near("side B", mean.bMotor - mean.bPump + across + mean.checkB + mean.bleedB, rest(1), PULSE * Math.abs(mean.bPump) + SMALL);
    }
    if (told < 3) wrong.push(`only ${told} flows were large enough to tell anything`);
    store.setBench({ drive: before.drive, changes: before.changes, faults: before.faults, hand: before.hand }, "check");
    return wrong;
}
