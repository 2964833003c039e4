import {css, html, nothing} from 'lit';
import {element, of, value} from '../shared/elements/element.js';
import {save} from '../shared/export/save.js';
import {base} from '../shared/styles/base.js';
import {panelStyles} from '../shared/styles/panels.js';
import {digits, frequency} from '../shared/text/format.js';
import {lossWords} from '../shared/text/loss.js';
import {sentences, sourceList} from './advice.js';
import {numbered} from './from.js';
import {quantitiesCsv, toBuy, unitOf} from './quantities.js';
import {sheetStyles} from './styles.js';

/** @import {Answer} from './answer.js' */

const decibels = (db) => `${db.toFixed(1)} dB`;

/**
 * What to expect of the first measurement, each with its words.
 *
 * @type {['expected_loss_db' | 'expected_return_loss_db' | 'least_return_loss_db' | 'shorted_return_loss_db', string,
 *   (db: number) => string][]}
 */
const EXPECTED = [
  ['expected_loss_db', 'Loss of the line', lossWords],
  ['expected_return_loss_db', 'Return loss, expected', decibels],
  ['least_return_loss_db', 'Return loss, least: below it something is wrong', decibels],
  ['shorted_return_loss_db', 'Return loss with the far end shorted', decibels],
];

/** What to get, what to measure first, and how it is bonded. */
class JwFitoutList extends element({
  result: value(/** @type {Answer} */ (of)),
  /** The titles of the sources, by id. */
  titles: value(/** @type {Map<string, string>} */ (of)),
}) {
  static styles = [
    base,
    panelStyles,
    sheetStyles,
    css`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); }
      .head {
        display: flex; flex-wrap: wrap; gap: var(--space-2); justify-content: space-between; align-items: center;
      }
      p { font-size: var(--type-text); }
      .plain { margin: var(--space-1) 0 var(--space-2); }
      @media print { button { display: none; } .panel { border: 0; padding: 0; break-inside: auto; } }
    `,
  ];

  render() {
    const {bonding, marks, measurement, quantities} = this.result;
    const numbers = numbered(measurement, {bonding});
    return html`<section class="panel" id="quantities">
        <div class="head"><h2>What to get</h2>
          <button ?disabled=${quantities.length === 0}
            @click=${() => save('jointwise-quantities.csv', 'text/csv', quantitiesCsv(quantities))}>List as
            CSV</button></div>
        <table class="plain">
          <thead><tr><th scope="col">What</th><th scope="col">Detail</th><th scope="col"
            class="number">Quantity</th></tr></thead>
          <tbody>${quantities.map(
            (row) =>
              html`<tr><th scope="row">${row.what}</th><td>${row.detail}</td><td
                class="number">${toBuy(row)}${unitOf(row)}</td></tr>`,
          )}</tbody>
        </table>
        ${marks.map((mark) => html`<p class="warning">${mark}</p>`)}
      </section>
      <section class="panel" id="measurement">
        <h2>First measurement</h2>
        <p>At ${frequency(measurement.frequency_hz)}, with a good load of ${digits(measurement.load_ohm)} Ω in place of
        the antenna:</p>
        <table class="plain"><tbody>${EXPECTED.filter(([name]) => measurement[name] !== null).map(
          ([name, words, said]) =>
            html`<tr data-field=${name}><th scope="row">${words}</th><td
              class="number">${said(/** @type {number} */ (measurement[name]))}</td></tr>`,
        )}</tbody></table>
        ${sentences(measurement.advice, numbers)}
      </section>
      ${
        bonding.length > 0
          ? html`<section class="panel" id="bonding"><h2>Bonding and
          lightning</h2>${sentences(bonding, numbers)}</section>`
          : nothing
      }
      ${sourceList(numbers, this.titles)}`;
  }
}

customElements.define('jw-fitout-list', JwFitoutList);
