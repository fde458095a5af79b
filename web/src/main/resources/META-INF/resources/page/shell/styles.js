/** Styles that every part of the shell shares: buttons, fields, rows. */
import { css } from "lit";

export const controls = css`
    :host { display: block; color: var(--ink); font-size: var(--size-2); }
    h2 { font-size: var(--size-3); font-weight: 600; margin: 0 0 calc(var(--gap) / 2); }
    h3 { font-size: var(--size-2); font-weight: 600; margin: var(--gap) 0 calc(var(--gap) / 2); }
    button, select, input:not([type="range"], [type="checkbox"]) {
        font: inherit; color: inherit; background: var(--panel); border: 1px solid var(--line); border-radius: 3px;
        min-height: var(--target); min-width: var(--target); padding: 0 0.6em; box-sizing: border-box;
    }
    button { cursor: pointer; }
    button[aria-pressed="true"] { background: var(--accent); color: var(--accent-ink); border-color: var(--accent); }
    button:disabled { color: var(--ink-soft); border-style: dashed; cursor: default; }
    input[type="range"] { width: 100%; height: var(--target); margin: 0; accent-color: var(--accent); }
    input[type="checkbox"] { flex: none; width: 1.4em; height: 1.4em; margin: 0 0.4em 0 0; accent-color: var(--accent); vertical-align: middle; }
    :focus-visible { outline: 3px solid var(--focus); outline-offset: 1px; }
    .row { display: flex; flex-wrap: wrap; gap: calc(var(--gap) / 2); align-items: center; }
    .even { flex-wrap: nowrap; }
    .even > * { flex: 1 1 auto; padding: 0 0.2em; min-width: 0; }
    .unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; margin: 0; }
    .said { display: inline-block; }
    .said::first-letter { text-transform: uppercase; }
    .soft { color: var(--ink-soft); }
    .wrong { color: var(--warn); border-left: 4px solid var(--warn); padding-left: 0.6em; margin: 0.3em 0; }
`;
