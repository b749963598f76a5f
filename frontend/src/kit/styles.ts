/** Looks of the parts around a drawing; colours arrive as the palette's resolved values. */
export const SHEET = `
:host { display: block; position: relative; min-width: 0; font-size: 0.8125rem; line-height: 1.4; }
:host([hidden]) { display: none; }
.probe { position: absolute; visibility: hidden; pointer-events: none; }
.top { display: flex; gap: 0.5rem; align-items: end; justify-content: space-between; color: var(--_muted); }
.keys { display: flex; flex-wrap: wrap; gap: 0.25rem 1rem; align-items: center; }
.key { display: inline-flex; gap: 0.4rem; align-items: center; }
.key svg { flex: none; }
button { font: inherit; color: var(--_ink); background: none; border: 1px solid var(--_muted); border-radius: 1rem;
  min-height: 1.75rem; flex: none; padding: 0 0.8rem; cursor: pointer; }
[hidden] { display: none !important; }
button[aria-pressed='true'] { background: var(--_wash); border-color: var(--_ink); }
.stage { position: relative; border-radius: 0.4rem; outline-offset: 3px; }
.stage:focus-visible, button:focus-visible { outline: 2px solid var(--_focus); }
.stage.selectable .drawing { cursor: pointer; }
.drawing { overflow: hidden; }
.drawing svg { display: block; }
.ring { position: absolute; width: 1.4rem; height: 1.4rem; margin: -0.7rem; border-radius: 50%; pointer-events: none;
  border: 2px solid var(--_focus); box-shadow: 0 0 0 2px var(--_paper), inset 0 0 0 1px var(--_paper); }
.tip { position: absolute; z-index: 2; width: max-content; max-width: min(20rem, 80%); padding: 0.5rem 0.7rem;
  pointer-events: none; white-space: pre-line; color: var(--_ink); background: var(--_paper);
  border: 1px solid var(--_muted); border-radius: 0.4rem; box-shadow: 0 4px 14px rgb(0 0 0 / 0.18); }
.tip::first-line { font-weight: 600; }
.live { position: absolute; width: 1px; height: 1px; margin: 0; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
`;

export const MARKUP = `
<span class="probe" aria-hidden="true"></span>
<div class="top"><div class="keys"></div><button type="button" hidden></button></div>
<div class="stage" tabindex="0" role="img" hidden><div class="drawing"></div></div>
<div class="ring" hidden></div>
<div class="tip" hidden></div>
<p class="live" aria-live="polite"></p>
`;
