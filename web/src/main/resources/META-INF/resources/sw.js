/**
 * Answers when the network does not, from what the page has kept (page/shell/offline.js). The network comes first, so that nobody sees an old
 * page beside a new server; a load that has once waited in vain is answered from the store throughout, so that its files fit each other.
 */
const STORE = "swashlight ";
const PATIENCE = 2500; // ms for the network to begin an answer
/** Pages that found no network, by client. */
const cutOff = new Set();

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));
self.addEventListener("fetch", (event) => {
    const { request } = event;
    const url = new URL(request.url);
    if (request.method !== "GET" || url.origin !== self.location.origin || url.pathname.startsWith("/api/")) return;
    event.respondWith(answer(request, event.resultingClientId || event.clientId));
});

async function answer(request, client) {
    if (cutOff.has(client)) return (await kept(request)) ?? fetch(request);
    try {
        return await Promise.race([fetch(request), patience(request)]);
    } catch (failure) {
        const found = await kept(request);
        if (!found) throw failure;
        cutOff.add(client);
        return found;
    }
}

/** Gives up on the network only where something was kept; else there is nothing better than to wait. */
async function patience(request) {
    await new Promise((done) => setTimeout(done, PATIENCE));
    if (await kept(request)) throw new Error("the network is too slow");
    return fetch(request);
}

/** The newest complete store has it, or none; the oldest is taken while a newer one fills. */
async function kept(request) {
    const stores = (await caches.keys()).filter((name) => name.startsWith(STORE)).sort();
    const url = request.mode === "navigate" ? "/" : request.url;
    for (const name of stores) {
        const found = await (await caches.open(name)).match(url, { ignoreSearch: true });
        if (found) return found;
    }
    return undefined;
}
