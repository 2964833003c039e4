import {css, html, unsafeCSS} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {STEP_RULES, stepOf} from '../../shared/margins/scale.js';
import {packMark, packStyles} from '../../shared/packs/mark.js';
import {base} from '../../shared/styles/base.js';
import {decibels} from '../../shared/text/format.js';
import {lossWords} from '../../shared/text/loss.js';
import {figureIn, lengthText, measureText, valueText} from '../../shared/text/measures.js';
import {limitedBy} from '../limits.js';
import {marginWords, numbered, swrWords} from '../reading.js';
import {LIKELY, WORST, higherOf, wattWords} from '../sides.js';

/** @import {LinePart, LineResult} from '../result.js' */

const number = (figure, unit) => (figure === null ? '–' : valueText(figure, unit, 3));
const againstMost = (figure, most, unit) =>
  figure === null || most === null
    ? number(figure, unit)
    : `${figureIn(figure, unit, 3)} of ${measureText(most, unit, 3)}`;

/** @type {[name: string, read: (part: LinePart) => unknown][]} */
const COLUMNS = [
  ['From', (part) => lengthText(part.distance_m, 4)],
  ['Loss', (part) => lossWords(part.loss_db)],
  ['Heat', (part) => number(part.lost_w, 'W')],
  ['SWR', (part) => swrWords(part.vswr)],
  ['Peak voltage', (part) => againstMost(part.peak_voltage_v, part.allowed_voltage_v, 'V')],
  ['Peak current', (part) => number(part.peak_current_a, 'A')],
  ['Return loss', (part) => number(part.return_loss_db, 'dB')],
  ['Hottest', (part) => againstMost(part.temperature_c, part.allowed_temperature_c, '°C')],
];

/** Every part with its numbers, and the whole line with what is likely and what comes at the worst. */
class JwLineNumbers extends element({
  result: value(/** @type {LineResult} */ (of)),
}) {
  static styles = [
    base,
    packStyles,
    unsafeCSS(STEP_RULES),
    css`
      .scroll { overflow-x: auto; }
      .plain { min-width: 900px; }
      tfoot :is(th, td) { font-weight: 650; }
      @media print { .plain { min-width: 0; } }
    `,
  ];

  render() {
    return html`<div class="scroll" tabindex="0" role="group" aria-label="All numbers"><table class="plain">
      <thead>
        <tr>
          <th scope="col">Part</th>${COLUMNS.map(([name]) => html`<th scope="col" class="number">${name}</th>`)}
          <th scope="col" class="number">Margin</th><th scope="col">Limited by</th>
        </tr>
      </thead>
      <tbody>
        ${this.result.parts.map((part, at) => this._row(part, at))}
      </tbody>
      <tfoot>${this._whole()}</tfoot>
    </table></div>`;
  }

  _whole() {
    const {result} = this;
    const row = (name, loss, swr, delivered, margin) => html`<tr>
      <th scope="row">Whole line, ${name.toLowerCase()}</th>
      <td></td><td class="number">${lossWords(loss)}</td><td></td><td class="number">${swrWords(swr)}</td>
      <td colspan="4">${result.power_w > 0 ? `${wattWords(delivered)} at the antenna` : ''}</td>
      <td class="number">${margin === null ? '–' : `${decibels(margin)} dB`}</td><td></td>
    </tr>`;
    const swr = higherOf(result.input.vswr, result.input_cautious.vswr);
    return html`${row(LIKELY, result.loss_db, result.input.vswr, result.delivered_w, result.margin_high_db)}
      ${row(WORST, result.loss_high_db, swr, result.delivered_low_w, result.margin_db)}`;
  }

  _row(part, at) {
    const margin = part.refused_by || part.margin_db === null ? 'none' : stepOf(part.margin_db);
    return html`<tr data-part=${at}>
      <th scope="row">${numbered(part)}${packMark(part.pack)}</th>
      ${COLUMNS.map(([, read]) => html`<td class="number">${read(part)}</td>`)}
      <td class="number"><span class="chip" data-step=${margin}>${marginWords(part)}</span></td>
      <td>${part.binding ? limitedBy(part.binding) : ''}${at === this.result.weakest ? ', weakest' : ''}</td>
    </tr>`;
  }
}

customElements.define('jw-line-numbers', JwLineNumbers);
