/** Some of a list as chips: each a button that takes it away, and a menu or a field that adds one. */
import {css, html} from 'lit';

/** @import {Entry} from '../shared/answers.js' */

export const chipStyles = css`
  .chips { min-width: 0; }
  .chips > div { display: flex; flex-wrap: wrap; gap: 4px; align-items: center; }
  .chips .chip { padding: 0 10px; font-size: 0.9rem; overflow-wrap: anywhere; text-align: left; }
  .chips :is(select, input[type='text']) { width: auto; flex: 0 1 11rem; }
  .label { display: block; font-size: 0.8rem; font-weight: 600; margin-bottom: 3px; }
  .hint { display: block; margin-top: 2px; font-size: 0.75rem; line-height: 1.35; color: var(--soft); }
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
  const add = ({target}) => {
    const one = target.value.trim();
    target.value = '';
    if (one !== '' && !chosen.includes(one)) put([...chosen, one]);
  };
  const take = (event, at) => {
    goOn(event);
    put(chosen.toSpliced(at, 1));
  };
  return html`<div class="chips" role="group" aria-label=${label}>
    <span class="label" aria-hidden="true">${label}</span>
    <div>
      ${chosen.map(
        (id, at) => html`<button type="button" class="chip" aria-pressed="true" title="Take away"
          @click=${(event) => take(event, at)}>${nameOf(id)} <span aria-hidden="true">✕</span></button>`,
      )}
      ${
        offered
          ? html`<select aria-label="Add to ${label}" @change=${add}>
            <option value="" selected>Add…</option>
            ${offered
              .filter(({id}) => !chosen.includes(id))
              .map(({id, name}) => html`<option value=${id}>${name}</option>`)}
          </select>`
          : html`<input type="text" aria-label="Add to ${label}" placeholder="Add…" autocomplete="off"
            maxlength=${longest ?? 80} @change=${add}>`
      }
    </div>
    <span class="hint">${hint}</span>
  </div>`;
}
