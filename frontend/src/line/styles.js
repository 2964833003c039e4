/** The layout of the view: the editor beside the answer, or below it. */
import {css} from 'lit';

export const lineViewStyles = css`
  jw-line-answer, .waiting { order: -1; }
  .wide { order: -2; }
  @media screen and (max-width: 1179px) { jw-line-bar.wide { order: 0; } }
  @media (min-width: 1180px) {
    main { grid-template-columns: minmax(400px, 30%) minmax(0, 1fr); grid-template-rows: auto; }
    .wide { grid-column: 1 / -1; }
    jw-line-editor { grid-column: 1; grid-row: span 2; }
    jw-line-answer, jw-line-results, .waiting { grid-column: 2; order: 0; }
  }
  @media (min-width: 1280px) and (max-width: 1800px) {
    :host([beside]) main { grid-template-columns: minmax(0, 1fr); }
    :host([beside]) :is(jw-line-editor, jw-line-answer, jw-line-results, .waiting) { grid-column: 1; grid-row: auto; }
    :host([beside]) jw-line-answer { order: -1; }
  }
  @media print {
    main, :host([beside]) main {
      padding: 0; gap: 2mm; grid-template-columns: 78mm minmax(0, 1fr); grid-template-rows: auto;
    }
    jw-line-editor { grid-column: 1; }
    jw-line-answer { grid-column: 2; order: 0; }
    jw-line-results, .wide { grid-column: 1 / -1; }
    .trouble { display: none; }
    h2.onpaper { display: block; font-size: var(--type-lead); margin: 0; }
  }
`;
