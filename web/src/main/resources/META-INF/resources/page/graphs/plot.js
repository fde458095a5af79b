/**
 * One drawn graph: a uPlot with the page's colours, units on its axes, and curves that may run back and forth.
 */
import uPlot from "uplot";
import { marked, shownAs } from "../core/units.js";
import { store } from "../core/store.js";

/**
 * @typedef {object} Drawn a curve to draw
 * @property {string} key
 * @property {string} unit SI
 * @property {number} tone which of the line styles
 * @property {boolean} sound of the sound machine: dashed
 */

/** Line colours by tone, from the page's own. */
export const TONES = ["--ink", "--accent", "--warn", "--good", "--ink-soft", "--focus"];
const WIDTHS = [1.8, 2.2, 2.2, 2.2, 2.6, 1.4];

export class Plot {
    /**
     * @param {HTMLElement} host
     * @param {{ x: string, xUnit: string, turn: boolean, wander: boolean, curves: Drawn[], height: number, onCursor: (place: number | null) => void, onZoom: () => void }} what
     */
    constructor(host, what) {
        this.host = host;
        this.what = what;
        /** @type {{ x: ArrayLike<number>, ys: ArrayLike<number>[] } | null} curves in the order of time, for those that wander */
        this.wandering = null;
        const colour = (/** @type {string} */ name) => () => getComputedStyle(host).getPropertyValue(name).trim() || "#222";
        const shownUnit = (/** @type {string} */ unit) => shownAs(unit, store.gaze.units).unit;
        const scales = [...new Set(what.curves.map((curve) => curve.unit))];
        const font = "13px system-ui, sans-serif";
        const grid = { stroke: colour("--hair"), width: 1 };
        const ticks = { stroke: colour("--line"), width: 1, size: 5 };
        const path = what.wander ? (/** @type {any} */ u, /** @type {number} */ i) => this.wanderer(u, i) : undefined;
        this.plot = new uPlot({
            width: Math.max(200, host.clientWidth),
            height: what.height,
            legend: { show: false },
            cursor: { drag: { x: true, y: false, uni: 20 }, points: { size: 7 } },
            select: { show: true, left: 0, top: 0, width: 0, height: 0 },
            scales: {
                x: { time: false, ...(what.turn ? { range: [0, 360] } : {}) },
                ...Object.fromEntries(scales.map((unit) => [unit, { auto: true, range: (/** @type {any} */ _, /** @type {number} */ low, /** @type {number} */ high) => roomy(low, high) }])),
            },
            axes: [
                { values: signed, label: shownUnit(what.xUnit) && what.xUnit !== "rad" ? shownUnit(what.xUnit) : "°", labelFont: font, labelSize: 20, font, stroke: colour("--ink"), grid, ticks, size: 34, ...(what.turn ? { incrs: [30, 45, 60, 90, 120, 180] } : {}) },
                ...scales.slice(0, 2).map((unit, i) => ({
                    values: signed, scale: unit, side: i === 0 ? 3 : 1, label: shownUnit(unit), labelFont: font, labelSize: 20, font, stroke: colour("--ink"), ticks, size: 54,
                    grid: i === 0 ? grid : { show: false },
                })),
            ],
            series: [{}, ...what.curves.map((curve) => ({
                scale: curve.unit, stroke: colour(TONES[curve.tone % TONES.length]), width: WIDTHS[curve.tone % WIDTHS.length], spanGaps: true, points: { show: false },
                ...(curve.sound ? { dash: [7, 5] } : {}), ...(path ? { paths: path } : {}),
            }))],
            hooks: {
                setCursor: [(/** @type {any} */ u) => what.onCursor(u.cursor.left >= 0 ? u.cursor.idx : null)],
                setSelect: [(/** @type {any} */ u) => { if (u.select.width > 0) what.onZoom(); }],
            },
        }, what.curves.map(() => []).reduce((data, none) => [...data, none], /** @type {any[]} */ ([[]])), host);
    }

    /** @param {(number | null)[][]} table abscissas and columns in shown units @param {boolean} keepZoom */
    set(table, keepZoom) {
        this.plot.setData(table, !keepZoom);
        if (keepZoom) this.plot.redraw();
    }

    /** Zooms about the middle and moves, as shares of what is shown. @param {number} zoom @param {number} move */
    look(zoom, move) {
        const { min, max } = this.plot.scales.x;
        if (min === undefined || max === undefined || min === null || max === null) return;
        const half = ((max - min) / 2) * zoom;
        const middle = (min + max) / 2 + (max - min) * move;
        this.plot.setScale("x", { min: middle - half, max: middle + half });
    }

    /** Puts the cursor at an abscissa. @param {number} x */
    point(x) {
        this.plot.setCursor({ left: this.plot.valToPos(x, "x"), top: 8 });
    }

    size() {
        if (this.host.clientWidth > 0) this.plot.setSize({ width: this.host.clientWidth, height: this.what.height });
    }

    /** A curve over another quantity: drawn in the order of time, wherever it goes. @param {any} u @param {number} series */
    wanderer(u, series) {
        const stroke = new Path2D();
        const { x, ys } = this.wandering ?? { x: [], ys: [] };
        const column = ys[series - 1] ?? [];
        const scale = u.series[series].scale;
        let drawing = false;
        for (let i = 0; i < column.length; i++) {
            const there = Number.isFinite(x[i]) && Number.isFinite(column[i]);
            if (there) {
                const px = u.valToPos(x[i], "x", true);
                const py = u.valToPos(column[i], scale, true);
                if (drawing) stroke.lineTo(px, py);
                else stroke.moveTo(px, py);
            }
            drawing = there;
        }
        return { stroke, fill: null, clip: null, band: null, gaps: null, flags: 0 };
    }

    destroy() {
        this.plot.destroy();
    }
}

/** Marks with a real minus sign. @param {any} _ @param {(number | null)[]} marks */
const signed = (_, marks) => marks.map((mark) => (mark === null ? "" : marked(String(Number(mark.toPrecision(6)))).replace("-", "\u2212")));

/** A range with a little room; a line that does not move gets a range it can be seen to stand still in. @param {number | null} low @param {number | null} high @returns {[number, number]} */
export function roomy(low, high) {
    if (low === null || high === null || !Number.isFinite(low) || !Number.isFinite(high)) return [0, 1];
    const span = high - low;
    const least = Math.max(Math.abs(low), Math.abs(high)) * 0.02 || 1;
    const room = span > least ? span * 0.08 : (least - span) / 2 + least * 0.1;
    return [low - room, high + room];
}
