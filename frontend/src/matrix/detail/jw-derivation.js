import {css, html, nothing, unsafeCSS} from 'lit';
import {element, of, state, value} from '../../shared/elements/element.js';
import '../../shared/elements/jw-cautions.js';
import {returnLossWord} from '../../shared/margins/reading.js';
import {STEP_RULES, stepOf, stepWords} from '../../shared/margins/scale.js';
import {packMark, packStyles} from '../../shared/packs/mark.js';
import {base} from '../../shared/styles/base.js';
import {decibels, frequency, power, roundedDown} from '../../shared/text/format.js';
import {turned} from './fold.js';
import './jw-bars.js';
import './jw-charts.js';
import './jw-limit.js';
import './jw-losses.js';
import './jw-match.js';
import './jw-ratings.js';

/**
 * @import {Catalogue, Cell} from '../../shared/answers.js'
 * @import {LoadCharts} from '../../shared/charts/jw-chart.js'
 */

/** Why a cell says what it says: the verdict in words, a bar for each limit, then the working, folded. */
class JwDerivation extends element({
  /** A cell result. */
  cell: value(/** @type {Cell} */ (of)),
  /** Formulas and sources. */
  catalogue: value(/** @type {Catalogue | undefined} */ (of)),
  loadCharts: value(/** @type {LoadCharts} */ (of)),
  /** Names of what is unfolded. */
  _open: state(/** @type {Set<string>} */ (of)),
}) {
  static styles = [
    base,
    packStyles,
    unsafeCSS(STEP_RULES),
    css`
      .verdict { display: flex; gap: var(--space-4); align-items: center; padding-bottom: var(--space-4); }
      .verdict p { font-size: var(--type-text); }
      .verdict b {
        padding: var(--space-2) var(--space-3); border-radius: var(--round); line-height: 1.2; text-align: center;
      }
      .verdict b span { display: block; font-size: var(--type-lead); white-space: nowrap; }
      .verdict b[data-step='refused'] { background: var(--refused); color: var(--refused-ink); }
      .facts {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: var(--space-2) var(--space-4);
      }
      .facts > :last-child { grid-column: 1 / -1; }
      dt { color: var(--soft); font-size: var(--type-fine); }
      dd { font-weight: 600; }
      section { margin-top: var(--space-4); }
      h3 { margin-bottom: var(--space-2); }
      section > * + :is(jw-limit, jw-match) { margin-top: var(--space-2); display: block; }
      details { margin-top: var(--space-3); border-top: 1px solid var(--line); }
      summary {
        cursor: pointer; min-height: var(--target); align-content: center; font-size: var(--type-text);
        font-weight: 600;
      }
      .gate td:first-child { width: 1.6rem; font-weight: 700; }
      .failed td { color: var(--alarm); }
      @media print {
        section { margin-top: 3mm; }
        h3 { break-after: avoid; }
        /* those of the matrix are on paper already */
        .cautions { display: none; }
      }
    `,
  ];

  constructor() {
    super();
    this._open = new Set();
  }

  render() {
    const {cell, catalogue} = this;
    return html`<div class="verdict">
        ${this._number()}
        <p id="verdict">${cell.verdict}${packMark(cell.family.pack || cell.column.pack)}</p>
      </div>
      <jw-bars .cell=${cell}></jw-bars>
      <section aria-label="Figures"><dl class="facts">${this._facts()}</dl></section>
      <section aria-label="Working">
        <h3>The working</h3>
        ${cell.refused_by === 'match' ? [this._match(), this._limits()] : [this._limits(), this._match()]}
      </section>
      ${this._folded('Charts', html`<jw-charts .cell=${cell} .load=${this.loadCharts}></jw-charts>`)}
      ${this._folded(this._checks, this._gates())}
      ${this._folded(
        'Loss of the mated pair',
        html`<jw-losses .losses=${cell.losses} .sources=${catalogue?.sources}></jw-losses>`,
      )}
      ${this._folded(
        'Published power ratings',
        html`<jw-ratings .ratings=${cell.ratings} .sources=${catalogue?.sources}></jw-ratings>`,
      )}
      ${this._folded(
        'Breakdown of the air gap and wave modes',
        html`<p class="quiet">For information; these do not enter the margin.</p>
          <jw-steps .steps=${cell.air_breakdown} .catalogue=${catalogue}></jw-steps>`,
      )}
      <section class="cautions"><jw-cautions .cautions=${cell.cautions}></jw-cautions></section>`;
  }

  /** What is drawn only once it is unfolded. */
  _folded(heading, content) {
    const [name] = heading.split(':');
    const toggled = (event) => (this._open = turned(this._open, event, name));
    return html`<details class="more" ?open=${this._open.has(name)} @toggle=${toggled}>
      <summary>${heading}</summary>
      ${this._open.has(name) ? content : nothing}
    </details>`;
  }

  /** Heading of the checks, which says how many are not passed. */
  get _checks() {
    const failed = this.cell.gates.filter(({passed}) => !passed);
    return failed.length === 0 ? 'Checks: all passed' : `Checks: ${failed.map(({name}) => name).join(', ')} not passed`;
  }

  _limits() {
    return this.cell.limits.map(
      (limit) => html`<jw-limit data-limit=${limit.id} .limit=${limit} .catalogue=${this.catalogue}></jw-limit>`,
    );
  }

  _match() {
    return html`<jw-match .match=${this.cell.match} .catalogue=${this.catalogue}></jw-match>`;
  }

  _number() {
    const {margin_db: margin, match, refused_by: refusal, undecided} = this.cell;
    const number = (step, words, figure) =>
      html`<b data-step=${step}>${figure ? html`<span>${figure}</span>` : nothing}${words}</b>`;
    const returnLoss = `${returnLossWord(match.return_loss_db)} dB`;
    if (refusal) return number('refused', 'refused', refusal === 'match' ? returnLoss : '');
    if (margin === null) return number('holds', 'on receive', returnLoss);
    return number(stepOf(margin), undecided ? 'uncertain' : stepWords(margin), `${decibels(margin)} dB`);
  }

  _facts() {
    const {cell} = this;
    const range = `${decibels(cell.margin_db ?? 0)} and ${decibels(cell.margin_high_db ?? 0)} dB`;
    const facts = [
      ['Power', power(cell.power_w)],
      ['Computed at', frequency(cell.frequency_hz)],
      ['Margin between', cell.margin_db === null ? undefined : `${range}, by how good the parts are`],
      ['Largest safe power', cell.largest_power_w === null ? 'none' : power(roundedDown(cell.largest_power_w, 3))],
      ['Cable counted', `${cell.cable_name}, ${cell.cable_given ? 'as given' : 'the usual one of this connector'}`],
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

customElements.define('jw-derivation', JwDerivation);
