import {css, html, nothing} from 'lit';
import {element, of, value} from '../shared/elements/element.js';
import {send} from '../shared/elements/send.js';
import {changesOf, control} from '../shared/fields/control.js';
import {base} from '../shared/styles/base.js';
import {formStyles} from '../shared/styles/forms.js';
import {Speaking} from '../shared/vocabulary/speaking.js';
import './jw-fitout-date.js';
import {fieldOf} from './request.js';

/**
 * @import {Refused} from '../shared/answers.js'
 * @import {Line} from '../shared/lines/document.js'
 * @import {State} from './fields.js'
 */

const JOINT = ['family', 'adapter_to', 'cable', 'length_m', 'name', 'exposure', 'added_sealing'];
const MORE = [
  'power_w',
  'mode',
  'band',
  'frequency_hz',
  'vibration',
  'matings_per_year',
  'service_life_years',
  'ambient_temperature_c',
];
/** Where a spot frequency starts; the middle of a band most stations have. */
const FIRST_SPOT_HZ = 14.2e6;

/**
 * What is fitted: the line at hand or a single joint, with the words for its labels.
 *
 * @fires jw-fitout-change - {changes}; jw-fitout-own - the line of this browser is wanted
 */
class JwFitoutForm extends element(
  {
    state: value(/** @type {State} */ (of)),
    /** The line at hand. */
    line: value(/** @type {Line} */ (of)),
    /** Whether it came with a link. */
    linked: {type: Boolean},
    /** Marks the field it names. */
    refusal: value(/** @type {Refused | undefined} */ (of)),
  },
  Speaking,
) {
  static styles = [
    base,
    formStyles,
    css`:host {
      padding: var(--space-3); background: var(--card); border: 1px solid var(--line); border-radius: var(--round);
    }
    .double { grid-column: span 2; }
    p { margin: var(--space-1) 0 var(--space-2); font-size: var(--type-text); }
    p a { display: inline-grid; min-height: var(--target); align-items: center; }`,
  ];

  render() {
    return html`<div @jw-change=${this._changed}>
      <h2 class="unseen">What is fitted</h2>
      <div class="fields">${['of', 'station', 'date'].map((name) => this._field(name))}</div>
      ${this.state.of === 'line' ? this._line() : this._joint()}
    </div>`;
  }

  _line() {
    const {name, request} = this.line;
    const {length} = request.elements;
    const size = length === 1 ? 'one element' : `${length} elements`;
    return html`<p><b>${name}</b>, ${size}${this.linked ? ', as it came with the link' : ''}.
      <a href="#view=line">Change it in the Line view</a>
      ${
        this.linked ? html`<button @click=${() => send(this, 'jw-fitout-own')}>Use my own line</button>` : nothing
      }</p>`;
  }

  _joint() {
    return html`<div class="fields">${[...JOINT, ...MORE].map((name) => this._field(name))}</div>`;
  }

  _field(name) {
    if (name === 'length_m' && this.state.cable === null) return nothing;
    if (name === 'frequency_hz' && this.state.band !== null) return nothing;
    const key = `fitout.${name}`;
    const {refusal, state: joint} = this;
    const isRefused = refusal && fieldOf(refusal) === name;
    const error = isRefused ? refusal.message : '';
    if (name === 'date')
      return html`<jw-fitout-date class="double" name=${key} .value=${joint.date} .error=${error}></jw-fitout-date>`;
    return control(this.vocabulary, key, joint[name], error);
  }

  _changed(event) {
    event.stopPropagation();
    if (event.detail.live) return;
    const changes = changesOf(event);
    if ('band' in changes)
      changes.frequency_hz = changes.band === null ? (this.state.frequency_hz ?? FIRST_SPOT_HZ) : null;
    send(this, 'jw-fitout-change', {changes});
  }
}

customElements.define('jw-fitout-form', JwFitoutForm);
