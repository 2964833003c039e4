import {css, html, nothing} from 'lit';
import '../shared/charts/jw-chart.js';
import {element, of, value} from '../shared/elements/element.js';
import {base} from '../shared/styles/base.js';
import {panelStyles} from '../shared/styles/panels.js';
import {MINUS, frequency, quantity} from '../shared/text/format.js';
import {partLossFigure, partReturnFigure, partSmith} from './figures.js';

/**
 * @import {LoadCharts} from '../shared/charts/jw-chart.js'
 * @import {PartCheck} from './result.js'
 */

const decibels = (db) => (db === null ? '–' : `${db.toFixed(2).replace('-', MINUS)} dB`);

/** A limit that is missed by less than calibration leaves is kept, as far as can be told. */
const withinWords = (margin) => (margin < 0 ? '✓ within the limit, as far as calibration tells' : '✓ within the limit');

/** A two-port sweep of a jumper, adapter or part against its limits. */
class JwSweepPart extends element({
  part: value(/** @type {PartCheck} */ (of)),
  /** Brings the chart library. */
  load: value(/** @type {LoadCharts} */ (of)),
}) {
  static styles = [
    base,
    panelStyles,
    css`
      :host {
        display: grid; grid-template-columns: repeat(auto-fit, minmax(min(420px, 100%), 1fr)); gap: var(--space-3);
      }
      .wide { grid-column: 1 / -1; }
      @media print { :host { display: block; } .panel { margin-bottom: 2mm; } }
    `,
  ];

  willUpdate(changed) {
    if (!changed.has('part')) return;
    const {part} = this;
    this._loss = (colours) => partLossFigure(part, colours);
    this._returned = (colours) => partReturnFigure(part, colours);
    this._smith = (colours) => partSmith(part, colours);
  }

  render() {
    const {part} = this;
    const lossLabel = 'Loss against frequency: measured, expected, and what its parts may lose';
    const returnedLabel = 'Return loss into both ports against frequency, and the least its parts may have';
    return html`<section class="panel wide" id="part"><h2>Against the limits of its parts</h2>
        <table class="plain"><tbody>
          ${this._row('Loss', part.loss_passed, part.worst_loss_margin_db, part.worst_loss_at_hz)}
          ${this._row('Match', part.match_passed, part.worst_match_margin_db, part.worst_match_at_hz)}
          <tr>
            <th scope="row">Resistance in series</th>
            <td colspan="2">
              ${quantity(part.resistance_ohm, 'Ω', 3)} ± ${quantity(part.resistance_uncertainty_ohm, 'Ω', 2)},
              from the steady part of the excess loss
            </td>
          </tr>
          <tr>
            <th scope="row">Excess like skin effect</th>
            <td colspan="2">${decibels(part.skin_excess_db_at_top)} at the upper edge</td>
          </tr>
          ${part.trend ? trendRow(part.trend) : nothing}
        </tbody></table>
      </section>
      <section class="panel" id="loss"><h2>Loss</h2>
        <jw-chart .figure=${this._loss} .load=${this.load} label=${lossLabel}></jw-chart></section>
      <section class="panel" id="returned"><h2>Return loss</h2>
        <jw-chart .figure=${this._returned} .load=${this.load} label=${returnedLabel}></jw-chart></section>
      <section class="panel" id="smith"><h2>Smith chart into port 1</h2>
        <jw-chart style="--chart:340px" .figure=${this._smith} .load=${this.load}
          label="Reflection into port 1 on the Smith chart"></jw-chart></section>`;
  }

  /** Over a limit by less than a usual calibration leaves is no verdict. */
  get _overWords() {
    return this.part.finding === 'cannot tell'
      ? '? over the limit, by less than calibration leaves'
      : '! over the limit';
  }

  _row(what, passed, margin, at) {
    return html`<tr>
      <th scope="row">${what}</th><td>${passed ? withinWords(margin) : this._overWords}</td>
      <td class="number">margin ${decibels(margin)} at ${at === null ? '–' : frequency(at)}</td>
    </tr>`;
  }
}

const trendRow = ({sentence, largest_loss_change_db, at_hz}) =>
  html`<tr>
    <th scope="row">Since the earlier sweep</th>
    <td colspan="2">
      ${sentence} Largest change of loss ${decibels(largest_loss_change_db)} at ${frequency(at_hz)}.
    </td>
  </tr>`;

customElements.define('jw-sweep-part', JwSweepPart);
