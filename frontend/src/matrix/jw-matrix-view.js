import {html, nothing} from 'lit';
import START from '../../build/start-data.json';
import {element, of, state, value} from '../shared/elements/element.js';
import {FormView} from '../shared/elements/form-view.js';
import '../shared/elements/jw-cautions.js';
import '../shared/elements/jw-sheet.js';
import {refusedField} from '../shared/fields/refused.js';
import {fromFragment} from '../shared/state/fragment.js';
import {levelsWith, nearestPower} from '../shared/state/levels.js';
import {power} from '../shared/text/format.js';
import {isUnreachable} from '../transport/unreachable.js';
import './detail/jw-detail.js';
import './jw-bands.js';
import './jw-key.js';
import './jw-marks.js';
import './jw-matrix.js';
import './jw-power-choice.js';
import './jw-scenario.js';
import './jw-summary.js';
import {ASKED, FIRST_CELL} from './question/changes.js';
import './question/jw-question.js';
import {NOTHING_OPEN, cellRequest, matrixRequest, openSheet} from './requests.js';
import {awaitedMatrix, headingOf, isOpenCell, isSpot, openColumn} from './shown.js';
import {saveAnswer, saveCsv} from './ways.js';

/** @import {LoadCharts} from '../shared/charts/jw-chart.js' */

/** On such a screen one band is shown as a list. */
const NARROW = matchMedia('screen and (max-width: 600px)');

/**
 * Every family against every band: holds the state, asks the core, and keeps the address in step.
 * It draws into the shell's own tree, whose styles it takes and whose tables it can show.
 *
 * @fires jw-notice - {text, link}: a sentence for the reader
 */
