/** The right field for a value, "group.field", by what the core says of it. */
import {html} from 'lit';
import './jw-choice-field.js';
import './jw-file-field.js';
import './jw-number-field.js';
import './jw-switch-field.js';
import './jw-text-field.js';

/**
 * @param {import('../vocabulary/vocabulary.js').Vocabulary} vocabulary
 * @param {string} name
 * @param {any} value
 * @param {string} [error]
 */
export function control(vocabulary, name, value, error = '') {
  const {type} = vocabulary.fieldOf(name);
  const {options, entries} = vocabulary.wordsOf(name);
  if (name.endsWith('.touchstone'))
    return html`<jw-file-field name=${name} .value=${value} .error=${error}></jw-file-field>`;
  if (type === 'boolean') return html`<jw-switch-field name=${name} .value=${value} .error=${error}></jw-switch-field>`;
  if (type === 'choice' || options || entries) {
    return html`<jw-choice-field name=${name} .value=${value} .error=${error}></jw-choice-field>`;
  }
  if (type === 'number') return html`<jw-number-field name=${name} .value=${value} .error=${error}></jw-number-field>`;
  return html`<jw-text-field name=${name} .value=${value} .error=${error}></jw-text-field>`;
}

/**
 * The changes of a field's event, by the request's own names.
 *
 * @param {CustomEvent<{changes: Record<string, any>}>} event
 */
export const changesOf = (event) =>
  Object.fromEntries(Object.entries(event.detail.changes).map(([name, value]) => [name.split('.').at(-1), value]));
