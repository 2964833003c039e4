import {css, html, unsafeCSS} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {LIMIT_LENGTH, takenLength} from '../../shared/margins/bar.js';
import {STEP_RULES, stepOf, stepWords} from '../../shared/margins/scale.js';
import {base} from '../../shared/styles/base.js';
import {decibels, digits, power, quantity, roundedDown} from '../../shared/text/format.js';
import {temperatureText} from '../../shared/text/measures.js';

/** @import {Cell, Limit} from '../../shared/answers.js' */

/** What each limit is told in, now and at most; a peak voltage goes with the root of the power. */
const TOLD = {
  contact: ({contact_temperature_c: now, allowed_temperature_c: most}) => [temperatureText(now), temperatureText(most)],
  cable: ({cable_temperature_c: now, cable_allowed_temperature_c: most}) => [
    temperatureText(now),
    temperatureText(most),
  ],
  voltage: ({peak_voltage_v: now, power_w: watts}, {allowed_w: allowed}) => [
    quantity(now, 'V', 3),
    quantity(now * Math.sqrt(allowed / watts), 'V', 3),
  ],
};

/** What share the power asked for has of the one that each limit allows: heat of contact and cable, voltage. */
class JwBars extends element({cell: value(/** @type {Cell} */ (of))}) {
  static styles = [
    base,
    unsafeCSS(STEP_RULES),
    css`
      :host { display: grid; gap: var(--space-3); }
      h3 {
        display: flex; flex-wrap: wrap; gap: 0 var(--space-3); justify-content: space-between;
        font-size: var(--type-text);
      }
      h3 span { font-weight: 400; }
      .bar {
        position: relative; height: 14px; margin: var(--space-1) 0; background: var(--sunk);
        border: 1px solid var(--edge);
        border-radius: 4px; overflow: hidden;
      }
      .bar i { display: block; height: 100%; width: var(--taken); border-right: 1px solid var(--ink); }
      .bar::after {
        content: ''; position: absolute; inset: 0 auto 0 calc(var(--limit) - 1px); width: 2px; background: var(--ink);
      }
      @media print { :host { gap: 2mm; } .bar { height: 3mm; } }
    `,
  ];

  render() {
    const limits = ['contact', 'cable', 'voltage'].flatMap((id) => this.cell.limits.filter((one) => one.id === id));
    return html`${limits.map((limit) => this._bar(limit))}`;
  }

  /** @param {Limit} limit */
  _bar(limit) {
    const {cell} = this;
    const {id, name, binding, margin_db: margin, allowed_w: allowed} = limit;
    if (margin === null || allowed === null || allowed <= 0)
      return html`<div data-bar=${id}><h3><b>${name}</b><span>${
        cell.power_w === 0 ? 'nothing to carry on receive' : 'no power is allowed'
      }</span></h3></div>`;
    const [now, most] = TOLD[id](cell, limit);
    const share = cell.power_w / allowed;
    const first = binding ? '; the limit that is reached first' : '';
    return html`<div data-bar=${id} ?data-binding=${binding}>
      <h3><b>${name}</b><span>${now} of ${most}</span></h3>
      <div class="bar" role="img" aria-label="${name}: ${now} of ${most} allowed"
        style="--taken:${takenLength(share)};--limit:${LIMIT_LENGTH}"><i data-step=${stepOf(margin)}></i></div>
      <p class="quiet">${digits(share * 100, 2)} % of the ${power(roundedDown(allowed, 3))} it allows:
        ${decibels(margin)} dB, ${stepWords(margin)}${first}.</p>
    </div>`;
  }
}

customElements.define('jw-bars', JwBars);
