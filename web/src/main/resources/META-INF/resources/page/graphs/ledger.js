/**
 * Where the power goes, and the oil: the ledger of the settled state as bars that add up to the whole, a sound drive beside a sick one.
 */
import { css, html, nothing } from "lit";
import { LiveView } from "../circuit/live-view.js";
import { marked, show } from "../core/units.js";
import { store } from "../core/store.js";
import { styled } from "../core/styled.js";
import { t } from "../core/words.js";
import { SIDES, byGroup, oilLedger, powerLedger } from "./ledger-sums.js";

/** A state that has not come after so long does not come. */
const PATIENCE = 2500; // ms
/** Items below this share of the whole are told together. */
const SMALL = 0.0005; // 1

/** @typedef {import("./ledger-sums.js").Entry} Entry */

export class SwashLedger extends LiveView {
    /** @type {Record<string, object>} */
    static properties = { ledgers: { state: true }, late: { state: true }, side: { state: true } };

    static styles = css`
        :host { display: block; color: var(--ink); font-size: var(--size-2); }
        h3 { font-size: var(--size-3); margin: 0.6em 0 0.3em; }
        p { margin: 0.3em 0; } .soft { color: var(--ink-soft); font-size: var(--size-1); }
        .whole { display: flex; height: 1.6rem; border: 1px solid var(--ink); margin: 0.15em 0 0.5em; }
        .whole span { box-sizing: border-box; border-right: 1px solid var(--ink); min-width: 0; }
        .whole span:last-child { border-right: 0; }
        .lines { display: grid; grid-template-columns: minmax(7rem, 15rem) 1fr max-content max-content; gap: 0.1em 0.7em; align-items: center; }
        .lines > .head { grid-column: 1 / -1; font-weight: 650; display: grid; grid-template-columns: subgrid; border-top: 1px solid var(--line); padding-top: 0.2em; margin-top: 0.2em; }
        .lines > .item { grid-column: 1 / -1; display: grid; grid-template-columns: subgrid; align-items: center; }
        .second { color: var(--ink-soft); }
        .bars { display: grid; align-content: center; gap: 2px; }
        .lines .item .name { padding-left: 1.6em; }
        .value, .share { text-align: right; font-variant-numeric: tabular-nums; white-space: nowrap; }
        .bar { display: block; height: 0.8em; position: relative; }
        .bar i { position: absolute; top: 0; bottom: 0; box-sizing: border-box; border: 1px solid var(--ink); min-width: 1px; }
        .bar.signed::before { content: ""; position: absolute; left: 50%; top: -0.2em; bottom: -0.2em; border-left: 1px solid var(--ink); }
        .bar.beside { height: 0.55em; } .bar.beside i { border-style: dashed; opacity: 0.7; }
        .swatch { display: inline-block; width: 0.9em; height: 0.9em; border: 1px solid var(--ink); vertical-align: -0.05em; margin-right: 0.5em; box-sizing: border-box; }
        .g-input { background: repeating-linear-gradient(0deg, var(--ink) 0 1px, var(--paper) 1px 5px); }
        .g-pump { background: repeating-linear-gradient(45deg, var(--ink) 0 1.5px, var(--paper) 1.5px 6px); }
        .g-passages { background: repeating-linear-gradient(90deg, var(--ink) 0 1px, var(--paper) 1px 4px); }
        .g-motor { background: repeating-linear-gradient(-45deg, var(--ink) 0 1.5px, var(--paper) 1.5px 6px); }
        .g-gears { background: radial-gradient(var(--ink) 1px, var(--paper) 1.4px) 0 0 / 5px 5px; }
        .g-ground { background: color-mix(in srgb, var(--ink) 34%, var(--paper)); }
        .g-useful { background: var(--accent); }
        fieldset { border: 0; padding: 0; margin: 0.3em 0; display: flex; flex-wrap: wrap; gap: 0.2em 1em; }
        label { min-height: 44px; display: inline-flex; align-items: center; gap: 0.4em; }
        input:focus-visible { outline: 2px solid var(--focus); outline-offset: 2px; }
        @container (max-width: 480px) { .lines { grid-template-columns: minmax(6rem, 1fr) 3.5rem max-content max-content; gap: 0.1em 0.4em; font-size: var(--size-1); } .lines .item .name { padding-left: 0.4em; } }
        .frame { container-type: inline-size; }
    `;

    constructor() {
        super();
        /** @type {(Float64Array | null)[]} */
        this.ledgers = [];
        this.late = false;
        /** @type {(typeof SIDES)[number]} */
        this.side = "a";
        this.since = performance.now();
        store.addEventListener("bench", () => (this.since = performance.now()));
    }

    /** @param {import("../types.js").Frame} frame */
    framed(frame) {
        const now = frame.machines.map((machine) => machine.ledger);
        if (!same(now, this.ledgers)) this.ledgers = now;
        this.late = now.some((each) => !each) && performance.now() - this.since > PATIENCE;
    }

