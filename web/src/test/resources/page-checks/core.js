/**
 * Checks of page/core, evaluated in the opened page; answers with what is wrong, one line each, and nothing when all is well.
 *
 * Units: exact definitions, NIST SP 811 (2008), B.8. Ramp: CIE 15 and IEC 61966-2-1 for lightness; Viénot, Brettel, Mollon (1999), Color
 * Research and Application 24, for what red- and green-blind eyes see.
 */
async () => {
    const base = /** @type {HTMLScriptElement} */ (document.querySelector("script[type=module]")).src.replace(/main\.js.*$/, ""); // as the page's own modules
    /** @type {string[]} */
    const wrong = [];
    const say = (ok, words) => { if (!ok) wrong.push(words); };
    const near = (a, b, share) => Math.abs(a - b) <= share * Math.abs(b);

    const units = await import(base + "core/units.js");
    const definitions = [["Pa", "si", 1e5], ["Pa", "us", 4.4482216152605 / 0.0254 ** 2], ["m3/s", "us", (231 * 0.0254 ** 3) / 60], ["m3/s", "si", 1e-3 / 60],
        ["N", "us", 4.4482216152605], ["N.m", "us", 4.4482216152605 * 0.3048], ["kg", "us", 0.45359237], ["m/s", "us", 1609.344 / 3600], ["m", "us", 0.0254],
        ["W", "us", 550 * 4.4482216152605 * 0.3048], ["m3/rev", "us", 0.0254 ** 3], ["rad", "si", Math.PI / 180], ["rad/s", "si", Math.PI / 30], ["K", "us", 1 / 1.8]];
    for (const [unit, system, size] of definitions) {
        const one = units.parse("1", unit, system) - units.parse("0", unit, system);
        say(near(one, size, 1e-6), `${unit} in ${system}: one is ${one}, should be ${size}`);
    }
    say(near(units.parse("0", "K", "si"), 273.15, 1e-9), "0 °C is not 273.15 K");
    say(near(units.parse("212", "K", "us"), 373.15, 1e-9), "212 °F is not 373.15 K");
    for (const system of ["si", "us"]) {
        for (const unit of ["Pa", "m3/s", "rad", "rad/s", "m/s", "N.m", "N", "K", "W", "m", "m3/rev", "kg", "s", "1"]) {
            for (const value of [0.0123, 1.5, 47.3, 333.15, 2.1e6]) {
                const back = units.parse(units.show(value, unit, system).text, unit, system);
                const zero = Math.abs(units.parse("0", unit, system));
                const step = Math.abs(units.parse("1", unit, system) - units.parse("0", unit, system)) * units.shownAs(unit, system).step;
                say(Math.abs(back - value) <= Math.max(step, 0.01 * (Math.abs(value) + zero)), `${value} ${unit} comes back from ${system} as ${back}`);
            }
        }
    }
    const written = units.show(-1e5 + 101325 - 1e5, "Pa", "si").text;
    say(/^\u2212/.test(written) && /\u202f/.test(written), `minus and thin space in "${written}"`);
    const words = await import(base + "core/words.js");
    const before = words.languageNow();
    await words.setLanguage("de");
    const comma = units.show(3.14, "N.m", "si").text;
    await words.setLanguage(before);
    say(comma === "3,1\u202fN·m", `a German number is ${comma}`);
    say(near(units.parse("1,5", "N", "si"), 1.5, 1e-12) && near(units.parse("\u22121.5 N", "N", "si"), -1.5, 1e-12), "comma and real minus are not read");

    const { Store, FIRST_BENCH } = await import(base + "core/store.js");
    const kept = [localStorage.getItem("swashlight.bench"), localStorage.getItem("swashlight.gaze")];
    const one = new Store();
    one.setBench({ faults: { "pump-bores-worn": 2e-5 }, changes: { "gears.ratio": 20 }, hand: { slope: 0.1 } }, "first");
    one.setBench({ hand: { stroke: -1 } }, "second");
    const other = new Store();
    say(other.fromLink(one.link()) && JSON.stringify(other.bench) === JSON.stringify(one.bench), "a link does not bring back its bench");
    say(!other.fromLink("#bench=%7Bbroken"), "a broken link is taken");
    say(other.fromLink("#bench=" + encodeURIComponent('{"drive":7,"hand":{"stroke":"far"}}')) && other.bench.hand.stroke === FIRST_BENCH.hand.stroke, "a link with nonsense is believed");
    one.undo();
    one.undo();
    say(JSON.stringify(one.bench) === JSON.stringify(FIRST_BENCH) && !one.canUndo, "undo does not lead back");
    one.redo();
    one.redo();
    say(one.bench.hand.stroke === -1 && one.bench.hand.slope === 0.1 && !one.canRedo, "redo does not lead on");
    try { one.bench.hand.stroke = 0; } catch { /* refused, as it should be */ }
    say(one.bench.hand.stroke === -1, "a bench can be changed from outside");
    ["swashlight.bench", "swashlight.gaze"].forEach((key, at) => (kept[at] === null ? localStorage.removeItem(key) : localStorage.setItem(key, kept[at])));

    const ramp = await import(base + "core/ramp.js");
    const linear = (part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4);
    const root = (part) => (part > (6 / 29) ** 3 ? Math.cbrt(part) : part / (3 * (6 / 29) ** 2) + 4 / 29);
    const lab = ([r, g, b]) => {
        const [x, y, z] = [0.4124564 * r + 0.3575761 * g + 0.1804375 * b, 0.2126729 * r + 0.7151522 * g + 0.072175 * b, 0.0193339 * r + 0.119192 * g + 0.9503041 * b];
        return [116 * root(y) - 16, 500 * (root(x / 0.95047) - root(y)), 200 * (root(y) - root(z / 1.08883))];
    };
    const eyes = {
        all: (rgb) => rgb,
        "red-blind": ([r, g, b]) => [0.11238 * r + 0.88762 * g, 0.11238 * r + 0.88762 * g, 0.00401 * r - 0.00401 * g + b],
        "green-blind": ([r, g, b]) => [0.29275 * r + 0.70725 * g, 0.29275 * r + 0.70725 * g, -0.02234 * r + 0.02234 * g + b],
    };
    const theme = document.documentElement.dataset.theme;
    for (const ground of ["light", "dark"]) {
        ramp.rampFor(ground);
        const lightness = Array.from({ length: 101 }, (_, at) => lab(ramp.colourAt(at / 100).map(linear))[0]);
        const steps = lightness.slice(1).map((value, at) => (value - lightness[at]) * (ground === "light" ? -1 : 1));
        say(steps.every((step) => step > 0), `${ground}: lightness is not monotone`);
        const mean = Math.abs(lightness[100] - lightness[0]) / 100;
        say(steps.every((step) => Math.abs(step - mean) < 0.25 * mean + 0.05), `${ground}: lightness is uneven, ${Math.min(...steps).toFixed(2)} to ${Math.max(...steps).toFixed(2)} around ${mean.toFixed(2)}`);
        for (const [eye, see] of Object.entries(eyes)) {
            const seen = ramp.BANDS.slice(0, -1).map((band, at) => lab(see(ramp.colourAt((band.place + ramp.BANDS[at + 1].place) / 2).map(linear))));
            seen.slice(1).forEach((colour, at) => {
                const apart = Math.hypot(...colour.map((part, axis) => part - seen[at][axis]));
                say(apart > 6, `${ground}, ${eye}: bands ${at} and ${at + 1} are ${apart.toFixed(1)} apart in CIELAB`);
            });
        }
    }
    ramp.rampFor(theme);
    say(ramp.bandOf(0) === 0 && ramp.bandOf(101325 + 25e6) === ramp.BANDS.length - 2 && ramp.placeOf(NaN) === 0, "ends of the ramp");

    const { allWords } = await import(base + "core/words.js");
    const [en, de] = [await allWords("en"), await allWords("de")];
    const { parts } = await import(base + "core/parts.js");
    for (const part of parts) for (const list of [en, de]) for (const kind of ["name", "does", "fails"]) say(list[`part.${part.key}.${kind}`], `part.${part.key}.${kind} has no words`);
    for (const key of Object.keys(en)) say(de[key], `${key} has no German`);
    const atlas = document.querySelector("swash-page").engine.atlas;
    const needed = [...atlas.faults.keys.flatMap((key) => [`fault.${key}`, `severity.${key}`]), ...atlas.channels.keys.map((key) => `signal.${key}`),
        ...atlas.points.keys.map((key) => `point.${key}`), ...atlas.events.keys.map((key) => `event.${key}`), ...atlas.duties.keys.map((key) => `duty.${key}`)];
    for (const key of needed) say(de[key], `${key} has no German`);
    for (const key of atlas.parameters.keys) say(de[`parameter.${key}`] ?? de[`parameter.${key.replace(/^(pump|motor)\./, "unit.")}`], `parameter.${key} has no German`);
    for (const key of Object.keys(de)) if (!/^(fault|severity|signal|point|event|ledger|parameter|duty|drive)\./.test(key)) say(en[key], `${key} has no English`);
    for (const key of Object.keys(en)) {
        const places = (text) => [...new Set(text.match(/\{\d\}/g) ?? [])].sort().join();
        if (de[key]) say(places(en[key]) === places(de[key]), `${key}: English and German have other gaps`);
    }
    return wrong;
}
