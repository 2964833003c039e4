/** What every view has: its page, what is wrong with it, what is waited for, what stands on paper alone. */
import {css} from 'lit';

export const viewStyles = css`
  main {
    display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); align-items: start;
    padding: var(--space-3) var(--space-2) var(--space-10);
  }
  main:focus { outline: none; }
  .trouble {
    display: flex; flex-wrap: wrap; gap: var(--space-2) var(--space-3); align-items: center;
    padding: var(--space-2) var(--space-3); background: var(--alarm-wash); border: 1px solid var(--alarm);
    border-radius: var(--round);
  }
  .onpaper { display: none; }
  .waiting { min-height: 60vh; }
  .waiting.empty { min-height: 0; }
  jw-progress { position: sticky; top: 0; z-index: 5; }
  @media (min-width: 700px) { main { padding: var(--space-3) var(--space-4) var(--space-10); } }
`;

/** A view of a form and its answer: side by side where there is room, else the answer's head first. */
export const pageStyles = css`
  ${viewStyles}
  .bar { display: flex; flex-wrap: wrap; gap: var(--space-2); align-items: end; }
  .answer { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); align-content: start; }
  @media (min-width: 1180px) {
    main { grid-template-columns: minmax(330px, 25%) minmax(0, 1fr); }
    .bar, .trouble { grid-column: 1 / -1; }
  }
  @media print {
    main { display: block; padding: 0; }
    .answer { gap: 2mm; }
    .noprint, .bar { display: none; }
  }
`;
