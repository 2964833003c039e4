import {css, html} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import '../../shared/elements/jw-methods.js';
import {base} from '../../shared/styles/base.js';
import {frequency} from '../../shared/text/format.js';
import {Speaking} from '../../shared/vocabulary/speaking.js';
import {openColumn} from '../shown.js';
import '../website/jw-website.js';
import './jw-band-limits.js';
import './jw-data-sheet.js';
import './jw-derivation.js';

/**
 * @import {Catalogue, Cell, Matrix, Transport} from '../../shared/answers.js'
 * @import {LoadCharts} from '../../shared/charts/jw-chart.js'
 * @import {State} from '../fields.js'
 */

const ANOTHER = 'close this sheet and open another.';

/** What the open sheet shows: one of derivation, family, band, methods, website, or why it cannot. */
class JwDetail extends element(
  {
    kind: {type: String},
    state: value(/** @type {State} */ (of)),
    matrix: value(/** @type {Matrix} */ (of)),
    /** The cell result asked for; undefined while it is awaited. */
    cell: value(/** @type {Cell | undefined} */ (of)),
    /** Undefined while it is awaited. */
    catalogue: value(/** @type {Catalogue | undefined} */ (of)),
    /** Why what is awaited does not come. */
    error: value(/** @type {Error | undefined} */ (of)),
    /** The power level printed, in W. */
    power: {type: Number},
    loadCharts: value(/** @type {LoadCharts} */ (of)),
    loadEmbed: value(/** @type {() => Promise<string>} */ (of)),
    transport: value(/** @type {Transport} */ (of)),
  },
  Speaking,
) {
  static styles = [base, css`.room { height: 70vh; }`];

  render() {
    return this._view() ?? html`<p class="room" role="status">${this.error?.message ?? this._waiting()}</p>`;
  }

  /** Why nothing is shown: it is still awaited, or a link names what is not there. */
  _waiting() {
    const {family, band, frequency_hz: hertz} = this.state;
    const {bands} = this.vocabulary.lists;
    if (this.kind === 'family' && this.catalogue) return `There is no connector “${family}” here; ${ANOTHER}`;
    if (this.kind !== 'band' || this.matrix.margin_db === undefined) return 'Calculating…';
    const known = bands.find(({id}) => id === band)?.name ?? (band === null && frequency(hertz));
    return known
      ? `${known} is not among the columns of this matrix; “Bands and powers” among the settings puts it there.`
      : `There is no band “${band}” here; ${ANOTHER}`;
  }

  _view() {
    const {catalogue, cell, matrix, state} = this;
    switch (this.kind) {
      case 'derivation':
        return (
          cell &&
          html`<jw-derivation .cell=${cell} .catalogue=${catalogue} .loadCharts=${this.loadCharts}></jw-derivation>`
        );
      case 'methods':
        return catalogue && html`<jw-methods .catalogue=${catalogue}></jw-methods>`;
      case 'website':
        return html`<jw-website .state=${state} .power=${this.power} .transport=${this.transport}
          .loadEmbed=${this.loadEmbed}></jw-website>`;
      case 'family': {
        const sheet = catalogue?.families.find(({id}) => id === state.family);
        return (
          catalogue &&
          sheet &&
          html`<jw-data-sheet .sheet=${sheet} .sources=${catalogue.sources} .packs=${catalogue.packs}></jw-data-sheet>`
        );
      }
      case 'band': {
        const column = matrix.columns.indexOf(openColumn(state, matrix));
        if (column === -1 || matrix.margin_db === undefined) return undefined;
        return html`<jw-band-limits .matrix=${matrix} .column=${column} .power=${this.power}></jw-band-limits>`;
      }
    }
    return undefined;
  }
}

customElements.define('jw-detail', JwDetail);
