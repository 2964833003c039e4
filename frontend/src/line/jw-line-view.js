import {html, nothing} from 'lit';
import {element, of, state, value} from '../shared/elements/element.js';
import '../shared/elements/jw-sheet.js';
import {View} from '../shared/elements/view.js';
import {save} from '../shared/export/save.js';
import {FIRST_DOCUMENT, currentOf} from '../shared/lines/document.js';
import {KEPT_LINES} from '../shared/lines/kept.js';
import {namesOf} from '../shared/lines/names.js';
import {KeptDocument} from '../shared/state/kept-document.js';
import {base} from '../shared/styles/base.js';
import {panelStyles, viewStyles} from '../shared/styles/panels.js';
import {readAddress, writeAddress} from './address.js';
import {ALONG, broughtIn} from './along.js';
import './answer/jw-line-answer.js';
import './answer/jw-line-detail.js';
import './answer/jw-line-results.js';
import {Answers} from './answers.js';
import './editor/jw-line-editor.js';
import {edited} from './edits.js';
import './jw-line-bar.js';
import './jw-line-compare.js';
import {METHODS, explained, headingOf} from './open.js';
import {placed} from './placed.js';
import {taken} from './take.js';

/**
 * @import {LoadCharts} from '../shared/charts/jw-chart.js'
 * @import {Line, LineDocument} from '../shared/lines/document.js'
 * @import {Told} from './answers.js'
 * @import {Change} from './result.js'
 */

/**
 * A whole line from the transmitter to the antenna: its editor, its answer, and other lines beside it.
 *
 * @fires jw-notice - {text, link, action}: a sentence for the reader
 */
