/** The layout of the page. */
import {css} from 'lit';

export const appStyles = css`
  main {
    display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3);
    padding: var(--space-3) var(--space-2) var(--space-10);
  }
  jw-scenario {
    padding: var(--space-3) var(--space-3); overflow: hidden; background: var(--card);
    border: 1px solid var(--line); border-radius: var(--round);
  }
  .bar {
    display: flex; flex-wrap: wrap; gap: var(--space-2) var(--space-4); align-items: end;
    justify-content: space-between;
  }
  .tools .bar { gap: var(--space-2); justify-content: flex-start; }
  .below { display: grid; gap: var(--space-4); }
  .onpaper { display: none; }
  /* what stands above the tables speaks to a reader without scripts */
  .tables ::slotted(:is(h1, p)) { display: none; }
  .trouble {
    display: flex; gap: var(--space-3); align-items: center;
    padding: var(--space-1) var(--space-1) var(--space-1) var(--space-4);
    background: var(--alarm-wash); border: 1px solid var(--alarm); border-radius: var(--round);
  }
  jw-progress { position: sticky; top: 0; z-index: 5; }
  @media (max-width: 720px) {
    jw-scenario { padding: 0; }
    .tools { display: contents; }
    jw-exports { order: 1; }
  }
  @media (min-width: 900px) { main { padding: var(--space-4) var(--space-4) var(--space-10); gap: var(--space-3); } }
  .view { display: block; }
  @media (min-width: 1280px) { .page:has(> [beside]) { padding-right: var(--sheet); } }
  @media print {
    .page:has(> [beside]) { padding: 0; }
    .page[data-upright] { page: upright; }
    .page[data-upright] > jw-masthead { display: none; }
    main { padding: 0; gap: 2mm; }
    jw-scenario, .bar, .trouble { display: none; }
    .onpaper { display: block; }
    .below { gap: 2mm; break-inside: avoid; }
  }
`;
