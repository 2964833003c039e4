import {html, nothing} from 'lit';
import {element, of, state, value} from '../shared/elements/element.js';
import '../shared/elements/jw-sheet.js';
import {View} from '../shared/elements/view.js';
import {save, saveJson} from '../shared/export/save.js';
import {FIRST_DOCUMENT, currentOf} from '../shared/lines/document.js';
import {KEPT_LINES} from '../shared/lines/kept.js';
import {fromLink, toLink} from '../shared/lines/link.js';
import {namesOf} from '../shared/lines/names.js';
import {browserStore} from '../shared/state/browser-store.js';
import {LONGEST_LINK} from '../shared/state/document-link.js';
import {KeptDocument} from '../shared/state/kept-document.js';
import {lineRequest, ownOf} from '../shared/station/line-request.js';
import {withInUse, withOneMore} from '../shared/station/edits.js';
import {antennaOf, transmitterOf} from '../shared/station/station.js';
import {base} from '../shared/styles/base.js';
import {panelStyles} from '../shared/styles/panels.js';
import {viewStyles} from '../shared/styles/view.js';
import './answer/jw-line-answer.js';
import './answer/jw-line-detail.js';
import './answer/jw-line-results.js';
import {Answers} from './answers.js';
import './editor/jw-line-editor.js';
import {edited} from './edits.js';
import {contentOf, fromFile} from './file.js';
import './jw-line-bar.js';
import './jw-line-compare.js';
import {METHODS, explained, headingOf} from './open.js';
import {placed} from './placed.js';
import {lineViewStyles} from './styles.js';
import {taken} from './take.js';

/**
 * @import {LoadCharts} from '../shared/charts/jw-chart.js'
 * @import {Line, LineDocument} from '../shared/lines/document.js'
 * @import {Told} from './answers.js'
 * @import {Change} from './result.js'
 */

