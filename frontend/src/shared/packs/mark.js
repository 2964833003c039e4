/** How the page marks what comes from a pack. */
import {css, html, nothing} from 'lit';

/** Words behind an entry, with the blank between them; nothing at all for what is built in. */
export const packMark = (name) => (name ? html` <span class="pack">from pack ${name}</span>` : nothing);

/** The same where there is no room for words: a sign, and the words for a reader who asks or can't see it. */
export const packSign = (name) =>
  name
    ? html` <span class="pack sign" title="From pack ${name}">◆<span class="unseen"> from pack ${name}</span></span>`
    : nothing;

/** The name of the pack that a source's id is led by; undefined for a built-in one. */
export function packOfSource(source, packs = []) {
  const [lead, rest] = source.split('.');
  return rest === undefined ? undefined : packs.find(({id}) => id === lead)?.name;
}

export const packStyles = css`
  .pack {
    display: inline-block; max-width: 100%; padding: 0 7px; border: 1px dashed var(--accent); border-radius: 99px;
    color: var(--accent); font-size: 0.75rem; font-weight: 500; overflow-wrap: anywhere;
  }
  .pack.sign { padding: 0 2px; border: 0; font-size: 0.8em; }
`;
