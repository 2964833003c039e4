/** What the views for one joint share: panels, fields in a grid, the bar above. */
import {css} from 'lit';

export const formStyles = css`
  .fields {
    display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: 4px 12px; align-items: start;
  }
  .wide { grid-column: 1 / -1; }
  details { border-top: 1px solid var(--line); }
  summary { cursor: pointer; min-height: var(--target); align-content: center; font-weight: 600; font-size: 0.92rem; }
  summary small { font-weight: 400; color: var(--soft); }
  @media (max-width: 420px) { .fields { grid-template-columns: 1fr 1fr; } }
  @media (max-width: 350px) { .fields { grid-template-columns: minmax(0, 1fr); } }
`;

export const pageStyles = css`
  main { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; padding: 10px 8px 40px; align-items: start; }
  .bar { display: flex; flex-wrap: wrap; gap: 6px; align-items: end; }
  .bar button { font-size: 0.85rem; padding: 0 10px; }
  .trouble {
    padding: 10px 14px; background: var(--alarm-wash); border: 1px solid var(--alarm); border-radius: var(--round);
  }
  .waiting { min-height: 60vh; }
  .waiting.empty { min-height: 0; }
  .answer { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; align-content: start; }
  jw-progress { position: sticky; top: 0; z-index: 5; }
  @media (min-width: 700px) { main { padding: 14px 16px 48px; } }
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
