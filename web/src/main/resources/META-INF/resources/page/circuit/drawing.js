/**
 * Draws a plan: lines by kind, symbols, joints, labels, marks of faults. Everything that is pointed at says its part.
 */
import { nothing, svg } from "lit";

/** @typedef {import("./layout.js").Layout} Layout */
/** @typedef {import("./plan.js").Line} Line */
/** @typedef {import("./plan.js").Sign} Sign */

/**
 * @param {Line} line
 * @param {Layout} layout
 * @param {string} name for who cannot see it; "" for a line that belongs to a symbol and is no stop of its own
 */
export function lineOf(line, layout, name) {
    const points = line.spots.map(layout.place);
    const path = "M" + points.map((point) => point.join(" ")).join("L");
    const leg = line.arrow ?? 0;
    const [from, to] = [points[leg], points[leg + 1]];
    const turn = (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
    const at = `translate(${(from[0] + to[0]) / 2} ${(from[1] + to[1]) / 2}) rotate(${turn})`;
    return svg`
        <g class=${`line ${line.kind}`} data-line=${line.key} data-part=${line.part} tabindex=${name ? 0 : nothing} role=${name ? "button" : nothing} aria-label=${name || nothing}>
            <path class="hit" d=${path} />${line.kind === "working" ? svg`<path class="edge" d=${path} />` : null}<path class="pipe" d=${path} />
            ${line.kind === "working" ? svg`<path class="oil" d=${path} />` : null}
            <g transform=${at}><path class="arrow none" d="M-6 -6.5L8 0L-6 6.5Z" /></g>
        </g>`;
}

/**
 * @param {Sign} sign
 * @param {Layout} layout
 * @param {string} name
 */
export function signOf(sign, layout, name) {
    const upright = sign.upright ?? false;
    const more = /** @type {{ along?: boolean, across?: boolean }} */ (sign);
    const turn = (sign.turned ? "scale(1 -1)" : "") + (more.along ? "rotate(-90)" : "") + (more.across ? "rotate(90)" : "");
    const frame = upright ? `translate(${layout.place(sign.spot).join(" ")})` : layout.frame(sign.spot);
    const [u, v] = sign.reach;
    return svg`
        <g class="sign" data-sign=${sign.key} data-part=${sign.part} tabindex="0" role="button" aria-label=${name} transform=${frame}>
            <rect class="hit" x=${-u} y=${-v} width=${2 * u} height=${2 * v} rx="3" />
            <g transform=${turn}>${sign.drawing}</g>
        </g>`;
}

/** Two shafts as double lines: engine to pump, motor to wheel. */
export function shaftsOf(/** @type {Layout} */ layout) {
    const double = (/** @type {number} */ from, /** @type {number} */ to) => [-2.5, 2.5].map((c) => "M" + layout.place([from, c]).join(" ") + "L" + layout.place([to, c]).join(" ")).join("");
    return svg`<path class="shaft" d=${double(-layout.before + 48, -34) + double(layout.length + 34, layout.length + layout.after - 52)} />`;
}

/** The chain line around what sits in one housing. */
export function housingOf(/** @type {Layout} */ layout, /** @type {boolean} */ charged) {
    const edge = charged ? 40 - layout.charge : layout.tall ? 52 : 66;
    const [x0, y0] = layout.place([-edge, -layout.half - (layout.tall ? 22 : 42)]);
    const [x1, y1] = layout.place([layout.length + (layout.tall ? 84 : 66), layout.drain + (layout.tall ? 28 : 42)]);
    return svg`<rect class="housing" x=${x0} y=${y0} width=${x1 - x0} height=${y1 - y0} />`;
}

/** A fault's mark: a triangle with its number. */
export function markOf(/** @type {number} */ number, /** @type {[number, number]} */ at) {
    return svg`<g class="fault" transform=${`translate(${at.join(" ")})`}><path d="M0 -13L13 10L-13 10Z" /><text y="7" text-anchor="middle">${number}</text></g>`;
}
