import { css } from "lit";

/** Where things stand: three columns on a desk, one on a phone. */
export const pageStyle = css`
    :host {
        display: grid; height: 100dvh; overflow: hidden; background: var(--paper);
        grid-template: "bar bar bar" auto "asked picture shown" minmax(0, 1fr) / clamp(16rem, 20vw, 20rem) minmax(0, 1fr) clamp(17rem, 27vw, 27rem);
    }
    header { grid-area: bar; display: flex; align-items: center; gap: calc(var(--gap) / 2); padding: calc(var(--gap) / 3) var(--gap); border-bottom: var(--stroke) solid var(--ink); }
    h1 { font-size: var(--size-3); letter-spacing: 0.02em; margin: 0; }
    .which { flex: 1; min-width: 0; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
    .ill { color: var(--warn); }
    main { grid-area: picture; display: grid; grid-template: minmax(0, 1fr) auto auto / minmax(0, 1fr); min-width: 0; border-inline: 1px solid var(--line); }
    .picture { position: relative; min-height: 0; overflow: hidden; }
    swash-scene { position: absolute; inset: 0; }
    .reading { display: flex; flex-wrap: wrap; align-items: center; justify-content: space-between; gap: 4px var(--gap); padding: 4px var(--gap); border-top: 1px solid var(--line); background: var(--panel); }
    swash-legend { flex: 1 1 18rem; max-width: 26rem; min-width: 0; }
    swash-notices { position: absolute; right: var(--gap); top: calc(var(--gap) + 2em); max-width: 70%; }
    swash-pace { border-top: 1px solid var(--line); background: var(--panel); }
    .asked, .shown, .one { overflow-y: auto; padding: calc(var(--gap) / 2) var(--gap) var(--gap); background: var(--panel); min-width: 0; }
    .asked { grid-area: asked; }
    .shown { grid-area: shown; }
    .choices { display: flex; flex-wrap: wrap; gap: 2px; margin: 0 0 var(--gap); position: sticky; top: calc(var(--gap) / -2); background: var(--panel); padding: calc(var(--gap) / 2) 0; z-index: 2; }
    .choices button { flex: 1 1 auto; padding: 0 0.2em; min-width: 0; }
    .shown .choices { display: grid; grid-template-columns: repeat(3, auto); }
    swash-card { margin: 0 0 var(--gap); }
    .trouble { position: absolute; top: var(--gap); left: var(--gap); right: var(--gap); background: var(--panel); padding: 0.5em; z-index: 2; max-height: calc(100% - 2 * var(--gap)); overflow: auto; overflow-wrap: anywhere; }
    .trouble p { margin: 0 0 0.4em; }
    .broken { padding: 2rem; grid-column: 1 / -1; display: block; }
    @media (max-width: 820px), (max-height: 480px) {
        :host { grid-template: "bar" auto "picture" minmax(0, 46fr) "one" minmax(0, 54fr) "nav" auto / minmax(0, 1fr); }
        main { border: 0; }
        .one { grid-area: one; border-top: 1px solid var(--line); }
        nav { grid-area: nav; border-top: var(--stroke) solid var(--ink); background: var(--panel); overflow-x: auto; padding-bottom: env(safe-area-inset-bottom); }
        nav .choices { flex-wrap: nowrap; margin: 0; position: static; padding: 4px; width: max-content; }
        nav .choices button { flex: 0 0 auto; padding: 0 0.9em; }
        .reading { flex-wrap: wrap; padding: 3px 6px; }
        swash-legend { flex-basis: 100%; max-width: none; }
        header { padding: 4px 6px; gap: 4px; }
        header h1 { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
    }
    @media (max-height: 480px) and (orientation: landscape) {
        :host { grid-template: "bar bar" auto "picture one" minmax(0, 1fr) "nav nav" auto / 1fr 1fr; }
    }
    :host([alone]) { grid-template: "bar" auto "picture" minmax(0, 1fr) / minmax(0, 1fr); }
    :host([alone]) :is(.asked, .shown, .one, nav) { display: none; }
    @media print { :host { display: block; height: auto; overflow: visible; } header button, header select, nav, swash-pace, .choices { display: none; } .picture { height: 60vh; } }
`;
