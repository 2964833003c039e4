import {html} from 'lit';
import {element, of, state, value} from '../shared/elements/element.js';
import {inside} from '../shared/elements/inside.js';
import {destination} from '../shared/margins/keys.js';
import {packSign, packStyles} from '../shared/packs/mark.js';
import {base} from '../shared/styles/base.js';
import {power} from '../shared/text/format.js';
import {cellTemplate, emptyCell, readyForPaper} from './cell.js';
import {UNFOLDED, matrixStyles} from './styles.js';

/** @import {Matrix} from '../shared/answers.js' */

const spoken = (pack) => (pack ? `, from pack ${pack}` : '');
const WIDE_OR_PAPER = matchMedia(UNFOLDED.cssText);
const HEAD_PX = 46;
/** The heads stop above the last row, which would else have none of its cells in sight. */
const LAST_ROW_PX = 50;

/**
 * Margins of families against bands, every power level inside each cell.
 *
 * @fires jw-open - {family, column, power}: a cell, a family (no column) or a column (no family)
 */
class JwMatrix extends element({
  /** A matrix result, or its heads only while the first is awaited. */
  matrix: value(/** @type {Matrix} */ (of)),
  /** The power level printed, in W. */
  power: {type: Number},
  /** Margin or largest. */
  shows: {type: String},
  /** What is open beside the matrix. */
  opened: {
    ...value(/** @type {{family?: string | null, column?: string}} */ (of)),
    hasChanged: (one, other) => one.family !== other?.family || one.column !== other?.column,
  },
  /** Why the numbers are not those of the controls; empty while they are. */
  outdated: {type: String},
  _at: state(/** @type {[number, number]} */ (of)),
  _unfolded: state(/** @type {boolean} */ (of)),
}) {
  static styles = [base, ...matrixStyles, packStyles];

  constructor() {
    super();
    this.opened = {};
    this.outdated = '';
    /** @type {[number, number]} - row and column that the Tab key reaches */
    this._at = [0, 0];
    this._unfolded = WIDE_OR_PAPER.matches;
    this._turned = () => (this._unfolded = WIDE_OR_PAPER.matches);
    this._printed = () => this._unfoldForPaper();
    this._watch = new ResizeObserver(() => this._measure());
    this._scrolled = () => this._carry();
  }

  connectedCallback() {
    super.connectedCallback();
    this._watch.observe(this);
    this._turned();
    WIDE_OR_PAPER.addEventListener('change', this._turned);
    window.addEventListener('beforeprint', this._printed);
    window.addEventListener('afterprint', this._turned);
    window.addEventListener('scroll', this._scrolled, {passive: true});
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    this._watch.disconnect();
    WIDE_OR_PAPER.removeEventListener('change', this._turned);
    window.removeEventListener('beforeprint', this._printed);
    window.removeEventListener('afterprint', this._turned);
    window.removeEventListener('scroll', this._scrolled);
  }

  willUpdate(changed) {
    if (!changed.has('matrix')) return;
    const [row, column] = this._at;
    this._at = [Math.min(row, this.matrix.families.length - 1), Math.min(column, this.matrix.columns.length - 1)];
  }

  firstUpdated() {
    readyForPaper();
  }

  updated(changed) {
    // a drag changes numbers only, and reading the layout in the midst of it is dear
    if (changed.has('matrix') && changed.get('matrix')?.columns.length !== this.matrix.columns.length) this._measure();
  }

  render() {
    const {families, columns, powers_w: powers} = this.matrix;
    const chosen = powers.indexOf(this.power) / Math.max(powers.length - 1, 1);
    return html`<p id="outdated" role="status">${this.outdated}</p>
    <div class="frame" style="--columns:${columns.length};--levels:${powers.length};--chosen:${chosen * 100}%">
      <table role="grid" aria-describedby="outdated" ?data-outdated=${this.outdated !== ''} data-shows=${this.shows}
        aria-label=${this._caption} @keydown=${this._moved} @click=${this._clicked} @focusin=${this._focused}>
        <thead>
          <tr>
            <th><span class="unseen">Interface family</span></th>
            ${columns.map((column, c) => this._columnHead(column, c))}
          </tr>
        </thead>
        <tbody>
          ${families.map(
            (family, f) => html`<tr>${this._familyHead(family, f)}${columns.map((_, c) => this._cell(f, c))}</tr>`,
          )}
        </tbody>
      </table>
    </div>`;
  }

  get _caption() {
    const shown =
      this.shows === 'margin' ? `margin in dB at ${power(this.power)}` : 'largest power that still holds, in W';
    return `Interface families against bands: ${shown}`;
  }

  _columnHead(column, c) {
    const [size, ...unit] = column.name.split(' ');
    return html`<th scope="col" data-band=${column.id}>
      <button data-row="-1" data-column=${c} tabindex=${this._tab(-1, c)}
        aria-label="${column.name}, all limits${spoken(column.pack)}">
        <span>${size} <small>${unit.join(' ')}${packSign(column.pack)}</small></span>
      </button>
    </th>`;
  }

  _familyHead(family, f) {
    return html`<th scope="row" data-family=${family.id}>
      <button data-row=${f} data-column="-1" tabindex=${this._tab(f, -1)}
        aria-label="${family.name}, data sheet${spoken(family.pack)}">
        <span>${family.name}${packSign(family.pack)}</span>
        <span class="powers" aria-hidden="true">
          <span class="largest">largest, W</span>
          ${this.matrix.powers_w.map(
            (watts) => html`<span ?data-chosen=${watts === this.power}>${power(watts)}</span>`,
          )}
        </span>
      </button>
    </th>`;
  }

  _cell(f, c) {
    const {matrix, shows, opened} = this;
    const p = matrix.powers_w.indexOf(this.power);
    if (matrix.margin_db === undefined || p === -1) return emptyCell();
    const open = opened.family === matrix.families[f].id && opened.column === matrix.columns[c].id;
    return cellTemplate({matrix, f, c, p, shows, open, unfolded: this._unfolded, focusable: this._tab(f, c) === 0});
  }

  _tab(row, column) {
    return row === this._at[0] && column === this._at[1] ? 0 : -1;
  }

  /** Paper is laid out as soon as the event is over, so the lines have to be there. */
  _unfoldForPaper() {
    this._unfolded = true;
    if (this.isUpdatePending) this.performUpdate();
  }

  /** Without sideways scrolling the headers stick to the window instead of the frame. */
  _measure() {
    const least = parseFloat(getComputedStyle(inside(this.renderRoot, 'table')).minWidth);
    this.toggleAttribute('fits', least <= this.clientWidth);
    this._carry();
  }

  /** A frame that scrolls sideways holds on to its heads, so they are carried along with the window. */
  _carry() {
    const frame = inside(this.renderRoot, '.frame');
    const {top, height} = frame.getBoundingClientRect();
    const most = height - HEAD_PX - LAST_ROW_PX;
    frame.style.setProperty('--lift', `${this.hasAttribute('fits') ? 0 : Math.max(0, Math.min(-top, most))}px`);
  }

  _moved(event) {
    const {families, columns} = this.matrix;
    const to = destination(event, this._at, families.length, columns.length);
    if (to === undefined) return;
    event.preventDefault();
    this._button(to)?.focus();
  }

  /**
   * The button in a place; a cell whose number is still awaited has none.
   *
   * @param {number[]} place
   */
  _button([row, column]) {
    const button = this.renderRoot.querySelector(`button[data-row="${row}"][data-column="${column}"]`);
    return /** @type {?HTMLElement} */ (button);
  }

  _focused(event) {
    const {row, column} = event.target.dataset;
    if (row !== undefined) this._at = [Number(row), Number(column)];
  }

  _clicked(event) {
    const button = event.target.closest('button');
    if (!button) return;
    const [row, column] = [Number(button.dataset.row), Number(button.dataset.column)];
    const rung = event.target.closest('.rung');
    const detail = {
      family: this.matrix.families[row],
      column: this.matrix.columns[column],
      power: rung ? Number(rung.dataset.power) : this.power,
    };
    this.dispatchEvent(new CustomEvent('jw-open', {detail, bubbles: true, composed: true}));
  }
}

customElements.define('jw-matrix', JwMatrix);
