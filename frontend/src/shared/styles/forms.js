/** What the views for one joint share: panels, fields in a grid, the bar above. */
import {css} from 'lit';

export const formStyles = css`
  .fields {
    display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: var(--space-1) var(--space-3);
    align-items: start;
  }
  .wide { grid-column: 1 / -1; }
  details { border-top: 1px solid var(--line); }
  summary {
    cursor: pointer; min-height: var(--target); align-content: center; font-weight: 600; font-size: var(--type-text);
  }
  summary small { font-weight: 400; color: var(--soft); }
  @media (max-width: 420px) { .fields { grid-template-columns: 1fr 1fr; } }
  @media (max-width: 350px) { .fields { grid-template-columns: minmax(0, 1fr); } }
`;

export const pageStyles = css`
  main {
    display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3);
    padding: var(--space-3) var(--space-2) var(--space-10); align-items: start;
  }
  .bar { display: flex; flex-wrap: wrap; gap: var(--space-2); align-items: end; }
  .trouble {
    padding: var(--space-3) var(--space-4); background: var(--alarm-wash); border: 1px solid var(--alarm);
    border-radius: var(--round);
  }
  .waiting { min-height: 60vh; }
  .waiting.empty { min-height: 0; }
  .answer { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); align-content: start; }
  jw-progress { position: sticky; top: 0; z-index: 5; }
  @media (min-width: 700px) { main { padding: var(--space-4) var(--space-4) var(--space-10); } }
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
