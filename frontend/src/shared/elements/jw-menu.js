import {css, html, nothing} from 'lit';
import {base} from '../styles/base.js';
import {element, of, state, value} from './element.js';
import {inside} from './inside.js';

/**
 * What is seldom wanted, behind one button. It closes once something of it was done, with Escape, and when the reader
 * goes on elsewhere.
 */
class JwMenu extends element({
  label: {type: String},
  /** What follows the label where there is room. */
  rest: {type: String},
  /** Draws what is behind the button, as it is when that is pressed. */
  content: value(/** @type {() => unknown} */ (of)),
  _open: state(/** @type {boolean} */ (of)),
}) {
  static styles = [
    base,
    css`
      :host { position: relative; }
      .panel {
        position: absolute; right: 0; top: calc(100% + var(--space-1)); z-index: 25; display: grid;
        gap: var(--space-half); width: max-content; min-width: 15rem; max-width: calc(100vw - var(--space-6));
        max-height: calc(100dvh - 8rem); overflow: auto; padding: var(--space-2); background: var(--card);
        border: 1px solid var(--edge); border-radius: var(--round); box-shadow: 0 6px 30px #0004;
      }
      .panel[hidden] { display: none; }
      .panel :is(button, .button) { width: 100%; text-align: left; justify-content: start; }
      h2 {
        padding: var(--space-2) var(--space-3) 0; color: var(--soft); font-size: var(--type-fine); font-weight: 600;
      }
      .row { display: flex; gap: var(--space-1); padding: 0 var(--space-3); }
      .row button { text-align: center; }
      .file { position: relative; cursor: pointer; }
      .file:focus-within { outline: 3px solid var(--focus); }
      .file input { position: absolute; inset: 0; opacity: 0; cursor: pointer; }
      @media (max-width: 640px) { #button .rest { position: absolute; clip-path: inset(50%); } }
      @media print { :host { display: none; } }
    `,
  ];

  constructor() {
    super();
    this.label = '';
    this.rest = '';
    this._open = false;
    this._pressed = (event) => {
      if (this._open && !event.composedPath().includes(this)) this._open = false;
    };
  }

  connectedCallback() {
    super.connectedCallback();
    window.addEventListener('pointerdown', this._pressed);
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    window.removeEventListener('pointerdown', this._pressed);
  }

  render() {
    return html`<div @keydown=${this._escaped} @focusout=${this._left}>
      <button id="button" aria-expanded=${this._open} aria-controls="panel" @click=${() => (this._open = !this._open)}
        >${this.label}${this.rest ? html`<span class="rest"> ${this.rest}</span>` : nothing}</button>
      <div id="panel" class="panel" role="group" aria-labelledby="button" ?hidden=${!this._open}
        @click=${this._done} @change=${this._done}>${this._open ? this.content() : nothing}</div>
    </div>`;
  }

  /** A switch leaves it open; a file is picked before anything is done with it. */
  _done({type, target}) {
    const isDone = type === 'change' ? target.type === 'file' : target.closest('button:not([aria-pressed]), a');
    if (isDone) this._close();
    else this.requestUpdate();
  }

  _escaped(event) {
    if (event.key !== 'Escape' || !this._open) return;
    event.preventDefault();
    this._close();
  }

  _left({relatedTarget}) {
    if (relatedTarget && !this.renderRoot.contains(relatedTarget)) this._open = false;
  }

  _close() {
    this._open = false;
    inside(this.renderRoot, '#button').focus();
  }
}

customElements.define('jw-menu', JwMenu);
