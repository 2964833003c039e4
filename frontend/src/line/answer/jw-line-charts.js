import {LitElement, css, html, nothing} from 'lit';
import '../../shared/charts/jw-chart.js';
import {send} from '../../shared/elements/send.js';
import {base} from '../../shared/styles/base.js';
import {digits, frequency} from '../../shared/text/format.js';
import {lossWords} from '../../shared/text/loss.js';
import {boundWords} from '../reading.js';
import {bandFigure, lossFigure, waveFigure} from './figures.js';

/**
 * The charts of a line: where its loss goes, what it does over the bands, the wave along it.
 *
 * @property {object} result
 * @property {object} spread - random draws of the same line; undefined while there are none
 * @property {number} drawing - draws the core is at work on; 0 when it rests
 * @property {string} failure - why no spread came
 * @property {function(): Promise<object>} load - brings the chart library
 * @fires jw-line-spread - {begin: boolean}
 */
class JwLineCharts extends LitElement {
  static styles = [
    base,
    css`
      :host { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(440px, 100%), 1fr)); gap: 12px; }
      section { min-width: 0; padding: 10px 12px; background: var(--card); border: 1px solid var(--line); border-radius: var(--round); }
      .spread { grid-column: 1 / -1; display: flex; flex-wrap: wrap; gap: 6px 14px; align-items: center; min-height: var(--target); }
      h3 { font-size: 0.95rem; }
      @media print { .spread button { display: none; } section { break-inside: avoid; } }
    `,
  ];

  static properties = {
    result: {attribute: false},
    spread: {attribute: false},
    drawing: {type: Number},
    failure: {type: String},
    load: {attribute: false},
  };

  willUpdate(changed) {
    const {result, spread} = this;
    if (changed.has('result')) {
      this._loss = (colours) => lossFigure(result, colours);
      this._wave = (colours) => waveFigure(result, colours);
    }
    if (changed.has('result') || changed.has('spread')) {
      const over = (key, title) => (colours) => bandFigure({result, spread, key, title, colours});
      this._margin = over('margin_db', 'smallest margin, dB');
      this._vswr = over('vswr', 'VSWR at the transmitter');
    }
  }

  render() {
    const {result} = this;
    const height = (result.parts.length + 2) * 24 + 70;
    return html`<section>
        <h3>Where the loss goes</h3>
        <jw-chart id="loss" style="--chart:${height}px" .figure=${this._loss} .load=${this.load}
          label="Loss of each part, adding up to ${lossWords(result.loss_db)}; the same numbers stand in the table of all numbers"></jw-chart>
      </section>
      <section>
        <h3>Wave along the line at ${frequency(result.frequency_hz)}</h3>
        <jw-chart id="wave" .figure=${this._wave} .load=${this.load}
          label="Peak voltage and current along the cables, ends of the elements marked; largest ${this._largest()}"></jw-chart>
        <p class="quiet">Upright lines mark where one element ends and the next begins.</p>
      </section>
      <section>
        <h3>Smallest margin over the bands</h3>
        <jw-chart id="margin" style="--chart:280px" .figure=${this._margin} .load=${this.load}
          label="Smallest margin of the line on every band, dB; the chosen band is outlined${this.spread ? ', the spread shaded' : ''}"></jw-chart>
      </section>
      <section>
        <h3>VSWR over the bands</h3>
        <jw-chart id="vswr" style="--chart:280px" .figure=${this._vswr} .load=${this.load}
          label="VSWR at the transmitter on every band; the chosen band is outlined${this.spread ? ', the spread shaded' : ''}"></jw-chart>
      </section>
      <div class="spread">${this._spread()}</div>`;
  }

  _largest() {
    const {voltage_v, current_a} = this.result.standing_wave;
    if (voltage_v.length === 0) return 'unknown, as there is no cable';
    return `${digits(Math.max(...voltage_v), 3)} V and ${digits(Math.max(...current_a), 3)} A`;
  }

  _spread() {
    const {spread} = this;
    const known = spread
      ? `The curves are those of the cautious figures at nominal lengths. Shaded: nine of ten of ${spread.draws.toLocaleString('en')} lines ` +
        `drawn at random within what is not known (electrical lengths, phases, tolerance of joints). ${boundWords(spread)}`
      : '';
    const button = (words, begin) =>
      html`<button id="spread" @click=${() => send(this, 'jw-line-spread', {begin})}>${words}</button>`;
    if (this.drawing > 0) {
      return html`<p class="quiet" role="status">${known} Drawing ${this.drawing.toLocaleString('en')} lines at random…</p>${button('Stop', false)}`;
    }
    return html`<p class="quiet" role="status">${this.failure || known || 'No spread is drawn.'}</p>
      ${spread?.draws >= 10_000 ? nothing : button('Draw the spread', true)}`;
  }
}

customElements.define('jw-line-charts', JwLineCharts);
