/** Panels, and the button that opens a file. */
import {css} from 'lit';

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
