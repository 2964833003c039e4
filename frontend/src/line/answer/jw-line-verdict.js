import {css, html, nothing, unsafeCSS} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {STEP_RULES, stepOf} from '../../shared/margins/scale.js';
import {base} from '../../shared/styles/base.js';
import {decibels, frequency, power, roundedDown} from '../../shared/text/format.js';
import {lossWords} from '../../shared/text/loss.js';
import {saidBy, swrWords} from '../reading.js';
import {LIKELY, WORST, impedanceWords, sides} from '../sides.js';

/** @import {LineResult} from '../result.js' */

/** What makes the worst. */
const BY_PARTS = 'Likely by the figures of good parts, at worst by the cautious ones.';
const BY_PHASE =
  'The phase of the antenna’s SWR is unknown: likely is the middle of all phases, at worst is the worst of them, as ' +
  'the line’s length may put the standing wave.';

/** What reaches the antenna, in a sentence and a few numbers. */
class JwLineVerdict extends element({
  result: value(/** @type {LineResult} */ (of)),
  /** Why the numbers are not those of the line as it stands; empty while they are. */
  outdated: {type: String},
}) {
  static styles = [
    base,
    unsafeCSS(STEP_RULES),
    css`
      .verdict { display: flex; gap: var(--space-4); align-items: center; }
      b.chip {
        padding: var(--space-3) var(--space-3); border-radius: var(--round); font-size: var(--type-title);
        line-height: 1; white-space: nowrap;
      }
      b.none { background: var(--refused); color: var(--refused-ink); font-size: var(--type-text); }
      .sides + .quiet { margin-top: var(--space-1); }
      .note { margin-top: var(--space-2); color: var(--soft); font-size: var(--type-text); }
      .held { margin-top: var(--space-2); padding-left: var(--space-3); border-left: 4px solid var(--alarm); }
      .sides { width: auto; min-width: min(100%, 420px); margin-top: var(--space-3); font-size: var(--type-text); }
      .sides td { font-weight: 650; }
      .sides th { font-weight: 400; }
      .sides :is(th, td).number { padding-left: var(--space-3); }
      .facts {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(130px, 1fr)); gap: var(--space-2) var(--space-4);
        margin-top: var(--space-3);
      }
      dt { color: var(--soft); font-size: var(--type-fine); }
      dd { font-weight: 650; }
      dd small { display: block; font-weight: 400; line-height: 1.25; color: var(--soft); font-size: var(--type-fine); }
      .outdated {
        margin-bottom: var(--space-2); padding: var(--space-2) var(--space-3); border: 1px dashed var(--alarm);
        border-radius: var(--round);
        color: var(--alarm); font-size: var(--type-text);
      }
    `,
  ];

  render() {
    const {result} = this;
    const {folded, sentence} = result.transmitter;
    return html`${this.outdated ? html`<p class="outdated">${this.outdated}</p>` : nothing}
      <div class="verdict">
        ${
          result.margin_db === null
            ? html`<b class="chip none">${this._instead()}</b>`
            : html`<b class="chip" data-step=${stepOf(result.margin_db)}>${decibels(result.margin_db)} dB</b>`
        }
        <p id="verdict" role="status">${result.verdict}</p>
      </div>
      ${sentence ? html`<p id="transmitter" class=${folded ? 'held' : 'note'}>${sentence}</p>` : nothing}
      ${result.parts.map((part) => this._said(part))}
      ${result.notes.map((note) => html`<p class="note">${note}</p>`)}
      ${this._sides()}
      <p class="quiet">${this.result.phase_known ? BY_PARTS : BY_PHASE}</p>
      <dl class="facts">
        ${this._facts().map(
          ([term, words, more]) =>
            html`<div><dt>${term}</dt><dd>${words} ${more ? html`<small>${more}</small>` : nothing}</dd></div>`,
        )}
      </dl>`;
  }

  /** What stands in the place of a margin. */
  _instead() {
    const {parts, power_w: sent} = this.result;
    if (parts.some((part) => part.refused_by)) return 'refused';
    return sent === 0 ? 'receive' : 'no limit';
  }

  /** What a tuner found, what a meter shows. */
  _said(part) {
    const missed = part.tuner && !part.tuner.reachable;
    return saidBy(part).map((words) => html`<p class=${missed ? 'held' : 'note'} data-said=${part.kind}>${words}</p>`);
  }

  _sides() {
    return html`<table class="plain sides">
      <thead>
        <tr>
          <td></td><th scope="col" class="number">${LIKELY}</th><th scope="col" class="number">${WORST}</th>
        </tr>
      </thead>
      <tbody>
        ${sides(this.result).map(
          ({id, term, likely, worst}) => html`<tr data-side=${id}>
            <th scope="row">${term}</th><td class="number">${likely}</td><td class="number">${worst}</td>
          </tr>`,
        )}
      </tbody>
    </table>`;
  }

  _facts() {
    const {result} = this;
    const {folded} = result.transmitter;
    const {largest_power_w: largest, largest_power_set_by: at} = result;
    const setter = at === null ? undefined : result.parts[at];
    return [
      [
        'SWR at the antenna',
        swrWords(result.antenna.vswr),
        result.phase_known ? impedanceWords(result.antenna) : 'phase unknown',
      ],
      ...(result.mismatch_db > 0
        ? [[folded ? 'Held back and reflected' : 'Reflected', lossWords(result.mismatch_db), 'at the transmitter']]
        : []),
      ...(result.margin_db === null
        ? []
        : [['Margin', rangeWords(result.margin_db, result.margin_high_db), 'by how good the parts are']]),
      [
        'Largest safe power',
        largest === null ? 'none' : power(roundedDown(largest, 3)),
        setter ? `set by ${setter.name}` : '',
      ],
      ['At', frequency(result.frequency_hz), result.column.name],
    ];
  }
}

const rangeWords = (low, high) =>
  decibels(low) === decibels(high) ? `${decibels(low)} dB` : `${decibels(low)} to ${decibels(high)} dB`;

customElements.define('jw-line-verdict', JwLineVerdict);
