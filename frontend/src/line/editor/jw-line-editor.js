import {LitElement, css, html} from 'lit';
import {base} from '../../shared/styles/base.js';
import {panelStyles} from '../../shared/styles/panels.js';
import './jw-line-list.js';
import './jw-line-load.js';
import './jw-line-station.js';

/**
 * What the reader says of a line: its station, its elements, its antenna.
 *
 * @property {object} request
 * @property {string[]} names - of the elements
 * @property {object} answered - the request of the result
 * @property {object} result - the last good answer; undefined before the first
 * @property {{group: string, at: number, field: string, message: string}} refused - marks the field it names
 */
class JwLineEditor extends LitElement {
  static styles = [
    base,
    panelStyles,
    css`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; align-content: start; min-width: 0; }
      .list { padding: 12px 8px; }
      .list h2 { padding-left: 6px; }
      @media print { .noprint { display: none; } }
    `,
  ];

  static properties = {
    request: {attribute: false},
    names: {attribute: false},
    answered: {attribute: false},
    result: {attribute: false},
    refused: {attribute: false},
  };

  render() {
    const {request} = this;
    const of = (group) => (this.refused?.group === group ? this.refused : undefined);
    return html`<section class="panel"><h2>Station and site</h2><jw-line-station .request=${request} .refused=${of('station')}></jw-line-station></section>
      <section class="panel list">
        <h2>The line <small>loss, and margin in dB</small></h2>
        <jw-line-list .elements=${request.elements} .names=${this.names} .answered=${this.answered} .result=${this.result} .refused=${of('elements')}></jw-line-list>
      </section>
      <section class="panel noprint"><h2>The antenna</h2><jw-line-load .load=${request.load} .refused=${of('load')}></jw-line-load></section>`;
  }
}

customElements.define('jw-line-editor', JwLineEditor);
