import {LitElement, css, html} from 'lit';
import {base} from './base.js';

const DARK = matchMedia('(prefers-color-scheme: dark)');
const KEPT = 'jointwise-theme';

/** The browser may keep nothing for a page from a file; the theme then lasts as long as the page. */
function kept() {
  try {
    return localStorage.getItem(KEPT) ?? undefined;
  } catch {
    return undefined;
  }
}

/**
 * The name of the tool, what it does, and the switches of the whole page.
 *
 * @fires jw-change - opens the method view
 * @fires jw-notice - {text}: the browser does not keep the theme
 */
class JwMasthead extends LitElement {
  static styles = [
    base,
    css`
      header { display: flex; flex-wrap: wrap; gap: 4px 14px; align-items: center; padding: 8px 16px; background: var(--card); }
      svg { width: 34px; height: 34px; flex: none; }
      h1 { margin: 0; font-size: 1.35rem; letter-spacing: -0.02em; line-height: 1; }
      p { flex: 1 1 16rem; color: var(--soft); font-size: 0.92rem; line-height: 1.3; }
      nav { display: flex; gap: 6px; }
      button { font-size: 0.85rem; padding: 0 12px; }
      @media (max-width: 480px) {
        header { padding: 6px 10px; }
        p { order: 3; flex-basis: 100%; font-size: 0.85rem; }
        nav { margin-left: auto; }
      }
      @media print { header { padding: 0 0 2mm; } nav { display: none; } h1 { font-size: 13pt; } p { font-size: 8pt; } }
    `,
  ];

  static properties = {_theme: {state: true}};

  constructor() {
    super();
    this._turned = () => this.requestUpdate();
    this._theme = kept();
  }

  connectedCallback() {
    super.connectedCallback();
    DARK.addEventListener('change', this._turned);
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    DARK.removeEventListener('change', this._turned);
  }

  willUpdate() {
    if (this._theme) document.documentElement.dataset.theme = this._theme;
  }

  render() {
    return html`<header>
      <svg viewBox="0 0 32 32" aria-hidden="true">
        <circle cx="16" cy="16" r="15" fill="#1f5690"></circle>
        <circle cx="16" cy="16" r="11" fill="#f8e8c8"></circle>
        <circle cx="16" cy="16" r="4.8" fill="#bf8031"></circle>
      </svg>
      <h1>Jointwise</h1>
      <p>How much power a coaxial joint stands, band by band, with the derivation of every number.</p>
      <nav>
        <button id="methods" @click=${this._methods}>Method</button>
        <button id="theme" aria-pressed=${this._dark} @click=${this._turn}>Dark</button>
      </nav>
    </header>`;
  }

  get _dark() {
    return this._theme ? this._theme === 'dark' : DARK.matches;
  }

  _turn() {
    this._theme = this._dark ? 'light' : 'dark';
    try {
      localStorage.setItem(KEPT, this._theme);
    } catch {
      const text = 'This browser keeps nothing for the page, so the choice of light or dark ends when it is closed.';
      this.dispatchEvent(new CustomEvent('jw-notice', {detail: {text}, bubbles: true, composed: true}));
    }
  }

  _methods() {
    const detail = {changes: {view: 'methods'}, live: false};
    this.dispatchEvent(new CustomEvent('jw-change', {detail, bubbles: true, composed: true}));
  }
}

customElements.define('jw-masthead', JwMasthead);
