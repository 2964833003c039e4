/**
 * Styles every element shares: boxes, focus, the three kinds of button, fields, chips, marks, plain tables; on paper no
 * more than was unfolded. Sizes, spaces and colours are those of tokens.css.
 */
import {css} from 'lit';

/** A button is plain; the one a view is there for is `primary`, one seldom wanted `quiet`; a `choice` stays down. */
const buttons = css`
  button, .button {
    min-height: var(--target); min-width: var(--target); padding: 0 var(--space-3); font-size: var(--type-small);
    background: var(--card); border: 1px solid var(--edge); border-radius: var(--round); cursor: pointer;
  }
  .button { display: inline-grid; align-items: center; color: inherit; text-decoration: none; }
  :is(button, .button):hover { border-color: var(--ink); }
  .primary { color: var(--card); background: var(--ink); border-color: var(--ink); font-weight: 600; }
  :is(button, a, label).quiet { background: none; border-color: transparent; color: inherit; font-weight: 500; }
  :is(button, a, label).quiet:hover { background: var(--sunk); }
  button:disabled { color: var(--soft); background: none; border-style: dashed; cursor: default; }
  button[aria-expanded='true'] { background: var(--sunk); border-color: var(--ink); }
  button:is([aria-pressed='true'], [aria-checked='true'], [aria-current]) {
    background: var(--accent); border-color: var(--accent); color: var(--accent-ink); forced-color-adjust: none;
  }
  .choice { border-radius: 99px; }
  /* the head of a row or column: all of it can be pressed */
  .head:is(button) { padding: 0; border: 0; border-radius: 0; background: none; color: inherit; text-align: left; }
  .head:is(button):hover { text-decoration: underline; }
`;

const fields = css`
  input:not([type='checkbox'], [type='radio'], [type='range']), select {
    min-height: var(--target); padding: 0 var(--space-2); width: 100%; min-width: 0;
    background: var(--card); border: 1px solid var(--edge); border-radius: var(--round); font-size: var(--type-text);
  }
  select { padding-right: var(--space-half); }
  input:is([type='checkbox'], [type='radio'], [type='range']) { accent-color: var(--accent); }
  [aria-invalid='true'] { border-color: var(--alarm) !important; box-shadow: 0 0 0 1px var(--alarm); }
  ::file-selector-button {
    padding: var(--space-1) var(--space-3); font: inherit; color: var(--ink); background: var(--sunk);
    border: 1px solid var(--edge); border-radius: var(--round);
  }
`;

const tables = css`
  .plain { border-collapse: collapse; width: 100%; font-size: var(--type-small); }
  .plain :is(th, td) {
    padding: var(--space-1) var(--space-2) var(--space-1) 0; text-align: left; vertical-align: top;
    border-bottom: 1px solid var(--line);
  }
  .plain :is(th, td).number { text-align: right; white-space: nowrap; }
  .plain th { font-weight: 600; }
  .plain thead th { color: var(--soft); font-weight: 500; }
`;

export const base = css`
  :host { display: block; }
  :host([hidden]) { display: none; }
  *, *::before, *::after { box-sizing: border-box; }
  :focus-visible { outline: 3px solid var(--focus); outline-offset: 2px; border-radius: 4px; }
  h2, h3, h4, p, ul, dl, dd, figure { margin: 0; }
  h2 { font-size: var(--type-lead); }
  h3, h4 { font-size: var(--type-text); }
  small, sub, sup { font-size: var(--type-fine); }
  a { color: inherit; text-decoration-thickness: 1px; text-underline-offset: 0.15em; }
  button, input, select, textarea { font: inherit; color: inherit; font-variant-numeric: tabular-nums; }
  ${buttons}
  ${fields}
  ${tables}
  .formula math { width: max-content; margin: 0; }
  math { font-family: math, 'STIX Two Math', 'Cambria Math', 'Latin Modern Math', 'DejaVu Math TeX Gyre', serif; }
  .quiet { color: var(--soft); font-size: var(--type-small); }
  .error { color: var(--alarm); font-size: var(--type-small); }
  .unseen {
    position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap;
  }
  var { font-style: italic; font-family: 'STIX Two Math', 'Latin Modern Math', Cambria, 'DejaVu Serif', serif; }
  .chip {
    display: inline-block; padding: var(--space-half) var(--space-2); border-radius: 5px; font-weight: 700;
    text-align: center; white-space: nowrap;
  }
  .chip:is(.none, [data-step='refused']) { background: var(--refused); color: var(--refused-ink); font-weight: 500; }
  .kind {
    display: inline-block; padding: 0 var(--space-2); border: 1px solid var(--line); border-radius: 99px;
    color: var(--soft); font-size: var(--type-fine); white-space: nowrap;
  }
  /* what is weakest or limits, and with .bad what is bad: always with its word */
  .sign {
    display: inline-block; padding: 0 var(--space-2); border-radius: 99px; background: var(--ink); color: var(--card);
    font-size: var(--type-fine); font-weight: 600; white-space: nowrap;
  }
  .sign.bad { background: var(--alarm-wash); color: var(--alarm); box-shadow: inset 0 0 0 1px; }
  @media print { .more:not([open]) { display: none; } }
`;
