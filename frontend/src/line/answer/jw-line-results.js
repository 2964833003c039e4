import {css, html} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import '../../shared/elements/jw-cautions.js';
import {base} from '../../shared/styles/base.js';
import {panelStyles} from '../../shared/styles/panels.js';
import './jw-line-changes.js';
import './jw-line-charts.js';
import './jw-line-numbers.js';
import './jw-line-receive.js';

/**
 * @import {LoadCharts} from '../../shared/charts/jw-chart.js'
 * @import {LineRequest} from '../../shared/lines/document.js'
 * @import {Placed} from '../placed.js'
 * @import {Told} from '../answers.js'
 * @import {Change, LineResult, SpreadResult} from '../result.js'
 */

/** What else the core says of a line: charts, what would help, receive, all numbers. */
class JwLineResults extends element({
  result: value(/** @type {LineResult} */ (of)),
  /** As it stands now. */
  request: value(/** @type {LineRequest} */ (of)),
  /** Whether the result is of it. */
  current: {type: Boolean},
  /** Of the elements of the request. */
  names: value(/** @type {string[]} */ (of)),
  /** A refusal that belongs to the receiver. */
  refused: value(/** @type {Placed | undefined} */ (of)),
  /** Of what would help, laid beside the line as it stands. */
  compared: value(/** @type {Change | undefined} */ (of)),
  /** What the core says of the line with it. */
  after: value(/** @type {Told} */ (of)),
  spread: value(/** @type {SpreadResult | undefined} */ (of)),
  /** Draws the core is at work on. */
  drawing: {type: Number},
  /** Why no spread came. */
  failure: {type: String},
  loadCharts: value(/** @type {LoadCharts} */ (of)),
}) {
  static styles = [
    base,
    panelStyles,
    css`
      :host {
        display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); align-content: start; min-width: 0;
      }
      @media print { .numbers { order: -1; } }
    `,
  ];

  render() {
    const {result} = this;
    return html`<section><h2 class="unseen">Charts</h2>
        <jw-line-charts .result=${result} .spread=${this.spread} .drawing=${this.drawing} .failure=${this.failure}
          .load=${this.loadCharts}></jw-line-charts>
      </section>
      <section class="panel">
        <h2>What would help <small>more at the antenna, in eight of ten cases between the two figures</small></h2>
        <jw-line-changes .result=${result} .current=${this.current} .compared=${this.compared}
          .after=${this.after}></jw-line-changes>
      </section>
      <section class="panel">
        <h2>On receive</h2>
        <jw-line-receive .request=${this.request} .result=${result} .names=${this.names}
          .refused=${this.refused}></jw-line-receive>
      </section>
      <section class="panel numbers"><h2>All numbers</h2><jw-line-numbers .result=${result}></jw-line-numbers></section>
      <jw-cautions .cautions=${result.cautions}></jw-cautions>`;
  }
}

customElements.define('jw-line-results', JwLineResults);
