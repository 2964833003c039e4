import {css, html, nothing} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {inside} from '../../shared/elements/inside.js';
import {send} from '../../shared/elements/send.js';
import {changesOf, control} from '../../shared/fields/control.js';
import {base} from '../../shared/styles/base.js';
import {Speaking} from '../../shared/vocabulary/speaking.js';
import {dutyWords, endWords} from '../names.js';

/**
 * @import {Port} from '../edits.js'
 * @import {Refused} from '../placed.js'
 */

/** @typedef {JwKitPort} KitPort - the element */

const FIELDS = ['name', 'family', 'gender', 'highest_frequency_hz', 'power_w', 'impedance_ohm'];

/**
 * One port: what it is in a row, its fields under it when open.
 *
 * @fires jw-kit-edit
 * @fires jw-kit-toggle - {at}
 */
class JwKitPort extends element(
  {
    port: value(/** @type {Port} */ (of)),
    /** What it is called. */
    name: {type: String},
    /** Its place. */
    at: {type: Number},
    /** How many there are. */
    count: {type: Number},
    /** How many there may be. */
    most: {type: Number},
    open: {type: Boolean},
    /** Marks the field it names. */
    refused: value(/** @type {Refused | undefined} */ (of)),
  },
  Speaking,
) {
  static styles = [
    base,
    css`
      article { background: var(--card); border: 1px solid var(--line); border-radius: var(--round); }
      #toggle {
        display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: 0 var(--space-2); align-items: center;
        width: 100%; min-height: 48px; padding: var(--space-1) var(--space-3);
      }
      .name { display: block; font-weight: 600; overflow-wrap: anywhere; }
      .sub, .end { color: var(--soft); font-size: var(--type-small); line-height: 1.25; }
      .sub { display: block; }
      .end { white-space: nowrap; }
      .fields {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: var(--space-1) var(--space-3);
        align-items: end;
        padding: var(--space-2) var(--space-3) var(--space-half); background: var(--sunk);
      }
      .acts {
        display: flex; flex-wrap: wrap; gap: var(--space-2); padding: var(--space-1) var(--space-3) var(--space-3);
        background: var(--sunk);
        border-radius: 0 0 var(--round) var(--round);
      }
    `,
  ];

  render() {
    const {at, name, port, refused} = this;
    return html`<article aria-label=${name}>
      <button id="toggle" class="head" aria-expanded=${this.open} @click=${() => send(this, 'jw-kit-toggle', {at})}>
        <span><span class="name">${name}</span>
          <span class="sub">${
            refused ? html`<span class="error">needs a correction</span>` : dutyWords(port)
          }</span></span>
        <span class="end">${endWords(this.vocabulary.lists.families, port.family, port.gender)}</span>
      </button>
      ${this.open ? this._form() : nothing}
    </article>`;
  }

  _form() {
    const {at, count} = this;
    const act = (id, words, off, detail) =>
      html`<button id=${id} ?disabled=${off}
        @click=${() => send(this, 'jw-kit-edit', {at, ...detail})}>${words}</button>`;
    return html`<div class="fields" @jw-change=${this._changed}>
        ${FIELDS.map((name) => this._field(name))}
      </div>
      <div class="acts">
        ${act('up', 'Up', at === 0, {kind: 'move', to: at - 1})}
        ${act('down', 'Down', at === count - 1, {kind: 'move', to: at + 1})}
        ${act('duplicate', 'Duplicate', count >= this.most, {kind: 'duplicate'})}
        ${act('remove', 'Remove', false, {kind: 'remove'})}
      </div>`;
  }

  /** @param {string} name */
  _field(name) {
    const {port, refused} = this;
    const key = `port.${name}`;
    const error = refused?.field === name ? refused.message : '';
    return control(this.vocabulary, key, this.vocabulary.valueOf(port, key), error);
  }

  /** The control that has the focus, by its id, so that it can have it again elsewhere. */
  get focused() {
    return this.shadowRoot?.activeElement?.id ?? '';
  }

  focusOn(id) {
    const isFree = id !== '' && this.renderRoot.querySelector(`#${id}:not(:disabled)`) !== null;
    inside(this.renderRoot, isFree ? `#${id}` : '#toggle').focus();
  }

  _changed(event) {
    event.stopPropagation();
    if (!event.detail.live) send(this, 'jw-kit-edit', {kind: 'set', at: this.at, changes: changesOf(event)});
  }
}

customElements.define('jw-kit-port', JwKitPort);
