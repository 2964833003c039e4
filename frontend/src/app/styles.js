/** The layout of the page. */
import {css} from 'lit';

export const appStyles = css`
  main { display: grid; grid-template-columns: minmax(0, 1fr); gap: 10px; padding: 10px 8px 40px; }
  jw-scenario {
    padding: 10px 12px; overflow: hidden; background: var(--card);
    border: 1px solid var(--line); border-radius: var(--round);
  }
  .bar { display: flex; flex-wrap: wrap; gap: 8px 16px; align-items: end; justify-content: space-between; }
  .tools .bar { gap: 6px; justify-content: flex-start; }
  .tools button { font-size: 0.85rem; padding: 0 10px; }
  .below { display: grid; gap: 16px; }
  .onpaper { display: none; }
  /* what stands above the tables speaks to a reader without scripts */
  .tables ::slotted(:is(h1, p)) { display: none; }
  .trouble {
    display: flex; gap: 12px; align-items: center; padding: 4px 4px 4px 14px;
    background: var(--alarm-wash); border: 1px solid var(--alarm); border-radius: var(--round);
  }
  jw-progress { position: sticky; top: 0; z-index: 5; }
  @media (max-width: 720px) {
    jw-scenario { padding: 0; }
    .tools { display: contents; }
    jw-exports { order: 1; }
  }
  @media (min-width: 900px) { main { padding: 14px 16px 48px; gap: 12px; } }
  .view { display: block; }
  @media (min-width: 1280px) { .page:has(> [beside]) { padding-right: var(--sheet); } }
  @media print {
    .page:has(> [beside]) { padding: 0; }
    .page[data-upright] { page: upright; }
    .page[data-upright] > jw-masthead { display: none; }
    main { padding: 0; gap: 2mm; }
    jw-scenario, .bar, .trouble { display: none; }
    .onpaper { display: block; }
    h2.onpaper { font-size: 9pt; }
    .below { gap: 2mm; break-inside: avoid; }
  }
`;
