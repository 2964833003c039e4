import {css, html, nothing} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {send} from '../../shared/elements/send.js';
import {changesOf, control} from '../../shared/fields/control.js';
import {base} from '../../shared/styles/base.js';
import {Speaking} from '../../shared/vocabulary/speaking.js';
import {TUNER} from '../new-parts.js';

/**
 * @import {LineRequest} from '../../shared/lines/document.js'
 * @import {Placed} from '../placed.js'
 */

const POWER = ['station.power_w', 'station.power_is'];
const BEHAVIOUR = ['transmitter.behaviour', 'transmitter.holds_to_vswr'];

/**
 * What sends into a line: its power, and what it does where the line does not suit it.
 *
 * @fires jw-line-edit
 */
class JwLineTransmitter extends element(
  {
    request: value(/** @type {LineRequest} */ (of)),
    refused: value(/** @type {Placed | undefined} */ (of)),
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
      [name='transmitter.behaviour'] { grid-column: span 2; }
      .tune {
        display: flex; flex-wrap: wrap; gap: var(--space-1) var(--space-3); align-items: center;
        margin-top: var(--space-1);
      }
      .tune p { flex: 1 1 200px; }
      .onpaper { display: none; }
      @media (max-width: 420px) { .fields { grid-template-columns: 1fr 1fr; } }
      @media print {
        .fields, .tune, .quiet { display: none; }
        .onpaper { display: block; }
      }
    `,
  ];

  render() {
    const isNet = this._value('station.power_is') === 'net';
    const names = isNet ? POWER : [...POWER, ...BEHAVIOUR];
    const tuned = this.request.elements.some(({kind}) => kind === 'tuner');
    return html`<p class="onpaper">${this._inWords(names)}</p>
      <div class="fields" @jw-change=${this._changed}>${names.map((name) => this._field(name))}</div>
      ${isNet ? html`<p class="quiet">Net power is what the line accepts, whatever its SWR.</p>` : this._usual()}
      ${
        tuned
          ? nothing
          : html`<div class="tune">
              <button id="tune" @click=${this._tune}>Put a tuner beside it</button>
              <p class="quiet">It finds its own setting on every band.</p>
            </div>`
      }`;
  }

  /** What the chosen transmitter does where no SWR is given. */
  _usual() {
    const {transmitters} = this.vocabulary.lists;
    const chosen = transmitters.find(({id}) => id === this._value('transmitter.behaviour'));
    if (this._value('transmitter.holds_to_vswr') !== null || !chosen?.holds_to_vswr) return nothing;
    return html`<p class="quiet">As usual: full power up to SWR ${chosen.holds_to_vswr}.</p>`;
  }

  /** For paper. */
  _inWords(names) {
    return names
      .filter((name) => this._value(name) !== null)
      .map((name) => `${this.vocabulary.labelOf(name)}: ${this.vocabulary.spoken(name, this._value(name))}`)
      .join(' · ');
  }

  /** @param {string} name */
  _value(name) {
    const record = name.startsWith('transmitter.') ? this.request.transmitter : this.request;
    return this.vocabulary.valueOf(record, name);
  }

  /** @param {string} name */
  _field(name) {
    const {group, field, message} = this.refused ?? {};
    return control(this.vocabulary, name, this._value(name), `${group}.${field}` === name ? message : '');
  }

  _changed(event) {
    event.stopPropagation();
    if (event.detail.live) return;
    const [kind] = Object.keys(event.detail.changes)[0].split('.');
    send(this, 'jw-line-edit', {kind, changes: changesOf(event)});
  }

  _tune() {
    send(this, 'jw-line-edit', {kind: 'add', at: 0, element: TUNER});
  }
}

customElements.define('jw-line-transmitter', JwLineTransmitter);
