import {ContextConsumer} from '@lit/context';
import {css, html, nothing} from 'lit';
import {repeat} from 'lit/directives/repeat.js';
import {element, of, state, value} from '../shared/elements/element.js';
import {send} from '../shared/elements/send.js';
import {save} from '../shared/export/save.js';
import '../shared/fields/jw-list-field.js';
import {advanced, begun, redone, undone} from './history.js';
import {base} from '../shared/styles/base.js';
import {formStyles} from '../shared/styles/forms.js';
import {panelStyles} from '../shared/styles/panels.js';
import {vocabularyContext} from '../shared/vocabulary/speaking.js';
import {chipStyles} from './chips.js';
import {
  FIRST_DOCUMENT,
  added,
  documentOf,
  freeId,
  kindOf,
  ofKind,
  removed,
  sourceOf,
  textOf,
  withField,
  withFigure,
  withPart,
  withRow,
  withSource,
} from './entries.js';
import {faultsOf, refused, titleOf} from './faults.js';
import {fieldsOf, partStyles} from './part-form.js';
import './jw-pack-add.js';
import {put, word} from './paths.js';
import {tablesOf} from './shapes.js';
import {showPlace} from './show-place.js';
import {GROUPS, KINDS, SHAPES} from './start.js';

/**
 * @import {Refused, Transport} from '../shared/answers.js'
 * @import {History} from './history.js'
 * @import {Vocabulary} from '../shared/vocabulary/vocabulary.js'
 * @import {PackDocument} from './entries.js'
 * @import {Fault} from './faults.js'
 * @import {Desk} from './part-form.js'
 * @import {Path} from './paths.js'
 */

const TABLES = tablesOf(SHAPES);

/** Where the page's lists of names hold the entries of a pack's table. */
const LISTS = {interfaces: 'families', cables: 'cables', wire_lines: 'wire_lines', bands: 'bands', modes: 'modes'};

const some = (part, isIn) => Object.fromEntries(Object.entries(SHAPES[part]).filter(([field]) => isIn(field)));

/** What a pack says of itself; its tables come below. */
const HEAD = {...SHAPES, Pack: some('Pack', (field) => ['name', 'version', 'note'].includes(field))};
/** Of a source, what every entry has to say, and the rest. */
const TITLE = {...SHAPES, PackSource: some('PackSource', (field) => field === 'title')};
const REST = {...SHAPES, PackSource: some('PackSource', (field) => field !== 'title')};

/** How many faults are told at a time. */
const MOST_FAULTS = 6;

/**
 * A form that makes a pack: connectors, cables, adapters and the rest, each started as a copy of one that exists or
 * from nothing, in the units of data sheets. It works on the document of the pack's file.
 *
 * @fires jw-pack-made - {text, label}: the pack is to be taken
 */
