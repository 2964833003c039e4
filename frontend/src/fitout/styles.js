/** How sheets, lists and labels look on the screen and on paper held upright. */
import {css} from 'lit';

export const sheetStyles = css`
  h2 { font-size: 1.15rem; }
  h3 { margin: 0 0 4px; }
  h4 { margin: 6px 0 2px; font-weight: 600; }
  ul, ol { margin: 0; padding-left: 1.25em; font-size: 0.9rem; }
  ol { padding-left: 1.9em; }
  li + li { margin-top: 4px; }
  .from { color: var(--soft); font-size: 0.78em; line-height: 1.25; }
  .from::before { content: '– '; }
  .sources { color: var(--soft); font-size: 0.78rem; }
  .columns { columns: 2 340px; column-gap: 24px; margin-top: 10px; }
  .columns > section { break-inside: avoid-column; padding-bottom: 12px; }
  .warning {
    padding: 8px 12px; margin-top: 8px; border-left: 4px solid var(--alarm); background: var(--alarm-wash);
    border-radius: 4px; font-size: 0.9rem;
  }
  .figure { font-size: 1.15rem; font-weight: 700; }
  .figure::first-letter { text-transform: uppercase; }
  .plain td { vertical-align: top; }
  @media print {
    h2 { font-size: 12pt; }
    h3 { font-size: 9pt; margin-bottom: 0.5mm; break-after: avoid; }
    h4 { font-size: 8pt; margin: 0.5mm 0 0; break-after: avoid; }
    ul, ol, p, .plain, .warning { font-size: 8pt; line-height: 1.25; }
    li + li { margin-top: 0.3mm; }
    li, tr { break-inside: avoid; }
    .from { font-size: 6.2pt; }
    .sources { font-size: 6.2pt; margin-top: 1mm; }
    .columns { columns: 2; column-gap: 6mm; margin-top: 2mm; }
    .columns > section { padding-bottom: 2mm; break-inside: auto; }
    .columns > #torque { break-inside: avoid; }
    .figure { font-size: 10pt; }
  }
`;

/** Which sheet is on the screen, and what goes to paper. */
export const fitoutViewStyles = css`
  .bar label { display: flex; gap: 6px; align-items: center; font-size: 0.8rem; font-weight: 600; white-space: nowrap; }
  .bar select { font-weight: 400; }
  .joints { display: flex; flex-wrap: wrap; gap: 6px; }
  .joints button { font-size: 0.85rem; }
  @media (min-width: 1180px) { jw-fitout-due { grid-column: 1 / -1; } }
  @media screen { jw-fitout-sheet:not([data-shown]) { display: none; } }
  @media print {
    .joints { display: none; }
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
