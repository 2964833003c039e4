import {css, html} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {base} from '../../shared/styles/base.js';
import {digits, frequency} from '../../shared/text/format.js';
import {reference} from '../../shared/text/source.js';

/** @import {Source} from '../../shared/answers.js' */

/** @type {['contact_db' | 'conductor_db' | 'dielectric_db' | 'mismatch_db', string][]} */
const CAUSES = [
  ['contact_db', 'contacts'],
  ['conductor_db', 'conductors, skin effect'],
  ['dielectric_db', 'dielectric'],
  ['mismatch_db', 'mismatch'],
];

/** What a published figure is worth, by the kind of its source; only a standard guarantees. */
const FIGURES = {
  standard: ['Limit of the standard', 'The most that the standard lets a new mated pair of this family lose.'],
  datasheet: [
    'Published maximum',
    'The most that a data sheet states for a part; no standard promises it for the family.',
  ],
  handbook: ['Published figure', 'Measured, or passed on at second hand; no standard promises it.'],
  'common practice': ['Customary figure', 'What the trade reckons with; no standard promises it.'],
  memory: ['Maximum, from memory', 'Its text was not seen; nothing promises it.'],
};

/**
 * @typedef {object} Losses - of the mated pair, in dB
 * @property {number} contact_db
 * @property {number} conductor_db
 * @property {number} dielectric_db
 * @property {number} mismatch_db
 * @property {number} expected_db
 * @property {?number} guaranteed_db - null where no standard states it
 * @property {number} published_db
 * @property {number} published_at_hz
 * @property {string} published_source
 * @property {keyof typeof FIGURES} published_kind
 */

/** Loss of the mated pair by cause; the computed, the guaranteed and the published figure stand apart. */
class JwLosses extends element({
  losses: value(/** @type {Losses} */ (of)),
  sources: value(/** @type {Source[] | undefined} */ (of)),
}) {
  static styles = [
    base,
    css`
      .two { display: grid; grid-template-columns: 1.6fr 1fr; gap: var(--space-4); }
      section { padding: var(--space-3) var(--space-3); border: 1px solid var(--line); border-radius: var(--round); }
      .total { font-size: var(--type-lead); font-weight: 700; }
      i { display: block; height: 6px; min-width: 1px; background: var(--soft); border-radius: 3px; }
      td:last-child { width: 35%; vertical-align: middle; }
      @media print { .two { break-inside: avoid; } }
      @media (max-width: 480px) { .two { grid-template-columns: 1fr; } }
    `,
  ];

  render() {
    const {losses} = this;
    const largest = Math.max(...CAUSES.map(([key]) => losses[key]));
    const [name, worth] = FIGURES[losses.published_kind];
    const source = this.sources?.find(({id}) => id === losses.published_source);
    return html`<div class="two">
      <section>
        <h4>Expected, computed</h4>
        <p class="total">${digits(losses.expected_db, 3)} dB</p>
        <table class="plain">
          <tbody>
            ${CAUSES.map(
              ([key, cause]) => html`<tr>
                <th scope="row">${cause}</th>
                <td class="number">${digits(losses[key], 3)} dB</td>
                <td><i style="width:${largest > 0 ? (losses[key] / largest) * 100 : 0}%"></i></td>
              </tr>`,
            )}
          </tbody>
        </table>
      </section>
      <section>
        <h4>Guaranteed</h4>
        <p class="total">
          ${losses.guaranteed_db === null ? 'none stated' : `${digits(losses.guaranteed_db, 3)} dB`}
        </p>
        <h4>${name}</h4>
        <p class="published">${digits(losses.published_db, 3)} dB at ${frequency(losses.published_at_hz)}</p>
        <p class="quiet">${worth} Reflection is already included; nothing is added to it.</p>
        <p class="quiet">${reference(source)} <span class="kind">${losses.published_kind}</span></p>
      </section>
    </div>`;
  }
}

customElements.define('jw-losses', JwLosses);
