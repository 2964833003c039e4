import {css, html, nothing} from 'lit';
import {element, of, state, value} from '../shared/elements/element.js';
import {send} from '../shared/elements/send.js';
import {changesOf, control} from '../shared/fields/control.js';
import {base} from '../shared/styles/base.js';
import {Speaking} from '../shared/vocabulary/speaking.js';
import {refusalOf} from './refusal.js';

/**
 * Some of what a station has: one to a row, with its fields under it when open.
 *
 * @fires jw-station-edit - {what: add | remove | set | use, list, at, fields}
 */
class JwStationList extends element(
  {
    /** The list's name: rigs, antennas or gear. */
    list: {type: String},
    items: value(/** @type {any[]} */ (of)),
    /** The place of the one in use; -1 for none, undefined where all are. */
    used: value(/** @type {number | undefined} */ (of)),
    /** What one of them is called. */
    one: {type: String},
    /** Whether there is no room for more. */
    full: {type: Boolean},
    /** The controls of an item, "group.field", with its value for each. */
    fieldsOf: value(/** @type {(item: any) => [name: string, value: any][]} */ (of)),
    /** What an item is called, and what is said of it. */
    wordsOf: value(/** @type {(item: any) => [name: string, more: string]} */ (of)),
    _open: state(/** @type {number} */ (of)),
    /** Why a value was not taken, by its control. */
    _refused: state(/** @type {{name: string, message: string} | undefined} */ (of)),
  },
  Speaking,
) {
  static styles = [
    base,
    css`
      ul { list-style: none; padding: 0; display: grid; gap: var(--space-2); }
      li { background: var(--card); border: 1px solid var(--line); border-radius: var(--round); }
      .row { display: grid; grid-template-columns: auto minmax(0, 1fr); align-items: center; }
      .row:not(:has(.use)) { grid-template-columns: minmax(0, 1fr); }
      .use { display: grid; place-items: center; min-width: var(--target); min-height: 48px; cursor: pointer; }
      .use input { width: 20px; height: 20px; margin: 0; accent-color: var(--accent); }
      .toggle {
        display: block; width: 100%; min-height: 48px; padding: var(--space-1) var(--space-3);
      }
      .use + .toggle { padding-left: 0; }
      .name { display: block; font-weight: 600; overflow-wrap: anywhere; }
      .more { display: block; color: var(--soft); font-size: var(--type-small); line-height: 1.25; }
      .form {
        padding: var(--space-2) var(--space-3) var(--space-3); background: var(--sunk);
        border-radius: 0 0 var(--round) var(--round);
      }
      .fields {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: var(--space-1) var(--space-3);
        align-items: start;
      }
      .add { margin-top: var(--space-2); }
      @media (max-width: 420px) { .fields { grid-template-columns: 1fr 1fr; } }
    `,
  ];

  constructor() {
    super();
    this._open = -1;
  }

  render() {
    return html`${this.items.length > 0 ? html`<ul>${this.items.map((item, at) => this._row(item, at))}</ul>` : nothing}
      <button class="add" ?disabled=${this.full} @click=${this._add}>Add ${this.one}</button>`;
  }

  _row(item, at) {
    const [name, more] = this.wordsOf(item);
    const isOpen = at === this._open;
    const use = () => send(this, 'jw-station-edit', {what: 'use', list: this.list, at});
    return html`<li>
      <div class="row">
        ${
          this.used === undefined
            ? nothing
            : html`<label class="use"><input type="checkbox" .checked=${at === this.used}
                aria-label="Use ${name}" @change=${use}></label>`
        }
        <button class="head toggle" aria-expanded=${isOpen} @click=${() => this._toggle(at)}>
          <span class="name">${name}</span>
          <span class="more">${at === this.used ? `in use, ${more}` : more}</span>
        </button>
      </div>
      ${isOpen ? this._form(item, at) : nothing}
    </li>`;
  }

  _form(item, at) {
    const {name: refused, message = ''} = this._refused ?? {};
    const error = (name) => (refused === name ? message : '');
    const remove = () => {
      this._open = -1;
      send(this, 'jw-station-edit', {what: 'remove', list: this.list, at});
    };
    return html`<div class="form">
      <div class="fields" @jw-change=${(event) => this._changed(event, at)}>
        ${this.fieldsOf(item).map(([name, one]) => control(this.vocabulary, name, one, error(name)))}
      </div>
      <button class="remove" @click=${remove}>Remove</button>
    </div>`;
  }

  _toggle(at) {
    this._open = this._open === at ? -1 : at;
    this._refused = undefined;
  }

  _add() {
    this._open = this.items.length;
    send(this, 'jw-station-edit', {what: 'add', list: this.list});
  }

  /** A value out of its range is not taken. */
  _changed(event, at) {
    event.stopPropagation();
    if (event.detail.live) return;
    const [[name, given]] = Object.entries(event.detail.changes);
    const message = refusalOf(this.vocabulary, name, given);
    this._refused = message ? {name, message} : undefined;
    if (!message) send(this, 'jw-station-edit', {what: 'set', list: this.list, at, fields: changesOf(event)});
  }
}

customElements.define('jw-station-list', JwStationList);
