import {html, nothing} from 'lit';
import START from '../../build/start-data.json';
import {element, of, state} from '../shared/elements/element.js';
import {FormView} from '../shared/elements/form-view.js';
import '../shared/elements/jw-cautions.js';
import {save} from '../shared/export/save.js';
import {EMPTY_BOOK, entriesOf, strays, withEntry} from '../shared/joints/book.js';
import {CODE, jointsOf, spokenCode, typedCode} from '../shared/joints/identity.js';
import {KEPT_JOINTS} from '../shared/joints/kept.js';
import {standings} from '../shared/joints/overview.js';
import {FIRST_DOCUMENT, currentOf} from '../shared/lines/document.js';
import {withoutLine} from '../shared/lines/fields.js';
import {KEPT_LINES} from '../shared/lines/kept.js';
import {browserStore} from '../shared/state/browser-store.js';
import {KeptDocument} from '../shared/state/kept-document.js';
import * as linesOf from '../shared/station/line-request.js';
import {base} from '../shared/styles/base.js';
import {formStyles} from '../shared/styles/forms.js';
import {panelStyles} from '../shared/styles/panels.js';
import {pageStyles} from '../shared/styles/view.js';
import {KEPT_SWEEPS} from '../shared/sweeps/kept.js';
import {sweptJoint} from '../shared/sweeps/of-joint.js';
import {today} from '../shared/text/days.js';
import {titlesOf} from './from.js';
import './jw-fitout-due.js';
import './jw-fitout-form.js';
import './jw-fitout-labels.js';
import './jw-fitout-list.js';
import './jw-fitout-record.js';
import './jw-fitout-sheet.js';
import {jointIn, lineIn, withLine} from './link.js';
import {fieldOf, jointRequest, lineRequest} from './request.js';
import {fitoutViewStyles} from './styles.js';

/**
 * @import {JointRecord} from '../shared/joints/book.js'
 * @import {Joint} from '../shared/joints/identity.js'
 * @import {Line, LineDocument} from '../shared/lines/document.js'
 * @import {Sheet} from './answer.js'
 */

const PAPERS = [
  ['all', 'everything'],
  ['sheets', 'joint sheets'],
  ['list', 'list and measurement'],
  ['labels', 'labels'],
];
const NOTHING_KEPT =
  'This browser keeps nothing for the page, so the line at hand is the example. ' +
  'Choose a single joint, or open a link that holds your line.';
const LINE_FIELDS = ['station', 'date'];

/**
 * How to fit, seal and look after every joint of the line at hand, or of a single joint; with labels.
 *
 * @fires jw-notice - {text, link}: a sentence for the reader
 */
