import {css, html, nothing, unsafeCSS} from 'lit';
import {element, of, value} from '../shared/elements/element.js';
import {LOWER_FROM_MEMORY, letterOf, refusedWord} from '../shared/margins/reading.js';
import {STEPS, STEP_RULES, stepRange} from '../shared/margins/scale.js';
import {base} from '../shared/styles/base.js';
import {UNFOLDED} from './styles.js';

/** @import {Gate} from '../shared/answers.js' */

/** What the colours and marks of the matrix mean. */
class JwLegend extends element({
  /** The gates of a matrix result. */
  gates: value(/** @type {Gate[]} */ (of)),
  /** Whether something of the matrix is from a pack. */
  packed: {type: Boolean},
}) {
  static styles = [
    base,
    unsafeCSS(STEP_RULES),
    css`
      :host { font-size: 0.85rem; }
      .scale { display: flex; max-width: 46rem; margin-bottom: 10px; }
      .scale span { flex: 1; padding: 6px 2px; text-align: center; font-size: 0.75rem; line-height: 1.2; }
      .scale span:nth-of-type(5) { border-left: 3px solid var(--ink); }
      dl { display: grid; grid-template-columns: repeat(auto-fill, minmax(260px, 1fr)); gap: 6px 20px; }
      dl div { display: grid; grid-template-columns: 54px 1fr; gap: 8px; align-items: center; }
      dt { display: grid; place-items: center; min-height: 22px; font-weight: 600; }
      dt[data-step] { border-radius: 4px; }
      dt[data-step='holds'], dt[data-step='refused'] { font-size: 0.72rem; }
      dt[data-step='refused'] {
        color: var(--refused-ink);
        background: repeating-linear-gradient(135deg, var(--refused) 0 4px, var(--refused-line) 4px 5px);
      }
      .ladder { display: flex; gap: 1px; width: 46px; height: 8px; }
      .ladder i { flex: 1; }
      .range {
        position: relative; width: 46px; height: 9px;
        background: linear-gradient(currentColor 0 0) center/1px 100% no-repeat;
      }
      .range i { position: absolute; left: 30%; right: 20%; top: 4px; height: 2px; background: currentColor; }
      .levels {
        width: 30px; height: 17px;
        background: linear-gradient(var(--step-6) 0 6px, var(--step-5) 6px 12px, var(--step-3) 12px);
        outline: 1px solid var(--line);
      }
      .undecided {
        position: relative; width: 46px; height: 22px; border: 1px dashed; border-radius: 4px; overflow: hidden;
      }
      .undecided i {
        position: absolute; inset: 0 0 auto auto; width: 17px; height: 17px; clip-path: polygon(0 0, 100% 0, 100% 100%);
        font: 700 10px/11px var(--figures); text-align: right; padding-right: 2px;
      }
      dd { line-height: 1.3; }
      dl .unfolded { display: none; }
      @media ${UNFOLDED} {
        dl .folded { display: none; }
        dl .unfolded { display: grid; }
      }
      @media print {
        :host { font-size: 7pt; }
        .scale span { font-size: 6.5pt; padding: 1mm; }
        dl { grid-template-columns: repeat(4, 1fr); gap: 0.5mm 4mm; }
      }
    `,
  ];

  render() {
    const ladder = html`<span class="ladder">${[7, 6, 5, 4, 2, 0].map(
      (step) => html`<i data-step=${step}></i>`,
    )}</span>`;
    return html`<p class="quiet" id="scale">Margin in dB of power: 0 is at the limit, + is room left, − is beyond
    it.</p>
      <div class="scale" role="img" aria-labelledby="scale">
        ${STEPS.map((_, step) => html`<span data-step=${step}>${stepRange(step)}</span>`)}
      </div>
      <dl>
        ${this._row(
          html`<i class="levels"></i>`,
          'one line for each power level, named at the left of the row; the chosen one is outlined. ' +
            'The most cautious published figures count',
          'unfolded',
        )}
        ${this._row('?', 'undecided: the sources differ on which side of the limit it lies', 'unfolded')}
        ${this._row(
          ladder,
          'the ladder: one rung for each power level, lowest first, each in the colour of its own margin; ' +
            'the chosen one is underlined',
          'folded',
        )}
        ${this._row(
          html`<span class="range"><i></i></span>`,
          'range from the most cautious to the most generous published figures; the upright line is 0 dB. ' +
            'The cautious end is printed',
          'folded',
        )}
        ${this._row(
          html`<span class="undecided" data-step="3"><i data-step="5">?</i></span>`,
          'undecided: the sources differ on which side of the limit it lies',
          'folded',
        )}
        ${this._row(LOWER_FROM_MEMORY, 'a power figure from memory is lower than the margin shown')}
        ${this._row('RL 26', 'in receive: return loss 26 dB, enough; there is no power to bear', '', 'holds')}
        ${this.gates.map((gate) =>
          this._row(
            gate.hard ? refusedWord(gate) : letterOf(gate),
            GATE_WORDS[gate.id] ?? gate.name,
            '',
            gate.hard ? 'refused' : '',
          ),
        )}
        ${this.packed ? this._row('◆', 'from a pack of yours or of the server') : nothing}
      </dl>`;
  }

  /** `drawn` is folded or unfolded where the matrix draws the mark only so; `step` names the mark's colour. */
  _row(mark, words, drawn = '', step = '') {
    return html`<div class=${drawn}><dt data-step=${step}>${mark}</dt><dd>${words}</dd></div>`;
  }
}

/** What a failed gate means, for those whose name alone does not say it. */
const GATE_WORDS = {
  te11: 'refused: a second wave mode travels in the joint',
  cable_te11: 'refused: a second wave mode travels in its cable',
  no_figures: 'refused: beyond every published figure',
  receive_only: 'refused: made for receiving only',
  no_heat_room: 'refused: the air is as hot as the contact may get',
  immersion: 'refused: not made for under water',
  customary_frequency: 'above its customary frequency',
  weather: 'not sealed for this weather',
  vibration: 'coupling does not suit this vibration',
  wear: 'wears out: more swaps than it is made for',
  cable_fit: 'not made for this cable diameter',
  cold: 'too cold',
  match: 'refused: return loss 8 dB, less than asked for',
  match_doubt: 'match in doubt: only the generous figures give the return loss asked for',
  house: 'refused: above a limit the station set itself, from a pack',
};

customElements.define('jw-legend', JwLegend);
