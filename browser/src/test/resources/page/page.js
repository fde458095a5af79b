// The page itself runs under a strict policy; the physics runs in a worker.
const worker = new Worker("/worker.js", { type: "module" });
worker.onerror = (failure) => fetch("/failure", { method: "POST", body: `worker: ${failure.message}` });