    render() {
        const items = this.atlas?.ledger;
        const [shown, sound] = this.ledgers;
        if (!items || !shown) return html`<p role="status">${t(this.late ? "ledger.none" : "ledger.wait")}</p>`;
        return html`<div class="frame">
            ${this.power(powerLedger(items, shown), sound ? powerLedger(items, sound) : null)}
            ${this.ledgers.length > 1 && !sound ? html`<p role="status">${t(this.late ? "ledger.none.beside" : "ledger.wait")}</p>` : nothing}
            ${this.oil(items, shown, sound ?? null)}</div>`;
    }

    /** @param {import("./ledger-sums.js").PowerLedger} shown @param {import("./ledger-sums.js").PowerLedger | null} sound */
    power(shown, sound) {
        const most = Math.max(shown.total, sound?.total ?? 0);
        const groups = byGroup(shown.taken);
        const others = sound ? byGroup(sound.taken) : [];
        return html`
            <h3>${t("ledger.power")}</h3>
            <p class="soft">${t("ledger.power.about")} ${sound ? t("ledger.second") : ""}</p>
            ${shown.total <= 0 ? html`<p>${t("ledger.nothing")}</p>` : nothing}
            ${shown.total > 0 ? this.whole(shown, most, sound ? t("ledger.shown") : "") : nothing}${sound && sound.total > 0 ? this.whole(sound, most, t("ledger.sound")) : nothing}
            <div class="lines" role="table" aria-label=${t("ledger.power")}>
                ${shown.given.map((each) => this.line(`given.${each.key}`, each.power, shown.total, most, "g-useful", "head", sound?.given.find((other) => other.key === each.key)?.power, sound?.total ?? NaN))}
                ${groups.map((group) => this.group(group, shown.total, most, others.find((other) => other.group === group.group), sound?.total ?? NaN))}
                <div class="head" role="row"><span role="cell">${t("ledger.sum")}</span><span role="cell"></span><span class="value" role="cell">${watt(shown.total - shown.rest)}</span><span class="share" role="cell">${share(shown.total - shown.rest, shown.total)}</span></div>
            </div>`;
    }

    /** One bar for all that comes in. @param {import("./ledger-sums.js").PowerLedger} ledger @param {number} most @param {string} name */
    whole(ledger, most, name) {
        const groups = byGroup(ledger.taken);
        const told = groups.map((each) => `${t(`ledger.group.${each.group}`)} ${share(each.power, ledger.total)}`).join(", ");
        return html`<div>${name ? `${name}: ` : ""}${t("ledger.in", watt(ledger.total))}${ledger.useful > 0 ? html` · ${t("ledger.useful", share(ledger.useful, ledger.total))}` : nothing}</div>
            <div class="whole" role="img" aria-label=${told} ${styled({ width: `${(100 * ledger.total) / (most || 1)}%` })}>
                ${groups.map((each) => html`<span class="g-${each.group}" ${styled({ flexGrow: String(each.power), flexBasis: "0" })}></span>`)}
            </div>`;
    }

    /** @param {{ group: string, entries: Entry[], power: number }} group @param {number} total @param {number} most @param {{ entries: Entry[], power: number } | undefined} other @param {number} otherTotal */
    group(group, total, most, other, otherTotal) {
        const large = group.entries.filter((each) => each.power >= SMALL * total).sort((a, b) => b.power - a.power);
        const small = group.entries.filter((each) => each.power < SMALL * total).reduce((s, each) => s + each.power, 0);
        const style = `g-${group.group}`;
        return html`
            <div class="head" role="row">
                <span role="cell"><span class="swatch ${style}"></span>${t(`ledger.group.${group.group}`)}</span><span role="cell"></span>
                <span class="value" role="cell">${watt(group.power)}</span><span class="share" role="cell">${share(group.power, total)}</span>
            </div>
            ${large.map((each) => this.line(each.key, each.power, total, most, style, "item", Number.isFinite(otherTotal) ? (other?.entries.find((o) => o.key === each.key)?.power ?? 0) : undefined, otherTotal))}
            ${small > 0 && large.length > 0 ? this.line("small", small, total, most, style, "item", undefined, NaN) : nothing}`;
    }

    /** @param {string} key @param {number} power @param {number} total @param {number} most @param {string} style @param {string} kind @param {number | undefined} beside @param {number} besideTotal */
    line(key, power, total, most, style, kind, beside, besideTotal) {
        const bar = (/** @type {number} */ of, /** @type {string} */ how) => html`<span class="bar ${how}"><i class=${style} ${styled({ left: "0", width: `${(100 * of) / most}%` })}></i></span>`;
        return row(kind, itemName(key, false), bar(power, ""), watt(power), share(power, total),
            beside === undefined ? null : { bar: bar(beside, "beside"), value: watt(beside), more: share(beside, besideTotal) });
    }

