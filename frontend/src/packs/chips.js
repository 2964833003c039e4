/** Some of a list as chips: each a button that takes it away, and a menu or a field to add one of. */
import {css, html} from 'lit';

/** @import {Entry} from '../shared/answers.js' */

export const chipStyles = css`
  .chips { min-width: 0; }
  .chips > div { display: flex; flex-wrap: wrap; gap: var(--space-1); align-items: center; }
  .chips .choice { padding: 0 var(--space-3); font-size: var(--type-text); overflow-wrap: anywhere; text-align: left; }
  .chips .more { display: flex; gap: var(--space-1); min-width: 0; }
  .chips .more :is(select, input[type='text']) { width: 11rem; flex: 0 1 11rem; }
  .label { display: block; font-size: var(--type-small); font-weight: 600; margin-bottom: var(--space-1); }
  .hint {
    display: block; margin-top: var(--space-half); font-size: var(--type-fine); line-height: 1.35; color: var(--soft);
  }
`;

/** Who came by keys goes on where the next one is added, as the chip is gone. */
const goOn = ({currentTarget}) =>
  /** @type {?HTMLElement} */ (currentTarget.closest('.chips').querySelector('select, input'))?.focus();

/**
 * @typedef {object} Chips
 * @property {string} label
 * @property {string} [hint]
 * @property {string[]} chosen
 * @property {(chosen: string[]) => void} put
 * @property {Entry[]} [offered] - those to choose of; without them any text may be added
 * @property {?number} [longest] - of a text
 */

/** @param {Chips} chips */
export function chips({label, hint = '', chosen, put, offered, longest}) {
  const nameOf = (id) => offered?.find((one) => one.id === id)?.name ?? id;
  // not as soon as the menu changes, which it does with every key
  const add = ({currentTarget}) => {
    const more = currentTarget.closest('.more').querySelector('select, input');
    const one = more.value.trim();
    more.value = '';
    more.focus();
    if (one !== '' && !chosen.includes(one)) put([...chosen, one]);
  };
  const entered = (event) => {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    add(event);
  };
  const take = (event, at) => {
    goOn(event);
    put(chosen.toSpliced(at, 1));
  };
  return html`<div class="chips" role="group" aria-label=${label}>
    <span class="label" aria-hidden="true">${label}</span>
    <div>
      ${chosen.map(
        (id, at) => html`<button type="button" class="choice" aria-pressed="true" title="Take away"
          @click=${(event) => take(event, at)}>${nameOf(id)} <span aria-hidden="true">✕</span></button>`,
      )}
      <div class="more">
        ${
          offered
            ? html`<select aria-label="Another for ${label}" @keydown=${entered}>
              <option value="" selected>choose…</option>
              ${offered
                .filter(({id}) => !chosen.includes(id))
                .map(({id, name}) => html`<option value=${id}>${name}</option>`)}
            </select>`
            : html`<input type="text" aria-label="Another for ${label}" autocomplete="off" maxlength=${longest ?? 80}
              @keydown=${entered}>`
        }
        <button type="button" @click=${add}>Add <span class="unseen">to ${label}</span></button>
      </div>
    </div>
    <span class="hint">${hint}</span>
  </div>`;
}
