import {css, html, nothing} from 'lit';
import {send} from '../shared/elements/send.js';
import {changesOf, control} from '../shared/fields/control.js';
import '../shared/fields/jw-list-field.js';
import '../shared/fields/jw-toggles-field.js';
import {refusedField, refusedWords} from '../shared/fields/refused.js';
import {base} from '../shared/styles/base.js';
import {formStyles} from '../shared/styles/forms.js';
import {Speaking} from '../shared/vocabulary/speaking.js';

const GROUPS = [
  ['carries', 'What it carries', ['use', 'power_w', 'mode', 'vswr', 'bands', 'frequencies_hz']],
  [
    'sits',
    'Where it sits',
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
    'What it meets',
    [
      'cable',
      'cable_dielectric',
      'cable_diameter_m',
      'port',
      'largest_diameter_m',
      'system_impedance_ohm',
      'return_loss_asked_db',
      'region',
    ],
  ],
];
const NO_BANDS = [{words: 'none: spot frequencies only', value: []}];
const ROOMY = '(min-width: 1180px)';

const same = (one, other) => JSON.stringify(one) === JSON.stringify(other);

/**
 * The demands on one joint, as a form.
 *
 * @property {object} state
 * @property {{field?: string, message: string}} refusal - marks the field it names
 * @fires jw-choose-change - {changes, live}
 */
class JwChooseForm extends Speaking {
  static styles = [
    base,
    formStyles,
    css`:host { padding: 12px; background: var(--card); border: 1px solid var(--line); border-radius: var(--round); }
    .plan { max-width: 420px; }`,
  ];

  static properties = {state: {attribute: false}, refusal: {attribute: false}, _open: {state: true}};

  constructor() {
    super();
    this._open = new Set(matchMedia(ROOMY).matches ? GROUPS.map(([id]) => id) : ['carries']);
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
    </details>`;
  }

  _field(name) {
    const {state} = this;
    if (name.startsWith('cable_') && state.cable !== null) return nothing;
    if (name === 'power_w' && state.use === 'receive') return nothing;
    const of = `choose.${name}`;
    const error = refusedField(this.refusal) === name ? refusedWords(this.refusal, this.vocabulary.labelOf(of)) : '';
    if (name === 'bands') {
      const choices = this.vocabulary.lists.bands.map((band) => ({
        ...band,
        hidden: !band.regions.includes(String(state.region)),
      }));
      return html`<jw-toggles-field class="wide" name=${of} .choices=${choices} .sets=${NO_BANDS} .value=${state.bands} .error=${error}></jw-toggles-field>`;
    }
    if (name === 'frequencies_hz')
      return html`<jw-list-field class="wide" name=${of} .value=${state.frequencies_hz} .error=${error}></jw-list-field>`;
    return control(this.vocabulary, of, state[name], error);
  }

  _toggled(id, isOpen) {
    if (this._open.has(id) === isOpen) return;
    const open = new Set(this._open);
    if (!open.delete(id)) open.add(id);
    this._open = open;
  }

  _changed(event) {
    event.stopPropagation();
    send(this, 'jw-choose-change', {changes: changesOf(event), live: event.detail.live});
  }
}

customElements.define('jw-choose-form', JwChooseForm);
