import {LitElement, html} from 'lit';
import '../../shared/elements/jw-methods.js';
import {base} from '../../shared/styles/base.js';
import {partsOf} from '../reading.js';
import './jw-line-derivation.js';

/**
 * What the open sheet of the line view shows: an element's derivation, or the method.
 *
 * @property {number} element - whose derivation; undefined for the method
 * @property {object} answered - the request of the result
 * @property {object} result
 * @property {boolean} current - whether the result is of the line as it stands
 * @property {object} catalogue - undefined while it is awaited
 * @property {Error} error - why it does not come
 */
class JwLineDetail extends LitElement {
  static styles = [base];

  static properties = {
    element: {type: Number},
    answered: {attribute: false},
    result: {attribute: false},
    current: {type: Boolean},
    catalogue: {attribute: false},
    error: {attribute: false},
  };

  render() {
    const {catalogue, element, result} = this;
    const waiting = html`<p role="status">${this.error?.message ?? 'The core is at work…'}</p>`;
    if (element === undefined) return catalogue ? html`<jw-methods .catalogue=${catalogue}></jw-methods>` : waiting;
    if (!result) return waiting;
    const steps = this.current && this.answered.explain === element ? result.steps : undefined;
    return html`<jw-line-derivation .parts=${partsOf(result, element)} .steps=${steps} .catalogue=${catalogue}></jw-line-derivation>`;
  }
}

customElements.define('jw-line-detail', JwLineDetail);
