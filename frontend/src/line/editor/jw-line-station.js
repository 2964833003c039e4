import {css, html, nothing} from 'lit';
import {element, of, state, value} from '../../shared/elements/element.js';
import {send} from '../../shared/elements/send.js';
import {changesOf, control} from '../../shared/fields/control.js';
import {base} from '../../shared/styles/base.js';
import {Speaking} from '../../shared/vocabulary/speaking.js';

/**
 * @import {LineRequest} from '../../shared/lines/document.js'
 * @import {Placed} from '../placed.js'
 */

const ALWAYS = ['mode', 'band', 'frequency_hz', 'exposure', 'ambient_temperature_c'];
const MORE = [
  ...[
    'altitude_m',
    'solar_irradiance_w_per_m2',
    'added_sealing',
    'vibration',
    'matings_per_year',
    'service_life_years',
  ],
  ...['transmit_share', 'on_time_s', 'off_time_s', 'system_impedance_ohm', 'return_loss_asked_db', 'region'],
];
/** Where a spot frequency starts; the middle of a band most stations have. */
const FIRST_SPOT_HZ = 14.2e6;

/**
 * The station and the site of a line.
 *
 * @fires jw-line-edit
 */
class JwLineStation extends element(
  {
    request: value(/** @type {LineRequest} */ (of)),
    refused: value(/** @type {Placed | undefined} */ (of)),
    _more: state(/** @type {boolean} */ (of)),
  },
  Speaking,
) {
  static styles = [
    base,
    css`
      .fields {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: var(--space-1) var(--space-3);
        align-items: end;
      }
      summary {
        cursor: pointer; min-height: var(--target); align-content: center; font-size: var(--type-text);
      }
      .onpaper { display: none; }
      @media (max-width: 420px) { .fields { grid-template-columns: 1fr 1fr; } }
      @media print { .fields, details { display: none; } .onpaper { display: block; } }
    `,
  ];

  /** A refused field must be seen. */
  willUpdate(changed) {
    if (changed.has('refused') && this.refused && MORE.includes(this.refused.field)) this._more = true;
  }

  render() {
    const changed = MORE.filter((name) => this._value(name) !== this.vocabulary.valueOf({}, `station.${name}`)).length;
    return html`<p class="onpaper">${this._inWords()}</p>
      ${this._fields(ALWAYS)}
      <details ?open=${this._more} @toggle=${(event) => (this._more = event.target.open)}>
        <summary>More about station and site${changed > 0 ? ` (${changed} set)` : ''}</summary>
        ${this._more ? this._fields(MORE) : nothing}
      </details>`;
  }

  /** What is set, for paper. */
  _inWords() {
    const given = [...ALWAYS, ...MORE].filter(
      (name) => ALWAYS.includes(name) || this._value(name) !== this.vocabulary.valueOf({}, `station.${name}`),
    );
    const known = given.filter((name) => this._value(name) !== null);
    const inWords = (name, field) =>
      `${this.vocabulary.labelOf(field)}: ${this.vocabulary.spoken(field, this._value(name))}`;
    return known.map((name) => inWords(name, `station.${name}`)).join(' · ');
  }

  _value(name) {
    return this.vocabulary.valueOf(this.request, `station.${name}`);
  }

  _fields(names) {
    return html`<div class="fields" @jw-change=${this._changed}>${names.map((name) => this._field(name))}</div>`;
  }

  /** @param {string} name */
  _field(name) {
    if (name === 'frequency_hz' && this.request.band) return nothing;
    return control(
      this.vocabulary,
      `station.${name}`,
      this._value(name),
      this.refused?.field === name ? this.refused.message : '',
    );
  }

  _changed(event) {
    event.stopPropagation();
    if (event.detail.live) return;
    const changes = changesOf(event);
    if ('band' in changes)
      changes.frequency_hz = changes.band === null ? (this.request.frequency_hz ?? FIRST_SPOT_HZ) : null;
    send(this, 'jw-line-edit', {kind: 'station', changes});
  }
}

customElements.define('jw-line-station', JwLineStation);
