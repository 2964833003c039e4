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
      div { display: flex; gap: var(--space-2); }
      button:disabled { opacity: 0.6; cursor: default; }
      @media print { :host { display: none; } }
    `,
  ];

  render() {
    return html`<div role="group" aria-label="Undo">
      <button id="undo" ?disabled=${!this.undo} @click=${() => send(this, 'jw-turn', {way: 'undo'})}>Undo</button>
      <button id="redo" ?disabled=${!this.redo} @click=${() => send(this, 'jw-turn', {way: 'redo'})}>Redo</button>
    </div>`;
  }
}

customElements.define('jw-undo', JwUndo);
