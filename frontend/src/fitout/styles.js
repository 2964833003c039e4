/** How sheets, lists and labels look on the screen and on paper held upright. */
import {css} from 'lit';

export const sheetStyles = css`
  h2 { font-size: var(--type-lead); }
  h3 { margin: 0 0 var(--space-1); }
  h4 { margin: var(--space-2) 0 var(--space-half); font-weight: 600; }
  ul, ol { margin: 0; padding-left: 1.25em; font-size: var(--type-text); }
  ol { padding-left: 1.9em; }
  li + li { margin-top: var(--space-1); }
  .from { color: var(--soft); font-size: var(--type-fine); line-height: 1.25; }
  .from::before { content: '– '; }
  .sources { color: var(--soft); font-size: var(--type-fine); }
  .columns { columns: 2 340px; column-gap: var(--space-6); margin-top: var(--space-3); }
  .columns > section { break-inside: avoid-column; padding-bottom: var(--space-3); }
  .warning {
    padding: var(--space-2) var(--space-3); margin-top: var(--space-2); border-left: 4px solid var(--alarm);
    background: var(--alarm-wash);
    border-radius: 4px; font-size: var(--type-text);
  }
  .figure { font-size: var(--type-lead); font-weight: 700; }
  .figure::first-letter { text-transform: uppercase; }
  .plain td { vertical-align: top; }
  @media print {
    h3 { margin-bottom: 0.5mm; break-after: avoid; }
    h4 { margin: 0.5mm 0 0; break-after: avoid; }
    ul, ol, p, .plain, .warning { font-size: var(--type-small); line-height: 1.12; }
    li + li { margin-top: 0; }
    li, tr { break-inside: avoid; }
    .sources { margin-top: 1mm; }
    .columns { columns: 2; column-gap: 6mm; margin-top: 2mm; }
    .columns > section { padding-bottom: 1mm; break-inside: auto; }
    .columns > #torque { break-inside: avoid; }
  }
`;

/** Which sheet is on the screen, and what goes to paper. */
export const fitoutViewStyles = css`
  .beside { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); }
  details.panel { padding-top: 0; padding-bottom: 0; }
  details.panel[open] { padding-bottom: var(--space-3); }
  label { display: block; margin-bottom: var(--space-1); font-size: var(--type-small); font-weight: 600; }
  .switch { display: flex; gap: var(--space-2); align-items: center; min-height: var(--target); }
  .switch input { width: 22px; height: 22px; margin: 0; }
  @media screen and (max-width: 1179px) {
    .answer { display: contents; }
    .joints, jw-fitout-sheet, .waiting { order: -1; }
    .trouble { order: -2; }
  }
  .joints { display: flex; flex-wrap: wrap; gap: var(--space-2); }
  @media (min-width: 1180px) { jw-fitout-due { grid-column: 1 / -1; } }
  @media screen { jw-fitout-sheet:not([data-shown]) { display: none; } }
  @media print {
    .beside, .joints { display: none; }
    jw-fitout-sheet { break-before: page; }
    jw-fitout-sheet:first-of-type { break-before: auto; }
    jw-fitout-list, jw-fitout-labels { break-before: page; }
    [data-paper='sheets'] :is(jw-fitout-list, jw-fitout-labels),
    [data-paper='list'] :is(jw-fitout-sheet, jw-fitout-labels),
    [data-paper='labels'] :is(jw-fitout-sheet, jw-fitout-list, jw-cautions) { display: none; }
    [data-paper='list'] jw-fitout-list, [data-paper='labels'] jw-fitout-labels { break-before: auto; }
    [data-flowing] jw-fitout-sheet { break-before: auto; margin-bottom: 4mm; }
  }
`;
