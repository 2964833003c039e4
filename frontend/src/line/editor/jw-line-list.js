import {css, html} from 'lit';
import {element, of, state, value} from '../../shared/elements/element.js';
import {send} from '../../shared/elements/send.js';
import {base} from '../../shared/styles/base.js';
import {placeIn, readElement} from '../reading.js';
import {landing} from './drag.js';
import './jw-line-add.js';
import './jw-line-card.js';

/**
 * @import {Element, LineRequest} from '../../shared/lines/document.js'
 * @import {Placed} from '../placed.js'
 * @import {LineResult} from '../result.js'
 * @import {JwLineCard} from './jw-line-card.js'
 */

/**
 * The elements of a line in order; rows are moved by drag, by buttons and by Alt with the arrow keys.
 *
 * @fires jw-line-edit
 */
class JwLineList extends element({
  elements: value(/** @type {Element[]} */ (of)),
  /** The request of the result. */
  answered: value(/** @type {LineRequest | undefined} */ (of)),
  /** The last good answer; undefined before the first. */
  result: value(/** @type {LineResult | undefined} */ (of)),
  /** Of the elements. */
  names: value(/** @type {string[]} */ (of)),
  /** The element and field that must be corrected. */
  refused: value(/** @type {(Placed & {at: number}) | undefined} */ (of)),
  _open: state(/** @type {number} */ (of)),
  _drag: state(/** @type {{at: number, to: number} | undefined} */ (of)),
}) {
  static styles = [
    base,
    css`
      ol { list-style: none; margin: 0; padding: 0; display: grid; gap: var(--space-2); }
      li { position: relative; }
      li[data-moved] { opacity: 0.5; }
      li[data-before]::before, li[data-after]::after {
        content: ''; position: absolute; left: 0; right: 0; height: 4px; border-radius: 2px; background: var(--focus);
      }
      li[data-before]::before { top: -5px; }
      li[data-after]::after { bottom: -5px; }
      .end { padding: 2px 0 4px 44px; font-size: var(--type-small); color: var(--soft); }
      @media print { ol { gap: 0; } }
    `,
  ];

  constructor() {
    super();
    this._open = -1;
  }

  /** A refused field must be seen: its element opens. */
  willUpdate(changed) {
    const {refused} = this;
    const same = refused?.message === changed.get('refused')?.message;
    if (changed.has('refused') && refused && !same) this._open = refused.at;
  }

  render() {
    return html`<p class="end">Transmitter</p>
      <ol @jw-line-toggle=${this._toggled} @jw-line-grab=${this._grabbed} @jw-line-edit=${this._edited}
        @keydown=${this._key}>
        ${this.elements.map((one, at) => this._row(one, at))}
      </ol>
      <p class="end">Antenna</p>
      <jw-line-add where=${this._open === -1 ? 'before the antenna' : `after element ${this._open + 1}`}
        .frequency=${this.result?.frequency_hz} @jw-line-add=${this._add}></jw-line-add>`;
  }

  _row(one, at) {
    const place = placeIn(this.answered, one, at);
    const reading = place === -1 || !this.result ? undefined : readElement(this.result, place);
    const refused = this.refused?.at === at ? this.refused : undefined;
    const {at: from, to} = this._drag ?? {at: -1, to: -1};
    return html`<li ?data-moved=${from === at}
      ?data-before=${to === at && at < from} ?data-after=${to === at && at > from}>
      <jw-line-card .element=${one} .at=${at} .count=${this.elements.length} .name=${this.names[at]}
        .open=${at === this._open} .reading=${reading} .refused=${refused}></jw-line-card>
    </li>`;
  }

  _toggled(event) {
    this._open = this._open === event.detail.at ? -1 : event.detail.at;
  }

  _cards() {
    return /** @type {JwLineCard[]} */ ([...this.renderRoot.querySelectorAll('jw-line-card')]);
  }

  /** What is open and what has the focus go with the element. */
  async _edited({detail, target}) {
    const focused = target.focused;
    const [at, to] = [
      detail.at,
      {move: detail.to, duplicate: detail.at + 1, remove: Math.max(detail.at - 1, 0)}[detail.kind],
    ];
    if (to === undefined) return;
    if (this._open === at) this._open = detail.kind === 'remove' ? -1 : to;
    await Promise.resolve();
    await this.updateComplete;
    await this._cards()[to]?.updateComplete;
    this._cards()[to]?.focusOn(detail.kind === 'remove' ? 'toggle' : focused);
  }

  _key(event) {
    const step = {ArrowUp: -1, ArrowDown: 1}[event.key];
    const card = event.target.closest('jw-line-card');
    if (!event.altKey || step === undefined || !card) return;
    event.preventDefault();
    const to = card.at + step;
    if (to >= 0 && to < this.elements.length) send(card, 'jw-line-edit', {kind: 'move', at: card.at, to});
  }

  _grabbed({detail, target}) {
    const {pointer, at} = detail;
    if (pointer.button !== 0) return;
    const handle = pointer.currentTarget ?? pointer.composedPath()[0];
    handle.setPointerCapture(pointer.pointerId);
    const middles = this._cards()
      .map((card) => card.getBoundingClientRect())
      .map(({top, height}) => top + scrollY + height / 2);
    const moved = (event) => (this._drag = {at, to: landing(event.clientY + scrollY, middles, at)});
    const ended = (event) => {
      for (const [name, hear] of Object.entries(heard)) handle.removeEventListener(name, hear);
      const {to} = this._drag ?? {to: at};
      this._drag = undefined;
      if (event.type === 'pointerup' && to !== at) send(target, 'jw-line-edit', {kind: 'move', at, to});
    };
    const heard = {pointermove: moved, pointerup: ended, pointercancel: ended};
    for (const [name, hear] of Object.entries(heard)) handle.addEventListener(name, hear);
  }

  _add({detail}) {
    const at = this._open === -1 ? this.elements.length : this._open + 1;
    this._open = at;
    send(this, 'jw-line-edit', {kind: 'add', at, element: detail.element});
  }
}

customElements.define('jw-line-list', JwLineList);
