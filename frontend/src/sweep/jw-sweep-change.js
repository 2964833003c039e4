import {css, html, nothing} from 'lit';
import '../shared/charts/jw-chart.js';
import {element, of, value} from '../shared/elements/element.js';
import {base} from '../shared/styles/base.js';
import {panelStyles} from '../shared/styles/panels.js';
import {changeWords, spotsOf} from './change.js';
import {changeFigure} from './figures.js';

/**
 * @import {LoadCharts} from '../shared/charts/jw-chart.js'
 * @import {SweepResult} from './result.js'
 */

/** Two sweeps of one line, before and after something was done: both over distance, and what changed. */
class JwSweepChange extends element({
  before: value(/** @type {SweepResult} */ (of)),
  /** Asked with the one before as its earlier sweep. */
  after: value(/** @type {SweepResult} */ (of)),
  /** Brings the chart library. */
  load: value(/** @type {LoadCharts} */ (of)),
}) {
  static styles = [
    base,
    panelStyles,
    css`
      li { margin-bottom: var(--space-half); }
      ul { padding-left: 1.2em; margin-bottom: var(--space-2); }
    `,
  ];

  willUpdate() {
    const {before, after} = this;
    const check = after.line ?? after.echoes;
    const change = check && check.profile.earlier.length > 0 && {profile: check.profile, places: spotsOf(before)};
    this._figure = change ? (colours) => changeFigure(change, colours) : undefined;
  }

  render() {
    return html`<section class="panel" id="change"><h2>What changed</h2>
      <ul role="status">${changeWords(this.before, this.after).map((sentence) => html`<li>${sentence}</li>`)}</ul>
      ${
        this._figure
          ? html`<jw-chart style="--chart:340px" .figure=${this._figure} .load=${this.load}
              label="Reflection against distance, before and after; the places first named are marked"></jw-chart>`
          : nothing
      }
    </section>`;
  }
}

customElements.define('jw-sweep-change', JwSweepChange);
