import {css, html, nothing} from 'lit';
import '../../shared/charts/jw-chart.js';
import {element, of, value} from '../../shared/elements/element.js';
import {send} from '../../shared/elements/send.js';
import {base} from '../../shared/styles/base.js';
import {digits, frequency} from '../../shared/text/format.js';
import {lossWords} from '../../shared/text/loss.js';
import {boundWords} from '../reading.js';
import {pairWords} from '../sides.js';
import {bandFigure, highestDrawn, isLong, lossFigure, lossSteps, waveFigure} from './figures.js';

/**
 * @import {LoadCharts} from '../../shared/charts/jw-chart.js'
 * @import {LineResult, SpreadResult} from '../result.js'
 */

/**
 * The charts of a line: where its loss goes, what it does over the bands, the wave along it.
 *
 * @fires jw-line-spread - {begin: boolean}
 */
class JwLineCharts extends element({
  result: value(/** @type {LineResult} */ (of)),
  /** Random draws of the same line; undefined while there are none. */
  spread: value(/** @type {SpreadResult | undefined} */ (of)),
  /** Draws the core is at work on; 0 when it rests. */
  drawing: {type: Number},
  /** Why no spread came. */
  failure: {type: String},
  /** Brings the chart library. */
  load: value(/** @type {LoadCharts} */ (of)),
}) {
  static styles = [
    base,
    css`
      :host {
        display: grid; grid-template-columns: repeat(auto-fit, minmax(min(440px, 100%), 1fr)); gap: var(--space-3);
      }
      section {
        min-width: 0; padding: var(--space-3) var(--space-3); background: var(--card); border: 1px solid var(--line);
        border-radius: var(--round);
      }
      .spread {
        grid-column: 1 / -1; display: flex; flex-wrap: wrap; gap: var(--space-2) var(--space-4); align-items: center;
        min-height: var(--target);
      }
      h3 { font-size: var(--type-text); }
      @media print { .spread button { display: none; } section { break-inside: avoid; } }
    `,
  ];

  willUpdate(changed) {
    const {result, spread} = this;
    if (changed.has('result')) {
      this._loss = (colours) => lossFigure(result, colours);
      this._wave = (colours) => waveFigure(result, colours);
    }
    if (changed.has('result') || changed.has('spread')) {
      /** @param {'margin_db' | 'vswr'} key */
      const over = (key, title) => (colours) => bandFigure({result, spread, key, title, colours});
      this._margin = over('margin_db', 'smallest margin, dB');
      this._vswr = over('vswr', 'SWR at the transmitter');
    }
  }

  render() {
    const {result} = this;
    const height = (lossSteps(result).length + 1) * 24 + 70;
    const total = pairWords({likely: lossWords(result.loss_db), worst: lossWords(result.loss_high_db)});
    const [lossLabel, waveLabel, marginLabel, vswrLabel] = [
      `Loss of each part, adding up to ${total}; the same numbers stand in the table of all numbers`,
      `Peak voltage and current along the line${this._isRange ? ', the most and the least at each place' : ''}; ` +
        `ends of the elements marked; largest ${this._largest()}`,
      `Smallest margin of the line on every band, dB; the chosen band is outlined${this._shaded}`,
      `SWR at the transmitter on every band; the chosen band is outlined${this._shaded}`,
    ];
    return html`<section>
        <h3>Where the loss goes</h3>
        <jw-chart id="loss" style="--chart:${height}px" .figure=${this._loss} .load=${this.load}
          label=${lossLabel}></jw-chart>
      </section>
      <section>
        <h3>Wave along the line at ${frequency(result.frequency_hz)}</h3>
        <jw-chart id="wave" .figure=${this._wave} .load=${this.load} label=${waveLabel}></jw-chart>
        <p class="quiet">${this._why()} Upright lines mark where one element ends and the next begins.</p>
      </section>
      ${
        result.power_w > 0
          ? html`<section>
            <h3>Smallest margin over the bands</h3>
            <jw-chart id="margin" style="--chart:280px" .figure=${this._margin} .load=${this.load}
              label=${marginLabel}></jw-chart>
          </section>`
          : nothing
      }
      <section>
        <h3>SWR over the bands</h3>
        <jw-chart id="vswr" style="--chart:280px" .figure=${this._vswr} .load=${this.load}
          label=${vswrLabel}></jw-chart>
        <p class="quiet">At the transmitter: solid what is likely, dotted the worst.${this._beyond()}</p>
      </section>
      <div class="spread">${this._spread()}</div>`;
  }

  _beyond() {
    const highest = highestDrawn(this.result);
    return highest ? ` Above ${digits(highest, 2)} it leaves the chart.` : '';
  }

  /** Whether a place of the wave may come to more or less. */
  get _isRange() {
    return this.result.standing_wave.voltage_low_v !== null;
  }

  /** Why the wave is drawn as a range. */
  _why() {
    if (!this._isRange) return '';
    if (!isLong(this.result))
      return 'Where the crests stand hangs on the phase at the antenna, which is unknown: shaded is what may come.';
    return (
      `The line is ${Math.round(this.result.standing_wave.half_waves)} half waves long, too many crests to draw: ` +
      'shown are the largest and the least of each half wave, shaded between. A Smith chart would go round as often, ' +
      'so none is drawn.'
    );
  }

  /** How the spread is spoken of, where it is drawn. */
  get _shaded() {
    return this.spread ? ', the spread shaded' : '';
  }

  _largest() {
    const {voltage_v, current_a} = this.result.standing_wave;
    if (voltage_v.length === 0) return 'unknown, as there is no cable';
    return `${digits(Math.max(...voltage_v), 3)} V and ${digits(Math.max(...current_a), 3)} A`;
  }

  _spread() {
    const {spread} = this;
    const known = spread
      ? 'The curves are those of the lengths as given. ' +
        `Shaded: nine of ten of ${spread.draws.toLocaleString('en')} lines drawn at random within what is not known ` +
        `(electrical lengths, phases, tolerance of joints). ${boundWords(spread)}`
      : '';
    const button = (words, begin) =>
      html`<button id="spread" @click=${() => send(this, 'jw-line-spread', {begin})}>${words}</button>`;
    if (this.drawing > 0) {
      const draws = this.drawing.toLocaleString('en');
      return html`<p class="quiet" role="status">${known} Drawing ${draws} lines at random…</p>
        ${button('Stop', false)}`;
    }
    return html`<p class="quiet" role="status">${this.failure || known || 'No spread is drawn.'}</p>
      ${spread && spread.draws >= 10_000 ? nothing : button('Draw the spread', true)}`;
  }
}

customElements.define('jw-line-charts', JwLineCharts);
