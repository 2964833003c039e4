import {css, html, unsafeCSS} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {LIMIT_NAMES} from '../../shared/margins/limits.js';
import {marginWord, readCell, signedWords, stepNameOf} from '../../shared/margins/reading.js';
import {STEP_RULES} from '../../shared/margins/scale.js';
import {base} from '../../shared/styles/base.js';
import {digits, frequency, largestPower} from '../../shared/text/format.js';

/** @import {Matrix} from '../../shared/answers.js' */

/** All limits of one band over the families. */
class JwBandLimits extends element({
  /** A matrix result. */
  matrix: value(/** @type {Matrix} */ (of)),
  /** Index of the band in it. */
  column: {type: Number},
  /** The power level of the margin, in W. */
  power: {type: Number},
}) {
  static styles = [
    base,
    unsafeCSS(STEP_RULES),
    css`
      .scroll { overflow-x: auto; margin-top: var(--space-3); }
      .plain { min-width: 500px; }
      td.number { padding-left: var(--space-2); }
      .plain thead th { white-space: normal; vertical-align: bottom; }
      .margin { font-weight: 650; padding: 5px 6px !important; }
      [data-step='refused'] { background: var(--refused); color: var(--refused-ink); }
    `,
  ];

  render() {
    const {low_hz: low, high_hz: high} = this.matrix.columns[this.column];
    return html`<p>${low === high ? frequency(low) : `${frequency(low)} to ${frequency(high)}`}. Cautious to generous
    figures; the power limits are PEP.</p>
      <div class="scroll" tabindex="0" role="region" aria-label="Limits by connector">
        <table class="plain">
          <thead>
            <tr>
              <th>Connector</th><th class="number">Margin, dB</th>
              ${this.matrix.limits.map((id) => html`<th class="number">${LIMIT_NAMES[id]}, W</th>`)}
              <th class="number">Return loss, dB</th><th class="number">Largest safe, W</th><th>To know</th>
            </tr>
          </thead>
          <tbody>
            ${this.matrix.families.map((_, f) => this._row(f))}
          </tbody>
        </table>
      </div>`;
  }

  _row(f) {
    const {matrix, column: c} = this;
    const cell = readCell(matrix, f, c, matrix.powers_w.indexOf(this.power));
    return html`<tr data-family=${cell.family.id}>
      <th scope="row">${cell.family.name}</th>
      <td class="number margin" data-step=${stepNameOf(cell)}>${marginWord(cell)}</td>
      ${matrix.limits.map((id) => this._range(matrix[`${id}_allowed_w`][f][c], (watts) => digits(watts, 3)))}
      ${this._range(matrix.return_loss_db[f][c], (db) => digits(db, 3))}
      <td class="number">${cell.largest === null ? 'none' : largestPower(cell.largest)}</td>
      <td>${signedWords(cell).map(([, words]) => html`<div>${words}</div>`)}</td>
    </tr>`;
  }

  /**
   * @param {(?number)[]} ends - the cautious and the generous one
   * @param {(value: ?number) => string} words
   */
  _range([low, high], words) {
    if (low === null) return html`<td class="number">–</td>`;
    return html`<td class="number">${low === high ? words(low) : html`${words(low)}<br>to ${words(high)}`}</td>`;
  }
}

customElements.define('jw-band-limits', JwBandLimits);
