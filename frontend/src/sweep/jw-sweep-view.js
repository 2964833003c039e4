import {css, html, nothing} from 'lit';
import {element, of, state, value} from '../shared/elements/element.js';
import {FormView} from '../shared/elements/form-view.js';
import '../shared/elements/jw-cautions.js';
import '../shared/elements/jw-steps.js';
import {save} from '../shared/export/save.js';
import {FIRST_DOCUMENT} from '../shared/lines/document.js';
import {KEPT_LINES} from '../shared/lines/kept.js';
import {browserStore} from '../shared/state/browser-store.js';
import {KeptDocument} from '../shared/state/kept-document.js';
import {lineRequest} from '../shared/station/line-request.js';
import {base} from '../shared/styles/base.js';
import {panelStyles} from '../shared/styles/panels.js';
import {added, entryOf} from '../shared/sweeps/history.js';
import {KEPT_SWEEPS} from '../shared/sweeps/kept.js';
import {pageStyles} from '../shared/styles/view.js';
import {FIRST_HUNT, isAnswered} from './hunt.js';
import './jw-sweep-change.js';
import './jw-sweep-echoes.js';
import './jw-sweep-form.js';
import './jw-sweep-history.js';
import './jw-sweep-hunt.js';
import './jw-sweep-line.js';
import './jw-sweep-part.js';
import './jw-sweep-verdict.js';
import {KEPT_HUNT} from './kept.js';
import {isExample, isOwn, lineOf, ownId} from './lines.js';
import {refusalWords} from './reading.js';
import {spanRequest, sweepRequest} from './request.js';

/**
 * @import {LoadCharts} from '../shared/charts/jw-chart.js'
 * @import {LineDocument} from '../shared/lines/document.js'
 * @import {KeptSweep} from '../shared/sweeps/history.js'
 * @import {Hunt} from './hunt.js'
 * @import {SweepState, SweepFile} from './request.js'
 */

/**
 * Which joint has gone bad: a measured sweep against its line.
 *
 * @fires jw-notice - {text, action}: a sentence for the reader
 */
