// Asks for a script and a form of the physics, runs one on the other, hands the answer back, asks again.
import { open } from "/physics/physics.js";

const opened = new Map();

async function physics(target) {
    if (!opened.has(target)) opened.set(target, (await open(target)).physics);
    return opened.get(target);
}

async function work(script, target) {
    const input = new Float64Array(await (await fetch("/input")).arrayBuffer());
    const { default: run } = await import(`/${script}.js`);
    return run(await physics(target), input);
}

for (;;) {
    const job = await (await fetch("/next")).text();
    if (job === "") continue;
    const [script, target] = job.split(" ");
    try {
        await fetch("/answer", { method: "POST", body: await work(script, target) });
    } catch (failure) {
        await fetch("/failure", { method: "POST", body: `${failure.message}\n${failure.stack}` });
    }
}
