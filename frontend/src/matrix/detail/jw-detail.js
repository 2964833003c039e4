import {LitElement, css, html} from 'lit';
import '../../shared/elements/jw-methods.js';
import {base} from '../../shared/styles/base.js';
import {openColumn} from '../shown.js';
import '../website/jw-website.js';
import './jw-band-limits.js';
import './jw-data-sheet.js';
import './jw-derivation.js';

/**
 * What the open sheet shows: one of derivation, family, band, methods, website, or why it cannot.
 *
 * @property {string} kind
 * @property {object} state
 * @property {object} matrix
 * @property {object} cell - the cell result asked for; undefined while it is awaited
 * @property {object} catalogue - undefined while it is awaited
 * @property {Error} error - why what is awaited does not come
 * @property {number} power - the power level printed, in W
 * @property {function(): Promise<object>} loadCharts
 * @property {function(): Promise<string>} loadEmbed
 * @property {{ask: function}} transport
 */
class JwDetail extends LitElement {
  static styles = [base, css`.room { height: 70vh; }`];

  static properties = {
    kind: {type: String},
    state: {attribute: false},
    matrix: {attribute: false},
    cell: {attribute: false},
    catalogue: {attribute: false},
    error: {attribute: false},
    power: {type: Number},
    loadCharts: {attribute: false},
    loadEmbed: {attribute: false},
    transport: {attribute: false},
  };

  render() {
    return this._view() ?? html`<p class="room" role="status">${this.error?.message ?? this._waiting()}</p>`;
  }

  /** Why nothing is shown: it is still awaited, or a link names what is not there. */
  _waiting() {
    const answered = {family: this.catalogue !== undefined, band: this.matrix.margin_db !== undefined}[this.kind];
    return answered
      ? 'There is no such row or column here; close this sheet and open another.'
      : 'The core is at work…';
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
        return html`<jw-website .state=${state} .power=${this.power} .transport=${this.transport} .loadEmbed=${this.loadEmbed}></jw-website>`;
      case 'family': {
        const sheet = catalogue?.families.find(({id}) => id === state.family);
        return (
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
