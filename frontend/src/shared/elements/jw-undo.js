import {css, html} from 'lit';
import {base} from '../styles/base.js';
import {element} from './element.js';
import {send} from './send.js';

/**
 * Takes back what the reader changed, and does it again.
 *
 * @fires jw-turn - {way}: undo or redo
 */
class JwUndo extends element({
  /** Whether there is something to take back. */
  undo: {type: Boolean},
  /** Whether there is something to do again. */
  redo: {type: Boolean},
}) {
  static styles = [
    base,
    css`
      div { display: flex; gap: var(--space-1); }
      @media print { :host { display: none; } }
    `,
  ];

  render() {
    return html`<div role="group" aria-label="Undo">
      ${this._button('undo', 'Undo', this.undo)}${this._button('redo', 'Redo', this.redo)}
    </div>`;
  }

  _button(way, words, isThere) {
    return html`<button id=${way} class="quiet" ?disabled=${!isThere}
      @click=${() => send(this, 'jw-turn', {way})}>${words}</button>`;
  }
}

customElements.define('jw-undo', JwUndo);
