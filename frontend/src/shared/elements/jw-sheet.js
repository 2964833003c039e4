import {css, html} from 'lit';
import {base} from '../styles/base.js';
import {element} from './element.js';
import {inside} from './inside.js';

/** From here the sheet leaves the page beside it and the masthead above it in use; on paper it follows the page. */
const BESIDE = matchMedia('(min-width: 1280px)');
/** Before and after the page goes to paper. */
const PRINTING = ['beforeprint', 'afterprint'];

function deepestActive() {
  let active = /** @type {?HTMLElement} */ (document.activeElement);
  while (active?.shadowRoot?.activeElement) active = /** @type {HTMLElement} */ (active.shadowRoot.activeElement);
  return active;
}

/**
 * A sheet over the page: at its side, on a phone at the bottom. Nothing under it moves. Escape and the button ask to
 * close it; the focus goes to its heading and comes back when it closes. It is open while it has a heading.
 *
 * @slot - what it shows
 * @fires jw-close
 */
class JwSheet extends element({heading: {type: String}}) {
  static styles = [
    base,
    css`
      dialog {
        position: fixed; inset: 0; z-index: 20; width: 100vw; height: 100dvh; max-width: none; max-height: none;
        margin: 0; padding: 0; border: 0; overflow: hidden; color: inherit; background: var(--card);
      }
      dialog[open] { display: flex; flex-direction: column; }
      .head {
        display: flex; gap: var(--space-3); align-items: center;
        padding: var(--space-2) var(--space-2) var(--space-2) var(--space-4); border-bottom: 1px solid var(--line);
      }
      h2:focus { outline: none; }
      h2 { flex: 1; font-size: var(--type-lead); line-height: 1.25; }
      .body {
        flex: 1; overflow: auto; padding: var(--space-4) var(--space-4) var(--space-10); overscroll-behavior: contain;
      }
      dialog::backdrop { background: #0006; }
      @media (max-width: 699px) {
        dialog { inset: auto 0 0; height: 88dvh; border-top: 1px solid var(--edge); border-radius: 16px 16px 0 0; }
      }
      @media (min-width: 700px) {
        dialog { inset: 0 0 0 auto; width: 600px; border-left: 1px solid var(--edge); box-shadow: 0 0 40px #0005; }
      }
      @media (min-width: 1280px) { dialog { inset: var(--masthead-end) 0 0 auto; width: var(--sheet); height: auto; } }
      @media print {
        dialog, dialog[open] {
          position: static; display: block; width: auto; height: auto; overflow: visible; border: 0; box-shadow: none;
          break-before: page;
        }
        dialog:not([open]), #close { display: none; }
        .head { padding: 0 0 2mm; }
        .body { overflow: visible; padding: 2mm 0 0; columns: 2 85mm; column-gap: 8mm; }
      }
    `,
  ];

  constructor() {
    super();
    this.heading = '';
    this._printing = false;
    this._placed = () => this._place();
    this._printed = ({type}) => {
      this._printing = type === 'beforeprint';
      this._place();
    };
    this._escaped = (event) => {
      if (event.key === 'Escape' && this.heading && !event.defaultPrevented) this._close(event);
    };
  }

  connectedCallback() {
    super.connectedCallback();
    BESIDE.addEventListener('change', this._placed);
    for (const type of PRINTING) window.addEventListener(type, this._printed);
    window.addEventListener('keydown', this._escaped);
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    BESIDE.removeEventListener('change', this._placed);
    for (const type of PRINTING) window.removeEventListener(type, this._printed);
    window.removeEventListener('keydown', this._escaped);
  }

  render() {
    return html`<dialog aria-labelledby="heading" @cancel=${this._close}>
      <div class="head">
        <h2 id="heading" tabindex="-1">${this.heading}</h2>
        <button id="close" @click=${this._close}>Close</button>
      </div>
      <div class="body" tabindex="0" role="group" aria-labelledby="heading"><slot></slot></div>
    </dialog>`;
  }

  updated(changed) {
    if (!changed.has('heading')) return;
    if (this.heading === '') return this._closed();
    if (!this.matches(':focus-within')) this._opener = deepestActive();
    this._place();
    inside(this.renderRoot, '.body').scrollTop = 0;
    inside(this.renderRoot, 'h2').focus();
  }

  get _dialog() {
    return /** @type {HTMLDialogElement} */ (inside(this.renderRoot, 'dialog'));
  }

  _place() {
    if (this.heading === '') return;
    const beside = BESIDE.matches || this._printing;
    if (this._dialog.open && this._beside === beside) return;
    this._beside = beside;
    this._dialog.close();
    if (this._beside) this._dialog.show();
    else this._dialog.showModal();
  }

  _closed() {
    this._dialog.close();
    if (this._opener?.isConnected) this._opener.focus();
    this._opener = undefined;
  }

  _close(event) {
    event.preventDefault();
    this.dispatchEvent(new CustomEvent('jw-close', {bubbles: true, composed: true}));
  }
}

customElements.define('jw-sheet', JwSheet);
