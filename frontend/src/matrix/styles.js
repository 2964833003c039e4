/** The look of the matrix: a number on its colour; of one band a list; on paper a line for each power level. */
import {css, unsafeCSS} from 'lit';
import {MARK_RULES} from '../shared/margins/marks.js';
import {STEPS, STEP_RULES} from '../shared/margins/scale.js';

const table = css`
  :host {
    --head: 97px; --least: 44px; --most: 112px; --row: 46px;
    --hatch: repeating-linear-gradient(135deg, var(--refused) 0 4px, var(--refused-line) 4px 5px);
  }
  .frame {
    position: relative; overflow: auto hidden; overscroll-behavior-x: contain; scroll-padding-left: var(--head);
    max-width: calc(var(--head) + var(--columns) * var(--most)); background: var(--card);
    border: 1px solid var(--line); border-radius: var(--round);
  }
  :host([fits]) .frame { overflow: visible; scroll-padding: 0; }
  #outdated:empty { display: none; }
  #outdated {
    margin-bottom: var(--space-2); padding: var(--space-2) var(--space-4); background: var(--alarm-wash);
    border: 1px solid var(--alarm);
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
  th button {
    display: grid; width: 100%; height: 100%; min-width: 0; min-height: var(--target); padding: 0;
    align-content: center; background: none; border: 1px solid transparent; border-radius: 5px;
  }
  :is(th button, td):hover { outline: 1px solid var(--ink); outline-offset: -1px; }
  :focus-visible { outline: 3px solid var(--focus); outline-offset: -3px; position: relative; z-index: 1; }
  tbody th button {
    text-align: left; padding: var(--space-half) var(--space-1) var(--space-half) var(--space-2);
    font-size: var(--type-fine); line-height: 1.15; font-weight: 600;
    overflow-wrap: anywhere;
  }
  thead button { text-align: center; font-size: var(--type-small); font-weight: 650; line-height: 1.05; }
  thead button span { font-stretch: condensed; letter-spacing: -0.02em; }
  thead button small { display: block; font-size: var(--type-fine); font-weight: 400; color: var(--soft); }
  td {
    height: var(--row); border: 1px solid var(--card); border-radius: 5px; text-align: center; cursor: pointer;
    font-size: var(--type-small); font-stretch: condensed; font-weight: 600; line-height: 16px; letter-spacing: -0.02em;
    white-space: nowrap;
    background: var(--sunk);
  }
  td[data-long] { font-size: var(--type-fine); font-weight: 500; letter-spacing: -0.04em; }
  td[data-step='refused'] { background: var(--hatch); color: var(--refused-ink); font-weight: 500; }
  td[data-open] { outline: 3px solid var(--accent); outline-offset: -2px; position: relative; z-index: 1; }
  .powers { display: none; }
  /* sixteen bands of 44 px each between the edges of a tablet */
  @media (max-width: 900px) { :host { --head: 80px; } }
  @media (max-width: 480px) { :host { --head: 92px; --least: 48px; } }
`;

/** One band: a row for each connector, its number and what that means. */
const list = css`
  @media screen {
    :host([band]:not([band=''])) {
      --head: 50%; --least: 120px; --most: 400px;
      thead { display: none; }
      .frame { max-width: none; touch-action: pan-y; }
      tbody th button { font-size: var(--type-text); }
      td { padding: 0 var(--space-3); font-size: var(--type-text); text-align: right; letter-spacing: 0; }
      td::after { float: left; font-weight: 400; }
      .marks { grid-template-columns: minmax(0, 1fr); }
    }
  }
`;

const stepWords = STEPS.map(
  ({id, words}) => `:host([band]:not([band=''])) td[data-step="${id}"]::after{content:"${words}"}`,
);

const paper = css`
  @media print {
    :host { --head: 34mm; --line-height: 5mm; --least: 0px; }
    :host([marked]) { --line-height: 2.95mm; }
    :host(:not([marked])) td > span { font-size: var(--type-text); }
    :host(:not([marked])) .powers { display: none; }
    .frame { overflow: visible; border: 0; }
    thead th, tbody th { position: static; }
    thead { display: table-header-group; }
    tr { break-inside: avoid; }
    thead th { height: auto; font-size: var(--type-small); font-weight: 650; line-height: 1.1; text-align: center; }
    thead button { display: contents; }
    tbody th button {
      grid-template-columns: 1fr auto; align-items: center; gap: var(--space-2); min-height: 0;
      padding: 0 var(--space-2) 0 var(--space-2);
      font-size: var(--type-small);
    }
    td { height: auto; background: none; }
    td > span {
      display: block; height: var(--line-height); padding-right: 16%; text-align: right; font-size: var(--type-fine);
      font-weight: 450; line-height: var(--line-height);
    }
    /* without height of its own it never reaches into the line below */
    td small { float: left; height: 0; padding-left: 0.5mm; }
    td > [data-step='refused'] { background: var(--hatch); color: var(--refused-ink); }
    td > [data-chosen], .powers [data-chosen] { font-weight: 700; }
    .powers { display: block; text-align: right; font-size: var(--type-fine); font-weight: 400; }
    .powers span { display: block; height: var(--line-height); line-height: var(--line-height); white-space: nowrap; }
  }
`;

export const matrixStyles = [
  unsafeCSS(STEP_RULES),
  unsafeCSS(MARK_RULES),
  table,
  list,
  unsafeCSS(`@media screen{${stepWords.join('')}}`),
  paper,
];
