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
        display: flex; flex-wrap: wrap; gap: 4px 14px; align-items: center; padding: 8px 16px; background: var(--card);
      }
      svg { width: 34px; height: 34px; flex: none; }
      h1 { margin: 0; font-size: 1.35rem; letter-spacing: -0.02em; line-height: 1; }
      p { flex: 1 1 13rem; color: var(--soft); font-size: 0.85rem; line-height: 1.3; text-wrap: balance; }
      nav, .switches { display: flex; gap: 6px; }
      .switches { margin-left: auto; }
      nav button { margin-left: -7px; border-radius: 0; font-weight: 600; }
      nav button:first-child { margin-left: 0; border-radius: var(--round) 0 0 var(--round); }
      nav button:last-child { border-radius: 0 var(--round) var(--round) 0; }
      [aria-current] { background: var(--accent); border-color: var(--accent); color: var(--accent-ink); }
      button { font-size: 0.85rem; padding: 0 12px; }
      .units { display: flex; }
      .units button { padding: 0 9px; }
      .units button:first-child { border-radius: var(--round) 0 0 var(--round); }
      .units button:last-child { margin-left: -1px; border-radius: 0 var(--round) var(--round) 0; }
      /* two rows: the page's switches beside its name, the views below; the units are among the station's fields */
      @media (max-width: 640px) {
        header { gap: 6px 8px; padding: 6px 10px; }
        h1 { font-size: 1.15rem; }
        svg { width: 26px; height: 26px; }
        .switches { gap: 4px; }
        .switches button { padding: 0 6px; font-size: 0.8rem; }
        /* where letters are large it scrolls inside itself; the padding is for the ring around what has the focus */
        nav { order: 3; flex: 1 1 100%; margin: -5px; padding: 5px; overflow-x: auto; }
        nav button { flex: 1 0 auto; padding: 0 6px; white-space: nowrap; }
        p, .units { display: none; }
      }
      @media (max-width: 380px) {
        header { gap: 6px 4px; padding: 6px; }
        h1 { font-size: 1rem; }
        svg { display: none; }
        .switches { gap: 2px; }
        .switches button { padding: 0 2px; font-size: 0.75rem; }
        nav button { padding: 0 3px; font-size: 0.75rem; }
      }
      @media print {
        header { padding: 0 0 2mm; }
        nav, .switches { display: none; }
        h1 { font-size: 13pt; }
        p { font-size: 8pt; }
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
