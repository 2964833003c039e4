import {ContextConsumer} from '@lit/context';
import {css, html, nothing} from 'lit';
import {live} from 'lit/directives/live.js';
import {element, of, state, value} from '../shared/elements/element.js';
import {inside} from '../shared/elements/inside.js';
import {send} from '../shared/elements/send.js';
import {save} from '../shared/export/save.js';
import {readingChoices, readingStyles} from '../shared/fields/readings.js';
import {base} from '../shared/styles/base.js';
import {formStyles} from '../shared/styles/forms.js';
import {panelStyles} from '../shared/styles/panels.js';
import {digits} from '../shared/text/format.js';
import {question, readingsOf, readingsOfList, refusal} from '../shared/text/number-typed.js';
import {vocabularyContext} from '../shared/vocabulary/speaking.js';
import {FIRST_DRAFT, KINDS, LIMIT_FIELDS, NEW_LIMIT, SEEN, idOf, numbersOf, textOf, wordsOf} from './draft.js';

/**
 * @import {Transport} from '../shared/answers.js'
 * @import {Reading} from '../shared/text/number-typed.js'
 * @import {Range} from '../shared/vocabulary/start-data.js'
 * @import {Vocabulary} from '../shared/vocabulary/vocabulary.js'
 * @import {Draft, Family, FamilyNumber} from './draft.js'
 *
 * @typedef {object} Remark - on what was typed
 * @property {?string} text - where it was not taken
 * @property {string} said - why
 * @property {Reading[]} readings - those to choose of
 * @property {string} converted - from another unit
 */

const BUILT_IN = [];

/** @type {Remark} */
const NO_REMARK = {text: null, said: '', readings: [], converted: ''};

const POWER = {unit: 'W', .../** @type {Range} */ (LIMIT_FIELDS.power_w)};

/**
 * A form that makes a pack: limits of the house, default powers, and a family made from a built-in one.
 *
 * Everything in it has one source, which it can't do without.
 *
 * @fires jw-pack-made - {text, label}: the pack is to be taken
 */
