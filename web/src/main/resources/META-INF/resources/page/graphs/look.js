/** Controls and plots of the panels: targets for thumbs, focus that is seen, as much of uPlot's own style as it needs. */
import { css } from "lit";

export const look = css`
    :host { display: block; color: var(--ink); font-size: var(--size-2); }
    button, select, input[type="search"], input[type="number"] {
        font: inherit; color: var(--ink); background: var(--paper); border: 1px solid var(--line); border-radius: 3px;
        min-height: var(--target, 2.25rem); min-width: var(--target, 2.25rem); padding: 0 0.6em; box-sizing: border-box; max-width: 100%;
    }
    button { cursor: pointer; }
    button:hover { border-color: var(--ink); }
    button[aria-pressed="true"] { background: var(--ink); color: var(--paper); }
    :focus-visible { outline: 3px solid var(--focus); outline-offset: 1px; }
    label { display: inline-flex; align-items: center; gap: 0.4em; min-height: var(--target, 2.25rem); max-width: 100%; }
    label select { min-width: 0; flex: 0 1 auto; }
    input[type="checkbox"], input[type="radio"] { width: 1.15em; height: 1.15em; }
    .row { display: flex; flex-wrap: wrap; gap: 0.35em 0.5em; align-items: center; margin: 0.3em 0; }
    .soft { color: var(--ink-soft); font-size: var(--size-1); }
    h3 { font-size: var(--size-3); margin: 0.6em 0 0.2em; }
    p { margin: 0.3em 0; }
    .num { text-align: right; font-variant-numeric: tabular-nums; white-space: nowrap; }
`;

export const plotLook = css`
    .plot { background: var(--paper); border: 1px solid var(--line); min-width: 0; overflow: hidden; }
    .uplot, .uplot * { box-sizing: border-box; }
    .uplot { line-height: 1.4; width: min-content; }
    .u-wrap { position: relative; user-select: none; touch-action: pan-y; }
    .u-over, .u-under { position: absolute; }
    .u-under { overflow: hidden; }
    .uplot canvas { display: block; position: relative; width: 100%; height: 100%; }
    .u-axis { position: absolute; }
    .u-select { background: color-mix(in srgb, var(--accent) 22%, transparent); position: absolute; pointer-events: none; }
    .u-cursor-x, .u-cursor-y { position: absolute; left: 0; top: 0; pointer-events: none; will-change: transform; }
    .u-hz .u-cursor-x { height: 100%; border-right: 1px dashed var(--ink-soft); }
    .u-hz .u-cursor-y { width: 100%; border-bottom: 1px dashed var(--ink-soft); }
    .u-cursor-pt { position: absolute; top: 0; left: 0; border-radius: 50%; border: 0 solid; pointer-events: none; will-change: transform; background-clip: padding-box !important; }
    .u-off { display: none; }
`;
