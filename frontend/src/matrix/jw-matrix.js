import {html} from 'lit';
import {element, of, state, value} from '../shared/elements/element.js';
import {inside} from '../shared/elements/inside.js';
import {send} from '../shared/elements/send.js';
import {destination} from '../shared/margins/keys.js';
import {printed, readCell, spokenCell} from '../shared/margins/reading.js';
import {packSign, packStyles} from '../shared/packs/mark.js';
import {base} from '../shared/styles/base.js';
import {power} from '../shared/text/format.js';
import {writeCell, writeLevels, writeMarked, writeNothing} from './cell.js';
import {matrixStyles} from './styles.js';
import {onSwipe} from './swipe.js';

/** @import {Matrix} from '../shared/answers.js' */

const spoken = (pack) => (pack ? `, from pack ${pack}` : '');
const PAPER = matchMedia('print');
const HEAD_PX = 46;
/** The heads stop above the last row, which would else have none of its cells in sight. */
const LAST_ROW_PX = 50;
/** Cells are named for a screen reader once their numbers rest: in the midst of a drag nobody could listen. */
const REST_MS = 150;

/**
 * Margins of families against bands at one power level, number and colour; of one band alone a list.
 *
 * @fires jw-open - {family, column, power}: a cell, a family (no column) or a column (no family)
 * @fires jw-step - {step}: 1 for the next band of a list, -1 for the one before
 */
