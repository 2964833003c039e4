import {css, html, nothing} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import '../../shared/elements/jw-cautions.js';
import {base} from '../../shared/styles/base.js';
import {panelStyles} from '../../shared/styles/panels.js';
import {pairName} from '../names.js';
import './jw-kit-graph.js';
import './jw-kit-joins.js';
import {trapsOf} from './reading.js';

/**
 * @import {Request} from '../edits.js'
 * @import {Answer} from './answer.js'
 */

/** The answer in full: the drawing, what looks as if it fitted, every pair, and the cautions. */
class JwKitAnswer extends element({
  result: value(/** @type {Answer} */ (of)),
  /** The request it is of. */
  answered: value(/** @type {Request} */ (of)),
  /** What its ports are called. */
  names: value(/** @type {string[]} */ (of)),
}) {
  static styles = [
    base,
    panelStyles,
    css`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); align-content: start; }
      ul { padding-left: 1.1em; font-size: var(--type-text); }
      @media print {
        :host { display: block; }
        .panel { margin-bottom: 2mm; }
        .long { break-inside: auto; }
        /* one sheet: a trap is told at its pair */
        #graph, #traps { display: none; }
      }
    `,
  ];

  render() {
    const {answered, names, result} = this;
    const traps = trapsOf(result);
    return html`<section class="panel" id="graph"><h2>Ports and pairs</h2><jw-kit-graph .result=${result}
      .ports=${answered.ports} .names=${names}></jw-kit-graph></section>
      ${
        traps.length > 0
          ? html`<section class="panel" id="traps"><h2>Looks as if it fits <small>but must not be tried</small></h2>
            <ul>${traps.map(
              ({sentence, pairs}) =>
                html`<li><b>${pairs.map((pair) => pairName(pair, names)).join('; ')}</b>: ${sentence}</li>`,
            )}</ul></section>`
          : nothing
      }
      <section class="panel long" id="pairs"><h2>Pair by pair <small>with the smallest margin of its
      joints</small></h2><jw-kit-joins .pairs=${result.pairs} .names=${names}></jw-kit-joins></section>
      <jw-cautions .cautions=${result.cautions}></jw-cautions>`;
  }
}

customElements.define('jw-kit-answer', JwKitAnswer);
