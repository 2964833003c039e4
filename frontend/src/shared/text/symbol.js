/** A formula's symbol as it is printed. */
import {html} from 'lit';
import {letters} from './letters.js';

export function symbol(name) {
  const [letter, under] = letters(name);
  return html`<var>${letter}${under ? html`<sub>${under}</sub>` : ''}</var>`;
}
