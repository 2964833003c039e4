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
    display: inline-block; max-width: 100%; padding: 0 var(--space-2); border: 1px dashed var(--edge);
    border-radius: 99px;
    color: var(--soft); font-size: var(--type-fine); font-weight: 500; overflow-wrap: anywhere;
  }
  .pack.sign { padding: 0 var(--space-half); border: 0; font-size: var(--type-fine); }
`;
