import {css, html, nothing} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {send} from '../../shared/elements/send.js';
import {base} from '../../shared/styles/base.js';
import {panelStyles} from '../../shared/styles/panels.js';
import {Speaking} from '../../shared/vocabulary/speaking.js';
import './jw-kit-packing.js';
import {packingOf} from './packing.js';
import {idlePorts, ownedAloneWords, proofWords} from './reading.js';

/**
 * @import {Request} from '../edits.js'
 * @import {Answer} from './answer.js'
 */

/**
 * The answer in short: the verdict, what the owned adapters can do alone, and the packing list.
 *
 * @fires jw-kit-search - to look for a smaller kit for longer
 */
class JwKitVerdict extends element(
  {
    result: value(/** @type {Answer} */ (of)),
    /** The request it is of. */
    answered: value(/** @type {Request} */ (of)),
    /** What its ports are called. */
    names: value(/** @type {string[]} */ (of)),
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
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; align-content: start; }
      #proof { font-size: 1.15rem; font-weight: 700; line-height: 1.3; }
      .outdated {
        padding: 8px 12px; margin-top: 8px; background: var(--alarm-wash); border: 1px solid var(--alarm);
        border-radius: var(--round);
      }
      .longer { display: flex; gap: 8px; align-items: center; margin: 6px 0; }
      #longer { flex: none; }
      @media print {
        :host { display: block; }
        .panel { margin-bottom: 2mm; }
        #proof { font-size: 12pt; }
        p { font-size: 8.5pt; }
      }
    `,
  ];

  render() {
    const {answered, names, result} = this;
    const idle = idlePorts(answered, result);
    return html`<section class="panel">
        <div role="status"><p id="proof">${proofWords(result)}</p><p id="verdict">${result.verdict}</p></div>
        ${this._longer(answered, result)}
        <p id="alone">${ownedAloneWords(result)}</p>
        ${
          idle.length > 0
            ? html`<p class="quiet">In no pair: ${idle.map((at) => `${at + 1} ${names[at]}`).join(', ')}.</p>`
            : nothing
        }
        ${this.outdated ? html`<p class="outdated" role="alert">${this.outdated}</p>` : nothing}
      </section>
      <section class="panel" id="packing"><h2>Packing list</h2><jw-kit-packing
        .rows=${packingOf(result, answered, this.vocabulary.lists.families)}></jw-kit-packing></section>`;
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
