/**
 * Keeps the page for when there is no network: all its files at the first visit, a new set when any of them changes. The server puts the
 * version in; files lie below it and never change, so what is kept is answered without asking.
 */
const STORE = "swashlight ";
const CACHE = `${STORE}VERSION_OF_ALL_FILES`;
/** Asked for anew when there is a network, taken from what was kept when there is none or it hesitates. */
const FRESH = ["/", "/drives.json", "/manifest.webmanifest"];
const PATIENCE = 2500; // ms for the network to answer

self.addEventListener("install", (event) => event.waitUntil(keepAll()));
self.addEventListener("activate", (event) => event.waitUntil(forgetOld()));
self.addEventListener("fetch", (event) => {
    const address = new URL(event.request.url);
    const ours = event.request.method === "GET" && address.origin === self.location.origin && !address.pathname.startsWith("/api/");
    if (ours) event.respondWith(answer(event.request, event.request.mode === "navigate" ? "/" : address.pathname));
});

async function keepAll() {
    const cache = await caches.open(CACHE);
    const files = await (await fetch("/files.json")).json();
    await cache.addAll([...FRESH, ...files]);
    await self.skipWaiting();
}

/** The version before stays for pages that are still open with it. */
async function forgetOld() {
    const stores = (await caches.keys()).filter((name) => name.startsWith(STORE));
    for (const name of stores.slice(0, -2)) await caches.delete(name);
    await self.clients.claim();
}

async function answer(request, path) {
    const kept = await caches.match(path);
    if (kept && !FRESH.includes(path)) return kept;
    const fresh = fetch(request).then((found) => remembered(path, found));
    if (!kept) return fresh;
    const late = new Promise((done) => setTimeout(() => done(kept), PATIENCE));
    return Promise.race([fresh.catch(() => kept), late]);
}

async function remembered(path, found) {
    if (found.ok && FRESH.includes(path)) await (await caches.open(CACHE)).put(path, found.clone());
    return found;
}
