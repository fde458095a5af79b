// Asks for a script and a form of the physics, runs one on the other, hands the answer back, asks again.
import { openDiagnosis } from "/physics/diagnosis.js";
import { open } from "/physics/physics.js";
import { load } from "/physics/swashlight.wasm-runtime.js";

const opened = new Map();

const openers = {
    webassembly: async () => (await open("webassembly")).physics,
    javascript: async () => (await open("javascript")).physics,
    "diagnosis-webassembly": async () => (await openDiagnosis("webassembly")).diagnosis,
    "diagnosis-javascript": async () => (await openDiagnosis("javascript")).diagnosis,
    "proof-webassembly": async () => (await load("/proof/proof.wasm")).exports,
    "proof-javascript": () => import("/proof/proof.js"),
};

async function module(target) {
    if (!opened.has(target)) opened.set(target, await openers[target]());
    return opened.get(target);
}

async function work(script, target) {
    const input = new Float64Array(await (await fetch("/input")).arrayBuffer());
    const { default: run } = await import(`/${script}.js`);
    return run(await module(target), input);
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
