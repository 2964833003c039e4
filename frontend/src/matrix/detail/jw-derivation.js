import {css, html, nothing, unsafeCSS} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import '../../shared/elements/jw-cautions.js';
import {returnLossWord} from '../../shared/margins/reading.js';
import {STEP_RULES, stepOf} from '../../shared/margins/scale.js';
import {packMark, packStyles} from '../../shared/packs/mark.js';
import {base} from '../../shared/styles/base.js';
import {decibels, frequency, power, quantity, roundedDown} from '../../shared/text/format.js';
import {temperatureText} from '../../shared/text/measures.js';
import './jw-charts.js';
import './jw-limit.js';
import './jw-losses.js';
import './jw-match.js';
import './jw-ratings.js';

/**
 * @import {Catalogue, Cell} from '../../shared/answers.js'
 * @import {LoadCharts} from '../../shared/charts/jw-chart.js'
 */

/** Why a cell says what it says: verdict, limits and match with their steps, charts, checks, losses, evidence. */
class JwDerivation extends element({
  /** A cell result. */
  cell: value(/** @type {Cell} */ (of)),
  /** Formulas and sources. */
  catalogue: value(/** @type {Catalogue | undefined} */ (of)),
  loadCharts: value(/** @type {LoadCharts} */ (of)),
}) {
  static styles = [
    base,
    packStyles,
    unsafeCSS(STEP_RULES),
    css`
      .verdict { display: flex; gap: 14px; align-items: center; padding-bottom: 12px; }
      .verdict b {
        padding: 10px 12px; border-radius: var(--round); font-size: 1.5rem; line-height: 1; white-space: nowrap;
      }
      .verdict b[data-step='refused'] { font-size: 1rem; background: var(--refused); color: var(--refused-ink); }
      .facts {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: 8px 14px; padding-bottom: 6px;
      }
      .facts > :last-child { grid-column: 1 / -1; }
      dt { color: var(--soft); font-size: 0.78rem; }
      dd { font-weight: 600; }
      section { margin-top: 20px; }
      h3 { margin-bottom: 8px; }
      jw-limit + jw-limit { margin-top: 8px; }
      .gate td:first-child { width: 1.6rem; font-weight: 700; }
      .failed td { color: var(--alarm); }
      @media print {
        section { margin-top: 3mm; }
        section:has(> .more:not([open])) { display: none; }
        h3 { break-after: avoid; }
      }
      summary {
        cursor: pointer; min-height: var(--target); align-content: center; color: var(--accent); font-size: 0.9rem;
      }
    `,
  ];

  render() {
    const {cell, catalogue} = this;
    return html`<div class="verdict">
        ${this._number()}
        <p id="verdict">${cell.verdict}${packMark(cell.family.pack || cell.column.pack)}</p>
      </div>
      <dl class="facts">${this._facts()}</dl>
      ${cell.refused_by === 'match' ? [this._match(), this._limits()] : [this._limits(), this._match()]}
      <section><h3>Charts</h3><jw-charts .cell=${cell} .load=${this.loadCharts}></jw-charts></section>
      <section><h3>Checks</h3>${this._gates()}</section>
      <section>
        <h3>Loss of the mated pair</h3>
        <jw-losses .losses=${cell.losses} .sources=${catalogue?.sources}></jw-losses>
      </section>
      <section>
        <h3>Power ratings as evidence</h3>
        <jw-ratings .ratings=${cell.ratings} .sources=${catalogue?.sources}></jw-ratings>
      </section>
      <section>
        <h3>Breakdown of the air gap and wave modes</h3>
        <p class="quiet">For information; these do not enter the margin.</p>
        <details class="more">
          <summary>Show ${cell.air_breakdown.length} steps</summary>
          <jw-steps .steps=${cell.air_breakdown} .catalogue=${catalogue}></jw-steps>
        </details>
      </section>
      <section><jw-cautions .cautions=${cell.cautions}></jw-cautions></section>`;
  }

  _limits() {
    const {limits} = this.cell;
    return html`<section aria-label="Limits">
      <h3>Limits</h3>
      ${limits.map(
        (limit) => html`<jw-limit data-limit=${limit.id} .limit=${limit} .catalogue=${this.catalogue}></jw-limit>`,
      )}
    </section>`;
  }

  _match() {
    return html`<section aria-label="Match">
      <h3>Match</h3>
      <jw-match .match=${this.cell.match} .catalogue=${this.catalogue}></jw-match>
    </section>`;
  }

  _number() {
    const {margin_db: margin, match, refused_by: refusal} = this.cell;
    if (refusal === 'match') return html`<b data-step="refused">${returnLossWord(match.return_loss_db)} dB</b>`;
    if (refusal) return html`<b data-step="refused">refused</b>`;
    if (margin === null) return html`<b data-step="holds">${returnLossWord(match.return_loss_db)} dB</b>`;
    return html`<b data-step=${stepOf(margin)}>${decibels(margin)} dB</b>`;
  }

  _facts() {
    const {cell} = this;
    const facts = [
      ['Power', power(cell.power_w)],
      ['Computed at', frequency(cell.frequency_hz)],
      [
        'Range',
        cell.margin_db === null ? undefined : `${decibels(cell.margin_db)} to ${decibels(cell.margin_high_db)} dB`,
      ],
      [
        'Largest power that holds',
        cell.largest_power_w === null ? 'none' : power(roundedDown(cell.largest_power_w, 3)),
      ],
      ['Centre contact', heated(cell.contact_temperature_c, cell.allowed_temperature_c)],
      ['Cable', heated(cell.cable_temperature_c, cell.cable_allowed_temperature_c)],
      ['Peak voltage', quantity(cell.peak_voltage_v, 'V', 3)],
      ['Cable counted', `${cell.cable_name}, ${cell.cable_given ? 'as given' : 'the family’s customary one'}`],
    ];
    return facts.map(([term, words]) =>
      words === undefined ? nothing : html`<div><dt>${term}</dt><dd>${words}</dd></div>`,
    );
  }

  _gates() {
    return html`<table class="plain">
      <thead>
        <tr><th><span class="unseen">Passed</span></th><th>Check</th><th>Finding</th></tr>
      </thead>
      <tbody>
        ${this.cell.gates.map(
          (gate) => html`<tr class=${gate.passed ? 'gate' : 'gate failed'} data-gate=${gate.id}>
            <td>${gate.passed ? '✓' : gate.hard ? '✕' : '!'}<span
              class="unseen">${gate.passed ? 'passed' : gate.hard ? 'refuses' : 'marked'}</span></td>
            <td>${gate.name}</td>
            <td>${gate.sentence} ${gate.kind ? html`<span class="kind">${gate.kind}</span>` : nothing}</td>
          </tr>`,
        )}
      </tbody>
    </table>`;
  }
}

const heated = (now, most) => `${temperatureText(now)} of ${temperatureText(most)}`;

customElements.define('jw-derivation', JwDerivation);
