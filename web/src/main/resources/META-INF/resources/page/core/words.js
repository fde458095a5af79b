/**
 * All words of the page, by key. Each room keeps its own list in each language; only the language in use is fetched. A key without words is
 * shown as it stands, so that a gap is seen, and is remembered for the tests.
 */

/** Languages there are, in their own names. */
export const LANGUAGES = Object.freeze({ en: "English", de: "Deutsch" });

/** Rooms that have words. */
const ROOMS = ["shell", "parts", "physics", "scene", "panels", "stories"];

/** @type {Record<string, string>} */
let words = {};
let language = "en";

/** Keys that were asked for and are in no list. @type {Set<string>} */
export const missing = new Set();

/** Tells "language" when the words are others. */
export const wording = new EventTarget();

/**
 * Fetches a language and makes it the page's.
 * @param {string} wanted
 */
export async function setLanguage(wanted) {
    const known = wanted in LANGUAGES ? wanted : "en";
    words = await allWords(known);
    language = known;
    missing.clear();
    if (typeof document !== "undefined") document.documentElement.lang = known;
    wording.dispatchEvent(new Event("language"));
}

/** Every word of a language; a list that does not load leaves keys in the page, not a broken page. @param {string} wanted @returns {Promise<Record<string, string>>} */
export async function allWords(wanted) {
    const lists = await Promise.allSettled(ROOMS.map((room) => import(`./words/${room}.${wanted}.js`)));
    return Object.assign({}, ...lists.map((list) => (list.status === "fulfilled" ? list.value.default : {})));
}

/** Addresses of all word lists, for whoever keeps them. @returns {string[]} */
export const files = () => ROOMS.flatMap((room) => Object.keys(LANGUAGES).map((each) => new URL(`./words/${room}.${each}.js`, import.meta.url).href));

/** The language in use. */
export const languageNow = () => language;

/**
 * The words for a key; {0}, {1} … in them become the values.
 * @param {string} key
 * @param {...(string | number)} values
 */
export function t(key, ...values) {
    const found = words[key];
    if (found === undefined) {
        missing.add(key);
        return key;
    }
    return values.length === 0 ? found : found.replace(/\{(\d)\}/g, (whole, place) => (place in values ? String(values[place]) : whole));
}

/**
 * Words for a key, or other words where there are none: for lists that the physics brings along in English.
 * @param {string} key
 * @param {string} other
 */
export const tOr = (key, other) => words[key] ?? other;
