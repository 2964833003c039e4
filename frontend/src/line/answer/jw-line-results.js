import {LitElement, css, html} from 'lit';
import '../../shared/elements/jw-cautions.js';
import {base} from '../../shared/styles/base.js';
import {panelStyles} from '../../shared/styles/panels.js';
import './jw-line-changes.js';
import './jw-line-charts.js';
import './jw-line-numbers.js';
import './jw-line-receive.js';

/**
 * What else the core says of a line: charts, exchanges, receive, all numbers.
 *
 * @property {object} result
 * @property {object} request - as it stands now
 * @property {boolean} current - whether the result is of it
 * @property {string[]} names - of the elements of the request
 * @property {object} refused - a refusal that belongs to the receiver
 * @property {object} spread
 * @property {number} drawing - draws the core is at work on
 * @property {string} failure - why no spread came
 * @property {function(): Promise<object>} loadCharts
 */
class JwLineResults extends LitElement {
  static styles = [
    base,
    panelStyles,
    css`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; align-content: start; min-width: 0; }
      @media print { .numbers { order: -1; } }
    `,
  ];

  static properties = {
    result: {attribute: false},
    request: {attribute: false},
    current: {type: Boolean},
    names: {attribute: false},
    refused: {attribute: false},
    spread: {attribute: false},
    drawing: {type: Number},
    failure: {type: String},
    loadCharts: {attribute: false},
  };

  render() {
    const {result} = this;
    return html`<section><h2 class="unseen">Charts</h2>
        <jw-line-charts .result=${result} .spread=${this.spread} .drawing=${this.drawing} .failure=${this.failure} .load=${this.loadCharts}></jw-line-charts>
      </section>
      <section class="panel"><h2>What would help</h2><jw-line-changes .result=${result} .current=${this.current}></jw-line-changes></section>
      <section class="panel">
        <h2>On receive</h2>
        <jw-line-receive .request=${this.request} .result=${result} .names=${this.names} .refused=${this.refused}></jw-line-receive>
      </section>
      <section class="panel numbers"><h2>All numbers</h2><jw-line-numbers .result=${result}></jw-line-numbers></section>
      <jw-cautions .cautions=${result.cautions}></jw-cautions>`;
  }
}

customElements.define('jw-line-results', JwLineResults);
