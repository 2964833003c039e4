import {css, html, nothing} from 'lit';
import {element, of, state, value} from '../shared/elements/element.js';
import '../shared/fields/jw-choice-field.js';
import '../shared/fields/jw-list-field.js';
import '../shared/fields/jw-number-field.js';
import '../shared/fields/jw-switch-field.js';
import '../shared/fields/jw-toggles-field.js';
import {refusedField} from '../shared/fields/refused.js';
import {base} from '../shared/styles/base.js';
import {Speaking} from '../shared/vocabulary/speaking.js';

/**
 * @import {Refused} from '../shared/answers.js'
 * @import {State} from './fields.js'
 */

/**
 * Fields behind a button each; the most used ones stand above them.
 *
 * @type {[id: string, words: string, names: string[]][]}
 */
const GROUPS = [
  ['bands', 'Bands and powers', ['powers_w', 'power_is', 'region', 'frequencies_hz', 'bands']],
  ['families', 'Connectors', ['families']],
  ['keying', 'Keying', ['keying', 'transmit_share', 'on_time_s', 'off_time_s']],
  ['line', 'Line and cable', ['system_impedance_ohm', 'return_loss_asked_db', 'cable', 'cable_diameter_m']],
  ['site', 'Site', ['solar_irradiance_w_per_m2', 'altitude_m', 'vibration', 'added_sealing']],
  ['wear', 'Wear', ['matings_per_year', 'service_life_years', 'added_resistance_ohm']],
];
const ALL_FAMILIES = [{words: 'all', value: null}];
const ALWAYS = ['mode', 'vswr', 'ambient_temperature_c', 'exposure', 'condition'];
/** What "share" and "over and pause" start from. */
const KEYINGS = {
  mode: {transmit_share: null, on_time_s: null, off_time_s: null},
  share: {transmit_share: 0.5, on_time_s: null, off_time_s: null},
  overs: {transmit_share: null, on_time_s: 60, off_time_s: 60},
};

/**
 * The station around the joint, as a form.
 *
 * @fires jw-change
 */
