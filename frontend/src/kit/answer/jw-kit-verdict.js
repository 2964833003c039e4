import {css, html, nothing} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {send} from '../../shared/elements/send.js';
import {base} from '../../shared/styles/base.js';
import {panelStyles} from '../../shared/styles/panels.js';
import {Speaking} from '../../shared/vocabulary/speaking.js';
import './jw-kit-packing.js';
import {packingOf} from './packing.js';
import {goalsOf, idlePorts} from './reading.js';

/**
 * @import {Request} from '../edits.js'
 * @import {Answer} from './answer.js'
 */

/**
 * The answer in short: the verdict, the goals with the price of each, and the packing list.
 *
 * @fires jw-kit-edit
 * @fires jw-kit-search - to look for a smaller kit for longer
 */
class JwKitVerdict extends element(
  {
    result: value(/** @type {Answer} */ (of)),
    /** The request it is of. */
    answered: value(/** @type {Request} */ (of)),
    /** What its ports are called. */
    names: value(/** @type {string[]} */ (of)),
    /** What is packed, by the keys of its rows. */
    ticked: value(/** @type {string[]} */ (of)),
    /** Why it is not of the form as it stands; empty while it is. */
    outdated: {type: String},
    /** Whether a smaller kit is looked for. */
    searching: {type: Boolean},
  },
  Speaking,
) {
  static styles = [
    base,
    panelStyles,
    css`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); align-content: start; }
      #headline { display: block; font-size: var(--type-lead); line-height: 1.3; margin-bottom: var(--space-half); }
      #goals { margin: var(--space-2) 0 0; padding: 0; border: 0; min-width: 0; }
      #goals label {
        display: flex; gap: var(--space-3); align-items: center; min-height: var(--target); font-size: var(--type-text);
      }
      #goals input { flex: none; width: 20px; height: 20px; margin: 0; accent-color: var(--accent); }
      .price { color: var(--soft); }
      .outdated {
        padding: var(--space-2) var(--space-3); margin-top: var(--space-2); background: var(--alarm-wash);
        border: 1px solid var(--alarm);
        border-radius: var(--round);
      }
      .longer { display: flex; gap: var(--space-2); align-items: center; margin: var(--space-2) 0; }
      #longer { flex: none; }
      @media print {
        :host { display: block; }
        .panel { margin-bottom: 2mm; }
        #headline { margin-bottom: 0; }
        #goals { margin-top: 0; }
        #goals label { min-height: 0; }
        #goals input { display: none; }
        #goals [data-chosen] { display: none; }
      }
    `,
  ];

  render() {
    const {answered, names, result} = this;
    const idle = idlePorts(answered, result);
    return html`<section class="panel">
        <div role="status"><p id="verdict"><strong id="headline">${result.headline}</strong>${result.verdict.slice(
          result.headline.length,
        )}</p></div>
        ${result.added + result.price.added > 0 ? this._goals(result) : nothing}
        ${this._longer(answered, result)}
        ${idle.length > 0 ? html`<p class="quiet">In no pair: ${idle.map((at) => names[at]).join(', ')}.</p>` : nothing}
        ${this.outdated ? html`<p class="outdated" role="alert">${this.outdated}</p>` : nothing}
      </section>
      <section class="panel" id="packing"><h2>Packing list</h2><jw-kit-packing
        .rows=${packingOf(result, answered, this.vocabulary.lists.families)} .names=${names}
        .ticked=${this.ticked}></jw-kit-packing></section>`;
  }

  /**
   * The two goals, and what the other costs or brings.
   *
   * @param {Answer} result
   */
  _goals(result) {
    const choose = (goal) => send(this, 'jw-kit-edit', {kind: 'limit', changes: {goal}});
    return html`<fieldset id="goals"><legend class="unseen">Aim</legend>${goalsOf(result).map(
      ({id, isChosen, words, price}) => html`<label ?data-chosen=${isChosen}><input type="radio" name="goal" value=${id}
        .checked=${isChosen} @change=${() => choose(id)}><span><b>${words}</b>${
          price ? html` <span class="price">${price}</span>` : nothing
        }</span></label>`,
    )}</fieldset>`;
  }

  /**
   * What more can be done while no kit is proven smallest.
   *
   * @param {Request} request
   * @param {Answer} result
   */
  _longer({search}, {optimal}) {
    if (optimal || search === 'thorough') return nothing;
    const takes = this.searching
      ? 'looking for a smaller kit, in this browser'
      : 'in this browser, two minutes at most';
    return html`<p class="longer noprint">
      <button id="longer" ?disabled=${this.searching}
        @click=${() => send(this, 'jw-kit-search')}>Search for longer</button>
      <small role="status">${takes}</small>
    </p>`;
  }
}

customElements.define('jw-kit-verdict', JwKitVerdict);
