import {css, html, nothing} from 'lit';
import {element, of, state, value} from '../shared/elements/element.js';
import {send} from '../shared/elements/send.js';
import {ASIDE} from '../shared/joints/book.js';
import {CODE, spokenCode, typedCode} from '../shared/joints/identity.js';
import {base} from '../shared/styles/base.js';
import {formStyles} from '../shared/styles/forms.js';
import {panelStyles} from '../shared/styles/panels.js';
import {jointFragment} from './code.js';

/**
 * @import {JointRecord} from '../shared/joints/book.js'
 * @import {Standing} from '../shared/joints/overview.js'
 */

/** What is said of a joint that something is to be done about. */
const TO_DO = {
  faulty: () => 'is faulty',
  overdue: (due) => `inspection overdue since ${due}`,
  soon: (due) => `inspection due by ${due}`,
};

/**
 * What is due among the joints of all lines, in one place; records whose joint is gone; and the way to a joint by the
 * code on its label.
 *
 * @fires jw-joint-given - {record, to}: the record is of the joint with that code, or set aside
 */
class JwFitoutDue extends element({
  standings: value(/** @type {Standing[]} */ (of)),
  /** Records of joints that are in no line. */
  strays: value(/** @type {JointRecord[]} */ (of)),
  /** The joints of the line at hand that a record may be of. */
  joints: value(/** @type {{code: string, words: string}[]} */ (of)),
  _refused: state(/** @type {string} */ (of)),
}) {
  static styles = [
    base,
    panelStyles,
    formStyles,
    css`
      ul { padding-left: 1.25em; margin-bottom: var(--space-2); font-size: var(--type-text); }
      .not { color: var(--alarm); font-weight: 700; }
      .row { display: flex; flex-wrap: wrap; gap: var(--space-2); align-items: end; margin-bottom: var(--space-2); }
      label { display: grid; gap: var(--space-1); font-size: var(--type-small); font-weight: 600; }
      label > * { font-weight: 400; max-width: 16rem; }
      li a { display: inline-grid; min-height: var(--target); align-items: center; }
    `,
  ];

  constructor() {
    super();
    this._refused = '';
  }

  render() {
    const due = this.standings.filter(({standing}) => standing in TO_DO);
    return html`<section class="panel" aria-labelledby="heading">
      <h2 id="heading">Joint book <small>${this._words(due)}</small></h2>
      ${
        due.length > 0
          ? html`<ul id="due">${due.map(
              ({code, line, name, due: day, standing}) =>
                html`<li><a href="#${jointFragment(code)}">${line}, ${name}</a>: <span
                  class=${standing === 'soon' ? '' : 'not'}>${TO_DO[standing](day)}</span></li>`,
            )}</ul>`
          : nothing
      }
      ${this._strayRecords()}
      <details><summary>Open a joint by the code on its label</summary>
        <div class="row">
          <label>Code<input id="code" autocomplete="off" placeholder="K7Q4-2MXA" @change=${this._typed}
            aria-invalid=${this._refused ? 'true' : 'false'} aria-describedby="refused"></label>
          <p id="refused" class="error" role="alert">${this._refused}</p>
        </div>
      </details>
    </section>`;
  }

  _words(due) {
    if (this.standings.length === 0) return 'nothing entered yet; unfold it at a joint. It stays on this device';
    if (due.length > 0) return due.length === 1 ? 'one joint needs attention' : `${due.length} joints need attention`;
    const next = this.standings.find((one) => one.due);
    return next ? `nothing is due; next is ${next.line}, ${next.name} on ${next.due}` : 'nothing is due';
  }

  _strayRecords() {
    if (this.strays.length === 0) return nothing;
    return html`<details id="strays"><summary>Records of joints that are in no line
        <small>${this.strays.length}</small></summary>
      <p class="quiet">The line or the joint was renamed or is gone. Say which joint of this line a record is of.</p>
      ${this.strays.map(
        (record) =>
          html`<div class="row"><label>${record.line}, ${record.name}: ${record.joins}<select
            aria-label="Joint of the record ${spokenCode(record.code)}"
            @change=${(event) => this._given(event, record)}>
            <option value="">not said</option>
            ${this.joints.map(({code, words}) => html`<option value=${code}>${words}</option>`)}
            <option value=${ASIDE}>set it aside</option>
          </select></label></div>`,
      )}
    </details>`;
  }

  _given({target}, record) {
    if (target.value) send(this, 'jw-joint-given', {record, to: target.value});
  }

  _typed({target}) {
    const code = typedCode(target.value);
    const isCode = CODE.test(code);
    this._refused =
      isCode || code === '' ? '' : `Code is “${target.value}”; allowed: eight digits and letters, as K7Q4-2MXA.`;
    if (isCode) location.hash = jointFragment(code);
  }
}

customElements.define('jw-fitout-due', JwFitoutDue);
