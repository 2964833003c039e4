import {css, html} from 'lit';
import {element, of, state, value} from '../../shared/elements/element.js';
import {send} from '../../shared/elements/send.js';
import {base} from '../../shared/styles/base.js';
import {Speaking} from '../../shared/vocabulary/speaking.js';
import {NEW_PORT} from '../example.js';
import './jw-kit-port.js';
import './jw-kit-typed.js';

/**
 * @import {Bounds, Port} from '../edits.js'
 * @import {Refused} from '../placed.js'
 * @import {KitPort} from './jw-kit-port.js'
 */

/**
 * The ports of a kit in order; they are moved by buttons and by Alt with the arrow keys.
 *
 * @fires jw-kit-edit
 */
class JwKitPorts extends element(
  {
    ports: value(/** @type {Port[]} */ (of)),
    /** What they are called. */
    names: value(/** @type {string[]} */ (of)),
    /** The port and field that must be corrected. */
    refused: value(/** @type {Refused | undefined} */ (of)),
    _open: state(/** @type {number} */ (of)),
  },
  Speaking,
) {
  static styles = [
    base,
    css`
      ol { list-style: none; margin: 0; padding: 0; display: grid; gap: var(--space-2); }
      #add { margin-top: var(--space-2); font-size: var(--type-small); }
    `,
  ];

  constructor() {
    super();
    this._open = -1;
  }

  /** A refused field must be seen: its port opens. */
  willUpdate(changed) {
    const {refused} = this;
    const same = refused?.message === changed.get('refused')?.message;
    if (changed.has('refused') && refused && !same) this._open = refused.at ?? -1;
  }

  render() {
    const {names, ports, refused} = this;
    const {most} = /** @type {Bounds} */ (this.vocabulary.fields.kit.ports);
    return html`<ol @jw-kit-toggle=${this._toggled} @jw-kit-edit=${this._edited} @keydown=${this._key}>
        ${ports.map(
          (
            port,
            at,
          ) => html`<li><jw-kit-port .port=${port} .name=${names[at]} .at=${at} .count=${ports.length} .most=${most}
            .open=${at === this._open}
            .refused=${refused?.at === at ? refused : undefined}></jw-kit-port></li>`,
        )}
      </ol>
      <jw-kit-typed .ports=${ports} ?full=${ports.length >= most}></jw-kit-typed>
      <button id="add" ?disabled=${ports.length >= most} @click=${this._add}>Add a port by its fields</button>`;
  }

  _toggled({detail: {at}}) {
    this._open = this._open === at ? -1 : at;
  }

  /** What is open and what has the focus go with the port. */
  async _edited({detail, target}) {
    const {at, kind} = detail;
    const to = {move: detail.to, duplicate: at + 1, remove: Math.max(at - 1, 0)}[kind];
    if (to === undefined) return;
    const {focused} = target;
    if (this._open === at) this._open = kind === 'remove' ? -1 : to;
    await this._focus(to, kind === 'remove' ? 'toggle' : focused);
  }

  async _focus(at, id) {
    await Promise.resolve();
    await this.updateComplete;
    const cards = /** @type {NodeListOf<KitPort>} */ (this.renderRoot.querySelectorAll('jw-kit-port'));
    const card = cards[at];
    await card?.updateComplete;
    card?.focusOn(id);
  }

  _key(event) {
    const step = {ArrowUp: -1, ArrowDown: 1}[event.key];
    const card = event.target.closest('jw-kit-port');
    if (!event.altKey || step === undefined || !card) return;
    event.preventDefault();
    const to = card.at + step;
    if (to >= 0 && to < this.ports.length) send(card, 'jw-kit-edit', {kind: 'move', at: card.at, to});
  }

  _add() {
    this._open = this.ports.length;
    send(this, 'jw-kit-edit', {kind: 'add', port: NEW_PORT});
  }
}

customElements.define('jw-kit-ports', JwKitPorts);
