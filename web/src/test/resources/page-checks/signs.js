/**
 * Faults without a shape of their own: the sign each has in the picture, read back from its objects beside closed forms, and its words in every
 * language. Answers with what is wrong.
 */
async () => {
    const base = /** @type {HTMLScriptElement} */ (document.querySelector("script[type=module]")).src.replace(/main\.js.*$/, ""); // as the page's own modules
    const wrong = [];
    const { store } = await import(base + "core/store.js");
    const words = await import(base + "core/words.js");
    const { parameter, signal } = await import(base + "core/live.js");
    const page = document.querySelector("swash-page");
    const { engine } = page;
    const scene = page.renderRoot.querySelector("swash-scene");
    const later = (ms) => new Promise((done) => setTimeout(done, ms));
    const before = { bench: store.bench, gaze: store.gaze };
    const near = (what, drawn, wanted, within) => {
        if (!(Math.abs(drawn - wanted) <= within)) wrong.push(`${what}: drawn ${drawn}, should be ${wanted}`);
    };
    async function drawnWith(faults) {
        store.setBench({ faults, hand: { stroke: 0.6 } }, "check");
        store.setGaze({ pace: 0.01, running: true });
        for (let i = 0; i < 60 && engine.frame?.bench !== store.number; i++) await later(200);
        await later(2500);
        store.setGaze({ running: false });
        await later(900);
        return { drawn: scene.drawn()[0], state: engine.frame.machines[0] };
    }
    const keys = engine.atlas.parameters.keys;

    const sound = await drawnWith({});
    const rate = parameter(sound.state, keys, "control.returnRate");
    near("no marks on a sound differential", sound.drawn.tightMarks ?? 0, 0, 0);
    near("no rings with oil as it should be", sound.drawn.pumpLeakingBores ?? 0, 0, 0);

    // stiffness of a coiled wire goes with the fourth power of its thickness (any textbook on springs); 0.6 rad/s is a firm one
    const weak = await drawnWith({ "return-weak": 0.8 });
    near("wire of a weak return spring", weak.drawn.springWire, Math.min(1, (0.2 * rate) / 0.6) ** 0.25, 1e-6);
    near("its legs are apart by the plate's angle", weak.drawn.springOpen, Math.abs(signal(weak.state, "swash_angle")), 1e-6);
    const broken = await drawnWith({ "return-weak": 1 });
    near("a broken one takes no leg along", broken.drawn.springOpen, 0, 1e-9);

    const tight = await drawnWith({ "differential-tight": 30 });
    const drag = parameter(sound.state, keys, "gears.dragTorque") + 30; // N·m
    const axle = Math.abs(signal(tight.state, "motor_speed")) / parameter(tight.state, keys, "gears.ratio"); // rad/s
    near("heat of a tight differential, W", tight.drawn.tightHeat, drag * axle, 1e-3 * drag * axle);
    if (!(tight.drawn.tightMarks > 0)) wrong.push("a tight differential has no marks");

    const thin = await drawnWith({ "oil-too-thin": 0.5 });
    for (const unit of ["pump", "motor"]) {
        let leaking = 0;
        for (let k = 1; k <= thin.state[`${unit}Pistons`]; k++) if (signal(thin.state, `${unit}_chamber_${k}_leak`) > 1e-9) leaking++;
        near(`rings round leaking bores of the ${unit}`, thin.drawn[`${unit}LeakingBores`], leaking, 0);
    }

    const { signsOf } = await import(base + "scene/sign-words.js");
    for (const language of Object.keys(words.LANGUAGES)) {
        await words.setLanguage(language);
        for (const [state, faults] of [[weak, { "return-weak": 0.8 }], [broken, { "return-weak": 1 }], [tight, { "differential-tight": 30 }], [thin, { "oil-too-thin": 0.5 }]]) {
            const said = signsOf(state.state, keys, faults, "si").map((key) => words.t(...key));
            if (said.length !== 1 || /[{}–]|scene\.|NaN/.test(said[0]) || words.missing.size > 0) wrong.push(`${language}: ${Object.keys(faults)} is said as ${said}`);
        }
    }
    await words.setLanguage(before.gaze.language);
    store.setBench({ faults: before.bench.faults, hand: before.bench.hand }, "check");
    return wrong;
}
