/** The layout of the line view. */
import {css} from 'lit';

/** Panels and their headings. */
export const panelStyles = css`
  section { min-width: 0; }
  .panel {
    padding: var(--space-3); background: var(--card); border: 1px solid var(--line); border-radius: var(--round);
  }
  h2 { font-size: var(--type-lead); margin-bottom: var(--space-2); }
  h2 small { font-weight: 400; color: var(--soft); font-size: var(--type-small); }
  .legend { margin-top: var(--space-2); }
  @media print {
    :host { gap: 2mm; }
    .panel { padding: 1mm 2mm; break-inside: avoid; }
    h2 { margin-bottom: 1mm; }
  }
`;

/** A label that looks like a button and opens the files of the device. */
export const pickStyles = css`
  .pick {
    position: relative; display: grid; place-items: center; min-height: var(--target); padding: 0 var(--space-3);
    font-size: var(--type-small); border: 1px solid var(--edge); border-radius: var(--round); background: var(--card);
    cursor: pointer;
  }
  .pick:hover { border-color: var(--ink); }
  .pick:focus-within { outline: 3px solid var(--focus); outline-offset: 2px; }
  .pick input[type='file'] { position: absolute; inset: 0; width: 100%; height: 100%; opacity: 0; cursor: pointer; }
`;

export const viewStyles = css`
  main {
    display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3);
    padding: var(--space-3) var(--space-2) var(--space-10);
  }
  .trouble {
    display: flex; gap: var(--space-3); align-items: center;
    padding: var(--space-1) var(--space-1) var(--space-1) var(--space-4);
    background: var(--alarm-wash); border: 1px solid var(--alarm); border-radius: var(--round);
  }
  .onpaper { display: none; }
  .waiting { min-height: 60vh; }
  .waiting.empty { min-height: 0; }
  jw-line-answer, .waiting { order: -1; }
  .wide { order: -2; }
  jw-progress { position: sticky; top: 0; z-index: 5; }
  @media (min-width: 700px) { main { padding: var(--space-4) var(--space-4) var(--space-10); } }
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
