import {LitElement, css, html} from 'lit';
import {digits} from '../text/format.js';
import {base} from './base.js';

const CAUSES = [
  ['contact_db', 'contacts'],
  ['conductor_db', 'conductors, skin effect'],
  ['dielectric_db', 'dielectric'],
  ['mismatch_db', 'mismatch'],
];

/**
 * Loss of the mated pair by cause; expected and guaranteed stand apart.
 *
 * @property {object} losses
 * @property {object[]} sources
 */
class JwLosses extends LitElement {
  static styles = [
    base,
    css`
      .two { display: grid; grid-template-columns: 1.6fr 1fr; gap: 14px; }
      section { padding: 10px 12px; border: 1px solid var(--line); border-radius: var(--round); }
      .total { font-size: 1.2rem; font-weight: 700; }
      i { display: block; height: 6px; min-width: 1px; background: var(--accent); border-radius: 3px; }
      td:last-child { width: 35%; vertical-align: middle; }
      @media (max-width: 480px) { .two { grid-template-columns: 1fr; } }
    `,
  ];

  static properties = {losses: {attribute: false}, sources: {attribute: false}};

  render() {
    const {losses} = this;
    const largest = Math.max(...CAUSES.map(([key]) => losses[key]));
    const source = this.sources?.find(({id}) => id === losses.guaranteed_source);
    return html`<div class="two">
      <section>
        <h4>Expected, computed</h4>
        <p class="total">${digits(losses.expected_db, 3)} dB</p>
        <table class="plain">
          <tbody>
            ${CAUSES.map(
              ([key, words]) => html`<tr>
                <th scope="row">${words}</th>
                <td class="number">${digits(losses[key], 3)} dB</td>
                <td><i style="width:${largest > 0 ? (losses[key] / largest) * 100 : 0}%"></i></td>
              </tr>`,
            )}
          </tbody>
        </table>
      </section>
      <section>
        <h4>Guaranteed</h4>
        <p class="total">${digits(losses.guaranteed_db, 3)} dB</p>
        <p class="quiet">The most a part of this family may lose, reflection already included; nothing is added to it.</p>
        <p class="quiet">${source?.title ?? ''} <span class="kind">${losses.guaranteed_kind}</span></p>
      </section>
    </div>`;
  }
}

customElements.define('jw-losses', JwLosses);
