/** The look of the matrix: folded cells with a ladder, unfolded ones on wide screens and on paper. */
import {css, unsafeCSS} from 'lit';
import {LADDER_RULES, ladders} from '../shared/margins/ladder.js';
import {RANGE_RULES} from '../shared/margins/range.js';
import {STEP_RULES} from '../shared/margins/scale.js';

const folded = css`
  :host {
    --head: 97px; --least: 44px; --most: 112px; --rung: 15px;
    --hatch: repeating-linear-gradient(135deg, var(--refused) 0 4px, var(--refused-line) 4px 5px);
  }
  .frame {
    position: relative; overflow: auto hidden; overscroll-behavior-x: contain;
    scroll-padding-left: var(--head); background: var(--card);
    border: 1px solid var(--line); border-radius: var(--round);
  }
  .frame { max-width: calc(var(--head) + var(--columns) * var(--most)); }
  :host([fits]) .frame { overflow: visible; scroll-padding: 0; }
  #outdated:empty { display: none; }
  #outdated {
    margin-bottom: 6px; padding: 8px 14px; background: var(--alarm-wash); border: 1px solid var(--alarm);
    border-radius: var(--round);
  }
  /* grey keeps the contrast of the numbers, which fading would take */
  [data-outdated] td { filter: grayscale(1); }
  table {
    border-collapse: separate; border-spacing: 0; table-layout: fixed; width: 100%;
    min-width: calc(var(--head) + var(--columns) * var(--least));
  }
  th, td { padding: 0; font-weight: inherit; }
  thead th {
    position: sticky; top: var(--lift, 0); z-index: 2; background: var(--card); height: 45px;
    border-bottom: 1px solid var(--edge);
  }
  thead th:last-child { border-radius: 0 var(--round) 0 0; }
  tbody th { position: sticky; left: 0; z-index: 1; background: var(--card); border-right: 1px solid var(--edge); }
  thead th:first-child {
    left: 0; z-index: 3; width: var(--head); border-right: 1px solid var(--edge); border-radius: var(--round) 0 0 0;
  }
  button, .empty {
    display: grid; width: 100%; height: 100%; min-width: 0; min-height: 46px; padding: 0;
    border: 1px solid transparent; border-radius: 5px; background-clip: padding-box;
  }
  td > button { grid-template: minmax(11px, 1fr) 16px 7px 8px / 4px minmax(0, 1fr) 4px; }
  .empty { background: var(--sunk); }
  button:hover { border-color: var(--ink); }
  :focus-visible { outline-offset: -2px; position: relative; z-index: 1; border-radius: 5px; }
  th button { background: none; border-color: transparent; align-content: center; }
  tbody th button {
    text-align: left; padding: 2px 4px 2px 8px; font-size: 0.78rem; line-height: 1.15; font-weight: 600;
    overflow-wrap: anywhere;
  }
  thead button { min-height: 44px; text-align: center; font-size: 0.9rem; font-weight: 650; line-height: 1.05; }
  thead button span { font-stretch: condensed; letter-spacing: -0.02em; }
  thead button small { display: block; font-size: 0.7rem; font-weight: 400; color: var(--soft); }
  td[data-open] button { outline: 3px solid var(--accent); outline-offset: -2px; position: relative; z-index: 1; }
  .number {
    grid-row: 2; font-size: 0.84rem; font-stretch: condensed; font-weight: 600; line-height: 16px; text-align: center;
    letter-spacing: -0.02em; white-space: nowrap;
  }
  .long { font-size: 0.66rem; font-weight: 500; letter-spacing: -0.03em; }
  td > button::before {
    grid-row: 1; align-self: end; overflow: clip; font-size: 0.66rem; line-height: 11px; height: 11px;
    padding-left: 3px; text-align: left; white-space: nowrap; letter-spacing: 0.06em; font-weight: 600;
  }
  td > button[data-letters]::before { content: attr(data-letters); }
  td > button[data-high]::after {
    content: '?';
    grid-row: 1; justify-self: end; width: 17px; height: 17px; margin-bottom: -6px; padding-right: 2px;
    border-radius: 0 4px 0 0;
    font: 700 10px/11px var(--figures); text-align: right;
  }
  td button[data-undecided] { border: 1px dashed currentColor; background-clip: border-box; }
  .powers, .powers .largest { display: none; }
  [data-step='refused'] { background-image: var(--hatch); color: var(--refused-ink); }
  td [data-step='refused'] > .number { font-weight: 500; }
  @media (max-width: 480px) { :host { --head: 92px; --least: 48px; } }
`;

/** Where every power level of a cell stands on a line of its own. */
export const UNFOLDED = css`print, screen and (min-width: 1500px)`;

/** Every rung becomes a line with its own number; the power levels stand once beside the family. */
const unfold = css`
  :host { --head: 190px; }
  td > button { display: block; min-height: 0; }
  .number { display: none; }
  [data-shows='largest'] td .number {
    display: block; padding-right: 16%; font-size: 0.78rem; line-height: var(--rung); text-align: right;
    font-weight: 700;
  }
  [data-shows='largest'] .powers .largest { display: block; font-weight: 700; color: var(--ink); }
  .rungs { display: block; }
  .rung {
    display: block; height: var(--rung); padding: 0 16% 0 3px; text-align: right;
    font-size: 0.74rem; font-weight: 450; line-height: var(--rung); white-space: nowrap; font-stretch: condensed;
  }
  .rung:first-child { border-radius: 4px 4px 0 0; }
  .rung:last-child { border-radius: 0 0 4px 4px; }
  /* without height of its own it never reaches into the line below */
  .rung small { float: left; height: 0; font-size: 0.62rem; letter-spacing: 0.04em; }
  .rung[data-chosen] { box-shadow: inset 0 0 0 1.5px var(--accent); font-weight: 700; }
  .rung[data-undecided]::after { content: '?'; display: inline-block; width: 0; font-weight: 700; }
  td button[data-undecided] { border: 1px solid transparent; background-clip: padding-box; }
  tbody th button { grid-template-columns: 1fr auto; align-items: center; gap: 6px; padding: 0 6px 0 8px; }
  .powers { display: block; text-align: right; font-weight: 400; font-size: 0.7rem; color: var(--soft); }
  .powers span { display: block; height: var(--rung); line-height: var(--rung); white-space: nowrap; }
  .powers [data-chosen] { color: var(--accent); font-weight: 700; }
`;

export const matrixStyles = [
  unsafeCSS(STEP_RULES),
  unsafeCSS(RANGE_RULES),
  unsafeCSS(LADDER_RULES),
  folded,
  ladders,
  css`@media ${UNFOLDED} { ${unfold} }`,
  css`
    @media print {
      :host { --head: 34mm; --rung: 2.95mm; --least: 0px; }
      .frame { overflow: visible; border: 0; }
      thead th, tbody th { position: static; }
      thead { display: table-header-group; }
      tr { break-inside: avoid; }
      thead th { height: auto; }
      thead button { display: contents; }
      thead th { font-size: 7.5pt; font-weight: 650; line-height: 1.1; text-align: center; }
      .rung { font-size: 6.6pt; }
      .powers { font-size: 6.2pt; color: #333; }
      tbody th button { font-size: 7.5pt; min-height: 0; }
      td > button { border-width: 0.3mm; }
    }
  `,
];