export class JwFitoutView extends element(
  {
    _line: state(/** @type {Line | undefined} */ (of)),
    _paper: state(/** @type {string} */ (of)),
    _flowing: state(/** @type {boolean} */ (of)),
  },
  FormView,
) {
  static view = 'fitout';

  static ownNames = ['of', 'shown', 'station', 'date', 'family', 'adapter_to', 'name', 'cable', 'length_m'];

  static styles = [base, formStyles, panelStyles, pageStyles, fitoutViewStyles];

  constructor() {
    super();
    /** The line this browser keeps; read with the address. */
    this._ownLine = /** @type {Line} */ (of);
    /** All that it keeps. */
    this._lines = /** @type {Line[]} */ ([]);
    this._book = new KeptDocument(KEPT_JOINTS, browserStore, {}, EMPTY_BOOK);
    this._book.attach(this, () => this.requestUpdate());
    /** The code of the joint whose record is unfolded as it was asked for. */
    this._opened = '';
    this._paper = 'all';
    this._flowing = false;
    this._fitout = this._enquiry('fitout');
    this._catalogue = this._enquiry('catalogue');
  }

  /**
   * What sheets and labels call the station is its name.
   *
   * @returns {Record<string, any>}
   */
  get _state() {
    return {...super._state, station: this.station.name};
  }

  render() {
    const {error, result} = this._fitout;
    return html`${this._progress(this._fitout)}
      <main @jw-fitout-change=${({detail}) => this._change(detail.changes)}
        @jw-fitout-own=${() => this._useOwn()}>
        ${this._trouble()}
        <div class="beside noprint">
          <jw-fitout-form .state=${this._state} .line=${this._atHand} .linked=${this._line !== undefined}
            .refusal=${error}></jw-fitout-form>
          ${this._due()} ${this._onPaper()}
        </div>
        ${
          this._isEmpty
            ? html`<p class="waiting empty quiet">This line has no element yet.</p>`
            : result
              ? this._answer(result)
              : html`<p class="waiting quiet">${error ? error.message : 'Calculating…'}</p>`
        }
      </main>`;
  }

  /** What goes to paper. */
  _onPaper() {
    return html`<details class="panel">
      <summary>More settings</summary>
      <label for="paper">On paper</label>
      <select id="paper" @change=${(event) => (this._paper = event.target.value)}>
        ${PAPERS.map(([id, words]) => html`<option value=${id} .selected=${id === this._paper}>${words}</option>`)}
      </select>
      <label class="switch"><input id="flowing" type="checkbox" .checked=${this._flowing}
        @change=${(event) => (this._flowing = event.target.checked)}>Several joints a page</label>
    </details>`;
  }

  get ways() {
    const [link, print] = super.ways;
    return [{...link, run: () => this._copy()}, print];
  }

  _answer(result) {
    const titles = titlesOf(this._catalogue.result);
    const subject = [result.station, result.date].filter(Boolean).join(', ');
    const shown = Math.min(this._state.shown, result.joints.length);
    const joints = this._joints;
    return html`<div class="answer" data-paper=${this._paper} ?data-flowing=${this._flowing}>
      <p class="unseen" role="status"
        >${result.joints.length === 1 ? 'One sheet.' : `${result.joints.length} sheets.`}</p>
      ${
        result.joints.length === 0
          ? html`<p class="trouble">This line has no joint, so there is nothing to fit but its cable.</p>`
          : nothing
      }
      ${
        result.joints.length > 1
          ? html`<div class="joints" role="group" aria-label="Joints">${result.joints.map(
              ({number, label, family_name: family}) =>
                html`<button class="choice" aria-pressed=${number === shown}
                  @click=${() => this._change({shown: number})}>${label.name}, ${family}</button>`,
            )}</div>`
          : nothing
      }
      ${result.joints.map(
        (sheet) =>
          html`<jw-fitout-sheet ?data-shown=${sheet.number === shown} .sheet=${sheet} .titles=${titles}
            of=${subject}>${this._record(sheet, joints[sheet.number - 1])}</jw-fitout-sheet>`,
      )}
      <jw-fitout-list .result=${result} .titles=${titles}></jw-fitout-list>
      <jw-cautions .cautions=${result.cautions}></jw-cautions>
      ${
        result.joints.length > 0
          ? html`<jw-fitout-labels .result=${result} .joints=${joints}
        .book=${this._book.present}></jw-fitout-labels>`
          : nothing
      }
    </div>`;
  }

  /**
   * The joints of the sheets; none where their line is not kept, or another one's sheets are awaited.
   *
   * @returns {Joint[]}
   */
  get _joints() {
    const {answered} = this._fitout;
    if (this._line || this._state.of !== 'line' || !answered) return [];
    const {name, request} = this._ownLine;
    if (JSON.stringify(answered.elements) !== JSON.stringify(request.elements)) return [];
    return jointsOf({name, request});
  }

  /** What is due, of all lines. */
  _due() {
    const book = this._book.present;
    const sheets = /** @type {Sheet[]} */ (this._fitout.result?.joints ?? []);
    const joints = this._joints;
    const known = joints.map(({code}, at) => this._written(sheets[at], code));
    const codes = new Set(this._lines.flatMap(jointsOf).map(({code}) => code));
    const byCode = new Map(known.map((joint) => [joint.code, joint]));
    return html`<jw-fitout-due class="noprint" .standings=${standings(book, this._lines, byCode, today())}
      .strays=${strays(book, codes)} .joints=${known.map(({code, name, joins}) => ({code, words: `${name}: ${joins}`}))}
      @jw-joint-given=${({detail}) => this._enter(detail.record, {field: 'belongs_to', value: detail.to})}
      ></jw-fitout-due>`;
  }

  _record(sheet, joint) {
    if (!joint) return nothing;
    const book = this._book.present;
    const {joins} = this._written(sheet, joint.code);
    const before = book.joints.find(({code}) => code === joint.code)?.joins ?? joins;
    const sweeps = KEPT_SWEEPS.recalled(browserStore).document ?? [];
    return html`<jw-fitout-record .joint=${joint} .sheet=${sheet} .entries=${entriesOf(book, joint.code)}
      .sweeps=${sweptJoint(sweeps, this._ownLine.name, joint)} changed=${before === joins ? '' : before}
      ?open=${joint.code === this._opened}
      @jw-joint-entry=${({detail}) => this._enter(this._written(sheet, joint.code), detail)}></jw-fitout-record>`;
  }

  /**
   * What is written down of a joint beside its entries.
   *
   * @param {Sheet} sheet
   * @param {string} code
   */
  _written({family_name: family, halves, inspection, label}, code) {
    const joins = `${family} between ${halves.map(({on}) => on).join(' and ')}`;
    return {code, line: this._ownLine.name, name: label.name, joins, months: inspection.interval_months};
  }

  /**
   * One more entry in the joint book.
   *
   * @param {Omit<JointRecord, 'entries'>} joint
   * @param {{field: string, value: string}} entry
   */
  _enter({code, line, name, joins, months}, entry) {
    const {present} = this._book;
    this._book.put(withEntry(present, {code, line, name, joins, months}, entry, Date.now()));
    if (this._book.problem) this._notice({text: this._book.problem});
    this.requestUpdate();
  }

  /** A refusal that no field of the form can show; out of date is what stays on the page. */
  _trouble() {
    const {error, result} = this._fitout;
    if (!error) return nothing;
    const shown =
      this._state.of === 'line'
        ? LINE_FIELDS.includes(fieldOf(error))
        : fieldOf(error) in this.vocabulary.fields.fitout;
    const stale = result ? 'Out of date: these are the sheets before the last change. ' : '';
    if (shown && !stale) return nothing;
    return html`<p class="trouble" role="alert">${stale}${error.message} <button
      @click=${() => this._ask(true)}>Try again</button></p>`;
  }

  /** The line the sheets are of: the one that came with a link, or the one kept in this browser. */
  get _atHand() {
    return this._line ?? this._ownLine;
  }

  /** Whether the line has no element yet, and so nothing to fit. */
  get _isEmpty() {
    return this._state.of === 'line' && this._atHand.request.elements.length === 0;
  }

  get _request() {
    return this._state.of === 'line'
      ? lineRequest(this._state, linesOf.lineRequest(this._atHand.request, this.station, this.vocabulary))
      : jointRequest(this._state, Object.keys(withoutLine(START.requests.fitout)));
  }

  _ask(again = false) {
    if (this._isEmpty) return;
    const text = JSON.stringify(this._request);
    if (!again && text === this._asked) return;
    this._asked = text;
    this._fitout.askNext(this._request);
    if (['initial', 'error'].includes(this._catalogue.status)) this._catalogue.ask({});
  }

  /** @param {Record<string, any>} given */
  _change({station, ...changes}) {
    if (station === undefined) super._change(changes, {isStep: !('shown' in changes)});
    else this.changeStation({name: station});
  }

  /** The line of this browser in place of that of the link. */
  _useOwn() {
    this._line = undefined;
    this._address(false);
  }

  /** The address has the line in it only as long as it is a link's: one's own may change. */
  get _fragment() {
    return this._line ? withLine(super._fragment, this._line).fragment : super._fragment;
  }

  _restore(fragment) {
    const {fields} = this.vocabulary;
    const {line, rest: withJoint, problem} = lineIn(fragment, fields);
    const {joint, rest} = jointIn(withJoint);
    const {unknown = []} = super._restore(rest) ?? {};
    this._takeName();
    const kept = KEPT_LINES.recalled(browserStore, fields);
    const document = kept.document ?? FIRST_DOCUMENT;
    this._lines = document.lines;
    this._ownLine = currentOf(document);
    this._line = line;
    if (joint) return this._open(typedCode(joint), document);
    if (problem) return {text: problem, unknown};
    return kept.problem && !line && unknown.length === 0 ? this._lost(kept) : {unknown};
  }

  /**
   * Shows the joint of a code, and makes its line the one at hand.
   *
   * @param {string} code
   * @param {LineDocument} document
   */
  _open(code, {lines, current}) {
    if (!CODE.test(code)) return {text: 'The joint in this link is not a code; allowed: eight digits and letters.'};
    const isIn = (line) => jointsOf(line).some((joint) => joint.code === code);
    const at = isIn(lines[current]) ? current : lines.findIndex(isIn);
    if (at === -1) {
      const text =
        `No line kept in this browser has a joint ${spokenCode(code)}. Open the saved page or the station file that ` +
        'it belongs to, under Share and save.';
      return {text};
    }
    if (at !== current) KEPT_LINES.remember(browserStore, {lines, current: at});
    this._line = undefined;
    this._ownLine = lines[at];
    this._opened = code;
    this._own = {...this._own, of: 'line', shown: jointsOf(lines[at]).findIndex((joint) => joint.code === code) + 1};
    return undefined;
  }

  /** Older links had the station's name among the fields of the form. */
  _takeName() {
    const {station: name, ...own} = this._own;
    if (!name) return;
    this._own = own;
    this.stationStore.put({...this.station, name});
  }

  /**
   * Why the line at hand is the example.
   *
   * @param {{problem: string, spoilt?: string}} kept
   */
  _lost({problem, spoilt}) {
    if (!spoilt) return {text: NOTHING_KEPT};
    return {
      text: problem,
      action: {words: 'Save them', run: () => save('jointwise-lines-unread.txt', 'text/plain', spoilt)},
    };
  }

  async _copy() {
    const own = super._fragment;
    const {fragment, whole} = this._state.of === 'line' ? withLine(own, this._atHand) : {fragment: own, whole: true};
    const text = 'This line is too long for a link; export it in the Line view instead.';
    if (whole) await this._copyLink(fragment);
    else this._notice({text});
  }
}

customElements.define('jw-fitout-view', JwFitoutView);
