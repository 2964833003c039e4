import {css, html} from 'lit';
import {element, of, state, value} from '../elements/element.js';
import {inside} from '../elements/inside.js';
import {base} from '../styles/base.js';
import {PAGE_COLOURS} from './figure.js';

const DARK = matchMedia('(prefers-color-scheme: dark)');
/** As wide as a chart may be on an upright A4 or Letter sheet, CSS px. */
const PAPER_WIDTH = 660;

/**
 * @import {Colours, Figure} from './figure.js'
 *
 * @typedef {object} ChartLibrary - what the page uses of it
 * @property {(place: Element, data: object[], layout: object, config: object) => Promise<any>} react - draws
 * @property {(place: ?Element) => void} purge
 * @property {{resize: (place: Element) => void}} Plots
 *
 * @typedef {() => Promise<ChartLibrary>} LoadCharts
 */

/** Draws a figure in the page's colours, and again when they change; on paper in the light ones. */
class JwChart extends element({
  figure: value(/** @type {(colours: Colours) => Figure} */ (of)),
  /** What it shows, for those who cannot see it. */
  label: {type: String},
  load: value(/** @type {LoadCharts} */ (of)),
  _error: state(/** @type {string} */ (of)),
}) {
  static styles = [
    base,
    css`
      figure { height: var(--chart, 260px); position: relative; overflow: hidden; }
      .swatch { display: none; }
      .ink { color: var(--ink); } .soft { color: var(--soft); } .line { color: var(--line); }
      .band { color: light-dark(#1f5690, #86adcf); } .other { color: light-dark(#7a4a00, #e0b46c); }
      .main-svg { position: absolute; top: 0; left: 0; pointer-events: none; }
      .main-svg .draglayer { pointer-events: all; }
      /* the library gives titles and ticks sizes of their own */
      @media screen { .main-svg text { font-size: var(--type-fine) !important; } }
      @media print { :host { break-inside: avoid; } }
    `,
  ];

  constructor() {
    super();
    this._redraw = () => this._draw();
    this._redrawLight = () =>
      this._draw(PAGE_COLOURS, {width: Math.min(this._place?.clientWidth || PAPER_WIDTH, PAPER_WIDTH)});
    // a width once given stays until the chart is told to look at its place again
    this._redrawWide = () =>
      this._draw().then(() => this._place?.clientWidth && this._library?.Plots.resize(this._place));
    this._theme = new MutationObserver(this._redraw);
    /** Comes when the library has ended all that it draws. */
    this._drawn = Promise.resolve();
  }

  connectedCallback() {
    super.connectedCallback();
    DARK.addEventListener('change', this._redraw);
    window.addEventListener('beforeprint', this._redrawLight);
    window.addEventListener('afterprint', this._redrawWide);
    this._theme.observe(document.documentElement, {attributeFilter: ['data-theme']});
    if (this.hasUpdated) this._draw();
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    DARK.removeEventListener('change', this._redraw);
    window.removeEventListener('beforeprint', this._redrawLight);
    window.removeEventListener('afterprint', this._redrawWide);
    this._theme.disconnect();
    const {_library: library, _place: place} = this;
    // what is taken away while the library draws it throws
    this._drawn.then(() => this.isConnected || library?.purge(place));
  }

  render() {
    if (this._error) return html`<p class="error">${this._error}</p>`;
    return html`${Object.keys(PAGE_COLOURS).map((name) => html`<i class="swatch ${name}"></i>`)}
      <figure role="img" aria-label=${this.label}></figure>`;
  }

  updated(changed) {
    if (changed.has('figure')) this._draw();
  }

  get _place() {
    return this.renderRoot.querySelector('figure');
  }

  get _colours() {
    const names = Object.keys(PAGE_COLOURS);
    const shown = names.map((name) => [name, getComputedStyle(inside(this.renderRoot, `.${name}`)).color]);
    return /** @type {Colours} */ (Object.fromEntries(shown));
  }

  async _draw(colours, size = {}) {
    try {
      // no pause once it is there: paper does not wait
      if (!this._library) this._library = await this.load();
    } catch (error) {
      this._error = /** @type {Error} */ (error).message;
      return;
    }
    if (!this.isConnected || !this._place) return;
    const {data, layout, config} = this.figure(colours ?? this._colours);
    const drawing = this._library.react(this._place, data, {...layout, ...size}, config);
    this._drawn = Promise.allSettled([this._drawn, drawing]).then(() => {});
    await drawing;
  }
}

customElements.define('jw-chart', JwChart);
