/** The layout of the line view. */
import {css} from 'lit';

/** Panels and their headings. */
export const panelStyles = css`
  section { min-width: 0; }
  .panel { padding: 12px; background: var(--card); border: 1px solid var(--line); border-radius: var(--round); }
  h2 { font-size: 1.05rem; margin-bottom: 8px; }
  h2 small { font-weight: 400; color: var(--soft); font-size: 0.8rem; }
  .legend { margin-top: 8px; }
  @media print {
    :host { gap: 2mm; }
    .panel { padding: 1mm 2mm; break-inside: avoid; }
    h2 { font-size: 9pt; margin-bottom: 1mm; }
  }
`;

/** A label that looks like a button and opens the files of the device. */
export const pickStyles = css`
  .pick {
    position: relative; display: grid; place-items: center; min-height: var(--target); padding: 0 10px;
    font-size: 0.85rem; border: 1px solid var(--edge); border-radius: var(--round); background: var(--card);
    cursor: pointer;
  }
  .pick:hover { border-color: var(--accent); }
  .pick:focus-within { outline: 3px solid var(--accent); outline-offset: 2px; }
  .pick input[type='file'] { position: absolute; inset: 0; width: 100%; height: 100%; opacity: 0; cursor: pointer; }
`;

export const viewStyles = css`
  main { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; padding: 10px 8px 40px; }
  .trouble {
    display: flex; gap: 12px; align-items: center; padding: 4px 4px 4px 14px;
    background: var(--alarm-wash); border: 1px solid var(--alarm); border-radius: var(--round);
  }
  .onpaper { display: none; }
  .waiting { min-height: 60vh; }
  .waiting.empty { min-height: 0; }
  jw-line-answer, .waiting { order: -1; }
  .wide { order: -2; }
  jw-progress { position: sticky; top: 0; z-index: 5; }
  @media (min-width: 700px) { main { padding: 14px 16px 48px; } }
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
    h2.onpaper { display: block; font-size: 11pt; margin: 0; }
  }
`;
