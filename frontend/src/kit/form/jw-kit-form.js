import {css, html, nothing} from 'lit';
import {element, of, state, value} from '../../shared/elements/element.js';
import {send} from '../../shared/elements/send.js';
import {changesOf, control} from '../../shared/fields/control.js';
import '../../shared/fields/jw-own.js';
import {base} from '../../shared/styles/base.js';
import {formStyles} from '../../shared/styles/forms.js';
import {panelStyles} from '../../shared/styles/panels.js';
import {Speaking} from '../../shared/vocabulary/speaking.js';
import './jw-kit-owned.js';
import './jw-kit-pairs.js';
import './jw-kit-ports.js';

/**
 * @import {Request} from '../edits.js'
 * @import {Refused} from '../placed.js'
 */

const LIMITS = ['most_in_series', 'most_loss_db', 'mode', 'vswr', 'return_loss_asked_db', 'impedance_steps'];
const SITE = [
  ...[
    'exposure',
    'added_sealing',
    'vibration',
    'matings_per_year',
    'service_life_years',
    'condition',
    'added_resistance_ohm',
  ],
  ...['ambient_temperature_c', 'solar_irradiance_w_per_m2', 'altitude_m', 'cable', 'system_impedance_ohm'],
  ...['transmit_share', 'on_time_s', 'off_time_s', 'power_is', 'region'],
];

/**
 * What is to be joined, what is owned, and the limits.
 *
 * @fires jw-kit-edit
 */
class JwKitForm extends element(
  {
    request: value(/** @type {Request} */ (of)),
    /** What the kit has its own of, and other than the station's. */
    own: value(/** @type {string[]} */ (of)),
    /** What the ports are called. */
    names: value(/** @type {string[]} */ (of)),
    /** Marks the field it names. */
    refused: value(/** @type {Refused | undefined} */ (of)),
    _site: state(/** @type {boolean} */ (of)),
  },
  Speaking,
) {
  static styles = [
    base,
    panelStyles,
    formStyles,
    css`:host { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); align-content: start; }
    details { border: 0; }
    .ports { padding: var(--space-3) var(--space-2); }
    .ports h2 { padding-left: var(--space-2); }`,
  ];

  /** A refused field must be seen. */
  willUpdate(changed) {
    if (changed.has('refused') && this.refused?.group === 'limits' && SITE.includes(this.refused.field))
      this._site = true;
  }

  render() {
    const {names, request} = this;
    const refusedIn = (group) => (this.refused?.group === group ? this.refused : undefined);
    const set = SITE.filter((name) => name in request).length;
    return html`<section class="panel ports"><h2>Ports <small>of your gear, and the ends of its leads</small></h2>
        <jw-kit-ports .ports=${request.ports} .names=${names} .refused=${refusedIn('ports')}></jw-kit-ports></section>
      <section class="panel"><h2>Which must join <small>one pair at a time</small></h2>
        <jw-kit-pairs .request=${request} .names=${names} .refused=${refusedIn('pairs')}></jw-kit-pairs></section>
      <section class="panel"><h2>Adapters you own</h2>
        <jw-kit-owned .owned=${request.owned ?? []} .refused=${refusedIn('owned')}></jw-kit-owned></section>
      <section class="panel"><h2>Limits</h2>
        <jw-own of="This kit" what=${this.own.map((name) => this.vocabulary.labelOf(`kit.${name}`)).join(', ')}
          @jw-leave=${() => send(this, 'jw-kit-edit', {kind: 'leave', names: this.own})}></jw-own>
        <div class="fields" @jw-change=${this._changed}>${LIMITS.map((name) => this._field(name))}</div>
        <details ?open=${this._site} @toggle=${({target}) => (this._site = target.open)}>
          <summary>More about station and site${set > 0 ? ` (${set} set)` : ''}</summary>
          ${
            this._site
              ? html`<div class="fields" @jw-change=${this._changed}>${SITE.map((name) => this._field(name))}</div>`
              : nothing
          }
        </details></section>`;
  }

  _field(name) {
    const {refused, request} = this;
    const error = refused?.group === 'limits' && refused.field === name ? refused.message : '';
    return control(this.vocabulary, `kit.${name}`, this.vocabulary.valueOf(request, `kit.${name}`), error);
  }

  _changed(event) {
    event.stopPropagation();
    if (!event.detail.live) send(this, 'jw-kit-edit', {kind: 'limit', changes: changesOf(event)});
  }
}

customElements.define('jw-kit-form', JwKitForm);