    /** @param {import("../types.js").Catalogue} items @param {Float64Array} shown @param {Float64Array | null} sound */
    oil(items, shown, sound) {
        const { carried, others, difference } = oilLedger(items, shown, this.side);
        const other = sound ? oilLedger(items, sound, this.side) : null;
        const most = Math.max(...others.map((each) => Math.abs(each.flow)), ...(other?.others.map((each) => Math.abs(each.flow)) ?? []), 1e-12);
        return html`
            <h3>${t("ledger.oil")}</h3>
            <p class="soft">${t("ledger.oil.about")}</p>
            <fieldset><legend class="soft">${t("ledger.oil.into")}</legend>
                ${SIDES.map((side) => html`<label><input type="radio" name="side" .checked=${side === this.side} @change=${() => (this.side = side)} />${t(`ledger.side.${side}`)}</label>`)}
            </fieldset>
            <div class="lines" role="table" aria-label=${t("ledger.oil")}>
                ${carried.map((each) => html`<div class="head" role="row"><span role="cell">${itemName(each.key, true)}</span><span role="cell"></span><span class="value" role="cell">${flow(each.flow)}</span><span role="cell"></span></div>`)}
                ${carried.length > 0 ? html`<div class="head" role="row"><span role="cell">${t("ledger.oil.difference")}</span><span role="cell"></span><span class="value" role="cell">${flow(difference)}</span><span role="cell"></span></div>` : nothing}
                ${[...others].sort((a, b) => a.flow - b.flow).map((each) => this.flowLine(each.key, each.flow, most, other ? (other.others.find((o) => o.key === each.key)?.flow ?? 0) : undefined))}
                <div class="head" role="row"><span role="cell">${t("ledger.oil.sum")}</span><span role="cell"></span><span class="value" role="cell">${flow(difference + others.reduce((s, each) => s + each.flow, 0))}</span><span role="cell"></span></div>
            </div>`;
    }

    /** @param {string} key @param {number} q @param {number} most @param {number | undefined} beside */
    flowLine(key, q, most, beside) {
        const bar = (/** @type {number} */ of, /** @type {string} */ how) => {
            const width = (50 * Math.abs(of)) / most;
            return html`<span class="bar signed ${how}"><i class=${of > 0 ? "g-useful" : "g-ground"} ${styled({ left: `${of > 0 ? 50 : 50 - width}%`, width: `${width}%` })}></i></span>`;
        };
        const way = (/** @type {number} */ of) => (of === 0 ? "" : t(of > 0 ? "ledger.oil.comes" : "ledger.oil.goes"));
        return row("item", itemName(key, true), bar(q, ""), flow(q), way(q), beside === undefined ? null : { bar: bar(beside, "beside"), value: flow(beside), more: way(beside) });
    }
}

/**
 * A row: name, bar, value, share; below them those of the sound machine beside it.
 * @param {string} kind @param {string} name @param {unknown} bar @param {string} value @param {string} more @param {{ bar: unknown, value: string, more: string } | null} beside
 */
const row = (kind, name, bar, value, more, beside) => html`<div class=${kind} role="row">
    <span class="name" role="cell">${name}</span>
    <span class="bars" aria-hidden="true">${bar}${beside?.bar ?? nothing}</span>
    <span class="value" role="cell">${value}${beside ? html`<br /><span class="second" title=${t("ledger.sound")}>${beside.value}</span>` : nothing}</span>
    <span class="share" role="cell">${more}${beside ? html`<br /><span class="second">${beside.more}</span>` : nothing}</span></div>`;

/** Pump and motor have the same items; where they stand mixed the unit is named. @param {string} key @param {boolean} mixed */
function itemName(key, mixed) {
    const [, unit, item] = /^(pump|motor)_(.+)$/.exec(key) ?? [];
    if (!unit) return t(`ledger.item.${key}`);
    return mixed ? `${t(`ledger.group.${unit}`)}: ${t(`ledger.item.unit.${item}`)}` : t(`ledger.item.unit.${item}`);
}

const watt = (/** @type {number} */ power) => show(power, "W", store.gaze.units).text;
const flow = (/** @type {number} */ q) => show(Math.abs(q) < 1e-15 ? 0 : q, "m3/s", store.gaze.units).text;
const share = (/** @type {number} */ part, /** @type {number} */ whole) => (whole > 0 ? `${marked(((100 * part) / whole).toFixed(part / whole >= 0.0995 ? 0 : 1))}\u202f%` : "–");

/** @param {(Float64Array | null)[]} a @param {(Float64Array | null)[]} b */
function same(a, b) {
    return a.length === b.length && a.every((one, i) => {
        const other = b[i];
        return one && other ? one.length === other.length && one.every((value, at) => value === other[at]) : one === other;
    });
}

customElements.define("swash-ledger", SwashLedger);
