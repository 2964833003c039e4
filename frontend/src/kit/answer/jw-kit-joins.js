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
        display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: 1px 10px; padding: 7px 0;
        border-bottom: 1px solid var(--line); align-items: start; break-inside: avoid;
      }
      li > :not(h3, .chip) { grid-column: 1 / -1; }
      h3 { font-size: 0.95rem; }
      p { font-size: 0.88rem; }
      .chip {
        padding: 3px 6px; min-width: 4.8em; border-radius: 6px; text-align: center; font-weight: 700;
        font-size: 0.85rem; white-space: nowrap;
      }
      .chip.none { background: var(--refused); color: var(--refused-ink); font-weight: 500; }
      .mind { padding-left: 10px; border-left: 3px solid var(--alarm); }
      @media print {
        ol { columns: 2; column-gap: 6mm; }
        li { padding: 0.5mm 0; gap: 0 2mm; }
        h3 { font-size: 8pt; line-height: 1.25; }
        p { font-size: 7pt; line-height: 1.25; }
        .owned { display: none; }
        .chip { padding: 0 4px; font-size: 7.5pt; }
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