class JwMatrix extends element({
  /** A matrix result, or its heads only while the first is awaited. */
  matrix: value(/** @type {Matrix} */ (of)),
  /** The power level printed, in W. */
  power: {type: Number},
  /** Margin or largest. */
  shows: {type: String},
  /** The column that is shown alone; empty for all of them. */
  band: {type: String, reflect: true},
  /** Whether every cell has its marks, not those of the chosen row alone. */
  marked: {type: Boolean},
  /** What is open beside the matrix. */
  opened: {
    ...value(/** @type {{family?: string | null, column?: string}} */ (of)),
    hasChanged: (one, other) => one.family !== other?.family || one.column !== other?.column,
  },
  /** Why the numbers are not those of the controls; empty while they are. */
  outdated: {type: String},
  _at: state(/** @type {[number, number]} */ (of)),
  _isOnPaper: state(/** @type {boolean} */ (of)),
}) {
  static styles = [base, ...matrixStyles, packStyles];

  constructor() {
    super();
    this.opened = {};
    this.band = '';
    this.outdated = '';
    /** @type {[number, number]} - row and column that the Tab key reaches */
    this._at = [0, 0];
    this._isOnPaper = PAPER.matches;
    this._turned = () => (this._isOnPaper = PAPER.matches);
    this._printed = () => this._layOnPaper();
    this._watch = new ResizeObserver(() => this._measure());
    this._scrolled = () => this._carry();
  }

  connectedCallback() {
    super.connectedCallback();
    this._watch.observe(this);
    this._turned();
    PAPER.addEventListener('change', this._turned);
    window.addEventListener('beforeprint', this._printed);
    window.addEventListener('afterprint', this._turned);
    window.addEventListener('scroll', this._scrolled, {passive: true});
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    clearTimeout(this._rest);
    this._watch.disconnect();
    PAPER.removeEventListener('change', this._turned);
    window.removeEventListener('beforeprint', this._printed);
    window.removeEventListener('afterprint', this._turned);
    window.removeEventListener('scroll', this._scrolled);
  }

  willUpdate() {
    const [row, column] = this._at;
    const [rows, columns] = [this.matrix.families.length, this._columns.length];
    if (row >= rows || column >= columns) this._at = [Math.min(row, rows - 1), Math.min(column, columns - 1)];
  }

  firstUpdated() {
    onSwipe(inside(this.renderRoot, '.frame'), (step) => this.band && send(this, 'jw-step', {step}));
  }

  updated(changed) {
    this._write();
    clearTimeout(this._rest);
    this._rest = setTimeout(() => this._name(), REST_MS);
    // a drag changes numbers only, and reading the layout in the midst of it is dear
    const isOther = changed.get('matrix')?.columns.length !== this.matrix.columns.length;
    if (changed.has('band') || (changed.has('matrix') && isOther)) this._measure();
  }

  render() {
    const {families} = this.matrix;
    const columns = this._columns;
    return html`<p id="outdated" role="status">${this.outdated}</p>
    <div class="frame" style="--columns:${columns.length}">
      <table role="grid" aria-describedby="outdated" ?data-outdated=${this.outdated !== ''} data-power=${this.power}
        aria-label=${this._caption} @keydown=${this._pressed} @click=${this._clicked} @focusin=${this._focused}>
        <thead>
          <tr>
            <th><span class="unseen">Connector</span></th>
            ${columns.map((column, c) => this._columnHead(column, c))}
          </tr>
        </thead>
        <tbody>
          ${families.map(
            (family, f) =>
              html`<tr>${this._familyHead(family, f)}${columns.map(() => html`<td tabindex="-1"></td>`)}</tr>`,
          )}
        </tbody>
      </table>
    </div>`;
  }

  get _caption() {
    const shown = this.shows === 'margin' ? `margin in dB at ${power(this.power)}` : 'largest safe power, in W';
    return `Connectors against bands: ${shown}`;
  }

  /** Those that are shown. */
  get _columns() {
    const {columns} = this.matrix;
    const alone = columns.filter(({id}) => id === this.band);
    return alone.length > 0 ? alone : columns;
  }

  _columnHead(column, c) {
    const [size, ...unit] = column.name.split(' ');
    return html`<th scope="col" data-band=${column.id}>
      <button tabindex=${this._tab(-1, c)} aria-label="${column.name}, all limits${spoken(column.pack)}">
        <span>${size} <small>${unit.join(' ')}${packSign(column.pack)}</small></span>
      </button>
    </th>`;
  }

  _familyHead(family, f) {
    return html`<th scope="row" data-family=${family.id}>
      <button tabindex=${this._tab(f, -1)} aria-label="${family.name}, data sheet${spoken(family.pack)}">
        <span>${family.name}${packSign(family.pack)}</span>
        <span class="powers" aria-hidden="true">
          ${this.matrix.powers_w.map(
            (watts) => html`<span ?data-chosen=${watts === this.power}>${power(watts)}</span>`,
          )}
        </span>
      </button>
    </th>`;
  }

  _tab(row, column) {
    return row === this._at[0] && column === this._at[1] ? 0 : -1;
  }

  /** @returns {HTMLTableElement} */
  get _table() {
    return /** @type {HTMLTableElement} */ (inside(this.renderRoot, 'table'));
  }

  /** Calls with every cell: its element, and where in the matrix it is. */
  _eachCell(call) {
    const {columns, families} = this.matrix;
    const shown = this._columns.map((column) => columns.indexOf(column));
    const rows = this._table.tBodies[0].children;
    for (let f = 0; f < families.length; f++) {
      let td = rows[f].firstElementChild;
      for (const c of shown) {
        td = /** @type {Element} */ (td).nextElementSibling;
        call(td, f, c);
      }
    }
  }

  _write() {
    const {matrix, opened, power: watts, shows} = this;
    const {columns, families, powers_w: powers} = matrix;
    const p = powers.indexOf(watts);
    const isAwaited = matrix.margin_db === undefined || p === -1;
    const levels = (f, c) => powers.map((_, level) => readCell(matrix, f, c, level));
    this._eachCell((td, f, c) => {
      const [family, band] = [families[f].id, columns[c].id];
      if (td.dataset.family !== family || td.dataset.band !== band) Object.assign(td.dataset, {family, band});
      const isRow = family === opened.family;
      td.toggleAttribute('data-open', isRow && band === opened.column);
      if (isAwaited) writeNothing(td);
      else if (this._isOnPaper) writeLevels(td, levels(f, c), p, this.marked);
      else {
        const cell = readCell(matrix, f, c, p);
        if (isRow || this.marked) writeMarked(td, levels(f, c), p, printed(cell, shows));
        else writeCell(td, cell, printed(cell, shows));
      }
    });
    for (const td of this._table.querySelectorAll('td[tabindex="0"]')) td.setAttribute('tabindex', '-1');
    const at = this._place(this._at);
    if (at instanceof HTMLTableCellElement) at.tabIndex = 0;
  }

  _name() {
    const {matrix} = this;
    const p = matrix.powers_w.indexOf(this.power);
    if (matrix.margin_db === undefined || p === -1) return;
    this._eachCell((td, f, c) => td.setAttribute('aria-label', spokenCell(readCell(matrix, f, c, p))));
  }

  /** Paper is laid out as soon as the event is over, so the lines have to be there. */
  _layOnPaper() {
    this._isOnPaper = true;
    if (this.isUpdatePending) this.performUpdate();
  }

  /** Without sideways scrolling the headers stick to the window instead of the frame. */
  _measure() {
    const least = parseFloat(getComputedStyle(this._table).minWidth) || 0;
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

  _pressed(event) {
    if (event.key === 'Enter' || event.key === ' ') {
      if (!event.target.matches('td')) return;
      event.preventDefault();
      return this._open(event.target);
    }
    const to = destination(event, this._at, this.matrix.families.length, this._columns.length);
    if (to === undefined) return;
    event.preventDefault();
    this._place(to)?.focus();
  }

  /**
   * What takes the focus in a place: a cell, or the button of a head.
   *
   * @param {number[]} place
   */
  _place([row, column]) {
    const cell = this._table.rows[row + 1]?.cells[column + 1];
    return cell?.querySelector('button') ?? cell;
  }

  /**
   * Row and column of an element in the table; -1 for the heads.
   *
   * @param {Element} one
   * @returns {[number, number]}
   */
  _placeOf(one) {
    const cell = /** @type {HTMLTableCellElement} */ (one.closest('td, th'));
    return [/** @type {HTMLTableRowElement} */ (cell.parentElement).rowIndex - 1, cell.cellIndex - 1];
  }

  _focused({target}) {
    const [row, column] = this._placeOf(target);
    if (row !== this._at[0] || column !== this._at[1]) this._at = [row, column];
  }

  _clicked({target}) {
    const chosen = target.closest('td, button');
    if (chosen) this._open(chosen);
  }

  /** @param {Element} chosen */
  _open(chosen) {
    const [row, column] = this._placeOf(chosen);
    const detail = {family: this.matrix.families[row], column: this._columns[column], power: this.power};
    send(this, 'jw-open', detail);
  }
}

customElements.define('jw-matrix', JwMatrix);
