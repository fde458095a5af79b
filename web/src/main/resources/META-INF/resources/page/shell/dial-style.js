import { css } from "lit";

export const dialStyle = css`
    .dial { display: grid; grid-template-columns: 1fr auto; align-items: center; column-gap: var(--gap); margin: 0 0 calc(var(--gap) / 2); }
    .dial input[type="range"], .dial small, .dial output, .marks { grid-column: 1 / -1; }
    .dial label::first-letter { text-transform: uppercase; }
    .dial output:empty { display: none; }
    .typed input[aria-invalid="true"] { border: 2px solid var(--warn); }
    .marks { display: flex; gap: 2px; }
    .marks button { flex: 1; font-size: var(--size-1); min-height: max(24px, calc(var(--target) - 0.5rem)); }
    .typed { display: inline-flex; align-items: center; gap: 0.3em; }
    .typed input { width: 5em; text-align: right; font-variant-numeric: tabular-nums; }
    .unit { min-width: 2.6em; }
`;
