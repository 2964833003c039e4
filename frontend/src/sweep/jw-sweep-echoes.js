import {css, html} from 'lit';
import '../shared/charts/jw-chart.js';
import {element, of, value} from '../shared/elements/element.js';
import {base} from '../shared/styles/base.js';
import {panelStyles} from '../shared/styles/panels.js';
import {digits} from '../shared/text/format.js';
import {valueText} from '../shared/text/measures.js';
import {echoFigure} from './figures.js';
import './jw-sweep-place.js';
import {metres, share} from './reading.js';

/**
 * @import {LoadCharts} from '../shared/charts/jw-chart.js'
 * @import {EchoCheck} from './result.js'
 */

/** A sweep of a line that is not described: its echoes by distance. */
class JwSweepEchoes extends element({
  check: value(/** @type {EchoCheck} */ (of)),
  /** Brings the chart library. */
  load: value(/** @type {LoadCharts} */ (of)),
}) {
  static styles = [
    base,
    panelStyles,
    css`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); }
      ol { margin: 0; padding-left: 1.6em; font-size: var(--type-text); }
      li + li { margin-top: var(--space-1); }
      @media print { :host { display: block; } .panel { margin-bottom: 2mm; } }
    `,
  ];

  willUpdate(changed) {
    if (!changed.has('check')) return;
    const {check} = this;
    this._figure = (colours) => echoFigure(check, colours);
  }

  render() {
    const {check} = this;
    return html`<section class="panel" id="echoes"><h2>Echoes <small>from the analyser on</small></h2>
        <ol>${check.echoes.map(echoItem)}</ol></section>
      <section class="panel" id="distance"><h2>Echoes by distance</h2>
        <jw-chart style="--chart:340px" .figure=${this._figure} .load=${this.load}
          label="Reflection against distance, a mark at each echo"></jw-chart>
        <p class="quiet">
          Shaded: what noise may show. By a velocity factor of ${digits(check.velocity_factor, 3)}; a distance is wrong
          by as much as the factor is. Sees as far as ${metres(check.range_m)}, and shows as one what is nearer than
          ${valueText(check.resolution_m, 'm', 2)}.
        </p>
        <jw-sweep-place .check=${check}></jw-sweep-place>
      </section>`;
  }
}

const echoItem = ({distance_m, low_m, high_m, reflection, words}) =>
  html`<li>
    <b>${metres(distance_m)}</b> (${metres(low_m)} to ${metres(high_m)}): ${words}
    <span class="quiet">${share(Math.abs(reflection))} of the wave</span>
  </li>`;

customElements.define('jw-sweep-echoes', JwSweepEchoes);
