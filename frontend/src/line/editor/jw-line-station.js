import {css, html, nothing} from 'lit';
import {send} from '../../shared/elements/send.js';
import {changesOf, control} from '../../shared/fields/control.js';
import {base} from '../../shared/styles/base.js';
import {Speaking} from '../../shared/vocabulary/speaking.js';

const ALWAYS = ['power_w', 'mode', 'band', 'frequency_hz', 'exposure', 'ambient_temperature_c'];
const MORE = [
  ...[
    'altitude_m',
    'solar_irradiance_w_per_m2',
    'added_sealing',
    'vibration',
    'matings_per_year',
    'service_life_years',
  ],
  ...[
    'transmit_share',
    'on_time_s',
    'off_time_s',
    'power_is',
    'system_impedance_ohm',
    'return_loss_asked_db',
    'region',
  ],
];
/** Where a spot frequency starts; the middle of a band most stations have. */
const FIRST_SPOT_HZ = 14.2e6;

/**
 * The station and the site of a line.
 *
 * @property {object} request
 * @property {{field: string, message: string}} refused
 * @fires jw-line-edit
 */
class JwLineStation extends Speaking {
  static styles = [
    base,
    css`
      .fields { display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: 4px 12px; align-items: end; }
      summary { cursor: pointer; min-height: var(--target); align-content: center; color: var(--accent); font-size: 0.9rem; }
      .onpaper { display: none; }
      @media (max-width: 420px) { .fields { grid-template-columns: 1fr 1fr; } }
      @media print { .fields, details { display: none; } .onpaper { display: block; font-size: 8pt; } }
    `,
  ];

  static properties = {request: {attribute: false}, refused: {attribute: false}, _more: {state: true}};

  /** A refused field must be seen. */
  willUpdate(changed) {
    if (changed.has('refused') && MORE.includes(this.refused?.field)) this._more = true;
  }

  render() {
    const changed = MORE.filter((name) => this._value(name) !== this.vocabulary.valueOf({}, `station.${name}`)).length;
    return html`<p class="onpaper">${this._inWords()}</p>
      <div class="fields" @jw-change=${this._changed}>${ALWAYS.map((name) => this._field(name))}</div>
      <details ?open=${this._more} @toggle=${(event) => (this._more = event.target.open)}>
        <summary>More about station and site${changed > 0 ? ` (${changed} set)` : ''}</summary>
        ${this._more ? html`<div class="fields" @jw-change=${this._changed}>${MORE.map((name) => this._field(name))}</div>` : nothing}
      </details>`;
  }

  /** What is set, for paper. */
  _inWords() {
    const given = [...ALWAYS, ...MORE].filter(
      (name) => ALWAYS.includes(name) || this._value(name) !== this.vocabulary.valueOf({}, `station.${name}`),
    );
    const known = given.filter((name) => this._value(name) !== null);
    return known
      .map(
        (name) =>
          `${this.vocabulary.labelOf(`station.${name}`)}: ${this.vocabulary.spoken(`station.${name}`, this._value(name))}`,
      )
      .join(' · ');
  }

  _value(name) {
    return this.vocabulary.valueOf(this.request, `station.${name}`);
  }

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
