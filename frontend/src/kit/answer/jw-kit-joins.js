import {css, html, nothing, unsafeCSS} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {STEP_RULES, stepOf} from '../../shared/margins/scale.js';
import {base} from '../../shared/styles/base.js';
import {decibels} from '../../shared/text/format.js';
import {Speaking} from '../../shared/vocabulary/speaking.js';
import {pairName} from '../names.js';
import {chainWords, dutyOf, lossOf, notesOf, ownedWords} from './reading.js';

/** @import {Pair} from './answer.js' */

/** How every pair is joined, or why it can't be. */
class JwKitJoins extends element(
  {
    pairs: value(/** @type {Pair[]} */ (of)),
    /** What the ports are called. */
    names: value(/** @type {string[]} */ (of)),
  },
  Speaking,
) {
  static styles = [
    base,
    unsafeCSS(STEP_RULES),
    css`
      ol { list-style: none; margin: 0; padding: 0; }
      li {
        display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: var(--space-half) var(--space-3);
        padding: var(--space-2) 0;
        border-bottom: 1px solid var(--line); align-items: start; break-inside: avoid;
      }
      li > :not(h3, .chip) { grid-column: 1 / -1; }
      h3 { font-size: var(--type-text); }
      p { font-size: var(--type-text); }
      .chip { min-width: 4.8em; font-size: var(--type-small); }
      .mind { padding-left: var(--space-3); border-left: 3px solid var(--alarm); }
      @media print {
        ol { columns: 2; column-gap: 6mm; }
        li { padding: 0.5mm 0; gap: 0 2mm; }
        h3 { line-height: 1.25; }
        p { line-height: 1.25; }
        .owned { display: none; }
      }
    `,
  ];

  render() {
    return html`<ol>${this.pairs.map((pair) => this._pair(pair))}</ol>`;
  }

  _pair(pair) {
    const {joined, ports, sentence, trap} = pair;
    const {families} = this.vocabulary.lists;
    const ends = ports.map((at) => this.names[at]);
    const duty = joined ? `${dutyOf(pair)}: ${lossOf(joined)}` : dutyOf(pair);
    const owned = ownedWords(pair, ends, families);
    return html`<li data-pair=${ports.join('-')}>
      <h3>${pairName(ports, this.names)}</h3>
      ${chip(joined)}
      <p class="chain">${joined ? chainWords(joined, ends, families) : sentence}</p>
      <p class="quiet">${duty}${owned ? html`<span class="owned">. ${owned}</span>` : nothing}</p>
      ${trap ? html`<p class="mind">As they are: ${trap}</p>` : nothing}
      ${joined ? notesOf(joined).map((note) => html`<p class="mind">${note}</p>`) : nothing}
    </li>`;
  }
}

/** What a pair keeps; in receive there is no margin. */
function chip(joined) {
  if (!joined) return html`<span class="chip none">no</span>`;
  const {margin_db: margin} = joined;
  if (margin === null) return html`<span class="chip" data-step="holds">receive</span>`;
  return html`<span class="chip" data-step=${stepOf(margin)}>${decibels(margin)} dB</span>`;
}

customElements.define('jw-kit-joins', JwKitJoins);
