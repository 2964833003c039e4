import {css, html} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import '../../shared/elements/jw-steps.js';
import {base} from '../../shared/styles/base.js';
import {digits, power} from '../../shared/text/format.js';

/**
 * @import {Catalogue, Step} from '../../shared/answers.js'
 *
 * @typedef {object} CrossCheck
 * @property {number} rating_allowed_w
 * @property {number} rating_allowed_high_w
 * @property {number} first_principles_allowed_w
 * @property {number} ratio
 * @property {boolean} agrees
 * @property {Step[]} steps
 */

/** The power allowed by heat, found two ways. */
class JwCrossCheck extends element({
  check: value(/** @type {CrossCheck} */ (of)),
  catalogue: value(/** @type {Catalogue | undefined} */ (of)),
}) {
  static styles = [
    base,
    css`
      summary {
        cursor: pointer; min-height: var(--target); align-content: center; color: var(--accent); font-size: 0.9rem;
      }
      @media print { table { break-inside: avoid; } }
      .far { font-weight: 700; color: var(--alarm); }
    `,
  ];

  render() {
    const {check} = this;
    return html`<table class="plain">
        <tbody>
          <tr>
            <th scope="row">from the published rating (decides)</th>
            <td class="number">${power(check.rating_allowed_w)} to ${power(check.rating_allowed_high_w)}</td>
          </tr>
          <tr>
            <th scope="row">from first principles (beside it)</th>
            <td class="number">${power(check.first_principles_allowed_w)}</td>
          </tr>
          <tr>
            <th scope="row">ratio to the nearer end of the rating</th>
            <td class="number">${digits(check.ratio, 3)}</td>
          </tr>
        </tbody>
      </table>
      <p class=${check.agrees ? 'quiet' : 'far'}>
        ${
          check.agrees
            ? 'The two agree within a factor of three.'
            : 'The two differ by more than a factor of three: take the number with care.'
        }
      </p>
      <details class="more">
        <summary>Steps from first principles</summary>
        <jw-steps .steps=${check.steps} .catalogue=${this.catalogue}></jw-steps>
      </details>`;
  }
}

customElements.define('jw-cross-check', JwCrossCheck);
