/** Fields in a grid, and what is folded away among them. */
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
