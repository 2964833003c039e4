import {css, html} from 'lit';
import {element} from '../shared/elements/element.js';
import {inside} from '../shared/elements/inside.js';
import {base} from '../shared/styles/base.js';

/** Before and after the page goes to paper. */
const PRINTING = ['beforeprint', 'afterprint'];

/**
 * Lies over the page, and is all that goes to paper.
 *
 * @slot - what it shows
 */
class JwPaper extends element({heading: {type: String}}) {
  static styles = [
    base,
    css`
      dialog {
        position: fixed; inset: 0; width: 100vw; height: 100dvh; max-width: none; max-height: none; margin: 0;
        padding: 0; border: 0; overflow: auto; color: var(--ink); background: var(--paper);
      }
      .head {
        display: flex; flex-wrap: wrap; gap: var(--space-2); align-items: center;
        padding: var(--space-2) var(--space-4); background: var(--card);
        border-bottom: 1px solid var(--line);
      }
      h2 { flex: 1; font-size: var(--type-lead); }
      h2:focus { outline: none; }
      .body { padding: var(--space-3) var(--space-4) var(--space-10); }
      @media print {
        :host { page: upright; }
        dialog { position: static; width: auto; height: auto; overflow: visible; }
        .head { padding: 0; border: 0; }
        .head button { display: none; }
        h2 { font-size: var(--type-title); }
        .body { padding: 0; }
      }
    `,
  ];

  constructor() {
    super();
    this.heading = '';
    this._pressed = (event) => {
      if (event.key !== 'Escape') return;
      event.preventDefault();
      event.stopImmediatePropagation();
      this._close();
    };
    // what lies on top of the page keeps its place on the screen, and would be one page of paper
    this._printed = ({type}) => this._place(type === 'beforeprint');
  }

  connectedCallback() {
    super.connectedCallback();
    window.addEventListener('keydown', this._pressed, {capture: true});
    for (const type of PRINTING) window.addEventListener(type, this._printed);
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    window.removeEventListener('keydown', this._pressed, {capture: true});
    for (const type of PRINTING) window.removeEventListener(type, this._printed);
  }

  render() {
    return html`<dialog aria-labelledby="heading" @cancel=${this._close}>
      <div class="head">
        <h2 id="heading" tabindex="-1">${this.heading}</h2>
        <button id="print" @click=${() => window.print()}>Print</button>
        <button id="close" @click=${this._close}>Close</button>
      </div>
      <div class="body"><slot></slot></div>
    </dialog>`;
  }

  firstUpdated() {
    this._place(false);
    inside(this.renderRoot, 'h2').focus();
  }

  get _dialog() {
    return /** @type {HTMLDialogElement} */ (inside(this.renderRoot, 'dialog'));
  }

  /** @param {boolean} isPrinting */
  _place(isPrinting) {
    if (this._dialog.open) this._dialog.close();
    if (isPrinting) this._dialog.show();
    else this._dialog.showModal();
  }

  /** Closed before it goes, so that the focus returns to where it was. */
  _close() {
    this._dialog.close();
    this.remove();
  }
}

customElements.define('jw-paper', JwPaper);

/**
 * Shows an element alone, to be used on the screen or printed by itself.
 *
 * @param {string} heading
 * @param {HTMLElement} content
 */
export function onPaper(heading, content) {
  const paper = /** @type {JwPaper} */ (document.createElement('jw-paper'));
  paper.heading = heading;
  paper.append(content);
  document.body.append(paper);
}
