/** Styles every element shares: boxes, focus, buttons, quiet text, plain tables; on paper no more than was unfolded. */
import {css} from 'lit';

export const base = css`
  :host { display: block; }
  :host([hidden]) { display: none; }
  *, *::before, *::after { box-sizing: border-box; }
  :focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; border-radius: 4px; }
  h2, h3, h4, p, ul, dl, dd, figure { margin: 0; }
  h3 { font-size: 1rem; }
  h4 { font-size: 0.9rem; }
  a { color: var(--accent); }
  button, input, select { font: inherit; color: inherit; font-variant-numeric: tabular-nums; }
  button {
    min-height: var(--target); min-width: var(--target); padding: 0 14px;
    background: var(--card); border: 1px solid var(--edge); border-radius: var(--round); cursor: pointer;
  }
  button:hover { border-color: var(--accent); }
  button[aria-pressed='true'], button[aria-expanded='true'], button[aria-checked='true'] {
    background: var(--accent); border-color: var(--accent); color: var(--accent-ink);
  }
  input:not([type='checkbox'], [type='radio'], [type='range']), select {
    min-height: var(--target); padding: 0 8px; width: 100%; min-width: 0;
    background: var(--card); border: 1px solid var(--edge); border-radius: var(--round); font-size: 0.9rem;
  }
  select { padding-right: 2px; }
  input[type='checkbox'], input[type='range'] { accent-color: var(--accent); }
  [aria-invalid='true'] { border-color: var(--alarm) !important; box-shadow: 0 0 0 1px var(--alarm); }
  .formula math { width: max-content; margin: 0; }
  math { font-family: math, 'STIX Two Math', 'Cambria Math', 'Latin Modern Math', 'DejaVu Math TeX Gyre', serif; }
  .quiet { color: var(--soft); font-size: 0.85rem; }
  .error { color: var(--alarm); font-size: 0.85rem; }
  .unseen {
    position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap;
  }
  .plain { border-collapse: collapse; width: 100%; font-size: 0.85rem; }
  .plain :is(th, td) {
    padding: 5px 8px 5px 0; text-align: left; vertical-align: top; border-bottom: 1px solid var(--line);
  }
  .plain :is(th, td).number { text-align: right; white-space: nowrap; }
  .plain th { font-weight: 600; }
  .plain thead th { color: var(--soft); font-weight: 500; }
  @media print {
    .plain :is(th, td) { padding-top: 1px; padding-bottom: 1px; }
    .more:not([open]) { display: none; }
  }
  var { font-style: italic; font-family: 'STIX Two Math', 'Latin Modern Math', Cambria, 'DejaVu Serif', serif; }
  .kind {
    display: inline-block; padding: 0 6px; border: 1px solid var(--line); border-radius: 99px;
    color: var(--soft); font-size: 0.75rem; white-space: nowrap;
  }
`;
