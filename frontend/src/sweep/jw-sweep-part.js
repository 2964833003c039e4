import {LitElement, css, html, nothing} from 'lit';
import '../shared/charts/jw-chart.js';
import {base} from '../shared/styles/base.js';
import {panelStyles} from '../shared/styles/panels.js';
import {MINUS, frequency, quantity} from '../shared/text/format.js';
import {partLossFigure, partReturnFigure, partSmith} from './figures.js';

const decibels = (value) => (value === null ? '–' : `${value.toFixed(2).replace('-', MINUS)} dB`);

/**
 * A two-port sweep of a jumper, adapter or part against its limits.
 *
 * @property {object} part
 * @property {function(): Promise<object>} load - brings the chart library
 */
class JwSweepPart extends LitElement {
  static styles = [
    base,
    panelStyles,
    css`
      :host { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(420px, 100%), 1fr)); gap: 12px; }
      .wide { grid-column: 1 / -1; }
      @media print { :host { display: block; } .panel { margin-bottom: 2mm; } }
    `,
  ];

  static properties = {part: {attribute: false}, load: {attribute: false}};

  willUpdate(changed) {
    if (!changed.has('part')) return;
    const {part} = this;
    this._loss = (colours) => partLossFigure(part, colours);
    this._returned = (colours) => partReturnFigure(part, colours);
    this._smith = (colours) => partSmith(part, colours);
  }

  render() {
    const {part} = this;
    return html`<section class="panel wide" id="part"><h2>Against the limits of its parts</h2>
        <table class="plain"><tbody>
          ${this._row('Loss', part.loss_passed, part.worst_loss_margin_db, part.worst_loss_at_hz)}
          ${this._row('Match', part.match_passed, part.worst_match_margin_db, part.worst_match_at_hz)}
          <tr><th scope="row">Resistance in series</th><td colspan="2">${quantity(part.resistance_ohm, 'Ω', 3)} ± ${quantity(part.resistance_uncertainty_ohm, 'Ω', 2)}, from the steady part of the excess loss</td></tr>
          <tr><th scope="row">Excess like skin effect</th><td colspan="2">${decibels(part.skin_excess_db_at_top)} at the upper edge</td></tr>
          ${part.trend ? html`<tr><th scope="row">Since the earlier sweep</th><td colspan="2">${part.trend.sentence} Largest change of loss ${decibels(part.trend.largest_loss_change_db)} at ${frequency(part.trend.at_hz)}.</td></tr>` : nothing}
        </tbody></table>
      </section>
      <section class="panel" id="loss"><h2>Loss</h2><jw-chart .figure=${this._loss} .load=${this.load} label="Loss against frequency: measured, expected, and what its parts may lose"></jw-chart></section>
      <section class="panel" id="returned"><h2>Return loss</h2><jw-chart .figure=${this._returned} .load=${this.load} label="Return loss into both ports against frequency, and the least its parts may have"></jw-chart></section>
      <section class="panel" id="smith"><h2>Smith chart into port 1</h2><jw-chart style="--chart:340px" .figure=${this._smith} .load=${this.load} label="Reflection into port 1 on the Smith chart"></jw-chart></section>`;
  }

  _row(what, passed, margin, at) {
    return html`<tr><th scope="row">${what}</th><td>${passed ? '✓ within the limit' : '! over the limit'}</td><td class="number">margin ${decibels(margin)} at ${at === null ? '–' : frequency(at)}</td></tr>`;
  }
}

customElements.define('jw-sweep-part', JwSweepPart);
