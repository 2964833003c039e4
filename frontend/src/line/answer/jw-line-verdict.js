import {css, html, nothing, unsafeCSS} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {STEP_RULES, stepOf} from '../../shared/margins/scale.js';
import {base} from '../../shared/styles/base.js';
import {decibels, digits, frequency, power, quantity, roundedDown} from '../../shared/text/format.js';
import {lossWords} from '../../shared/text/loss.js';

/** @import {LineResult} from '../result.js' */

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
      .verdict { display: flex; gap: 14px; align-items: center; }
      b.chip {
        padding: 10px 12px; border-radius: var(--round); font-size: 1.4rem; line-height: 1; white-space: nowrap;
      }
      b.none { background: var(--refused); color: var(--refused-ink); font-size: 1rem; }
      .note { margin-top: 8px; color: var(--soft); font-size: 0.9rem; }
      .facts {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(112px, 1fr)); gap: 8px 14px; margin-top: 12px;
      }
      dt { color: var(--soft); font-size: 0.78rem; }
      dd { font-weight: 650; }
      dd small { display: block; font-weight: 400; line-height: 1.25; color: var(--soft); font-size: 0.78rem; }
      .outdated {
        margin-bottom: 8px; padding: 8px 12px; border: 1px dashed var(--alarm); border-radius: var(--round);
        color: var(--alarm); font-size: 0.9rem;
      }
    `,
  ];

  render() {
    const {result} = this;
    const doubt = result.undecided ? ' Sources differ on which side of the limit it lies.' : '';
    return html`${this.outdated ? html`<p class="outdated">${this.outdated}</p>` : nothing}
      <div class="verdict">
        ${
          result.margin_db === null
            ? html`<b class="chip none">${this._instead()}</b>`
            : html`<b class="chip" data-step=${stepOf(result.margin_db)}>${decibels(result.margin_db)} dB</b>`
        }
        <p id="verdict" role="status">${result.verdict}${doubt}</p>
      </div>
      ${result.notes.map((note) => html`<p class="note">${note}</p>`)}
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

  _facts() {
    const {result} = this;
    const {largest_power_w: largest, largest_power_set_by: at} = result;
    const setter = at === null ? undefined : result.parts[at];
    return [
      ...(result.power_w > 0
        ? [['At the antenna', watts(result.delivered_w), `cautious ${watts(result.delivered_low_w)}`]]
        : []),
      [
        'Loss of the line',
        lossWords(result.loss_db),
        [
          `cautious ${lossWords(result.loss_high_db)}`,
          ...(result.mismatch_db > 0 ? [`${lossWords(result.mismatch_db)} reflected at the transmitter`] : []),
        ].join('; '),
      ],
      [
        'VSWR at the transmitter',
        vswr(result.input.vswr),
        `${impedance(result.input)}; cautious ${vswr(result.input_cautious.vswr)}, ${impedance(result.input_cautious)}`,
      ],
      ['VSWR at the antenna', vswr(result.antenna.vswr), impedance(result.antenna)],
      ...(result.margin_db === null
        ? []
        : [['Range of the margin', `${decibels(result.margin_db)} to ${decibels(result.margin_high_db)} dB`, '']]),
      [
        'Largest power that holds',
        largest === null ? 'none' : power(roundedDown(largest, 3)),
        setter ? `set by ${setter.name}` : '',
      ],
      ['Looked at', frequency(result.frequency_hz), result.column.name],
    ];
  }
}

const watts = (power_w) => (power_w === null ? '–' : quantity(power_w, 'W', 3));
const vswr = (ratio) => (ratio === null ? '–' : digits(ratio, 3));

function impedance({resistance_ohm: r, reactance_ohm: x}) {
  if (r === null || x === null) return '';
  return `${digits(r, 3)} ${x < 0 ? '−' : '+'} j ${digits(Math.abs(x), 3)} Ω`;
}

customElements.define('jw-line-verdict', JwLineVerdict);