export class JwMatrixView extends element(
  {
    /** Brings the chart library. */
    loadCharts: value(/** @type {LoadCharts} */ (of)),
    /** Brings the element for other websites, and its script's text. */
    loadEmbed: value(/** @type {() => Promise<string>} */ (of)),
    /** Whether every cell of the matrix has its marks. */
    _isMarked: state(/** @type {boolean} */ (of)),
    _isNarrow: state(/** @type {boolean} */ (of)),
    /** Whether a narrow screen shows all bands. */
    _isWhole: state(/** @type {boolean} */ (of)),
    /** Id of the band that a narrow screen shows alone. */
    _band: state(/** @type {string} */ (of)),
  },
  FormView,
) {
  static view = 'matrix';

  static ownNames = ['families', 'frequencies_hz', 'powers_w', 'shows', 'view', 'family', 'band', 'frequency_hz'];

  constructor() {
    super();
    this._isMarked = false;
    this._isNarrow = NARROW.matches;
    this._isWhole = false;
    this._band = /** @type {string} */ (FIRST_CELL.band);
    this._resized = () => (this._isNarrow = NARROW.matches);
    this._matrix = this._enquiry('matrix');
    this._cell = this._enquiry('cell');
    this._catalogue = this._enquiry('catalogue');
  }

  _askAnew() {
    super._askAnew();
    this._cellAsked = undefined;
  }

  connectedCallback() {
    super.connectedCallback();
    NARROW.addEventListener('change', this._resized);
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    NARROW.removeEventListener('change', this._resized);
  }

  createRenderRoot() {
    return this;
  }

  willUpdate(changed) {
    super.willUpdate(changed);
    // a cell that is chosen brings its band along
    const open = openColumn(this._state, this._shown)?.id;
    if (open !== undefined && open !== this._openBefore) this._band = open;
    this._openBefore = open;
  }

  updated(changed) {
    if (this.transport === undefined) return;
    const text = JSON.stringify(this._state);
    if (text !== this._stateAsked || this._asked === undefined || changed.has('transport')) this._askAll();
    this._stateAsked = text;
  }

  render() {
    const {_state, _shown: matrix} = this;
    const sheet = openSheet(_state);
    const open = openColumn(_state, matrix);
    return html`<div @jw-change=${this._changed} @jw-open=${this._opened}
        @jw-close=${this._closed}>
      ${this._progress(this._matrix)}
      <main>
        ${this._trouble()}
        <jw-question .state=${_state} .transport=${this.transport} .stage=${this.stage}
          @jw-asked=${({detail}) => this._choose(detail.changes)} @jw-why=${this._explained}></jw-question>
        <jw-scenario .state=${_state} .refusal=${this._matrix.error}></jw-scenario>
        <div class="bar">
          <jw-power-choice .powers=${matrix.powers_w} .chosen=${this._power} .shows=${_state.shows}
            ?marked=${this._isMarked} @jw-marked=${({detail}) => (this._isMarked = detail.marked)}></jw-power-choice>
        </div>
        <h2 class="onpaper">${this._onPaper}</h2>
        ${
          this._isNarrow
            ? html`<jw-bands .columns=${matrix.columns} band=${this._alone} @jw-band=${this._stepped}
              @jw-whole=${({detail}) => (this._isWhole = detail.whole)}></jw-bands>`
            : nothing
        }
        <jw-key></jw-key>
        <jw-matrix .matrix=${matrix} .power=${this._power} .shows=${_state.shows} .outdated=${this._outdated}
          band=${this._alone} @jw-step=${this._stepped} ?marked=${this._isMarked}
          .opened=${{family: _state.family, column: open?.id}}></jw-matrix>
        <section class="below">
          ${
            this._isMarked || _state.family
              ? html`<jw-marks .matrix=${matrix} .power=${this._power} ?all=${this._isMarked}
                family=${_state.family ?? ''} column=${open?.id ?? ''}></jw-marks>`
              : nothing
          }
          <jw-summary class="onpaper" .state=${this._computed}></jw-summary>
          <jw-cautions .cautions=${START.cautions}></jw-cautions>
        </section>
        ${this._withoutCore ? html`<section class="tables"><slot></slot></section>` : nothing}
      </main>
      <jw-sheet .heading=${headingOf(sheet, _state, matrix, this.vocabulary.lists)}>
        ${
          sheet
            ? html`<jw-detail .kind=${sheet} .state=${_state} .matrix=${matrix} .cell=${this._wantedCell}
              .catalogue=${this._catalogue.result} .error=${this._cell.error ?? this._catalogue.error}
              .power=${this._power} .loadCharts=${this.loadCharts} .loadEmbed=${this.loadEmbed}
              .transport=${this.transport}></jw-detail>`
            : nothing
        }
      </jw-sheet>
    </div>`;
  }

  /** Id of the band that is shown alone; empty where all are. */
  get _alone() {
    const {columns} = this._shown;
    if (!this._isNarrow || this._isWhole) return '';
    return (columns.find(({id}) => id === this._band) ?? columns[0]).id;
  }

  _stepped({detail: {band, step}}) {
    const {columns} = this._shown;
    const at = columns.findIndex(({id}) => id === this._alone);
    this._band = band ?? columns[at + step]?.id ?? this._band;
  }

  /** The last good matrix, or what stands in for the first. */
  get _shown() {
    return this._matrix.result ?? awaitedMatrix(this._state, this._refused, this.vocabulary);
  }

  get _refused() {
    return this._matrix.error !== undefined;
  }

  /** Heading of the matrix on paper: whose it is, of what day, and what it shows. */
  get _onPaper() {
    const day = new Intl.DateTimeFormat('en-GB', {dateStyle: 'long'}).format(new Date());
    const whose = [this.station.name, day].filter(Boolean).join(', ');
    return `${whose}: margin in dB${this._isMarked ? '; in heavy type' : ''} at ${power(this._power)}`;
  }

  /** Why the numbers shown are not those of the controls; empty while they are. */
  get _outdated() {
    if (!this._refused || this._asksTheSame(this._computed, this._state)) return '';
    return this._matrix.result
      ? 'Out of date: these are the numbers from before the change that could not be computed.'
      : 'Not what was asked for, which could not be computed: these are the built-in numbers of a first visit.';
  }

  /** Whether two states ask the core for the same numbers. */
  _asksTheSame(...states) {
    const [one, other] = states.map((each) => JSON.stringify(matrixRequest(each, this.vocabulary)));
    return one === other;
  }

  /** Whether no core has answered and none can; the tables that came with the page are all there is then. */
  get _withoutCore() {
    return this._matrix.result === undefined && isUnreachable(this._matrix.error);
  }

  get _power() {
    return nearestPower(this._shown.powers_w, this._state.power_w);
  }

  /** The station whose numbers are shown: after a refusal not the one that was asked for. */
  get _computed() {
    const {answered} = this._matrix;
    if (!answered && !this._refused) return this._state;
    return {...this._first, power_w: this._state.power_w, ...answered};
  }

  /** The cell result, if it is of the cell that is open. */
  get _wantedCell() {
    const {answered, result} = this._cell;
    return answered && isOpenCell(answered, this._state) ? result : undefined;
  }

  /** A refusal that no control of the form can show. */
  _trouble() {
    const {error} = this._matrix;
    if (!error || refusedField(error) in this.vocabulary.words) return nothing;
    return html`<p class="trouble" role="alert">${error.message} <button
      @click=${() => this._askAll(true)}>Try again</button></p>`;
  }

  _askAll(again = false) {
    const request = matrixRequest(this._state, this.vocabulary);
    const text = JSON.stringify(request);
    if (again || text !== this._asked) this._matrix.askNext(request);
    this._asked = text;
    const sheet = openSheet(this._state);
    if (sheet && sheet !== 'website' && ['initial', 'error'].includes(this._catalogue.status)) this._catalogue.ask({});
    if (sheet === 'derivation') this._askCell();
  }

  _askCell() {
    const request = cellRequest({...this._state, power_w: this._power});
    const before = this._cellAsked;
    this._cellAsked = request;
    if (before && this._cell.status !== 'error' && JSON.stringify(before) === JSON.stringify(request)) return;
    if (before && isOpenCell(before, this._state)) this._cell.askNext(request);
    else this._cell.ask(request);
  }

  /** The power looked at is one of the levels. */
  get _state() {
    const asked = super._state;
    const {power_w: said} = this.station.settings;
    return said === undefined ? asked : {...asked, powers_w: levelsWith(asked.powers_w, said)};
  }

  _changed(event) {
    const {changes, live} = event.detail;
    const {power_w: said} = this.station.settings;
    // a level that is put away is no more looked at
    const isAway = changes.powers_w && said !== undefined && !changes.powers_w.includes(said);
    this._change(isAway ? {...changes, power_w: nearestPower(changes.powers_w, said)} : changes, live);
  }

  /** Back closes what was opened; there is nothing to undo. */
  _show(changes) {
    this._change(changes, {isStep: false});
  }

  _opened(event) {
    const {family, column, power: watts} = event.detail;
    const spot = column !== undefined && isSpot(column);
    this._isAsked = false;
    this._show({
      ...NOTHING_OPEN,
      family: family?.id ?? null,
      band: column === undefined || spot ? null : column.id,
      frequency_hz: spot ? column.low_hz : null,
      power_w: watts,
    });
  }

  /** A cell that is asked about is chosen, its sheet not open. */
  _choose(changes) {
    this._isAsked = true;
    this._change(changes);
  }

  _explained(event) {
    this._isAsked = true;
    this._show({...NOTHING_OPEN, ...event.detail.cell});
  }

  /** Of a cell that is asked about only its sheet closes. */
  _closed() {
    this._show(this._isAsked && openSheet(this._state) === 'derivation' ? {view: ASKED} : NOTHING_OPEN);
  }

  openMethods() {
    this._show({view: 'methods'});
  }

  /** The sheets of the matrix are named as views are; the view itself needs no name. */
  _readOwn(fragment, fields, first) {
    return fromFragment(fragment.replace(/(^|&)view=matrix(?=&|$)/, ''), fields, first);
  }

  get ways() {
    const [link, print] = super.ways;
    const matrix = this._shown.margin_db && this._shown;
    const request = matrixRequest(this._computed, this.vocabulary);
    return [
      link,
      {id: 'csv', words: 'Save as CSV', run: () => this._withAnswer(matrix, saveCsv)},
      {id: 'json', words: 'Save as JSON', run: () => this._withAnswer(matrix, (shown) => saveAnswer(shown, request))},
      print,
      {id: 'website', words: 'Put on a website', run: () => this._show({...NOTHING_OPEN, view: 'website'})},
    ];
  }
}

customElements.define('jw-matrix-view', JwMatrixView);
