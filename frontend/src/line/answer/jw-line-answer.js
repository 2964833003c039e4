import {LitElement, css, html} from 'lit';
import {base} from '../../shared/styles/base.js';
import {panelStyles} from '../../shared/styles/panels.js';
import './jw-line-drawing.js';
import './jw-line-verdict.js';

/**
 * The answer at a glance: the verdict and the line drawn.
 *
 * @property {object} result
 * @property {object} answered - the request it is of
 * @property {string} outdated - why it is not of the line as it stands; empty while it is
 * @property {string} open - place of the element whose derivation is open
 */
class JwLineAnswer extends LitElement {
  static styles = [
    base,
    panelStyles,
    css`:host { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; align-content: start; min-width: 0; }`,
  ];

  static properties = {
    result: {attribute: false},
    answered: {attribute: false},
    outdated: {type: String},
    open: {type: String},
  };

  render() {
    const {result, answered} = this;
    return html`<section class="panel"><h2 class="unseen">Answer</h2><jw-line-verdict .result=${result} .outdated=${this.outdated}></jw-line-verdict></section>
      <section class="panel">
        <h2>The line drawn <small>a tap on a part opens its derivation</small></h2>
        <jw-line-drawing .result=${result} .elements=${answered.elements} .open=${this.open}></jw-line-drawing>
        <p class="legend quiet">Under each part its margin in dB, coloured as in the matrix, and what it loses.</p>
      </section>`;
  }
}

customElements.define('jw-line-answer', JwLineAnswer);
