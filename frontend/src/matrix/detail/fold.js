/** What is folded to a line of numbers with a sentence, its steps inside. */
import {css} from 'lit';

export const foldStyles = css`
  details { border: 1px solid var(--line); border-radius: var(--round); }
  summary {
    display: flex; flex-wrap: wrap; gap: var(--space-1) var(--space-3); align-items: center; min-height: 52px;
    padding: var(--space-2) var(--space-3);
    cursor: pointer;
  }
  summary::marker { content: ''; }
  summary::after {
    content: '▾'; margin-left: auto; color: var(--soft);
  }
  details[open] summary::after { content: '▴'; }
  .binds { font-weight: 600; text-decoration: underline; }
  .number { padding: var(--space-1) var(--space-2); border-radius: 5px; font-weight: 700; }
  p { flex: 1 0 100%; font-size: var(--type-small); }
  jw-steps { padding: 0 var(--space-3) var(--space-3); }
  @media print {
    summary { min-height: 0; break-inside: avoid; break-after: avoid; }
    summary::after { display: none; }
  }
`;

/**
 * The names of what is unfolded, after one of them was turned; the same where the turn was of something inside it.
 *
 * @param {Set<string>} open
 * @param {Event} event - of its `toggle`
 * @param {string} name
 */
export function turned(open, {target, currentTarget}, name) {
  if (target !== currentTarget) return open;
  const others = [...open].filter((one) => one !== name);
  return new Set(/** @type {HTMLDetailsElement} */ (target).open ? [...others, name] : others);
}
