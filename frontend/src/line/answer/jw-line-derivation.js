import {css, html, nothing, unsafeCSS} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import '../../shared/elements/jw-steps.js';
import {STEP_RULES, stepOf} from '../../shared/margins/scale.js';
import {packMark, packStyles} from '../../shared/packs/mark.js';
import {base} from '../../shared/styles/base.js';
import {decibels, power, quantity, roundedDown} from '../../shared/text/format.js';
import {lossWords} from '../../shared/text/loss.js';
import {lengthText, valueText} from '../../shared/text/measures.js';
import {limitName, limitedBy} from '../limits.js';
import {marginWords, saidBy, swrWords} from '../reading.js';

/**
 * @import {Catalogue, Step} from '../../shared/answers.js'
 * @import {LinePart} from '../result.js'
 */

/** Why an element's margin is what it is: the stress on it, its margin by limit, and the steps. */
class JwLineDerivation extends element({
  /** Of the element; two for an adapter. */
  parts: value(/** @type {LinePart[]} */ (of)),
  /** Undefined while they are awaited. */
  steps: value(/** @type {Step[] | undefined} */ (of)),
  /** Formulas and sources. */
  catalogue: value(/** @type {Catalogue} */ (of)),
}) {
  static styles = [
    base,
    packStyles,
    unsafeCSS(STEP_RULES),
    css`
      section { margin-bottom: var(--space-4); }
      .head { display: flex; gap: var(--space-3); align-items: center; margin-bottom: var(--space-2); }
      .chip {
        padding: var(--space-2) var(--space-3); border-radius: var(--round); font-weight: 700;
        font-size: var(--type-lead); line-height: 1;
        white-space: nowrap;
      }
      .chip.none { background: var(--refused); color: var(--refused-ink); font-size: var(--type-text); }
      .small { padding: var(--space-half) var(--space-2); border-radius: 5px; font-weight: 700; }
      .facts {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: var(--space-2) var(--space-4);
      }
      dt { color: var(--soft); font-size: var(--type-fine); }
      dd { font-weight: 600; }
      .note { margin-top: var(--space-2); font-size: var(--type-text); }
      .plain { margin-top: var(--space-3); }
      .scroll { overflow-x: auto; }
      h3 { margin-bottom: var(--space-2); }
    `,
  ];

  render() {
    return html`${this.parts.map((part) => this._part(part))}
      <section>
        <h3>Steps</h3>
        ${this._steps()}
      </section>`;
  }

  _steps() {
    if (!this.steps) return html`<p class="quiet" role="status">Calculating…</p>`;
    if (this.steps.length === 0) {
      return html`<p class="quiet">
        Nothing more is derived for it: its figures are those given, measured, or solved with the whole line.
      </p>`;
    }
    return html`<jw-steps .steps=${this.steps} .catalogue=${this.catalogue}></jw-steps>`;
  }

  _part(part) {
    const binding = part.binding ? `limited by ${limitedBy(part.binding)}` : '';
    const doubt = part.undecided ? '; the sources disagree on which side of the limit it lies' : '';
    const unlimited = part.margin_db === null;
    return html`<section>
      <div class="head">
        <span class=${unlimited ? 'chip none' : 'chip'}
          data-step=${unlimited ? 'none' : stepOf(part.margin_db)}>${marginWords(part)}</span>
        <p><strong>${part.name}</strong>${packMark(part.pack)} ${binding}${doubt}</p>
      </div>
      <dl class="facts">
        ${this._facts(part).map(([term, words]) => html`<div><dt>${term}</dt><dd>${words}</dd></div>`)}
      </dl>
      ${[part.refusal, ...saidBy(part), ...part.marks].filter(Boolean).map((note) => html`<p class="note">${note}</p>`)}
      ${part.tuner ? this._setting(part.tuner) : nothing}${this._limits(part)}
    </section>`;
  }

  /** What a tuner is set to, and what its parts stand. */
  _setting({parts}) {
    const number = (figure, unit) => (figure === null ? '–' : quantity(figure, unit, 3));
    return html`<div class="scroll"><table class="plain">
      <thead>
        <tr>
          <th scope="col">Set to</th><th scope="col" class="number">Value</th>
          <th scope="col" class="number">Peak</th><th scope="col" class="number">Current</th>
          <th scope="col" class="number">Heat</th>
        </tr>
      </thead>
      <tbody>
        ${parts.map(
          ({what, place, henry, farad, peak_voltage_v: volts, current_a: amperes, lost_w: heat}) => html`<tr>
            <th scope="row">${what}, ${place}</th>
            <td class="number">${what === 'coil' ? number(henry, 'H') : number(farad, 'F')}</td>
            <td class="number">${number(volts, 'V')}</td><td class="number">${number(amperes, 'A')}</td>
            <td class="number">${number(heat, 'W')}</td>
          </tr>`,
        )}
      </tbody>
    </table></div>`;
  }

  /** A measured part has none. */
  _limits(part) {
    const ids = Object.keys(part.margin_by_limit_db);
    if (ids.length === 0) return nothing;
    return html`<table class="plain">
      <thead><tr><th scope="col">Limit</th><th scope="col" class="number">Margin</th></tr></thead>
      <tbody>${ids.map((id) => this._limit(id, part))}</tbody>
    </table>`;
  }

  _limit(id, part) {
    const margin = part.margin_by_limit_db[id];
    return html`<tr data-limit=${id}>
      <th scope="row">${limitName(id)}${id === part.binding ? ', the smallest' : ''}</th>
      <td class="number">
        ${
          margin === null
            ? html`<span class="quiet">no margin</span>`
            : html`<span class="small" data-step=${stepOf(margin)}>${decibels(margin)} dB</span>`
        }
      </td>
    </tr>`;
  }

  _facts(part) {
    const against = (measured, most, unit) =>
      most === null ? valueText(measured, unit, 3) : `${valueText(measured, unit, 3)} of ${valueText(most, unit, 3)}`;
    const facts = [
      [
        'Loss as the waves stand',
        part.loss_db === null ? undefined : `${lossWords(part.loss_db)}, ${quantity(part.lost_w ?? 0, 'W', 3)}`,
      ],
      // a tuner is set for what it sees, and between matched ends its setting is out of place
      ['Loss between matched ends', part.tuner ? undefined : lossWords(part.matched_loss_db)],
      [
        'Margin between',
        part.margin_db === null ? undefined : `${decibels(part.margin_db)} and ${decibels(part.margin_high_db)} dB`,
      ],
      [
        'Peak voltage',
        part.peak_voltage_v === null ? undefined : against(part.peak_voltage_v, part.allowed_voltage_v, 'V'),
      ],
      ['Peak current', part.peak_current_a === null ? undefined : quantity(part.peak_current_a, 'A', 3)],
      [
        'Hottest place',
        part.temperature_c === null ? undefined : against(part.temperature_c, part.allowed_temperature_c, '°C'),
      ],
      ['Return loss of it alone', part.return_loss_db === null ? undefined : quantity(part.return_loss_db, 'dB', 3)],
      ['SWR into it', part.vswr === null ? undefined : swrWords(part.vswr)],
      [
        'Forward, reflected',
        part.forward_w === null
          ? undefined
          : `${quantity(part.forward_w, 'W', 3)}, ${quantity(part.reflected_w, 'W', 3)}`,
      ],
      [
        'Largest safe power',
        part.largest_power_w === null ? 'none known' : power(roundedDown(part.largest_power_w, 3)),
      ],
      ['From the transmitter', lengthText(part.distance_m, 4)],
    ];
    return facts.filter(([, words]) => words !== undefined);
  }
}

customElements.define('jw-line-derivation', JwLineDerivation);
