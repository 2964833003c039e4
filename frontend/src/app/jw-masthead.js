import {css, html, nothing} from 'lit';
import {element, of, state} from '../shared/elements/element.js';
import {send} from '../shared/elements/send.js';
import {base} from '../shared/styles/base.js';
import {PACKS, VIEWS} from './views.js';

const DARK = matchMedia('(prefers-color-scheme: dark)');
const KEPT = 'jointwise-theme';
const UNITS = {
  metric: {label: 'Metric', title: 'Metres, millimetres, °C, N·m'},
  us: {label: 'US', title: 'Feet, inches, °F, in-lb'},
};

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
 * @fires jw-view - {view}: another one is wanted
 * @fires jw-methods - the method is wanted
 * @fires jw-station - the station is wanted, or no more
 * @fires jw-units - {units}: those wanted
 * @fires jw-notice - {text}: the browser does not keep the theme
 */
class JwMasthead extends element({
  /** The one that is shown. */
  view: {type: String},
  /** How many packs count. */
  packs: {type: Number},
  /** Whether the station is open. */
  open: {type: Boolean},
  /** What the station is called. */
  station: {type: String},
  /** Metric or us. */
  units: {type: String},
  _theme: state(/** @type {string | undefined} */ (of)),
}) {
  static styles = [
    base,
    css`
      header {
        display: flex; flex-wrap: wrap; gap: var(--space-1) var(--space-4); align-items: center;
        padding: var(--space-2) var(--space-4); background: var(--card);
      }
      svg { width: 34px; height: 34px; flex: none; }
      h1 { margin: 0; font-size: var(--type-title); letter-spacing: -0.02em; line-height: 1; }
      p { flex: 1 1 13rem; color: var(--soft); font-size: var(--type-small); line-height: 1.3; text-wrap: balance; }
      nav, .switches { display: flex; gap: var(--space-2); }
      .switches { margin-left: auto; }
      nav button { margin-left: calc(-1 * var(--space-2)); border-radius: 0; font-weight: 600; }
      nav button:first-child { margin-left: 0; border-radius: var(--round) 0 0 var(--round); }
      nav button:last-child { border-radius: 0 var(--round) var(--round) 0; }
      [aria-current] { background: var(--accent); border-color: var(--accent); color: var(--accent-ink); }
      button { font-size: var(--type-small); padding: 0 var(--space-3); }
      .units { display: flex; }
      .units button { padding: 0 var(--space-2); }
      .units button:first-child { border-radius: var(--round) 0 0 var(--round); }
      .units button:last-child { margin-left: -1px; border-radius: 0 var(--round) var(--round) 0; }
      /* two rows: the page's switches beside its name, the views below; the units are among the station's fields */
      @media (max-width: 640px) {
        header { gap: var(--space-2) var(--space-2); padding: var(--space-2) var(--space-3); }
        h1 { font-size: var(--type-lead); }
        svg { width: 26px; height: 26px; }
        .switches { gap: var(--space-1); }
        .switches button { padding: 0 var(--space-2); font-size: var(--type-small); }
        /* where letters are large it scrolls inside itself; the padding is for the ring around what has the focus */
        nav { order: 3; flex: 1 1 100%; margin: calc(-1 * var(--space-1)); padding: var(--space-1); overflow-x: auto; }
        nav button { flex: 1 0 auto; padding: 0 var(--space-2); white-space: nowrap; }
        p, .units { display: none; }
      }
      @media (max-width: 380px) {
        header { gap: var(--space-2) var(--space-1); padding: var(--space-2); }
        h1 { font-size: var(--type-text); }
        svg { display: none; }
        .switches { gap: var(--space-half); }
        .switches button { padding: 0 var(--space-half); font-size: var(--type-fine); }
        nav button { padding: 0 var(--space-1); font-size: var(--type-fine); }
      }
      @media print {
        header { padding: 0 0 2mm; }
        nav, .switches { display: none; }
        h1 { font-size: var(--type-title); }
        p { font-size: var(--type-text); }
      }
    `,
  ];

  constructor() {
    super();
    this.station = '';
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
    const packs = this.packs > 0 ? html` <b>${this.packs}</b><span class="unseen"> in force</span>` : nothing;
    return html`<header>
      <svg viewBox="0 0 32 32" aria-hidden="true">
        <circle cx="16" cy="16" r="15" fill="#1f5690"></circle>
        <circle cx="16" cy="16" r="11" fill="#f8e8c8"></circle>
        <circle cx="16" cy="16" r="4.8" fill="#bf8031"></circle>
      </svg>
      <h1>Jointwise</h1>
      <nav aria-label="Views">
        ${VIEWS.map(
          ({id, label}) =>
            html`<button data-view=${id} aria-current=${id === this.view ? 'page' : nothing}
              @click=${() => send(this, 'jw-view', {view: id})}>${label}</button>`,
        )}
      </nav>
      <p>How much power a coaxial joint stands, band by band.</p>
      <div class="switches">
        <button id="station" aria-expanded=${this.open} title=${this.station || nothing}
          @click=${() => send(this, 'jw-station')}>Station</button>
        <button id="packs" aria-current=${this.view === PACKS.id ? 'page' : nothing}
          @click=${() => send(this, 'jw-view', {view: PACKS.id})}>Packs${packs}</button>
        <button id="methods" @click=${() => send(this, 'jw-methods')}>Method</button>
        <span class="units" role="group" aria-label="Units">
          ${Object.entries(UNITS).map(
            ([id, words]) =>
              html`<button id=${id} aria-pressed=${id === this.units} title=${words.title}
                @click=${() => send(this, 'jw-units', {units: id})}>${words.label}</button>`,
          )}
        </span>
        <button id="theme" aria-pressed=${this._dark} @click=${this._turn}>Dark</button>
      </div>
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
}

customElements.define('jw-masthead', JwMasthead);
