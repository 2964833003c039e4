import {css, html, nothing, unsafeCSS} from 'lit';
import {element, of, value} from '../shared/elements/element.js';
import {marginWord, readCell, signedWords, stepNameOf} from '../shared/margins/reading.js';
import {MARK_RULES} from '../shared/margins/marks.js';
import {STEP_RULES} from '../shared/margins/scale.js';
import {base} from '../shared/styles/base.js';
import {power} from '../shared/text/format.js';

/** @import {Matrix} from '../shared/answers.js' */

/** The power ladder of the chosen cell, and the marks that the matrix shows, each with its words. */
class JwMarks extends element({
  matrix: value(/** @type {Matrix} */ (of)),
  /** The power level shown, in W. */
  power: {type: Number},
  /** Id of the chosen row; empty where none is. */
  family: {type: String},
  /** Id of the chosen column; empty where none is. */
  column: {type: String},
  /** Whether all rows show their marks. */
  all: {type: Boolean, reflect: true},
}) {
  static styles = [
    base,
    unsafeCSS(STEP_RULES),
    unsafeCSS(MARK_RULES),
    css`
      :host { font-size: var(--type-small); }
      h3 { margin-bottom: var(--space-1); }
      ol {
        display: flex; flex-wrap: wrap; gap: var(--space-half); margin: 0 0 var(--space-3); padding: 0;
        list-style: none;
      }
      li { min-width: 74px; padding: var(--space-1) var(--space-2); border-radius: 5px; text-align: center; }
      li b { display: block; font-size: var(--type-text); }
      li[data-chosen] { outline: 2px solid var(--accent); outline-offset: -2px; }
      [data-step='refused'] { background: var(--refused); color: var(--refused-ink); }
      dl {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(260px, 1fr)); gap: var(--space-1) var(--space-4);
      }
      dl div { display: grid; grid-template-columns: 54px 1fr; gap: var(--space-2); align-items: center; }
      dt { text-align: center; font-weight: 600; }
      dd { line-height: 1.3; }
      .marks { display: block; }
      .range { display: block; height: 5px; }
      @media print {
        :host { font-size: var(--type-fine); }
        dl { grid-template-columns: repeat(4, 1fr); gap: 0.5mm 4mm; }
        .onscreen, :host(:not([all])) :is(.marked, dl) { display: none; }
      }
    `,
  ];

  constructor() {
    super();
    this.family = '';
    this.column = '';
  }

  render() {
    const {families, columns, powers_w: powers} = this.matrix;
    const p = powers.indexOf(this.power);
    if (this.matrix.margin_db === undefined || p === -1) return nothing;
    const rows = families.flatMap(({id}, f) => (this.all || id === this.family ? [f] : []));
    const cells = rows.flatMap((f) => columns.map((_, c) => readCell(this.matrix, f, c, p)));
    const marks = new Map(cells.flatMap(signedWords));
    const isPacked = [...families, ...columns].some(({pack}) => pack);
    return html`${this._ladder()}<h3 class="marked">Marks</h3><dl>
      ${[...marks].map(([sign, words]) => this._row(sign, words))}
      ${this._row(
        html`<span class="marks"><span class="range"><i></i></span></span>`,
        'from the most cautious to the most generous figures; the upright line is 0 dB, the cautious end is printed',
        'onscreen',
      )}
      ${this._row(
        html`<span class="marks"><span class="ladder">${['ample', 'fine', 'tight', 'at', 'over'].map(
          (step) => html`<i data-step=${step}></i>`,
        )}</span></span>`,
        `the ladder: ${powers.map(power).join(', ')}, each in the colour of its margin; the one shown is underlined`,
        'onscreen',
      )}
      ${isPacked ? this._row('◆', 'from a pack of yours or of the server') : nothing}
    </dl>`;
  }

  _ladder() {
    const {families, columns, powers_w: powers} = this.matrix;
    const f = families.findIndex(({id}) => id === this.family);
    const c = columns.findIndex(({id}) => id === this.column);
    if (f === -1 || c === -1) return nothing;
    const levels = powers.map((_, level) => readCell(this.matrix, f, c, level));
    return html`<h3>${families[f].name} on ${columns[c].name}, power by power</h3>
      <ol>${levels.map(
        (cell) => html`<li ?data-chosen=${cell.power === this.power} data-step=${stepNameOf(cell)}>${power(cell.power)}
          <b>${marginWord(cell)}</b></li>`,
      )}</ol>`;
  }

  _row(mark, words, where = '') {
    return html`<div class=${where}><dt>${mark}</dt><dd>${words}</dd></div>`;
  }
}

customElements.define('jw-marks', JwMarks);