class JwScenario extends element(
  {
    state: value(/** @type {State} */ (of)),
    /** Marks the field it names. */
    refusal: value(/** @type {Refused | undefined} */ (of)),
    _open: state(/** @type {string} */ (of)),
    /** Whether the groups are shown. */
    _isMore: state(/** @type {boolean} */ (of)),
    _unfolded: {type: Boolean, attribute: 'unfolded', reflect: true},
  },
  Speaking,
) {
  static styles = [
    base,
    css`
      :host { container-type: inline-size; }
      .fields {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: var(--space-1) var(--space-3);
      }
      .always { grid-template-columns: 1.4fr 1.35fr 1.35fr 1.2fr 1.2fr; }
      label { display: block; font-size: var(--type-small); font-weight: 600; margin-bottom: var(--space-1); }
      /* a slider needs room for a finger to aim: three fields side by side, then two */
      @container (max-width: 1170px) {
        .always { grid-template-columns: repeat(6, 1fr); }
        .always > * { grid-column: span 2; }
        .always > :nth-child(n + 4) { grid-column: span 3; }
      }
      .wide { grid-column: 1 / -1; }
      .double { grid-column: span 2; }
      .groups { margin-top: var(--space-1); display: flex; flex-wrap: wrap; gap: var(--space-2); }
      .groups .changed::after { content: ' •'; font-weight: 700; }
      .groups [aria-expanded='true'].changed::after { color: inherit; }
      .group {
        margin-top: var(--space-2); padding: var(--space-3) var(--space-3) var(--space-1); background: var(--sunk);
        border-radius: var(--round);
      }
      #conditions { display: none; }
      @media (max-width: 720px) {
        #conditions {
          display: grid; width: 100%; padding: 6px 36px 6px 12px; text-align: left; border: 0; position: relative;
        }
        #conditions::after { content: '▾'; position: absolute; right: 14px; top: 50%; translate: 0 -50%; }
        #conditions[aria-expanded='true']::after { content: '▴'; }
        #conditions small { opacity: 0.8; font-size: var(--type-fine); line-height: 1.3; }
        #conditions-form { padding: var(--space-2) var(--space-3); }
        :host(:not([unfolded])) #conditions-form { display: none; }
        .always { grid-template-columns: 1fr 1fr; }
        .always > :nth-child(2), .always > :nth-child(3) { grid-column: 1 / -1; }
        .always > :nth-child(n + 4) { grid-column: auto; }
      }
      @media (max-width: 420px) { .double { grid-column: 1 / -1; } }
    `,
  ];

  constructor() {
    super();
    this._open = '';
    this._isMore = false;
    this._unfolded = false;
  }

  /** A refused field must be seen: its group opens. */
  willUpdate(changed) {
    if (!changed.has('refusal') || !this.refusal) return;
    const group = GROUPS.find(([, , names]) => names.includes(this._refused));
    if (group) [this._open, this._isMore] = [group[0], true];
    if (this._refused in this.state) this._unfolded = true;
  }

  render() {
    const open = GROUPS.find(([id]) => id === this._open);
    return html`<button id="conditions" aria-expanded=${this._unfolded} aria-controls="conditions-form"
        @click=${() => (this._unfolded = !this._unfolded)}>
        <span>Conditions</span><small>${ALWAYS.map((name) => this._inWords(name)).join(' · ')}</small>
      </button>
      <div id="conditions-form">
      <div class="fields always">${ALWAYS.map((name) => this._field(name))}</div>
      <div class="groups">
        ${this._button(
          'more',
          'More settings',
          this._isMore,
          GROUPS.flatMap(([, , names]) => names),
          () => this._more(),
        )}
        <div class="groups" id="more" role="group" aria-label="More settings">${
          this._isMore
            ? GROUPS.map(([id, words, names]) =>
                this._button('group', words, id === this._open, names, () => this._toggle(id)),
              )
            : nothing
        }</div>
      </div>
      <div id="group" class=${open ? 'fields group' : ''}>
        ${open ? open[2].map((name) => this._field(name)) : nothing}
      </div>
      </div>`;
  }

  /** Unfolds what it controls; a dot says that something in there is not as on a first visit. */
  _button(controls, words, isOpen, names, turn) {
    return html`<button aria-expanded=${isOpen} aria-controls=${controls}
      class=${names.some((name) => this._differs(name)) ? 'changed' : ''} @click=${turn}>${words}</button>`;
  }

  _more() {
    this._isMore = !this._isMore;
    this._open = '';
  }

  get _refused() {
    return refusedField(this.refusal);
  }

  get _bands() {
    return this.vocabulary.lists.bands.map((band) => ({
      ...band,
      hidden: !band.regions.includes(String(this.state.region)),
    }));
  }

  get _sets() {
    const all = this._bands.filter(({hidden}) => !hidden).map(({id}) => id);
    return [
      {words: 'usual sixteen', value: this.vocabulary.first.matrix.bands},
      {words: 'all', value: all},
    ];
  }

  get _keying() {
    if (this.state.transmit_share !== null) return 'share';
    return this.state.on_time_s === null && this.state.off_time_s === null ? 'mode' : 'overs';
  }

  _differs(name) {
    return (
      name in this.state && JSON.stringify(this.state[name]) !== JSON.stringify(this.vocabulary.first.matrix[name])
    );
  }

  _field(name) {
    const given = this.state[name];
    const error = this.refusal && this._refused === name ? this.refusal.message : '';
    if (name === 'keying') return this._keyingField();
    if (name === 'transmit_share' && this._keying !== 'share') return nothing;
    if (name.endsWith('time_s') && this._keying !== 'overs') return nothing;
    if (name === 'cable_diameter_m' && this.state.cable !== null) return nothing;
    if (name === 'bands')
      return html`<jw-toggles-field class="wide" name="bands" of=" of Region ${this.state.region}"
        .choices=${this._bands} .sets=${this._sets}
        hint="National limits differ from the Region’s edges; yours decide." .value=${given}
        .error=${error}></jw-toggles-field>`;
    if (name === 'families')
      return html`<jw-toggles-field class="wide" name="families" .choices=${this.vocabulary.lists.families}
        .sets=${ALL_FAMILIES}
        hint="Pick those you own or can buy; the others leave the table." .value=${given}
        .error=${error}></jw-toggles-field>`;
    if (name === 'powers_w')
      return html`<jw-list-field class="double" name="powers_w" zero="receive" .value=${given}
        .error=${error}></jw-list-field>`;
    if (name === 'frequencies_hz')
      return html`<jw-list-field class="double" name="frequencies_hz" .value=${given} .error=${error}></jw-list-field>`;
    if (name === 'added_sealing')
      return html`<jw-switch-field name="added_sealing" .value=${given} .error=${error}></jw-switch-field>`;
    if (typeof this.vocabulary.first.matrix[name] === 'string' || name === 'region' || name === 'cable')
      return html`<jw-choice-field class=${name === 'cable' ? 'double' : ''} name=${name} .value=${given}
        .error=${error} .hint=${this._hint(name)}></jw-choice-field>`;
    return html`<jw-number-field name=${name} .value=${given} .error=${error}></jw-number-field>`;
  }

  _inWords(name) {
    const words = this.vocabulary.spoken(name, this.state[name]);
    return name === 'vswr' ? `SWR ${words}` : words;
  }

  _hint(name) {
    const mode = this.vocabulary.lists.modes.find(({id}) => id === this.state.mode);
    return name === 'mode' && mode ? `duty factor ${mode.duty_factor.value}` : '';
  }

  _keyingField() {
    return html`<div class="double">
      <label for="keying">How long it is on the air</label>
      <select id="keying" @change=${this._rekey}>
        ${[
          ['mode', 'the mode’s own rhythm'],
          ['share', 'a share of the time'],
          ['overs', 'overs and pauses'],
        ].map(([id, words]) => html`<option value=${id} .selected=${id === this._keying}>${words}</option>`)}
      </select>
    </div>`;
  }

  _rekey(event) {
    const detail = {changes: KEYINGS[event.target.value], live: false};
    this.dispatchEvent(new CustomEvent('jw-change', {detail, bubbles: true, composed: true}));
  }

  _toggle(group) {
    this._open = this._open === group ? '' : group;
  }
}

customElements.define('jw-scenario', JwScenario);
