/**
 * A story in a link: its text, compressed, in the letters an address may hold. Everything stands behind the #, so it never reaches a server.
 */
import { read, write } from "./story.js";

const START = "#story=";

/** Some messengers cut longer addresses. */
export const LONG_LINK = 8000;

/**
 * @param {import("./story.js").Story} story
 * @param {string} page address of the page without what is behind #
 */
export async function linkTo(story, page) {
    const packed = await through(new TextEncoder().encode(write(story)), new CompressionStream("deflate-raw"));
    let letters = "";
    for (const byte of packed) letters += String.fromCharCode(byte);
    return page + START + btoa(letters).replace(/\+/g, "-").replace(/\//g, "_").replace(/=+$/, "");
}

/** @param {string} hash */
export const isStoryLink = (hash) => hash.startsWith(START);

/**
 * @param {string} hash what stands behind the address, with its #
 * @param {import("./story.js").StoryLimits} limits
 */
export async function fromLink(hash, limits) {
    const letters = atob(hash.slice(START.length).replace(/-/g, "+").replace(/_/g, "/"));
    const packed = Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
    return read(new TextDecoder().decode(await through(packed, new DecompressionStream("deflate-raw"))), limits);
}

/**
 * @param {Uint8Array<ArrayBuffer>} bytes
 * @param {CompressionStream | DecompressionStream} change
 */
async function through(bytes, change) {
    const stream = new Blob([bytes]).stream().pipeThrough(change);
    return new Uint8Array(await new Response(stream).arrayBuffer());
}
