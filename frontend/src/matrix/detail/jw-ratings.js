import {css, html, nothing} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {base} from '../../shared/styles/base.js';
import {frequency, power} from '../../shared/text/format.js';
import {temperatureText} from '../../shared/text/measures.js';
import {reference} from '../../shared/text/source.js';

/** @import {Rating, Source} from '../../shared/answers.js' */

const PARTS = {contact: 'Joint', cable: 'Cable'};

/** Published and remembered powers as evidence: each computed by its own conditions, and carried over to the cell. */
class JwRatings extends element({
  ratings: value(/** @type {Rating[]} */ (of)),
  sources: value(/** @type {Source[] | undefined} */ (of)),
}) {
  static styles = [
    base,
    css`
      .plain div { font-weight: 400; margin-top: var(--space-half); }
      .plain thead th { white-space: normal; vertical-align: bottom; }
      [data-role='decides'] .does { color: var(--alarm); font-weight: 600; }
      @media print { tr { break-inside: avoid; } }
    `,
  ];

  render() {
    if (this.ratings.length === 0) return html`<p class="quiet">None is known.</p>`;
    return html`<p class="quiet">Each is held against what is computed for its own frequency, air, temperature and
      cable, then carried over to this cell. One that is published and lower decides; one from memory or habit never
      does.</p>
      <table class="plain">
        <thead>
          <tr>
            <th scope="col">Rating</th><th scope="col" class="number">Computed there</th>
            <th scope="col" class="number">Here</th>
          </tr>
        </thead>
        <tbody>${this.ratings.map((rating) => this._rating(rating))}</tbody>
      </table>`;
  }

  /** @param {Rating} rating */
  _rating(rating) {
    const source = this.sources?.find(({id}) => id === rating.source);
    return html`<tr data-role=${rating.role}>
      <th scope="row">
        ${PARTS[rating.part]}, ${power(rating.power_w)} at ${frequency(rating.frequency_hz)}
        <div>Air ${temperatureText(rating.ambient_temperature_c)},
          hottest ${temperatureText(rating.hottest_temperature_c)},
          ${rating.cable}</div>
        <div class="quiet">${reference(source)} <span class="kind">${rating.kind}</span>${
          rating.note ? html` ${rating.note}` : nothing
        }</div>
        <div class="does">${rating.sentence}</div>
      </th>
      <td class="number">${watts(rating.computed_w)}<br>to ${watts(rating.computed_high_w)}</td>
      <td class="number">${watts(rating.here_w)}</td>
    </tr>`;
  }
}

const watts = (exact) => power(Number(exact.toPrecision(3)));

customElements.define('jw-ratings', JwRatings);
