import {css, html, nothing} from 'lit';
import {element, of, state, value} from '../shared/elements/element.js';
import {send} from '../shared/elements/send.js';
import {changesOf, control} from '../shared/fields/control.js';
import '../shared/fields/jw-list-field.js';
import '../shared/fields/jw-toggles-field.js';
import {refusedField} from '../shared/fields/refused.js';
import {base} from '../shared/styles/base.js';
import {formStyles} from '../shared/styles/forms.js';
import {Speaking} from '../shared/vocabulary/speaking.js';
import {missingWords} from './fields.js';
import {placed, withPlace} from './place.js';

/**
 * @import {Refused} from '../shared/answers.js'
 * @import {Demands} from './fields.js'
 */

/** @type {[id: string, words: string, names: string[]][]} */
const GROUPS = [
  [
    'carries',
    'What it carries',
    ['use', 'power_w', 'mode', 'vswr', 'margin_asked_db', 'dc_current_a', 'dc_voltage_v', 'bands', 'frequencies_hz'],
  ],
  [
    'sits',
    'Place and weather',
    [
      'installation',
      'exposure',
      'added_sealing',
      'vibration',
      'ambient_temperature_c',
      'solar_irradiance_w_per_m2',
      'altitude_m',
    ],
  ],
  ['used', 'How it is used', ['matings_per_year', 'service_life_years', 'condition']],
  [
    'meets',
    'What it must fit',
    [
      'cable',
      'cable_diameter_m',
      'port',
      'largest_diameter_m',
      'system_impedance_ohm',
      'return_loss_asked_db',
      'region',
    ],
  ],
];
const PLACE_WORDS = 'The place sets weather, sealing and vibration together; change any of them afterwards.';
const NO_BANDS = [{words: 'none: spot frequencies only', value: []}];
const ROOMY = '(min-width: 1180px)';

/** Whether a field has nothing to say beside the others. */
const isBeside = (name, demands) =>
  (name === 'cable_diameter_m' && demands.cable !== null) ||
  (['power_w', 'margin_asked_db'].includes(name) && demands.use === 'receive') ||
  (name === 'dc_voltage_v' && demands.dc_current_a === 0);

const same = (one, other) => JSON.stringify(one) === JSON.stringify(other);

/**
 * The demands on one joint, as a form.
 *
 * @fires jw-choose-change - {changes, live}
 */
class JwChooseForm extends element(
  {
    state: value(/** @type {Demands} */ (of)),
    /** Marks the field it names. */
    refusal: value(/** @type {Refused | undefined} */ (of)),
    _open: state(/** @type {Set<string>} */ (of)),
  },
  Speaking,
) {
  static styles = [
    base,
    formStyles,
    css`:host {
      padding: var(--space-3); background: var(--card); border: 1px solid var(--line); border-radius: var(--round);
    }
    .plan { max-width: 420px; }`,
  ];

  constructor() {
    super();
    this._open = new Set(matchMedia(ROOMY).matches ? GROUPS.map(([id]) => id) : []);
  }

  /** A refused field must be seen: its group opens. */
  willUpdate(changed) {
    if (!changed.has('refusal') || !this.refusal) return;
    const group = GROUPS.find(([, , names]) => names.includes(refusedField(this.refusal)));
    if (group) this._open = new Set([...this._open, group[0]]);
  }

  render() {
    return html`<div @jw-change=${this._changed}>
      <h2 class="unseen">Demands</h2>
      <div class="plan">${this._field('plan')}</div>
      ${GROUPS.map((group) => this._group(group))}
    </div>`;
  }

  _group([id, words, names]) {
    const open = this._open.has(id);
    const set = names.filter((name) => !same(this.state[name], this.vocabulary.first.choose[name]));
    const said = set.map((name) => this.vocabulary.spoken(`choose.${name}`, this.state[name])).join(' · ');
    return html`<details data-group=${id} ?open=${open} @toggle=${(event) => this._toggled(id, event.target.open)}>
      <summary>${words} ${said && !open ? html`<small>${said}</small>` : nothing}</summary>
      <div class="fields">${open ? names.map((name) => this._field(name)) : nothing}</div>
      ${open && id === 'sits' ? html`<p class="quiet">${PLACE_WORDS}</p>` : nothing}
    </details>`;
  }

  _field(name) {
    const demands = placed(this.state, this.vocabulary.lists);
    if (isBeside(name, demands)) return nothing;
    const key = `choose.${name}`;
    const {refusal} = this;
    const isRefused = refusal && refusedField(refusal) === name;
    const error = isRefused ? refusal.message : '';
    if (name === 'bands') {
      const choices = this.vocabulary.lists.bands.map((band) => ({
        ...band,
        hidden: !band.regions.includes(String(demands.region)),
      }));
      return html`<jw-toggles-field class="wide" name=${key} .choices=${choices} .sets=${NO_BANDS}
        .value=${demands.bands} .error=${error || missingWords(demands, this.vocabulary)}></jw-toggles-field>`;
    }
    if (name === 'frequencies_hz')
      return html`<jw-list-field class="wide" name=${key} .value=${demands.frequencies_hz}
        .error=${error}></jw-list-field>`;
    return control(this.vocabulary, key, demands[name], error);
  }

  _toggled(id, isOpen) {
    if (this._open.has(id) === isOpen) return;
    const open = new Set(this._open);
    if (!open.delete(id)) open.add(id);
    this._open = open;
  }

  _changed(event) {
    event.stopPropagation();
    const changes = withPlace(changesOf(event), this.state, this.vocabulary.lists);
    send(this, 'jw-choose-change', {changes, live: event.detail.live});
  }
}

customElements.define('jw-choose-form', JwChooseForm);