class JwPackForm extends element({
  /** How the core is reached. */
  transport: value(/** @type {Transport} */ (of)),
  _draft: state(/** @type {Draft} */ (of)),
  _problem: state(/** @type {string} */ (of)),
  /** What is said of numbers typed, by the control's id. */
  _remarks: state(/** @type {Record<string, Remark>} */ (of)),
}) {
  static styles = [
    base,
    formStyles,
    panelStyles,
    readingStyles,
    css`
      label { display: block; font-size: 0.8rem; font-weight: 600; margin-bottom: 3px; }
      h3 { margin: 14px 0 6px; }
      .bar { display: flex; flex-wrap: wrap; gap: 8px; margin-top: 14px; }
      .limit { padding: 8px 0; border-bottom: 1px solid var(--line); }
      .numbers { grid-template-columns: repeat(auto-fill, minmax(210px, 1fr)); }
      select[multiple] { min-height: 7.5em; padding: 4px; }
      .changed label { color: var(--accent); }
    `,
  ];

  constructor() {
    super();
    this._vocabulary = new ContextConsumer(this, {context: vocabularyContext, subscribe: true});
    this._draft = FIRST_DRAFT;
    this._problem = '';
    this._remarks = {};
  }

  updated() {
    for (const input of /** @type {NodeListOf<HTMLInputElement>} */ (this.renderRoot.querySelectorAll('input')))
      input.setCustomValidity(this._remarks[input.id]?.said ?? '');
  }

  get _lists() {
    return /** @type {Vocabulary} */ (this._vocabulary.value).lists;
  }

  render() {
    const {name, version, source, powers, limits} = this._draft;
    return html`<details class="panel">
      <summary>Make a pack <small>limits of your station, default powers, a family of your own</small></summary>
      <form @submit=${this._made}>
        <div class="fields">
          ${this._text('name', 'Name of the pack', name, (text) => this._put({name: text}), 80, true)}
          ${this._text('version', 'Version or date', version, (text) => this._put({version: text}), 40, true)}
        </div>
        <h3>Source of everything in it</h3>
        <div class="fields">
          ${this._text(
            'title',
            'What it says, and where',
            source.title,
            (title) => this._source({title}),
            300,
            true,
            'wide',
          )}
          ${this._choice('seen', 'You have', source.seen, SEEN, (seen) => this._source({seen}))}
          ${this._choice('kind', 'Its figures are', source.kind, KINDS, (kind) => this._source({kind}))}
          ${this._text(
            'address',
            'Web address, if any',
            source.address,
            (address) => this._source({address}),
            300,
            false,
          )}
        </div>
        <h3>Default powers</h3>
        <div class="fields">${this._numbers(
          'powers',
          'Power levels in W, with spaces between',
          POWER,
          powers,
          readingsOfList,
          (read) => this._put({powers: read.join(' ')}),
        )}</div>
        <h3>House limits</h3>
        ${limits.map((limit, at) => this._limit(limit, at))}
        <button type="button" id="add-limit" @click=${() => this._put({limits: [...limits, NEW_LIMIT]})}>Add a
        limit</button>
        <h3>A family</h3>
        ${this._family()}
        <p class="error" role="alert">${this._problem}</p>
        <div class="bar">
          <button id="take">Put it in force</button>
          <button type="button" id="save-draft" @click=${this._save}>Save as file</button>
          <button type="button" @click=${this._restart}>Start again</button>
        </div>
      </form>
    </details>`;
  }

  _text(id, label, text, put, longest, required, className = '') {
    return html`<div class=${className}><label for=${id}>${label}</label>
      <input id=${id} type="text" autocomplete="off" maxlength=${longest} ?required=${required} .value=${text}
        @change=${(event) => put(event.target.value.trim())}></div>`;
  }

  _choice(id, label, chosen, choices, put) {
    return html`<div><label for=${id}>${label}</label>
      <select id=${id} @change=${(event) => put(event.target.value)}>
        ${choices.map((one) => html`<option value=${one} .selected=${one === chosen}>${one}</option>`)}
      </select></div>`;
  }

  _limit(limit, at) {
    const put = (changes) => this._put({limits: this._draft.limits.with(at, {...limit, ...changes})});
    const {_lists: lists} = this;
    return html`<div class="limit fields" role="group" aria-label="House limit ${at + 1}">
      ${this._numbers(`power-${at}`, 'At most, in W PEP', POWER, String(limit.power_w), readingsOf, (power_w) =>
        put({power_w}),
      )}
      ${this._text(`reason-${at}`, 'Because', limit.reason, (reason) => put({reason}), 300, true)}
      ${this._several(`families-${at}`, 'Through (none chosen: all)', lists.families, limit.interfaces, (interfaces) =>
        put({interfaces}),
      )}
      ${this._several(`bands-${at}`, 'On (none chosen: all)', lists.bands, limit.bands, (bands) => put({bands}))}
      <button type="button" @click=${() => this._dropLimit(at)}>Remove limit
      ${at + 1}</button>
    </div>`;
  }

  /** Those behind it move up, so that what is said of their numbers is no longer at its place. */
  _dropLimit(at) {
    this._remarks = {};
    this._put({limits: this._draft.limits.toSpliced(at, 1)});
  }

  _several(id, label, entries, chosen, put) {
    return html`<div><label for=${id}>${label}</label>
      <select id=${id} multiple @change=${({target}) => put([...target.selectedOptions].map((option) => option.value))}>
        ${entries.map((one) => html`<option value=${one.id} .selected=${chosen.includes(one.id)}>${one.name}</option>`)}
      </select></div>`;
  }

  _family() {
    const {family} = this._draft;
    return html`<div class="fields">
        <div><label for="copied">Made from</label>
          <select id="copied" @change=${(event) => this._copy(event.target.value)}>
            <option value="" .selected=${!family}>none</option>
            ${this._lists.families.map(
              ({id, name}) => html`<option value=${id} .selected=${family?.entry.id === id}>${name}</option>`,
            )}
          </select></div>
        ${
          family
            ? html`<div><label for="replaces">It</label>
              <select id="replaces" @change=${(event) => this._rename(family, event.target.value === 'yes')}>
                <option value="no" .selected=${family.id !== family.entry.id}>stands beside the built-in one</option>
                <option value="yes" .selected=${family.id === family.entry.id}>takes its place</option>
              </select></div>
              ${this._text('family-name', 'Its name', family.name, (name) => this._called(family, name), 80, true)}`
            : nothing
        }
      </div>
      ${
        family
          ? html`<p class="quiet">A number you change has your source; the others keep theirs.</p><div
            class="fields numbers">${family.numbers.map((one, at) => this._number(one, at))}</div>`
          : nothing
      }`;
  }

  /**
   * @param {FamilyNumber} one
   * @param {number} at
   */
  _number(one, at) {
    const id = `${one.field}${one.end && `-${one.end}`}`;
    const unit = one.unit === '1' ? '' : one.unit;
    const label = `${wordsOf(one)}${unit && `, ${unit}`}`;
    return this._numbers(id, label, {...one, unit}, String(one.value), readingsOf, (number) =>
      this._renumber(at, number),
    );
  }

  /** One number or several; what is not taken stays as it was typed, and keeps the form from being sent. */
  _numbers(id, label, range, given, reader, put) {
    const {text, said, readings, converted} = this._remarks[id] ?? NO_REMARK;
    const remark = (one) => (this._remarks = {...this._remarks, [id]: {...NO_REMARK, ...one}});
    const take = (one) => {
      remark({converted: one.converted});
      put(one.value);
    };
    const typed = ({target}) => {
      const {unit, min, max} = range;
      const found = reader(target.value, unit);
      const isAllowed = found.every((one) => [one.value].flat().every((number) => number >= min && number <= max));
      if (found.length === 1 && isAllowed) return take(found[0]);
      const allowed = `${digits(min)} to ${digits(max)} ${unit}`.trim();
      const words =
        found.length > 1 ? question(label, target.value, found) : refusal(label, target.value, allowed, unit);
      remark({text: target.value, said: words, readings: found.length > 1 ? found : []});
    };
    return html`<div><label for=${id}>${label}</label>
      <input id=${id} type="text" inputmode=${range.min < 0 ? 'text' : 'decimal'} autocomplete="off"
        ?required=${reader === readingsOf} aria-invalid=${said ? 'true' : 'false'} aria-describedby="${id}-under"
        .value=${live(text ?? given)} @change=${typed}>
      <p id="${id}-under" class="error" role="alert">${said}</p>
      ${converted ? html`<p class="quiet">${converted}.</p>` : nothing}
      ${readings.length > 0 ? readingChoices(label, readings, take) : nothing}</div>`;
  }

  _renumber(at, number) {
    const {numbers} = /** @type {Family} */ (this._draft.family);
    this._changeFamily({numbers: numbers.with(at, {...numbers[at], value: number})});
  }

  async _copy(id) {
    this._problem = '';
    this._remarks = {};
    if (id === '') return this._put({family: null});
    try {
      const {entry} = await this.transport.ask('catalogue', {entry: id}, {packs: BUILT_IN});
      const name = `${entry.name}, own`;
      this._put({family: {entry, id: idOf(name), name, numbers: numbersOf(entry)}});
    } catch (error) {
      this._problem = /** @type {Error} */ (error).message;
    }
  }

  /** A family that takes the built-in one's place keeps its id. */
  _called(family, name) {
    this._changeFamily(family.id === family.entry.id ? {name} : {name, id: idOf(name)});
  }

  _rename({entry}, replaces) {
    const name = replaces ? entry.name : `${entry.name}, own`;
    this._changeFamily({name, id: replaces ? entry.id : idOf(name)});
  }

  _restart() {
    this._draft = FIRST_DRAFT;
    this._remarks = {};
  }

  _put(changes) {
    this._draft = {...this._draft, ...changes};
  }

  _source(changes) {
    this._put({source: {...this._draft.source, ...changes}});
  }

  _changeFamily(changes) {
    this._put({family: {...this._draft.family, ...changes}});
  }

  _made(event) {
    event.preventDefault();
    send(this, 'jw-pack-made', {text: textOf(this._draft), label: this._draft.name});
  }

  _save() {
    const form = /** @type {HTMLFormElement} */ (inside(this.renderRoot, 'form'));
    if (form.reportValidity()) save(`${idOf(this._draft.name)}.json`, 'application/json', textOf(this._draft));
  }
}

customElements.define('jw-pack-form', JwPackForm);