export class JwSweepView extends element(
  {
    /** Brings the chart library. */
    loadCharts: value(/** @type {LoadCharts} */ (of)),
    _document: state(/** @type {LineDocument} */ (of)),
    _file: state(/** @type {SweepFile | undefined} */ (of)),
    _earlier: state(/** @type {SweepFile | undefined} */ (of)),
    _hunt: state(/** @type {Hunt} */ (of)),
  },
  FormView,
) {
  static view = 'sweep';

  static ownNames = [
    ...['length_tolerance', 'window_shape', 'length_m', 'velocity_factor', 'lowest_hz', 'highest_hz', 'most_points'],
    ...['of', 'end', 'way'],
  ];

  static styles = [
    base,
    pageStyles,
    panelStyles,
    css`
      details.panel { padding-top: var(--space-half); padding-bottom: var(--space-half); }
      summary { cursor: pointer; min-height: var(--target); align-content: center; font-weight: 600; }
      .prompt { display: grid; place-content: center; min-height: 12em; }
      .headline .waiting { min-height: 12em; }
      .headline { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); }
      @media (min-width: 1180px) {
        main { grid-template-rows: auto auto 1fr; }
        .bar { grid-row: 1; }
        jw-sweep-form, jw-sweep-hunt { grid-column: 1; grid-row: 2 / span 2; }
        .headline { grid-column: 2; grid-row: 2; }
        .answer { grid-column: 2; grid-row: 3; }
        .headline:not(:has(*)) { display: none; }
      }
    `,
  ];

  /** Made by `_begin`. */
  _sweeps = /** @type {KeptDocument<KeptSweep[]>} */ (of);

  constructor() {
    super();
    this._document = FIRST_DOCUMENT;
    this._hunt = FIRST_HUNT;
    this._sweep = this._enquiry('sweep');
    this._span = this._enquiry('span');
    this._catalogue = this._enquiry('catalogue');
  }

  connectedCallback() {
    super.connectedCallback();
    this._recallHunt();
  }

  _begin() {
    super._begin();
    this._sweeps = new KeptDocument(KEPT_SWEEPS, browserStore, this.vocabulary.fields, []);
    this._sweeps.attach(this, () => {
      this._notice({text: 'Sweeps kept in another tab are shown here now.'});
      this.requestUpdate();
    });
    const {problem, spoilt} = this._sweeps;
    const run = () => save('jointwise-sweeps-unread.txt', 'text/plain', spoilt);
    if (spoilt) this._notice({text: problem, action: {words: 'Save them', run}});
  }

  get _entries() {
    return this._sweeps.present;
  }

  /** @returns {SweepState} */
  get _state() {
    return /** @type {SweepState} */ (super._state);
  }

  render() {
    const {error} = this._sweep;
    const result = this._result;
    const cautions = (result ?? (this._isHunt ? this._span.result : undefined))?.cautions;
    const isShown = !this._isHunt || isAnswered(this._hunt.at);
    const headline = isShown ? html`<div class="headline">${this._headline(result, error)}</div>` : nothing;
    const isKeepable = Boolean(result) && !error && this._sweep.answered === this._request;
    return html`${this._progress(this._sweep)}
      <main @jw-sweep-change=${({detail}) => this._change(detail.changes)}
        @jw-sweep-file=${({detail}) => this._take(detail)} @jw-sweep-forget=${() => (this._earlier = undefined)}
        @jw-sweep-hunt=${({detail}) => this._walk(detail.hunt)}
        @jw-sweep-keep=${({detail}) => this._keep(detail.date)} @jw-sweep-drop=${({detail}) => this._drop(detail.entry)}
        @jw-sweep-import=${({detail}) => this._remember(detail.entries.reduce(added, this._entries))}
        @jw-sweep-compare=${({detail}) => this._compare(detail.entry)}>
        <div class="bar">
          ${this._way('judge', 'Judge a sweep')} ${this._way('hunt', 'Find it step by step')}
        </div>
        ${this._isHunt ? [this._steps(result, error), headline] : [headline, this._form(error)]}
        <div class="answer">
          ${isShown && result ? this._details(result) : nothing}
          <jw-sweep-history .entries=${this._entries} line=${this._line.name} ?keepable=${isKeepable}
            .load=${this.loadCharts}></jw-sweep-history>
          ${cautions ? html`<jw-cautions .cautions=${cautions}></jw-cautions>` : nothing}
        </div>
      </main>`;
  }

  _askAnew() {
    super._askAnew();
    this._spanAsked = undefined;
  }

  get _isHunt() {
    return this._state.way === 'hunt';
  }

  _way(way, words) {
    return html`<button id=${way} aria-pressed=${this._state.way === way ? 'true' : 'false'}
      @click=${() => this._change({way})}>${words}</button>`;
  }

  _form(error) {
    return html`<jw-sweep-form class="noprint" .state=${this._state} .document=${this._document} .file=${this._atHand}
      .earlier=${this._earlier} .refusal=${error}></jw-sweep-form>`;
  }

  _steps(result, error) {
    return html`<jw-sweep-hunt class="noprint" .hunt=${this._hunt} .state=${this._state} .document=${this._document}
      .file=${this._atHand} .span=${this._span.error ? undefined : this._span.result} .spanRefusal=${this._span.error}
      .result=${error ? undefined : result} .refusal=${error}></jw-sweep-hunt>`;
  }

  /** What the sweep tells in a few words, or why it tells nothing. */
  _headline(result, error) {
    if (!this._atHand) {
      return html`<section class="panel prompt"><h2>Give the sweep of ${this._line.name}</h2>
        <p>A one-port file of the whole line, or a two-port file of what the line consists of.</p></section>`;
    }
    if (!result && error) {
      return html`<section class="panel prompt" id="refused"><h2>No verdict on ${this._atHand.name}</h2>
        <p>${refusalWords(error, this._atHand.name)}</p></section>`;
    }
    if (!result) return html`<p class="waiting quiet">Calculating…</p>`;
    const outdated = error ? `Out of date: this is the answer before the last change. ${error.message}` : '';
    const {before} = this._hunt;
    return html`${
      this._isHunt && before && this._earlier === before.file
        ? html`<jw-sweep-change .before=${before.result} .after=${result} .load=${this.loadCharts}></jw-sweep-change>`
        : nothing
    }
      <jw-sweep-verdict .result=${result} of="${this._line.name}, ${this._atHand.name}"
        outdated=${outdated}></jw-sweep-verdict>`;
  }

  /** Part by part, pictures, numbers. */
  _details({line, part, echoes, steps}) {
    const load = this.loadCharts;
    return html`${line ? html`<jw-sweep-line .check=${line} .load=${load}></jw-sweep-line>` : nothing}
      ${part ? html`<jw-sweep-part .part=${part} .load=${load}></jw-sweep-part>` : nothing}
      ${echoes ? html`<jw-sweep-echoes .check=${echoes} .load=${load}></jw-sweep-echoes>` : nothing}
      <details class="panel more noprint" id="how">
        <summary>How this was worked out</summary>
        <jw-steps .steps=${steps} .catalogue=${this._catalogue.result}></jw-steps>
      </details>`;
  }

  get _line() {
    const line = lineOf(this._state.of, this._document);
    if (!isOwn(this._state.of)) return line;
    return {...line, request: lineRequest(line.request, this.station, this.vocabulary)};
  }

  /** The file that was dropped, else that of the example. */
  get _atHand() {
    return this._file ?? this._line.file;
  }

  /** The last answer, as long as it is about the line and the file at hand. */
  get _result() {
    const {answered, result} = this._sweep;
    const isOfThese =
      this._atHand && answered?.touchstone === this._atHand.text && answered.elements === this._line.request.elements;
    return isOfThese ? result : undefined;
  }

  /** The request of the form as it stands, the same object until something in it changes; none without a file. */
  get _request() {
    if (!this._atHand) return undefined;
    const {end, length_tolerance, window_shape, velocity_factor} = this._state;
    const told = [this._state.of, end, length_tolerance, window_shape, velocity_factor];
    const parts = [...told, this._document, this.station, this._atHand, this._earlier];
    const before = this._parts;
    if (!before || parts.some((part, at) => part !== before[at])) {
      this._parts = parts;
      this._made = sweepRequest(this._state, this._line, this._atHand, this._earlier);
    }
    return this._made;
  }

  _ask() {
    this._askSpan();
    if (this._request === undefined || this._request === this._asked) return;
    this._asked = this._request;
    this._sweep.askNext(this._request);
    if (['initial', 'error'].includes(this._catalogue.status)) this._catalogue.ask({});
  }

  _askSpan() {
    if (!this._isHunt) return;
    const request = spanRequest(this._state, this._line);
    const asked = JSON.stringify(request);
    if (asked === this._spanAsked) return;
    this._spanAsked = asked;
    this._span.askNext(request);
  }

  /** @param {Hunt} hunt */
  _walk(hunt) {
    // without a sweep from before, the one at hand begins a new round
    if (!hunt.before) this._earlier = undefined;
    this._hunt = hunt;
    this._rememberHunt();
  }

  _rememberHunt() {
    const {at, before} = this._hunt;
    const file = before?.file ?? this._file ?? null;
    const problem = KEPT_HUNT.remember(browserStore, {of: this._state.of, at, file});
    this._notice(problem && {text: problem});
  }

  /** Goes on with a hunt on the same line, after the page was loaded anew. */
  _recallHunt() {
    const kept = KEPT_HUNT.recalled(browserStore).document;
    if (!this._isHunt || !kept || kept.of !== this._state.of) return;
    this._file = kept.file ?? undefined;
    this._hunt = {at: kept.at};
  }

  _change(changes) {
    // a file belongs to the line it was dropped on, an example has its own
    if ('of' in changes) this._forget();
    const end = isExample(changes.of) ? {end: this._first.end} : {};
    super._change({...changes, ...end}, {isStep: !('way' in changes)});
  }

  /** A step may lead to another line, whose files are others. */
  turn(way) {
    const {of: before} = this._state;
    const isTurned = super.turn(way);
    if (this._state.of !== before) this._forget();
    return isTurned;
  }

  /** The form as on a first visit. */
  reset() {
    if (this._state.of !== this._first.of) this._forget();
    super.reset();
  }

  /** A link holds no file. */
  get ways() {
    return super.ways.filter(({id}) => id !== 'link');
  }

  /** Without the files of the line before, and what was asked about them. */
  _forget() {
    Object.assign(this, {_file: undefined, _earlier: undefined, _asked: undefined});
    this._hunt = {at: this._hunt.at};
    this._sweep.forget();
  }

  _take({name, file}) {
    if (name === 'earlier') {
      this._earlier = file;
      return;
    }
    if (name === 'again') {
      const before = this._hunt.before ?? {file: this._atHand, result: this._result};
      Object.assign(this, {_file: file, _earlier: before.file, _hunt: {at: 'compare', before}});
      this._rememberHunt();
      return;
    }
    if (isExample(this._state.of)) this._change({of: ownId(this._document.current)});
    this._hunt = {at: this._hunt.at};
    this._file = file;
    if (!this._isHunt) return;
    this._earlier = undefined;
    this._rememberHunt();
  }

  _compare({name, date, text}) {
    this._earlier = {name: `${name}, ${date}`, text};
  }

  _drop(entry) {
    this._remember(this._entries.filter((one) => one !== entry));
  }

  _keep(date) {
    const entry = entryOf({date, line: this._line.name, file: this._atHand, result: this._result});
    this._remember(added(this._entries, entry));
  }

  _remember(entries) {
    this._sweeps.put(entries);
    const {problem} = this._sweeps;
    this._notice(problem && {text: problem});
    this.requestUpdate();
  }

  _restore(fragment) {
    const {of: before} = this._state;
    this._document = KEPT_LINES.recalled(browserStore, this.vocabulary.fields).document ?? FIRST_DOCUMENT;
    const restored = super._restore(fragment);
    if (this._state.of !== before) this._forget();
    return restored;
  }
}

customElements.define('jw-sweep-view', JwSweepView);