class JwPackForm extends element({
  /** How the core is reached. */
  transport: value(/** @type {Transport} */ (of)),
  /** Ids of the packs there are. */
  taken: value(/** @type {string[]} */ (of)),
  _history: state(/** @type {History<PackDocument>} */ (of)),
  _faults: state(/** @type {Fault[]} */ (of)),
  _said: state(/** @type {string} */ (of)),
  /** Of entries without a figure of their own yet, by place. */
  _kinds: state(/** @type {Record<string, string>} */ (of)),
}) {
  static styles = [
    base,
    formStyles,
    panelStyles,
    chipStyles,
    partStyles,
    css`
      label { display: block; font-size: var(--type-small); font-weight: 600; margin-bottom: var(--space-1); }
      h3 { margin: var(--space-4) 0 var(--space-2); }
      h4 { margin: var(--space-1) 0; font-size: var(--type-small); }
      h4 small { font-weight: 400; color: var(--soft); }
      .bar { display: flex; flex-wrap: wrap; gap: var(--space-2); margin-top: var(--space-4); }
      .entry {
        padding: var(--space-1) var(--space-3) var(--space-3); margin-top: var(--space-2);
        border: 1px solid var(--line); border-radius: var(--round);
      }
      .entry:not([open]) { padding-bottom: var(--space-1); }
      .entry > summary { overflow-wrap: anywhere; }
      .entry > summary small { padding-left: var(--space-2); }
      .entry > .quiet { margin: var(--space-half) 0 var(--space-2); }
      .faults { padding-left: 0; list-style: none; }
      .faults button {
        min-height: 32px; padding: var(--space-half) var(--space-2); text-align: left; color: var(--alarm);
        border-color: var(--alarm);
        font-size: var(--type-small);
      }
      .faults { display: grid; gap: var(--space-1); }
    `,
  ];

  constructor() {
    super();
    this._vocabulary = new ContextConsumer(this, {context: vocabularyContext, subscribe: true});
    this.taken = [];
    this._history = begun(FIRST_DOCUMENT);
    this._begin(FIRST_DOCUMENT);
  }

  /** A document to work on; what went before can be had back. */
  _begin(document) {
    this._history = advanced(this._history, document);
    this._faults = [];
    this._said = '';
    this._kinds = {};
  }

  /**
   * Opens a pack to be changed.
   *
   * @param {string} text
   */
  async open(text) {
    this._begin(documentOf(text));
    await this.updateComplete;
    const details = /** @type {HTMLDetailsElement} */ (this.renderRoot.querySelector('details'));
    details.open = true;
    details.querySelector('summary')?.focus();
    details.scrollIntoView({block: 'start'});
  }

  /**
   * Tells what the core has against the pack.
   *
   * @param {Refused} refusal
   */
  refuse(refusal) {
    this._faults = [refused(SHAPES, this._document, refusal, this._nameOf)];
  }

  /** Tells, where the reader is, that the core took the pack. */
  accept() {
    this._said = `${this._document.name} is in use.`;
  }

  get _document() {
    return this._history.present;
  }

  get _lists() {
    return /** @type {Vocabulary} */ (this._vocabulary.value).lists;
  }

  /** @returns {Desk} */
  get _desk() {
    return {
      shapes: SHAPES,
      document: this._document,
      vocabulary: /** @type {Vocabulary} */ (this._vocabulary.value),
      entriesOf: (table) => this._entriesOf(table),
      faultAt: (path) => this._faults.find((fault) => !fault.isTold && word(fault.path) === word(path))?.brief ?? '',
      putFigure: (path, given) => this._change(path, withFigure(this._document, path, given, this._kindOf(path))),
      putField: (path, given) => this._change(path, withField(this._document, path, given, this._kindOf(path))),
      addRow: (path, part) => this._change(path, withRow(SHAPES, this._document, path, part, this._kindOf(path))),
      addPart: (path, part) => this._change(path, withPart(SHAPES, this._document, path, part, this._kindOf(path))),
    };
  }

  /** Those of the catalogue, of the packs in force, and of this one. */
  _entriesOf(table) {
    const own = (this._document[table] ?? []).map(({id, name}) => ({id, name: name || id}));
    const ids = new Set(own.map(({id}) => id));
    return [...(this._lists[LISTS[table]] ?? []).filter(({id}) => !ids.has(id)), ...own];
  }

  _nameOf = (family) => this._entriesOf('interfaces').find(({id}) => id === family)?.name ?? family;

  /** @param {Path} path */
  _kindOf([table, index]) {
    const entry = this._document[table]?.[index];
    if (entry?.id === undefined) return KINDS[0];
    return this._kinds[`${table}/${entry.id}`] ?? kindOf(this._document, [table, index]);
  }

  /** A change ends what was said of the place it is at. */
  _change(path, document) {
    this._faults = this._faults.filter((fault) => !word(fault.path).startsWith(word(path)));
    this._said = '';
    this._history = advanced(this._history, document);
  }

  render() {
    const {past, future} = this._history;
    const desk = this._desk;
    const {name = '', default_powers_w: powers = []} = desk.document;
    return html`<details class="panel">
      <summary>Make a pack <small>connectors, cables, adapters, bands, modes and limits of your own</small></summary>
      <div class="bar">
        <button type="button" id="undo" ?disabled=${past.length === 0} @click=${() => this._step(undone)}>Undo</button>
        <button type="button" id="redo" ?disabled=${future.length === 0}
          @click=${() => this._step(redone)}>Redo</button>
        <button type="button" @click=${this._restart}>Start again</button>
      </div>
      <form novalidate @submit=${this._made}>
        <h3>The pack${name ? html` “${name}”` : nothing}</h3>
        ${fieldsOf({...desk, shapes: HEAD}, 'Pack', [])}
        <div @jw-change=${(event) => this._powers(event)}>
          <jw-list-field name="Pack.default_powers_w" zero="receive" .value=${powers}></jw-list-field>
        </div>
        ${TABLES.map(({table, part, label}) =>
          repeat(
            desk.document[table] ?? [],
            ({id}) => `${table}/${id}`,
            (entry, index) => this._entry(desk, {table, part, label}, entry, index),
          ),
        )}
        <h3>Add to it</h3>
        <jw-pack-add .transport=${this.transport} .document=${desk.document}
          .families=${this._entriesOf('interfaces')} @jw-add=${this._add}></jw-pack-add>
        <div role="alert">
          ${this._faultsTold()}
        </div>
        <p class="quiet" role="status">${this._said}</p>
        <div class="bar">
          <button id="take">Use this pack</button>
          <button type="button" id="save-draft" @click=${this._save}>Save as file</button>
        </div>
      </form>
    </details>`;
  }

  _entry(desk, {table, part, label}, entry, index) {
    const path = [table, index];
    const source = sourceOf(desk.document, path);
    const at = desk.document.sources.findIndex(({id}) => id === source);
    const isIn = (group) => Object.values(SHAPES[part]).some((facts) => facts.group === group);
    const title = titleOf(entry, this._nameOf);
    const isOverride = desk.document.overrides?.[table]?.includes(entry.id);
    const what = `${label.toLowerCase()}${isOverride ? ', in place of the built-in one' : ''}`;
    return html`<details class="entry" open role="group" aria-label="${label} ${title}"
      data-entry="${table}/${entry.id}">
      <summary>${title} <small>${what}</small></summary>
      ${fieldsOf(desk, part, path, '')}
      ${at === -1 ? nothing : fieldsOf({...desk, shapes: TITLE}, 'PackSource', ['sources', at])}
      <p class="quiet">A figure that you change has this source; the others keep theirs.</p>
      ${GROUPS.filter(isIn).map(
        (group) =>
          html`<details class="group"><summary>${group}</summary>${fieldsOf(desk, part, path, group)}</details>`,
      )}
      <details class="group">
        <summary>More on the source <small>${this._kindOf(path)}</small></summary>
        <div class="controls">
          <div class="control">
            <label for="kind-${word(path)}">Your figures are</label>
            <select id="kind-${word(path)}" @change=${({target}) => this._setKind(path, target.value)}>
              ${KINDS.map((kind) => html`<option .selected=${kind === this._kindOf(path)}>${kind}</option>`)}
            </select>
          </div>
        </div>
        ${at === -1 ? nothing : fieldsOf({...desk, shapes: REST}, 'PackSource', ['sources', at])}
      </details>
      <div class="tools">
        <button type="button" @click=${() => this._drop(table, index, title)}>Remove <span
          class="unseen">${title}</span> from the pack</button>
      </div>
    </details>`;
  }

  async _add({detail: {table, entry, replaces}}) {
    const index = (this._document[table] ?? []).length;
    const path = [table, index];
    this._change(path, withSource(added(this._document, table, entry, replaces), path));
    this._said = `${titleOf(entry, this._nameOf)} is in the pack.`;
    for (const other of this.renderRoot.querySelectorAll('details.entry')) other.removeAttribute('open');
    await this.updateComplete;
    this._show(path);
  }

  _drop(table, index, title) {
    this._change([table], removed(this._document, table, index));
    this._said = `${title} is removed; Undo brings it back.`;
  }

  /**
   * @param {Path} path - of the entry
   * @param {string} kind
   */
  _setKind(path, kind) {
    const [table, index] = path;
    this._kinds = {...this._kinds, [`${table}/${this._document[table][index].id}`]: kind};
    this._change([], ofKind(this._document, path, kind));
  }

  _powers(event) {
    event.stopPropagation();
    this._change(
      ['default_powers_w'],
      put(this._document, ['default_powers_w'], event.detail.changes['Pack.default_powers_w']),
    );
  }

  _step(step) {
    this._history = step(this._history);
    this._faults = [];
    this._said = '';
  }

  _restart() {
    this._begin(FIRST_DOCUMENT);
  }

  _faultsTold() {
    const {_faults: faults} = this;
    if (faults.length === 0) return nothing;
    return html`<ul class="faults">${faults
      .slice(0, MOST_FAULTS)
      .map(
        ({path, words}) =>
          html`<li>${
            path.length > 0
              ? html`<button type="button" @click=${() => this._show(path)}>${words}</button>`
              : html`<p class="error">${words}</p>`
          }</li>`,
      )}
    ${
      faults.length > MOST_FAULTS ? html`<li class="error">and ${faults.length - MOST_FAULTS} more.</li>` : nothing
    }</ul>`;
  }

  /** @param {Path} path */
  _show(path) {
    const [table, index] = path;
    const {id} = this._document[table]?.[index] ?? {};
    const {renderRoot: root} = this;
    const control = root.querySelector(`[data-place="${word(path)}"]`);
    showPlace(control ?? root.querySelector(`[data-entry="${table}/${id}"]`));
  }

  /** Whether everything is there and read; if not, it is told. */
  _isWhole() {
    const fields = [...this.renderRoot.querySelectorAll('jw-number-field, jw-list-field')];
    const unread = fields.map((field) => /** @type {any} */ (field)).filter(({problem, error}) => problem && !error);
    const pathOf = (field) => (field.closest('[data-place]')?.dataset.place ?? '').split('-').filter(Boolean);
    this._faults = [
      ...unread.map((field) => ({path: pathOf(field), words: field.problem, isTold: true})),
      ...faultsOf(SHAPES, this._document, this._nameOf),
    ];
    return this._faults.length === 0;
  }

  /** The document under an id of its own, which it keeps from then on. */
  _named() {
    const document = this._document;
    if (document.id === '') this._change([], {...document, id: freeId(document.name, this.taken)});
    return this._document;
  }

  _made(event) {
    event.preventDefault();
    if (!this._isWhole()) return;
    const document = this._named();
    send(this, 'jw-pack-made', {text: textOf(document), label: document.name});
  }

  _save() {
    if (!this._isWhole()) return;
    const document = this._named();
    save(`${document.id}.json`, 'application/json', textOf(document));
  }
}

customElements.define('jw-pack-form', JwPackForm);
export {JwPackForm};
