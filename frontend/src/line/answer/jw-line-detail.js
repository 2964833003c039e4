import {html} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import '../../shared/elements/jw-methods.js';
import {base} from '../../shared/styles/base.js';
import {partsOf} from '../reading.js';
import './jw-line-derivation.js';

/**
 * @import {Catalogue} from '../../shared/answers.js'
 * @import {LineRequest} from '../../shared/lines/document.js'
 * @import {LineResult} from '../result.js'
 */

/** What the open sheet of the line view shows: an element's derivation, or the method. */
class JwLineDetail extends element({
  /** Whose derivation; undefined for the method. */
  element: {type: Number},
  /** The request of the result. */
  answered: value(/** @type {LineRequest} */ (of)),
  result: value(/** @type {LineResult} */ (of)),
  /** Whether the result is of the line as it stands. */
  current: {type: Boolean},
  /** Undefined while it is awaited. */
  catalogue: value(/** @type {Catalogue | undefined} */ (of)),
  /** Why it does not come. */
  error: value(/** @type {Error | undefined} */ (of)),
}) {
  static styles = [base];

  render() {
    const {catalogue, result} = this;
    const waiting = html`<p role="status">${this.error?.message ?? 'Calculating…'}</p>`;
    if (this.element === undefined)
      return catalogue ? html`<jw-methods .catalogue=${catalogue}></jw-methods>` : waiting;
    if (!result) return waiting;
    const parts = partsOf(result, this.element);
    const steps = this.current && this.answered.explain === this.element ? result.steps : undefined;
    return html`<jw-line-derivation .parts=${parts} .steps=${steps} .catalogue=${catalogue}></jw-line-derivation>`;
  }
}

customElements.define('jw-line-detail', JwLineDetail);