const TOO_LONG = `This line is too long for a link (over ${LONGEST_LINK} characters); export it as a file instead.`;

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

  static ownNames = ['line', 'name', 'open'];

  static styles = [base, panelStyles, viewStyles, lineViewStyles];

  /** Made by `_begin`. */
  _document = /** @type {KeptDocument<LineDocument>} */ (of);

  constructor() {
    super();
    this._open = null;
    this._said = '';
    this._told = '';
    this._answers = new Answers(this, (operation, request, options) => this._call(operation, request, options));
    this._catalogue = this._enquiry('catalogue');
  }

  _begin() {
    this._document = new KeptDocument(KEPT_LINES, browserStore, this.vocabulary.fields, FIRST_DOCUMENT);
    this._document.attach(this, () => {
      this._notice({text: 'Your lines were changed in another tab; they are shown here now.'});
      this._settle();
    });
  }

  disconnectedCallback() {
    this._answers.giveUp();
    super.disconnectedCallback();
  }

  get _own() {
    return this._document.present;
  }

  _askAnew() {
    super._askAnew();
    this._answers.outdate();
  }

  set _own(document) {
    this._document.put(document);
  }

  _turned({from, to}) {
    return this._document.turned(from, to);
  }

  updated(changed) {
    this.toggleAttribute('beside', this._open !== null);
    if (this.transport === undefined) return;
    if (!this._isEmpty) this._answers.follow(this._request);
    const asked = changed.has('_open') || changed.has('transport');
    if (asked && this._open !== null && ['initial', 'error'].includes(this._catalogue.status)) this._catalogue.ask({});
  }

  render() {
    const {lines, current} = this._own;
    const {line, spread, spreadShown} = this._answers;
    const {name, request: own} = this._current;
    const request = this._whole(own);
    const names = namesOf(request, this.vocabulary.lists);
    const refused = placed(line.error);
    const heading = headingOf(this._open, names);
    const isCurrent = this._answers.current(this._request);
    const change = this._change && line.result?.changes.find(({title}) => title === this._change?.title);
    const [after, ...known] = this._toldOf(lines, change);
    const outdated = refused ? `Out of date: these are the numbers before the last change. ${refused.message}` : '';
    return html`<div @jw-line-edit=${this._edited}
        @jw-line-open=${({detail}) => this._show(detail.open)} @jw-close=${() => this._show(null)}
        @jw-line-compare=${({detail}) => (this._change = detail.change)} @jw-line-take=${this._taken}
        @jw-line-spread=${({detail}) => (detail.begin ? this._answers.drawAgain(line.answered) : spread.cancel())}>
      ${this._progress(line)}
      <main>
        <h2 class="onpaper wide">${name}</h2>
        <jw-line-bar class="wide" .lines=${lines} .current=${current}></jw-line-bar>
        ${refused?.group === '' ? this._trouble(refused.message) : nothing}
        ${lines.length > 1 ? this._compared(lines, current, known) : nothing}
        <jw-line-editor antenna=${antennaOf(this.station)?.name ?? ''} .request=${request}
          .own=${ownOf(own, this.station, this.vocabulary)} .names=${names}
          .answered=${line.answered} .result=${line.result} .refused=${refused}></jw-line-editor>
        ${
          this._isEmpty
            ? html`<p class="waiting empty quiet" role="status">
                Nothing stands between transmitter and antenna yet: add the first element of the line.
              </p>`
            : line.result
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
    const kept = lines.length > 1 ? lines.map(({request}) => this._whole(request)) : [];
    if (!this.transport) return [{}];
    if (!change) return [{}, ...this._answers.compare(kept)];
    const changed = edited(this._own, {kind: 'change', edits: change.edits});
    return this._answers.compare([this._whole(currentOf(changed).request), ...kept]);
  }

  _compared(lines, current, known) {
    return html`<jw-line-compare class="wide" .lines=${lines} .current=${current} .known=${known}></jw-line-compare>`;
  }

  /** Whether there is no element yet, and so nothing to ask. */
  get _isEmpty() {
    return this._current.request.elements.length === 0;
  }

  get _current() {
    return currentOf(this._own);
  }

  get _explained() {
    return explained(this._open, this._current.request.elements.length);
  }

  get _request() {
    const request = this._whole(this._current.request);
    return this._explained === undefined ? request : {...request, explain: this._explained};
  }

  /** A line's request with what it leaves to the station. */
  _whole(request) {
    return lineRequest(request, this.station, this.vocabulary);
  }

  /** Which line is shown is no change of it, so that undo never only turns the page. */
  _edit(edit) {
    const {own, changes} = this._parted(edit);
    this._put(own, changes, {isStep: edit.kind !== 'choose', isEntry: false});
  }

  /** An edit as a change of the lines and of the station. */
  _parted(edit) {
    const before = this._own;
    const {request} = currentOf(before);
    if (edit.kind === 'transmitter') {
      const changes = {...transmitterOf(this.station), ...request.transmitter, ...edit.changes};
      return {own: edited(before, {...edit, changes})};
    }
    if (edit.kind === 'load' && !request.load && this._isStationsVswr(edit.load))
      return {own: before, changes: {settings: this._settings({vswr: edit.load.vswr})}};
    if (edit.kind === 'keep-antenna') return this._withAntenna();
    if (edit.kind !== 'station') return {own: edited(before, edit)};
    // what was the line's own is the station's again
    const names = Object.keys(edit.changes);
    const isOwn = names.some((name) => name in request);
    return {
      own: isOwn ? edited(before, {kind: 'leave', names}) : before,
      changes: {settings: this._settings(edit.changes)},
    };
  }

  /** The line's own antenna as one of the station's, and in use. */
  _withAntenna() {
    const {name, request} = this._current;
    const more = withOneMore(this.station, 'antennas', {name: `Antenna of ${name}`.slice(0, 60), load: request.load});
    const at = this.station.antennas.length;
    return {
      own: edited(this._own, {kind: 'leave', names: ['load']}),
      changes: {...more, ...withInUse({...this.station, ...more}, 'antennas', at)},
    };
  }

  /** Whether a load differs from the station's in the SWR alone, which the station can have. */
  _isStationsVswr(load) {
    const {vswr, ...rest} = this._whole(this._current.request).load;
    const {vswr: wanted, ...others} = load;
    const {max} = /** @type {import('../shared/vocabulary/start-data.js').Range} */ (
      this.vocabulary.fieldOf('settings.vswr')
    );
    return vswr !== undefined && wanted <= max && JSON.stringify(rest) === JSON.stringify(others);
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
    this._address(true);
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
    this._address(false);
  }

  get _fragment() {
    return toLink(this._current, this._open).fragment;
  }

  /** All of a link, but of the page's own past only what was open: the line is the one at hand. */
  _restore(fragment, isOwnEntry) {
    const {line, open, problem} = fromLink(fragment, this.vocabulary.fields);
    this._open = open;
    if (line && !isOwnEntry) this._edit(taken(this._own, line));
    this._settle();
    return {text: problem};
  }

  /** What the browser cannot keep is said once. */
  _tellTrouble() {
    const {problem, spoilt} = this._document;
    if (problem === this._told) return;
    this._told = problem;
    const action = spoilt && {words: 'Save them', run: () => save('jointwise-lines-unread.txt', 'text/plain', spoilt)};
    this._notice(problem && {text: problem, action});
  }

  turn(way) {
    const isTurned = super.turn(way);
    if (isTurned) this._said = way === 'undo' ? 'Undone.' : 'Done again.';
    this._settle();
    return isTurned;
  }

  get ways() {
    const [link, print] = super.ways;
    return [
      {...link, run: () => this._link()},
      {id: 'export', words: 'Save all lines', run: () => saveJson('jointwise-lines.json', contentOf(this._own.lines))},
      {id: 'import', words: 'Open saved lines', take: (file) => this._bringIn(file), accept: '.json,application/json'},
      print,
    ];
  }

  async _link() {
    if (toLink(this._current, null).whole) await this._copyLink();
    else this._notice({text: TOO_LONG});
  }

  /** The lines of a file beside those at hand. */
  async _bringIn(file) {
    try {
      this._edited({detail: {kind: 'insert', lines: fromFile(await file.text(), this.vocabulary.fields)}});
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      this._notice({text: `${file.name} is refused: ${error.message} Nothing was changed.`});
    }
  }
}

customElements.define('jw-line-view', JwLineView);
