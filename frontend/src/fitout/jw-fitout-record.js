import {css, html, nothing} from 'lit';
import {element, of, value} from '../shared/elements/element.js';
import {send} from '../shared/elements/send.js';
import {STATES, longestOf, valuesOf} from '../shared/joints/book.js';
import {dueOf, standingOf} from '../shared/joints/due.js';
import {spokenCode} from '../shared/joints/identity.js';
import {FIELD_WORDS, STATE_WORDS, momentText, saidText} from '../shared/joints/words.js';
import {base} from '../shared/styles/base.js';
import {formStyles} from '../shared/styles/forms.js';
import {today} from '../shared/text/days.js';

/**
 * @import {Entry} from '../shared/joints/book.js'
 * @import {Joint} from '../shared/joints/identity.js'
 * @import {SweptJoint} from '../shared/sweeps/of-joint.js'
 * @import {Sheet} from './answer.js'
 */

const DUE_WORDS = {overdue: ', overdue', soon: ', due now', faulty: '', later: '', '': ''};

/**
 * What the joint book says of one joint, folded: its fields to fill in, its entries, and its sweeps over time.
 *
 * @fires jw-joint-entry - {field, value}: one more entry
 */
class JwFitoutRecord extends element({
  joint: value(/** @type {Joint} */ (of)),
  sheet: value(/** @type {Sheet} */ (of)),
  entries: value(/** @type {Entry[]} */ (of)),
  sweeps: value(/** @type {SweptJoint[]} */ (of)),
  /** What it joined when it was last written of; empty where it still does, or nothing was. */
  changed: {type: String},
  open: {type: Boolean},
}) {
  static styles = [
    base,
    formStyles,
    css`
      :host { margin-top: var(--space-2); }
      label { display: grid; gap: var(--space-1); font-size: var(--type-small); font-weight: 600; }
      label > * { font-weight: 400; }
      .fields, table, .row { margin-bottom: var(--space-2); }
      .row { display: flex; flex-wrap: wrap; gap: var(--space-2); }
      textarea {
        width: 100%; min-height: var(--target); padding: var(--space-2) var(--space-2); font: inherit;
        font-size: var(--type-text); color: inherit;
        background: var(--card); border: 1px solid var(--edge); border-radius: var(--round); resize: vertical;
      }
      .not { color: var(--alarm); font-weight: 700; }
      @media print { .row, summary { display: none; } textarea { field-sizing: content; } }
    `,
  ];

  constructor() {
    super();
    this.changed = '';
    this.open = false;
  }

  render() {
    const values = valuesOf(this.entries);
    return html`<details class="more" id="record" ?open=${this.open}>
      <summary>Joint book, ${spokenCode(this.joint.code)} <small>${this._summary(values)}</small></summary>
      ${
        this.changed
          ? html`<p class="quiet">When this was last written it was ${this.changed}. Is it still the same
        joint? Give it a name in the Line view, and its record follows it.</p>`
          : nothing
      }
      <div class="fields">
        ${this._input('fitted_on', values, 'date')} ${this._input('fitted_by', values, 'text')}
        ${this._input('torque', values, 'text', this.sheet.torque.figures)} ${this._input('sealed', values, 'text')}
        ${this._input('inspected_on', values, 'date')}
        <label>${FIELD_WORDS.state}<select id="state" @change=${this._entered}>
          ${['', ...STATES].map(
            (one) =>
              html`<option value=${one} .selected=${one === values.state}>${STATE_WORDS[one] ?? 'not given'}</option>`,
          )}
        </select></label>
        <label class="wide">${FIELD_WORDS.note}<textarea id="note" rows="2" maxlength=${longestOf('note')}
          .value=${values.note} @change=${this._entered}></textarea></label>
      </div>
      <div class="row">
        <button id="fitted-today" @click=${() => this._enter('fitted_on', today())}>Fitted today</button>
        <button id="inspected-today" @click=${() => this._enter('inspected_on', today())}>Inspected today</button>
      </div>
      ${this._sweeps()} ${this._history()}
    </details>`;
  }

  _summary(values) {
    if (this.entries.length === 0) return 'nothing entered yet';
    const due = dueOf(values, this.sheet.inspection.interval_months);
    const standing = standingOf(values, due, today());
    const next = due && html`next inspection ${due}${DUE_WORDS[standing]}`;
    const parts = [
      values.fitted_on && `fitted ${values.fitted_on}`,
      values.inspected_on && `inspected ${values.inspected_on}`,
      STATE_WORDS[values.state],
      next && html`<span class=${standing === 'overdue' ? 'not' : ''}>${next}</span>`,
    ].filter(Boolean);
    return parts.map((part, at) => html`${at > 0 ? ', ' : ''}${part}`);
  }

  _input(name, values, type, placeholder = '') {
    return html`<label>${FIELD_WORDS[name]}<input id=${name} type=${type} autocomplete="off" placeholder=${placeholder}
      maxlength=${longestOf(name) ?? nothing} .value=${values[name]} @change=${this._entered}></label>`;
  }

  _sweeps() {
    if (this.sweeps.length === 0) return nothing;
    return html`<h3>Sweeps of it</h3>
      <table class="plain" id="sweeps">
        <thead><tr><th scope="col">Day</th><th scope="col" class="number">Excess reflection</th><th scope="col">What the
          sweep told of the line</th></tr></thead>
        <tbody>${this.sweeps.map(
          ({date, excess, verdict}) =>
            html`<tr><th scope="row">${date}</th><td class="number">${excess === null ? '–' : excess.toFixed(3)}</td><td
              >${verdict}</td></tr>`,
        )}</tbody>
      </table>`;
  }

  _history() {
    if (this.entries.length === 0) return nothing;
    return html`<details><summary>Every entry <small>${this.entries.length}</small></summary>
      <table class="plain" id="entries">
        <thead><tr><th scope="col">Written</th><th scope="col">Of</th><th scope="col">Entry</th></tr></thead>
        <tbody>${this.entries.toReversed().map(
          ({at, field, value: said}) =>
            html`<tr><td>${momentText(at)}</td><th scope="row">${FIELD_WORDS[field]}</th><td
              >${saidText(field, said)}</td></tr>`,
        )}</tbody>
      </table></details>`;
  }

  _entered({target: {id, value: said}}) {
    this._enter(id, said.trim());
  }

  _enter(field, said) {
    if (said === valuesOf(this.entries)[field]) return;
    send(this, 'jw-joint-entry', {field, value: said});
  }
}

customElements.define('jw-fitout-record', JwFitoutRecord);
