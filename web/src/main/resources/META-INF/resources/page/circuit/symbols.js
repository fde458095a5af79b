/**
 * Symbols in the grammar of ISO 1219-1, drawn by us: each around its own origin, along the power path (x) and across it (y), without words,
 * so that a tall diagram can lay them over. Parts that move are marked with data-moves and moved by the live view.
 */
import { svg } from "lit";

export const UNIT = 34; // radius of a pump or motor
export const BOX = 30; // side of a valve's square

/** A triangle of a hydraulic unit: points out where oil leaves (pump), in where oil comes to work (motor). */
const port = (/** @type {number} */ to, /** @type {boolean} */ out, /** @type {string} */ name) => {
    const [tip, base] = out ? [UNIT, UNIT - 15] : [UNIT - 15, UNIT];
    return svg`<path class="port" data-moves=${name} d=${`M0 ${to * tip}L-9 ${to * base}L9 ${to * base}Z`} />`;
};

/** Displacement pump, variable, one or both directions of flow. */
export const pump = (/** @type {boolean} */ both) => svg`
    <circle class="body" r=${UNIT} />
    ${port(-1, true, "pump-a")}${both ? port(1, true, "pump-b") : null}
    <g data-part="swash-plate"><path class="reach" d="M-44 38L42 -40" /><path class="thin" d="M-44 38L42 -40" /><path class="solid" d="M46 -44L33 -38L40 -31Z" /></g>`;

/** Displacement motor, fixed, both directions of flow. */
export const motor = () => svg`<circle class="body" r=${UNIT} />${port(-1, false, "motor-a")}${port(1, false, "motor-b")}`;

/** Charge pump, fixed, one direction. */
export const chargePump = () => svg`<circle class="body" r="20" /><path class="solid" d="M0 -20L-7 -8L7 -8Z" />`;

/** Non-return valve with spring: oil passes towards negative y. */
export const check = () => svg`
    <path class="thin" d="M-11 2L0 13L11 2" />
    <g data-moves="ball"><circle class="body ball" r="7.5" cy="1" />
    <path class="thin" d="M0 -7L-5 -9L5 -13L-5 -17L5 -21L0 -23" /></g>`;

/** Fixed orifice. */
export const orifice = () => svg`<path class="thick" d="M-10 -9Q-1 0 -10 9M10 -9Q1 0 10 9" />`;

/** Filter: the strainer's line stands across the flow, which passes along x. */
export const filter = () => svg`<path class="body" d="M0 -18L18 0L0 18L-18 0Z" /><path class="dashed" d="M0 -17L0 17" />`;

/** Pressure relief valve: oil from y = −side/2 to y = +side/2 when the spring (right) gives way; opens by its own inlet (dashed). */
export const relief = () => svg`
    <rect class="body" x=${-BOX / 2} y=${-BOX / 2} width=${BOX} height=${BOX} />
    <g data-moves="arrow"><path class="thin" d="M0 -15L0 9" /><path class="solid" d="M0 15L-5 5L5 5Z" /></g>
    <path class="thin" d="M15 0L18 -6L22 6L26 -6L30 6L32 0" />
    <path class="dashed" d="M0 -24L-24 -24L-24 0L-15 0" />`;

/** Two ports, two positions: shut box and passing box; the boxes slide, the one on the line (x = 0) is what holds. Spring left, lever right. */
export const twoTwo = () => {
    const half = BOX / 2;
    return svg`
    <g data-moves="boxes">
        <rect class="body" x=${-half} y=${-half} width=${BOX} height=${BOX} />
        <rect class="body" x=${half} y=${-half} width=${BOX} height=${BOX} />
        <path class="thin" d="M-7 -9L7 -9M0 -15L0 -9M-7 9L7 9M0 15L0 9" />
        <path class="thin" d=${`M${BOX} 10L${BOX} -10`} /><path class="solid" d=${`M${BOX} -15L${BOX - 4} -7L${BOX + 4} -7ZM${BOX} 15L${BOX - 4} 7L${BOX + 4} 7Z`} />
        <path class="thin" d="M-15 0L-18 -6L-21 6L-24 -6L-27 6L-30 0" />
        <path class="thin" d=${`M${BOX + half} 0L${BOX + half + 14} 0M${BOX + half + 6} 7L${BOX + half + 18} -9`} />
    </g>`;
};

/** Prime mover other than an electric motor: a square; its M is a word and set beside the drawing. */
export const primeMover = () => svg`<rect class="body" x="-20" y="-20" width="40" height="40" />`;

/** Belt between two pulleys, seen from the side of the shafts. */
export const belt = () => svg`<path class="thin" d="M-9 -15L-9 15M9 -15L9 15M-14 -15L-4 -15M-14 15L-4 15M4 -15L14 -15M4 15L14 15M-9 -10L9 10M-9 10L9 -10" />`;

/** Two gears in mesh, pitch circles. */
export const gears = () => svg`<circle class="body" r="9" cx="-12" /><circle class="body" r="18" cx="15" /><circle class="dot" r="2" cx="-12" /><circle class="dot" r="2" cx="15" />`;

/** Brake on a shaft. */
export const brake = () => svg`<path class="thick" d="M-8 -14L8 -14M-8 14L8 14" /><path class="thin" d="M0 -22L0 -14M0 22L0 14" />`;

/** Driven wheel. */
export const wheel = () => svg`<circle class="body tyre" r="22" /><circle class="body" r="12" /><g data-moves="spoke"><path class="thin" d="M0 0L0 -12M0 0L10.4 6M0 0L-10.4 6" /></g>`;

/** Oil tank, open above; never laid over. Oil comes in from above. */
export const tank = () => svg`<path class="thick" d="M-15 -9L-15 8L15 8L15 -9" /><path class="thin" d="M-11 1L11 1" />`;

/** Which way a shaft turns: an arc around it. */
export const turning = () => svg`<g data-moves="turn"><path class="thin" d="M0 17A7 17 0 0 1 0 -17" /><path class="solid" d="M5 -18L-5 -22L-4 -13Z" /></g>`;
