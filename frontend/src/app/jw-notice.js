import {css, html, nothing} from 'lit';
import {element, of, value} from '../shared/elements/element.js';
import {base} from '../shared/styles/base.js';

/** @import {Action} from '../shared/elements/view.js' */

/**
 * A sentence for the reader, with a button that takes it away.
 *
 * @fires jw-dismiss
 */
class JwNotice extends element({
  /** Nothing is shown without one. */
  text: {type: String},
  /** An address to copy by hand, shown selected. */
  link: {type: String},
  action: value(/** @type {Action | undefined} */ (of)),
}) {
  static styles = [
    base,
    css`
      :host {
        position: fixed; inset: auto var(--space-3) calc(var(--foot) + var(--space-3)); z-index: 30; max-width: 640px;
        margin: 0 auto;
      }
      div {
        box-shadow: 0 6px 30px #0004;
        display: flex; flex-wrap: wrap; gap: var(--space-2) var(--space-3); align-items: center;
        padding: var(--space-1) var(--space-1) var(--space-1) var(--space-4);
        background: var(--card); border: 1px solid var(--edge); border-radius: var(--round);
      }
      p { flex: 1 1 14rem; }
      input { flex: 2 1 14rem; }
      @media print { :host { display: none; } }
    `,
  ];

  constructor() {
    super();
    this.text = '';
    this.link = '';
  }

  render() {
    if (!this.text) return html`<span role="status"></span>`;
    return html`<div role="status">
      <p>${this.text}</p>
      ${
        this.link
          ? html`<input readonly aria-label="Link to this view" .value=${this.link} @focus=${(e) => e.target.select()}>`
          : nothing
      }
      ${
        this.action ? html`<button id="notice-action" @click=${this.action.run}>${this.action.words}</button>` : nothing
      }
      <button @click=${this._dismiss}>Close</button>
    </div>`;
  }

  _dismiss() {
    this.dispatchEvent(new CustomEvent('jw-dismiss', {bubbles: true, composed: true}));
  }
}

customElements.define('jw-notice', JwNotice);
