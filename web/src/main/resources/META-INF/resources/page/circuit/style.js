/** How the diagram is drawn: working lines thick, drains and controls dashed, the housing a chain line (ISO 1219-1); what is lit by shape too. */
import { css } from "lit";

export const styles = css`
    :host { display: block; color: var(--ink); background: var(--paper); padding: 0.5rem; }
    svg { display: block; width: 100%; height: auto; margin: 0 auto; font-size: 16px; font-variant-numeric: tabular-nums; touch-action: manipulation; }
    :host(:fullscreen) { padding: 1rem; overflow: auto; }
    :host(:fullscreen) svg { max-height: 84vh; }
    svg.tall { max-width: 30rem; font-size: 13px; }
    .pipe, .oil, .edge, .hit { fill: none; }
    .edge { stroke: var(--ink); stroke-linejoin: round; }
    .working .pipe { stroke: var(--ink); stroke-width: 3; stroke-linejoin: round; }
    .working .oil { display: none; stroke: var(--ink); stroke-dasharray: 8 18; stroke-linejoin: round; }
    .working.flows .oil, .working.starves .oil { display: inline; }
    .working.starves .oil { stroke-dasharray: 2 4; }
    .suction .pipe { stroke: var(--ink); stroke-width: 2; }
    .drain .pipe { stroke: var(--ink); stroke-width: 1.4; stroke-dasharray: 7 4; }
    .arrow { fill: var(--ink); stroke: var(--paper); stroke-width: 1.2; }
    .arrow.back { transform: rotate(180deg); }
    .arrow.none { display: none; }
    .line .hit { stroke: transparent; stroke-width: 24; pointer-events: stroke; }
    .reach { fill: none; stroke: transparent; stroke-width: 16; pointer-events: stroke; }
    [data-part="swash-plate"].pointed .reach, [data-part="swash-plate"].chosen .reach { stroke: color-mix(in srgb, var(--accent) 35%, transparent); }
    .sign .hit { fill: transparent; stroke: none; pointer-events: all; }
    .body { fill: var(--paper); stroke: var(--ink); stroke-width: 1.6; }
    .thin { fill: none; stroke: var(--ink); stroke-width: 1.4; }
    .thick { fill: none; stroke: var(--ink); stroke-width: 2.4; }
    .dashed { fill: none; stroke: var(--ink); stroke-width: 1.2; stroke-dasharray: 4 3; }
    .solid, .joint, .dot { fill: var(--ink); stroke: none; }
    .tyre { stroke-width: 5; }
    .port { fill: var(--paper); stroke: var(--ink); stroke-width: 1.4; }
    .into-a [data-moves="pump-a"], .into-b [data-moves="pump-b"], .from-a [data-moves="motor-a"], .from-b [data-moves="motor-b"] { fill: var(--ink); }
    .heavy .thin, .heavy .shaft, .heavy .body { stroke-width: 2.2; }
    .heavy .thick { stroke-width: 3.4; }
    .heavy .drain .pipe { stroke-width: 2.2; }
    .heavy .suction .pipe { stroke-width: 2.8; }
    .shaft { fill: none; stroke: var(--ink); stroke-width: 1.4; }
    .housing { fill: none; stroke: var(--ink-soft); stroke-width: 1.1; stroke-dasharray: 16 4 3 4; }
    .open .ball, .open rect.body { fill: color-mix(in srgb, var(--accent) 30%, var(--paper)); }
    text { fill: var(--ink); paint-order: stroke; stroke: var(--paper); stroke-width: 3.5px; stroke-linejoin: round; pointer-events: none; }
    text.large { font-weight: 650; font-size: 1.15em; }
    .more { font-weight: 400; font-size: 0.87em; }
    .sign, .line { cursor: pointer; outline: none; }
    .pointed .hit, .chosen .hit, .sign:focus-visible .hit { stroke: var(--accent); stroke-width: 2; }
    .sign.chosen .hit { stroke-dasharray: none; fill: color-mix(in srgb, var(--accent) 14%, transparent); }
    .sign.pointed .hit { stroke-dasharray: 5 3; }
    .line.pointed .hit, .line.chosen .hit, .line:focus-visible .hit { stroke: color-mix(in srgb, var(--accent) 28%, transparent); stroke-width: 15; }
    .sign:focus-visible .hit { stroke: var(--focus); stroke-width: 3; }
    .line:focus-visible .hit { stroke: var(--focus); stroke-opacity: 0.45; }
    .fault path { fill: var(--warn); stroke: var(--paper); stroke-width: 2; }
    .fault text { fill: var(--paper); stroke: none; font-size: 13px; font-weight: 700; }
    .faults { list-style: none; margin: 0.5em 0 0; padding: 0; display: flex; flex-wrap: wrap; gap: 0.3em 0.8em; font-size: var(--size-2); }
    .faults button { all: unset; cursor: pointer; min-height: 44px; display: inline-flex; gap: 0.4em; align-items: center; }
    .faults button:focus-visible { outline: 2px solid var(--focus); outline-offset: 2px; }
    .faults b { color: var(--warn); }
    .key button { font: inherit; color: var(--ink); background: none; border: 1px solid var(--line); border-radius: 3px; min-height: var(--target, 2.25rem); padding: 0 0.6em; cursor: pointer; }
    .key button:focus-visible { outline: 3px solid var(--focus); }
    .key, .wait { margin: 0.4em 0 0; font-size: var(--size-1); color: var(--ink-soft); }
    @media (forced-colors: active) { .pipe { stroke: CanvasText; } }
`;
