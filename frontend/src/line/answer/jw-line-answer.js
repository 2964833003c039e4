import {css, html} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {base} from '../../shared/styles/base.js';
import {panelStyles} from '../../shared/styles/panels.js';
import './jw-line-drawing.js';
import './jw-line-verdict.js';

/**
 * @import {LineRequest} from '../../shared/lines/document.js'
 * @import {LineResult} from '../result.js'
 */

/** The answer at a glance: the verdict and the line drawn. */
class JwLineAnswer extends element({
  result: value(/** @type {LineResult} */ (of)),
  /** The request it is of. */
  answered: value(/** @type {LineRequest} */ (of)),
  /** Why it is not of the line as it stands; empty while it is. */
  outdated: {type: String},
  /** Place of the element whose derivation is open. */
  open: {type: String},
}) {
  static styles = [
    base,
    panelStyles,
    css`:host {
      display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); align-content: start; min-width: 0;
    }`,
  ];

  render() {
    const {result, answered} = this;
    return html`<section class="panel">
        <h2 class="unseen">Answer</h2><jw-line-verdict .result=${result} .outdated=${this.outdated}></jw-line-verdict>
      </section>
      <section class="panel">
        <h2>The line drawn <small>tap a part to see how its figures are made</small></h2>
        <jw-line-drawing .result=${result} .elements=${answered.elements} .open=${this.open}></jw-line-drawing>
        <p class="legend quiet">Under each part its margin in dB, coloured as in the matrix, and what it loses.</p>
      </section>`;
  }
}

customElements.define('jw-line-answer', JwLineAnswer);
