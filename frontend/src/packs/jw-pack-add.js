import {css, html, nothing} from 'lit';
import {element, of, state, value} from '../shared/elements/element.js';
import {send} from '../shared/elements/send.js';
import {base} from '../shared/styles/base.js';
import {blankEntry, freeId, ownSourceId} from './entries.js';
import {titleOf} from './faults.js';
import {blankOf, tablesOf} from './shapes.js';
import {BUILT_IN, SHAPES} from './start.js';

/**
 * @import {Entry, Transport} from '../shared/answers.js'
 * @import {PackDocument} from './entries.js'
 *
 * @typedef {object} NewEntry
 * @property {string} table
 * @property {Record<string, any>} entry
 * @property {boolean} replaces - whether it takes the place of a built-in one
 */

const NO_PACKS = [];
const TABLES = tablesOf(SHAPES);
const ADAPTERS = 'adapters';

/**
 * What is to be added to a pack: a copy of a built-in entry, adapters with one end, or an empty entry.
 *
 * @fires jw-add - NewEntry
 */
class JwPackAdd extends element({
  /** How the core is reached. */
  transport: value(/** @type {Transport} */ (of)),
  /** The pack it is added to. */
  document: value(/** @type {PackDocument} */ (of)),
  /** The connectors there are, those of the pack among them. */
  families: value(/** @type {Entry[]} */ (of)),
  _table: state(/** @type {string} */ (of)),
  _model: state(/** @type {string} */ (of)),
  _name: state(/** @type {string} */ (of)),
  _replaces: state(/** @type {boolean} */ (of)),
  _problem: state(/** @type {string} */ (of)),
}) {
  static styles = [
    base,
    css`
      :host { padding: var(--space-3) var(--space-3); background: var(--sunk); border-radius: var(--round); }
      div[role='group'] {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(190px, 1fr)); gap: var(--space-2) var(--space-4);
        align-items: end;
      }
      label { display: block; font-size: var(--type-small); font-weight: 600; margin-bottom: var(--space-1); }
    `,
  ];

  constructor() {
    super();
    this._table = TABLES[0].table;
    this._empty();
  }

  _empty() {
    this._model = '';
    this._name = '';
    this._replaces = false;
    this._problem = '';
  }

  /** Whether it starts as a copy, so that it needs a name of its own. */
  get _isCopy() {
    return this._table in BUILT_IN;
  }

  get _needsModel() {
    return this._isCopy || this._table === ADAPTERS;
  }

  get _modelLabel() {
    return this._isCopy ? 'A copy of' : 'One end';
  }

  render() {
    return html`<div role="group" aria-label="Add to the pack">
        ${this._choice(
          'what',
          'What to add',
          TABLES.map(({table, label}) => [table, label]),
          this._table,
          (table) => {
            this._empty();
            this._table = table;
          },
        )}
        ${this._needsModel ? this._models() : nothing} ${this._isCopy ? this._naming() : nothing}
        <button type="button" id="add" @click=${this._add}>Add</button>
      </div>
      <p class="error" role="alert">${this._problem}</p>`;
  }

  _choice(id, label, options, chosen, put) {
    return html`<div><label for=${id}>${label}</label>
      <select id=${id} @change=${({target}) => put(target.value)}>
        ${options.map(([one, words]) => html`<option value=${one} .selected=${one === chosen}>${words}</option>`)}
      </select></div>`;
  }

  _models() {
    const entries = this._isCopy ? BUILT_IN[this._table] : this.families;
    const options = [['', 'choose…'], ...entries.map(({id, name}) => [id, name])];
    return this._choice('model', this._modelLabel, options, this._model, (model) => (this._model = model));
  }

  _naming() {
    const places = [
      ['no', 'beside the built-in one'],
      ['yes', 'instead of the built-in one'],
    ];
    return html`<div><label for="new-name">Its name</label>
        <input id="new-name" type="text" autocomplete="off" maxlength="80" .value=${this._name}
          @input=${({target}) => (this._name = target.value)}></div>
      ${this._choice('replaces', 'It', places, this._replaces ? 'yes' : 'no', this._place)}`;
  }

  _place = (one) => {
    this._replaces = one === 'yes';
  };

  async _add() {
    this._problem = '';
    if (this._needsModel && this._model === '') {
      this._problem = `${this._modelLabel} is empty; allowed: one of the list.`;
      return;
    }
    try {
      const added = await this._newEntry();
      const isThere = (this.document[this._table] ?? []).some(({id}) => id === added.entry.id);
      if (isThere) {
        const nameOf = (family) => this.families.find(({id}) => id === family)?.name ?? family;
        this._problem = `${titleOf(added.entry, nameOf)} is in the pack already.`;
        return;
      }
      send(this, 'jw-add', {table: this._table, ...added});
      this._empty();
    } catch (error) {
      this._problem = /** @type {Error} */ (error).message;
    }
  }

  /** @returns {Promise<Omit<NewEntry, 'table'>>} */
  async _newEntry() {
    const {_table: table, _model: model, _name: named, _replaces: replaces} = this;
    if (table === ADAPTERS) return this._adapters(model);
    if (!this._isCopy) {
      const {part} = /** @type {{part: string}} */ (TABLES.find((one) => one.table === table));
      return {entry: blankEntry(SHAPES, this.document, table, part), replaces: false};
    }
    const copied = await this._copied(table, model);
    if (replaces) return {entry: {...copied, name: named.trim() || copied.name}, replaces};
    const name = named.trim() || `${copied.name}, own`;
    const ids = [...BUILT_IN[table], ...(this.document[table] ?? [])].map(({id}) => id);
    return {entry: {...copied, id: freeId(name, ids), name}, replaces};
  }

  async _copied(table, id) {
    const request = {interfaces: {entry: id}, cables: {cable: id}}[table] ?? {};
    const answer = await this._catalogue(request);
    return {interfaces: answer.entry, cables: answer.cable}[table] ?? answer[table].find((one) => one.id === id);
  }

  /** All adapters with a family at one end stand in one entry; where there is a built-in one, it is added to. */
  async _adapters(family) {
    const {adapters} = await this._catalogue({});
    const sold = adapters.find(({id}) => id === family);
    if (sold) return {entry: sold, replaces: true};
    const credit = {source: ownSourceId(ADAPTERS, family), kind: 'datasheet'};
    return {entry: {...blankOf(SHAPES, 'Adapter'), id: family, ...credit}, replaces: false};
  }

  /** What is built in, without any pack. */
  _catalogue(request) {
    return this.transport.ask('catalogue', request, {packs: NO_PACKS});
  }
}

customElements.define('jw-pack-add', JwPackAdd);
