/** The layout of the page, and of the matrix, which is drawn into it. */
import {css} from 'lit';

export const appStyles = css`
  .skip { position: absolute; z-index: 30; top: -100px; left: var(--space-2); }
  .skip:focus { top: var(--space-1); }
  .view { display: block; }
  jw-scenario {
    padding: var(--space-3); overflow: hidden; background: var(--card); border: 1px solid var(--line);
    border-radius: var(--round);
  }
  .bar {
    display: flex; flex-wrap: wrap; gap: var(--space-2) var(--space-4); align-items: end;
    justify-content: space-between;
  }
  .below { display: grid; gap: var(--space-4); }
  /* what stands above the tables speaks to a reader without scripts */
  .tables ::slotted(:is(h1, p)) { display: none; }
  @media (max-width: 720px) { jw-scenario { padding: 0; } }
  @media (min-width: 1280px) { .page:has(> [beside]) > :not(jw-masthead) { margin-right: var(--sheet); } }
  @media print {
    .skip, .own { display: none; }
    .page:has(> [beside]) > * { margin: 0; }
    .page[data-upright] { page: upright; }
    .page[data-upright] > jw-masthead { display: none; }
    main { padding: 0; gap: 2mm; }
    jw-scenario, .bar, .trouble { display: none; }
    .onpaper { display: block; }
    .below { gap: 2mm; break-inside: avoid; }
  }
`;
