import {css, html, nothing} from 'lit';
import {element} from '../elements/element.js';
import {send} from '../elements/send.js';
import {base} from '../styles/base.js';

/**
 * Says that something has its own of what the station has, and gives the station's back.
 *
 * @fires jw-leave - the station's is wanted
 */
class JwOwn extends element({
  /** What has its own: "This line". Nothing is shown without `what`. */
  of: {type: String},
  /** What it has its own of, in words. */
  what: {type: String},
}) {
  static styles = [
    base,
    css`
      p {
        display: flex; flex-wrap: wrap; gap: var(--space-1) var(--space-3); align-items: center;
        margin-bottom: var(--space-2);
        padding: var(--space-1) var(--space-1) var(--space-1) var(--space-3);
        background: var(--sunk); border-radius: var(--round); font-size: var(--type-small);
      }
      span { flex: 1 1 12rem; }
      @media print { button { display: none; } }
    `,
  ];

  constructor() {
    super();
    this.of = '';
    this.what = '';
  }

  render() {
    if (!this.what) return nothing;
    return html`<p role="note"><span>${this.of} has its own: ${this.what}.</span>
      <button @click=${() => send(this, 'jw-leave')}>Use the station’s</button></p>`;
  }
}

customElements.define('jw-own', JwOwn);