export class JwLineView extends element(
  {
    /** Brings the chart library. */
    loadCharts: value(/** @type {LoadCharts} */ (of)),
    _open: state(/** @type {string | null} */ (of)),
    _said: state(/** @type {string} */ (of)),
    /** Of what would help, laid beside the line as it stands. */
    _change: state(/** @type {Change | undefined} */ (of)),
  },
  View,
) {
  static view = 'line';

  static styles = [base, panelStyles, viewStyles];

  /** Made by `_begin`. */
  _document = /** @type {KeptDocument<LineDocument>} */ (of);

  constructor() {
    super();
    this._open = null;
    this._said = '';
    this._told = '';
    this._answers = new Answers(this, (operation, request, options) => this.transport.ask(operation, request, options));
    this._catalogue = this._enquiry('catalogue');
    this._pressed = (event) => this._key(event);
  }

  _begin() {
    this._document = new KeptDocument(KEPT_LINES, () => localStorage, this.vocabulary.fields, FIRST_DOCUMENT);
  }

  _askAnew() {
    super._askAnew();
    this._answers.outdate();
  }

  connectedCallback() {
    super.connectedCallback();
    window.addEventListener('keydown', this._pressed);
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    window.removeEventListener('keydown', this._pressed);
  }

  updated(changed) {
    this.toggleAttribute('beside', this._open !== null);
    if (this.transport === undefined) return;
    this._answers.follow(this._request);
    const asked = changed.has('_open') || changed.has('transport');
    if (asked && this._open !== null && ['initial', 'error'].includes(this._catalogue.status)) this._catalogue.ask({});
  }

  render() {
    const {lines, current} = this._document.present;
    const {line, spread, spreadShown} = this._answers;
    const {name, request} = this._current;
    const names = namesOf(request, this.vocabulary.lists);
    const refused = placed(line.error, request, (field) => this.vocabulary.labelOf(field), names);
    const heading = headingOf(this._open, names);
    const isCurrent = this._answers.current(this._request);
    const change = this._change && line.result?.changes.find(({title}) => title === this._change?.title);
    const [after, ...known] = this._toldOf(lines, change);
    const outdated = refused
      ? `Out of date, these are the numbers from before the last change. ${refused.message}`
      : '';
    return html`<div @jw-line-edit=${this._edited} @jw-line-do=${this._do} @jw-line-import=${this._imported}
        @jw-line-open=${({detail}) => this._show(detail.open)} @jw-close=${() => this._show(null)}
        @jw-line-compare=${({detail}) => (this._change = detail.change)} @jw-line-take=${this._taken}
        @jw-line-spread=${({detail}) => (detail.begin ? this._answers.drawAgain(line.answered) : spread.cancel())}
        @input=${() => (this._typing = true)} @change=${() => (this._typing = false)}
        @focusout=${() => (this._typing = false)}>
      ${this._progress(line)}
      <main>
        <h2 class="onpaper wide">${name}</h2>
        <jw-line-bar class="wide" .lines=${lines} .current=${current}
          .canUndo=${this._document.canUndo} .canRedo=${this._document.canRedo}></jw-line-bar>
        ${refused?.group === '' ? this._trouble(refused.message) : nothing}
        ${lines.length > 1 ? this._compared(lines, current, known) : nothing}
        <jw-line-editor .request=${request} .names=${names} .answered=${line.answered} .result=${line.result}
          .refused=${refused}></jw-line-editor>
        ${
          line.result
            ? html`<jw-line-answer .result=${line.result} .answered=${line.answered} .open=${this._open ?? ''}
                .outdated=${outdated}></jw-line-answer>
              <jw-line-results .result=${line.result} .request=${request} .current=${isCurrent} .names=${names}
              .refused=${refused} .compared=${change} .after=${after} .spread=${spreadShown} .drawing=${spread.drawing}
              .failure=${spread.error?.message ?? ''} .loadCharts=${this.loadCharts}></jw-line-results>`
            : html`<p class="waiting ${refused ? 'error' : 'quiet'}" role="status">
                ${refused?.message ?? 'Calculating…'}
              </p>`
        }
      </main>
      <p class="unseen" role="status">${this._said}</p>
      <jw-sheet .heading=${heading}>${heading ? this._detail(isCurrent) : nothing}</jw-sheet>
    </div>`;
  }

  _detail(isCurrent) {
    const {answered, result} = this._answers.line;
    return html`<jw-line-detail .element=${this._explained} .answered=${answered} .result=${result}
      .current=${isCurrent} .catalogue=${this._catalogue.result} .error=${this._catalogue.error}></jw-line-detail>`;
  }

  _trouble(message) {
    const again = () => this._answers.follow(this._request, true);
    return html`<p class="trouble wide" role="alert">${message} <button @click=${again}>Try again</button></p>`;
  }

  /**
   * What is known of the line with a change, and of all that are kept.
   *
   * @param {Line[]} lines
   * @param {Change | undefined} change
   * @returns {Told[]}
   */
  _toldOf(lines, change) {
    const kept = lines.length > 1 ? lines.map(({request}) => request) : [];
    if (!this.transport) return [{}];
    if (!change) return [{}, ...this._answers.compare(kept)];
    const changed = edited(this._document.present, {kind: 'change', edits: change.edits});
    return this._answers.compare([currentOf(changed).request, ...kept]);
  }

  _compared(lines, current, known) {
    return html`<jw-line-compare class="wide" .lines=${lines} .current=${current} .known=${known}></jw-line-compare>`;
  }

  get _current() {
    return currentOf(this._document.present);
  }

  get _explained() {
    return explained(this._open, this._current.request.elements.length);
  }

  get _request() {
    const {request} = this._current;
    return this._explained === undefined ? request : {...request, explain: this._explained};
  }

  /** Which line is shown is no change of it, so that undo never only turns the page. */
  _edit(edit) {
    this._document.put(edited(this._document.present, edit), edit.kind !== 'choose');
  }

  _edited({detail}) {
    this._change = undefined;
    this._edit(detail);
    if (detail.kind === 'move') this._said = `Moved to place ${detail.to + 1}.`;
    if (detail.kind === 'keep') this._said = 'A copy is kept and shown.';
    this._settle();
  }

  _settle() {
    if (this._open !== METHODS && this._explained === undefined) this._open = null;
    writeAddress(this._current, this._open, false);
    this._tellTrouble();
    this.requestUpdate();
  }

  _taken({detail: {change}}) {
    this._edited({detail: {kind: 'change', edits: change.edits}});
    this._said = `${change.title}: done; Undo takes it back.`;
  }

  _show(open) {
    if (open === this._open) return;
    this._open = open;
    writeAddress(this._current, open, true);
  }

  _restore(fragment) {
    const found = readAddress(fragment, this.vocabulary.fields);
    this._open = found.open;
    if (found.line) this._edit(taken(this._document.present, found.line));
    this._notice(found.problem && {text: found.problem});
    this._settle();
  }

  /** What the browser cannot keep is said once. */
  _tellTrouble() {
    const {problem, spoilt} = this._document;
    if (problem === this._told) return;
    this._told = problem;
    const action = spoilt && {words: 'Save them', run: () => save('jointwise-lines-unread.txt', 'text/plain', spoilt)};
    this._notice(problem && {text: problem, action});
  }

  _key(event) {
    if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z' || this._typing) return;
    event.preventDefault();
    this._do({detail: {what: event.shiftKey ? 'redo' : 'undo'}});
  }

  async _do({detail: {what}}) {
    if (what === 'undo' || what === 'redo') {
      this._document[what]();
      this._said = what === 'undo' ? 'Undone.' : 'Done again.';
      this._settle();
    } else this._notice(await ALONG[what](this._document.present));
  }

  async _imported({detail: {file}}) {
    const {edit, notice} = await broughtIn(file, this.vocabulary.fields);
    if (edit) this._edited({detail: edit});
    this._notice(notice);
  }
}

customElements.define('jw-line-view', JwLineView);
