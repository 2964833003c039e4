import {css, html} from 'lit';
import {limitFigure, limitLabel, returnLossFigure, returnLossLabel} from '../../shared/charts/figure.js';
import '../../shared/charts/jw-chart.js';
import {element, of, state, value} from '../../shared/elements/element.js';
import {base} from '../../shared/styles/base.js';

/**
 * @import {Cell} from '../../shared/answers.js'
 * @import {LoadCharts} from '../../shared/charts/jw-chart.js'
 */

const AXES = ['frequency', 'power'];

/** The charts of one limit of a cell, the binding one first and the others a tap away; then that of its match. */
class JwCharts extends element({
  cell: value(/** @type {Cell} */ (of)),
  /** Brings the chart library. */
  load: value(/** @type {LoadCharts} */ (of)),
  _chosen: state(/** @type {string | undefined} */ (of)),
}) {
  static styles = [
    base,
    css`
      .limits { display: flex; flex-wrap: wrap; gap: var(--space-2); margin-bottom: var(--space-2); }
      h4 { margin-top: var(--space-3); break-after: avoid; }
      @media print { .limits { display: none; } }
    `,
  ];

  constructor() {
    super();
    /** @type {ReturnType<JwCharts['_chart']>[]} - made anew only where what they show changes */
    this._charts = [];
  }

  willUpdate(changed) {
    if (changed.has('cell') && changed.get('cell')?.family.id !== this.cell.family.id) this._chosen = undefined;
    if (changed.has('cell') || changed.has('_chosen')) this._charts = AXES.map((along) => this._chart(along));
    const {cell} = this;
    if (changed.has('cell')) this._match = (colours) => returnLossFigure({cell, colours});
  }

  render() {
    return html`<div class="limits" role="group" aria-label="Limit in the charts">
        ${this.cell.limits.map(
          ({id, name}) =>
            html`<button aria-pressed=${id === this._limit.id} @click=${() => (this._chosen = id)}>${name}</button>`,
        )}
      </div>
      ${this._charts.map(
        ({along, figure, label}) => html`<h4>Against ${along}</h4>
          <jw-chart data-along=${along} .figure=${figure} .label=${label} .load=${this.load}></jw-chart>`,
      )}
      <h4>Return loss against frequency</h4>
      <jw-chart data-shows="match" .figure=${this._match} .label=${returnLossLabel(this.cell)}
        .load=${this.load}></jw-chart>
      <p class="quiet">Solid: most cautious figures; dotted: most generous; between them the range. The diamond is this
      cell; across the return loss runs the one asked for.</p>`;
  }

  get _limit() {
    return this.cell.limits.find(({id}) => id === this._chosen) ?? this.cell.limits[0];
  }

  _chart(along) {
    const shown = {cell: this.cell, limit: this._limit, along};
    return {along, figure: (colours) => limitFigure({...shown, colours}), label: limitLabel(shown)};
  }
}

customElements.define('jw-charts', JwCharts);
