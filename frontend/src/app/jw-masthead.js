import {css, html, nothing} from 'lit';
import {element, of, state, value} from '../shared/elements/element.js';
import '../shared/elements/jw-menu.js';
import '../shared/elements/jw-undo.js';
import {send} from '../shared/elements/send.js';
import {wayButton} from '../shared/export/ways.js';
import {base} from '../shared/styles/base.js';
import {PACKS, VIEWS} from './views.js';

/** @import {Way} from '../shared/export/ways.js' */

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
 * The name of the tool, what the view answers, and the switches of the whole page; on a phone the views stand at the
 * bottom edge.
 *
 * @fires jw-view - {view}: another one is wanted
 * @fires jw-methods - the method is wanted
 * @fires jw-sheet - {name}: station or saving is wanted, or no more
 * @fires jw-units - {units}: those wanted
 * @fires jw-turn - {way}: undo or redo
 * @fires jw-reset - the view as on a first visit
 * @fires jw-notice - {text}: the browser does not keep the theme
 */
class JwMasthead extends element({
  /** The one that is shown. */
  view: {type: String},
  /** What that answers. */
  description: {type: String},
  /** What of it can be taken along. */
  ways: value(/** @type {() => Way[]} */ (of)),
  /** Whether it can be as on a first visit. */
  resets: value(/** @type {() => boolean} */ (of)),
  undo: {type: Boolean},
  redo: {type: Boolean},
  /** Address of the page as one file; empty where there is none. */
  file: {type: String},
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
        display: flex; flex-wrap: wrap; gap: 0 var(--space-4); align-items: center;
        padding: var(--space-2) var(--space-4) 0; background: var(--card); border-bottom: 1px solid var(--line);
      }
      svg { width: 34px; height: 34px; flex: none; }
      h1 { margin: 0; font-size: var(--type-title); letter-spacing: -0.02em; line-height: 1; }
      nav { display: flex; }
      nav button { margin-left: -1px; border-radius: 0; font-weight: 600; }
      nav button:first-child { margin-left: 0; border-radius: var(--round) 0 0 var(--round); }
      nav button:last-child { border-radius: 0 var(--round) var(--round) 0; }
      .switches { display: flex; gap: var(--space-2); margin-left: auto; }
      .about { flex: 1 0 100%; display: flex; gap: var(--space-3); align-items: center; min-height: 44px; }
      .about p { flex: 1; color: var(--soft); line-height: 1.3; text-wrap: pretty; }
      @media (max-width: 940px) { nav { order: 1; } .about { order: 2; } }
      @media (max-width: 640px) {
        header { padding: var(--space-1) var(--space-2) 0 var(--space-3); gap: 0 var(--space-2); }
        h1 { font-size: var(--type-lead); }
        svg { display: none; }
        .switches { gap: var(--space-1); }
        .about p { font-size: var(--type-small); }
        nav { flex: 1 0 100%; overflow-x: auto; }
        nav button { flex: 1 0 auto; min-width: 0; padding: 0 var(--space-half); font-size: var(--type-fine); }
      }
      /* a phone: in the thumb's reach */
      @media (max-width: 640px) and (min-height: 480px) {
        nav {
          position: fixed; inset: auto 0 0; z-index: 15; height: var(--foot); background: var(--card);
          border-top: 1px solid var(--edge);
        }
        nav button, nav button:is(:first-child, :last-child) { height: 100%; border: 0; border-radius: 0; }
        nav button:focus-visible { outline-offset: -3px; }
      }
      @media print {
        header { padding: 0 0 2mm; border: 0; }
        nav, .switches, jw-undo { display: none; }
        .about { min-height: 0; }
      }
    `,
  ];

  constructor() {
    super();
    this.station = '';
    this.description = '';
    this.file = '';
    this._turned = () => this.requestUpdate();
    this._moved = () => this._tellEnd();
    this._theme = kept();
  }

  connectedCallback() {
    super.connectedCallback();
    DARK.addEventListener('change', this._turned);
    window.addEventListener('scroll', this._moved, {passive: true});
    this._sizes = new ResizeObserver(this._moved);
    this._sizes.observe(this);
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    DARK.removeEventListener('change', this._turned);
    window.removeEventListener('scroll', this._moved);
    this._sizes?.disconnect();
  }

  /** What lies over the page beside the reading leaves the masthead in use: it is told where that ends. */
  _tellEnd() {
    const end = `${Math.max(0, Math.round(this.getBoundingClientRect().bottom))}px`;
    if (end === this._end) return;
    this._end = end;
    document.documentElement.style.setProperty('--masthead-end', end);
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
      <nav aria-label="Views">
        ${VIEWS.map(
          ({id, label}) =>
            html`<button data-view=${id} aria-current=${id === this.view ? 'page' : nothing}
              @click=${() => send(this, 'jw-view', {view: id})}>${label}</button>`,
        )}
      </nav>
      <div class="switches">
        <button id="station" aria-expanded=${this.open} title=${this.station || nothing}
          @click=${() => send(this, 'jw-sheet', {name: 'station'})}>Station</button>
        <jw-menu id="share" label="Share" rest="and save" .content=${() => this._share()}></jw-menu>
        <jw-menu id="more" label="More" .content=${() => this._more()}></jw-menu>
      </div>
      <div class="about">
        <p>${this.description}</p>
        <jw-undo ?undo=${this.undo} ?redo=${this.redo}></jw-undo>
      </div>
    </header>`;
  }

  _share() {
    const ways = this.ways();
    return html`${ways.length > 0 ? html`<h2>What this view shows</h2>${ways.map(wayButton)}` : nothing}
      <h2>All that is yours</h2>
      <button id="saving" class="quiet" @click=${() => send(this, 'jw-sheet', {name: 'saving'})}
        >Save or open my page…</button>
      ${
        this.file
          ? html`<h2>Without a network</h2>
            <a id="offline" class="quiet button" href=${this.file} download="jointwise.html">Save for offline use</a>`
          : nothing
      }`;
  }

  _more() {
    const packs = this.packs > 0 ? html` <b>${this.packs}</b><span class="unseen"> in use</span>` : nothing;
    const isReset = this.resets();
    return html`<button id="methods" class="quiet" @click=${() => send(this, 'jw-methods')}>Method</button>
      <button id="packs" class="quiet" aria-current=${this.view === PACKS.id ? 'page' : nothing}
        @click=${() => send(this, 'jw-view', {view: PACKS.id})}>Packs${packs}</button>
      ${
        isReset ? html`<button id="reset" class="quiet" @click=${() => send(this, 'jw-reset')}>Reset</button>` : nothing
      }
      <h2 id="units">Units</h2>
      <div class="row" role="group" aria-labelledby="units">
        ${Object.entries(UNITS).map(
          ([id, words]) =>
            html`<button id=${id} aria-pressed=${id === this.units} title=${words.title}
              @click=${() => send(this, 'jw-units', {units: id})}>${words.label}</button>`,
        )}
      </div>
      <h2>Colours</h2>
      <div class="row"><button id="theme" aria-pressed=${this._dark} @click=${this._turn}>Dark</button></div>`;
  }

  get _dark() {
    return this._theme ? this._theme === 'dark' : DARK.matches;
  }

  _turn = () => {
    this._theme = this._dark ? 'light' : 'dark';
    try {
      localStorage.setItem(KEPT, this._theme);
    } catch {
      const text = 'This browser keeps nothing for the page, so the choice of light or dark ends when it is closed.';
      send(this, 'jw-notice', {text});
    }
  };
}

customElements.define('jw-masthead', JwMasthead);
