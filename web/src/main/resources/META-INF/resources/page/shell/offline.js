/**
 * Keeps the whole page on the device, so that it opens again without a network: once it is usable and has nothing better to do, it follows
 * every file that a module names, views not yet looked at and words of other languages too, and puts them in a store from which /sw.js
 * answers when the network does not. A new store takes the old one's place only when it is complete.
 */
import { files } from "../core/words.js";

/** Compiled files, whose names the physics puts together as it loads. */
const PHYSICS = ["physics.js", "swashlight.wasm-runtime.js", "swashlight.wasm", "swashlight-fallback.js"].map((name) => `/physics/${name}`);
/** Where the walk begins; everything else is named by one of these. */
const BEGINNINGS = ["/", "/page/main.js", "/page/style.css", "/manifest.webmanifest", "/drives.json", "/page/engine/worker.js", ...PHYSICS, ...files()];
const STORE = "swashlight ";
/** Strings in a module that name a file beside it or on this server. */
const NAMED = /["'`]((?:\.{1,2})?\/[\w@./-]+\.(?:m?js|css|wasm|json|svg|woff2))["'`]/g;
const BARE = /(?:from|import)\s*\(?\s*["']([\w@][\w@./-]*)["']/g;

class Keeping extends EventTarget {
    /** @type {"not" | "keeping" | "kept"} */
    state = "not";

    /** @param {"not" | "keeping" | "kept"} state */
    become(state) {
        this.state = state;
        this.dispatchEvent(new Event("change"));
    }
}

/** How far it is; tells "change". */
export const keeping = new Keeping();

/** Fetches everything once and keeps it; a failure leaves what was kept before. */
export async function keepAll() {
    if (!("caches" in self) || !("serviceWorker" in navigator)) return;
    if (!navigator.onLine) return keeping.become("kept");
    keeping.become((await caches.keys()).some((name) => name.startsWith(STORE)) ? "kept" : "keeping");
    const name = STORE + Date.now();
    try {
        const store = await caches.open(name);
        await walk(store);
        for (const other of await caches.keys()) if (other.startsWith(STORE) && other !== name) await caches.delete(other);
        keeping.become("kept");
    } catch (failure) {
        await caches.delete(name);
        if (keeping.state !== "kept") keeping.become("not");
        console.info("not kept for later:", failure instanceof Error ? failure.message : failure);
    }
}

/** @param {Cache} store */
async function walk(store) {
    const { imports } = JSON.parse(document.querySelector('script[type="importmap"]')?.textContent ?? '{"imports":{}}');
    const seen = new Set();
    /** @param {string} address @param {boolean} needed */
    const take = async (address, needed) => {
        const url = new URL(address, location.origin);
        if (seen.has(url.href)) return;
        seen.add(url.href);
        const answer = await fetch(url);
        if (!answer.ok) {
            if (needed) throw new Error(`${url.pathname}: ${answer.status}`);
            return; // a name in a comment, or a view that is not there
        }
        await store.put(url, answer.clone());
        if (!/javascript|html/.test(answer.headers.get("content-type") ?? "")) return;
        const text = (await answer.text()).replace(/\/\*[\s\S]*?\*\//g, "");
        const named = [...text.matchAll(NAMED)].map((match) => new URL(match[1], url).href);
        const bare = [...text.matchAll(BARE)].map((match) => resolved(match[1], imports)).filter((found) => found !== "");
        for (const next of new Set([...named, ...bare])) if (new URL(next, url).origin === location.origin) await take(new URL(next, url).href, false);
    };
    for (const address of BEGINNINGS) await take(address, true);
}

/** What an import map makes of a bare name. @param {string} name @param {Record<string, string>} imports */
function resolved(name, imports) {
    if (name in imports) return imports[name];
    const prefix = Object.keys(imports).filter((each) => each.endsWith("/") && name.startsWith(each)).sort((a, b) => b.length - a.length)[0];
    return prefix ? imports[prefix] + name.slice(prefix.length) : "";
}
