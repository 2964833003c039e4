import {css, html, unsafeCSS} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {STEP_RULES, stepOf} from '../../shared/margins/scale.js';
import {packMark, packStyles} from '../../shared/packs/mark.js';
import {base} from '../../shared/styles/base.js';
import {digits, quantity} from '../../shared/text/format.js';
import {lossWords} from '../../shared/text/loss.js';
import {limitedBy} from '../limits.js';
import {marginWords} from '../reading.js';

/** @import {LinePart, LineResult} from '../result.js' */

const number = (figure, unit) => (figure === null ? '–' : quantity(figure, unit, 3));
const againstMost = (figure, most, unit) =>
  figure === null || most === null ? number(figure, unit) : `${digits(figure, 3)} of ${digits(most, 3)} ${unit}`;

/** @type {[name: string, read: (part: LinePart) => unknown][]} */
const COLUMNS = [
  ['From', (part) => `${digits(part.distance_m, 4)} m`],
  ['Loss', (part) => lossWords(part.loss_db)],
  ['Heat', (part) => number(part.lost_w, 'W')],
  ['VSWR', (part) => (part.vswr === null ? '–' : digits(part.vswr, 3))],
  ['Peak voltage', (part) => againstMost(part.peak_voltage_v, part.allowed_voltage_v, 'V')],
  ['Peak current', (part) => number(part.peak_current_a, 'A')],
  ['Return loss', (part) => number(part.return_loss_db, 'dB')],
  ['Hottest', (part) => againstMost(part.temperature_c, part.allowed_temperature_c, '°C')],
];

/** Every part with its numbers. */
class JwLineNumbers extends element({
  result: value(/** @type {LineResult} */ (of)),
}) {
  static styles = [
    base,
    packStyles,
    unsafeCSS(STEP_RULES),
    css`
      .scroll { overflow-x: auto; }
      .plain { min-width: 720px; }
      .chip { padding: 2px 7px; border-radius: 5px; font-weight: 700; }
      @media print { .plain { font-size: 7.5pt; min-width: 0; } }
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
    </table></div>`;
  }

  _row(part, at) {
    const margin = part.refused_by || part.margin_db === null ? 'none' : stepOf(part.margin_db);
    return html`<tr data-part=${at}>
      <th scope="row">${part.element + 1}. ${part.name}${packMark(part.pack)}</th>
      ${COLUMNS.map(([, read]) => html`<td class="number">${read(part)}</td>`)}
      <td class="number"><span class="chip" data-step=${margin}>${marginWords(part)}</span></td>
      <td>${part.binding ? limitedBy(part.binding) : ''}${at === this.result.weakest ? ', weakest' : ''}</td>
    </tr>`;
  }
}

customElements.define('jw-line-numbers', JwLineNumbers);
