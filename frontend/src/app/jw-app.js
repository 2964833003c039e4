import {ContextProvider} from '@lit/context';
import {html, nothing} from 'lit';
import {cache} from 'lit/directives/cache.js';
import {keyed} from 'lit/directives/keyed.js';
import START from '../../build/start-data.json';
import {drawAnew} from '../shared/elements/anew.js';
import {element, of, state, value} from '../shared/elements/element.js';
import {inside} from '../shared/elements/inside.js';
import {LEFT} from '../shared/elements/view.js';
import {save} from '../shared/export/save.js';
import {browserStore} from '../shared/state/browser-store.js';
import {speaking} from '../shared/state/units.js';
import {viewOf} from '../shared/state/view-link.js';
import {stationContext} from '../shared/station/at-station.js';
import {ofStation} from '../shared/station/fields.js';
import {StationStore} from '../shared/station/store.js';
import {base} from '../shared/styles/base.js';
import {viewStyles} from '../shared/styles/view.js';
import {speakIn} from '../shared/text/measures.js';
import {vocabularyContext} from '../shared/vocabulary/speaking.js';
import {Vocabulary} from '../shared/vocabulary/vocabulary.js';
import '../shared/elements/jw-sheet.js';
import {PANEL} from '../station/jw-station-panel.js';
import {catchFaults} from './faults.js';
import './jw-masthead.js';
import './jw-notice.js';
import './jw-on-paper.js';
import './jw-saving.js';
import {layFoot} from './paper-foot.js';
import {appStyles} from './styles.js';
import {typingOn} from './typing.js';
import {PACKS, VIEWS} from './views.js';

/**
 * @import {LoadCharts} from '../shared/charts/jw-chart.js'
 * @import {Notice, View} from '../shared/elements/view.js'
 * @import {JwMatrixView} from '../matrix/jw-matrix-view.js'
 * @import {Shelf} from '../shared/packs/shelf.js'
 * @import {Transport} from '../shared/answers.js'
 * @import {Units} from '../shared/text/measures.js'
 * @import {ReadCodes} from './pictures.js'
 * @import {ViewDescriptor} from './views.js'
 */

const ALL = [...VIEWS, PACKS];
const [MATRIX] = VIEWS;
const IDS = ALL.map(({id}) => id);

/** What stands beside the view when asked for. */
const SHEETS = {station: 'Station', saving: 'Save or open my page'};

/** @type {Notice} */
const NO_NOTICE = {text: '', link: '', action: undefined};

/**
 * The page: the masthead with the switch between the views, the view itself, and what is said to the reader.
 *
 * A view that is left stays as it is; its part of the address comes back with it. Other packs make every view anew.
 */
export class JwApp extends element({
  transport: value(/** @type {Transport} */ (of)),
  shelf: value(/** @type {Shelf} */ (of)),
  /** How far a core of the page's own has come in starting. */
  stage: {type: String},
  /** Address of the page as one file; empty where there is none. */
  file: {type: String},
  loadCharts: value(/** @type {LoadCharts} */ (of)),
  /** Brings the element for other websites, and its script's text. */
  loadEmbed: value(/** @type {() => Promise<string>} */ (of)),
  /** Brings what reads codes out of pictures. */
  loadCodes: value(/** @type {() => Promise<ReadCodes>} */ (of)),
  _view: state(/** @type {string} */ (of)),
  /** Metric or US, as the switch stands. */
  _units: state(/** @type {Units} */ (of)),
  _notice: state(/** @type {Notice} */ (of)),
  /** The sheet that is open beside the view: station, saving or none. */
  _sheet: state(/** @type {'station' | 'saving' | ''} */ (of)),
}) {
  static styles = [base, viewStyles, appStyles];

  constructor() {
    super();
    this.stage = '';
    this.file = '';
    this._notice = NO_NOTICE;
    this._sheet = /** @type {'station' | 'saving' | ''} */ ('');
    this._isTyping = typingOn(this);
    this._pressed = (event) => this._key(event);
    this._printed = () => layFoot(this._station.value?.present.name ?? '');
    /** Another one after every change of the packs. */
    this.version = 0;
    this._vocabulary = new ContextProvider(this, {context: vocabularyContext});
    this._station = new ContextProvider(this, {context: stationContext});
    this._view = viewOf(location.hash.slice(1), IDS);
    /** What the address of each view held when it was left; at first what leads to it. */
    this._fragments = Object.fromEntries(ALL.map((view) => [view.id, view === MATRIX ? '' : `view=${view.id}`]));
    /** The transport, asked in these units. */
    this._spoken = /** @type {Transport} */ (of);
    this._units = /** @type {Units} */ ('metric');
    this._travelled = () => (this._view = viewOf(location.hash.slice(1), IDS));
    this._left = ({oldURL}) => this._keep(new URL(oldURL).hash.slice(1));
    catchFaults(this, () => ALL.find(({id}) => id === this._view)?.label ?? 'the page');
  }

  connectedCallback() {
    super.connectedCallback();
    window.addEventListener('popstate', this._travelled);
    window.addEventListener('hashchange', this._left);
    window.addEventListener('keydown', this._pressed);
    window.addEventListener('beforeprint', this._printed);
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    window.removeEventListener('popstate', this._travelled);
    window.removeEventListener('hashchange', this._left);
    window.removeEventListener('keydown', this._pressed);
    window.removeEventListener('beforeprint', this._printed);
  }

  willUpdate(changed) {
    if (this.shelf && changed.has('shelf')) {
      this.shelf.listen(() => {
        this.version++;
        this._layPacks();
        this.requestUpdate();
      });
      this._layPacks();
    }
    const isSpokenAnew = changed.has('_units');
    if (isSpokenAnew) speakIn(this._units);
    if (isSpokenAnew && this.shelf) this._speak();
    if (this.transport && (isSpokenAnew || changed.has('transport'))) {
      this._spoken = speaking(this.transport, this._units);
    }
  }

  _layPacks() {
    this._speak();
    if (!this._station.value) this._beginStation(this._vocabulary.value);
    this._tellPacks();
  }

  _speak() {
    const speakers = [...ALL, ofStation];
    this._vocabulary.setValue(new Vocabulary(START, speakers, this.shelf.inForce, this._units));
  }

  _beginStation({fields}) {
    const store = new StationStore(browserStore, fields);
    this._station.setValue(store);
    store.follow();
    const follow = () => (this._units = store.present.units);
    follow();
    this._tellStation();
    store.listen((live) => {
      follow();
      if (live) return;
      this._tellStation();
      // what can be taken back
      this.requestUpdate();
    });
  }

  /** What the browser could not keep or read of the station is said once. */
  _tellStation() {
    const {problem, spoilt} = this._station.value;
    if (problem === this._told) return;
    this._told = problem;
    const run = () => save('jointwise-station-unread.txt', 'text/plain', spoilt);
    if (problem) this._notice = {...NO_NOTICE, text: problem, action: spoilt ? {words: 'Save it', run} : undefined};
  }

  /** What the browser could not keep or read of the packs. */
  _tellPacks() {
    const {problem, spoilt} = this.shelf;
    const run = () => save('jointwise-packs-unread.txt', 'text/plain', spoilt);
    const action = spoilt ? {words: 'Save them', run} : undefined;
    if (problem) this._notice = {...NO_NOTICE, text: problem, action};
  }

  render() {
    const {_notice: notice} = this;
    const {_sheet: sheet, file, loadCharts, loadEmbed, shelf, stage, version} = this;
    const store = this._station.value;
    const page = {transport: this._spoken, loadCharts, loadEmbed, shelf, stage, version};
    const view = /** @type {ViewDescriptor} */ (ALL.find(({id}) => id === this._view));
    return html`<div class="page" data-view=${view.id} ?data-upright=${view.upright}
      @jw-notice=${({detail}) => (this._notice = {...NO_NOTICE, ...detail})}
      @jw-dismiss=${() => (this._notice = NO_NOTICE)}>
      <button class="skip" @click=${this._skip}>Skip to the answer</button>
      <jw-masthead .view=${view.id} .description=${view.description} packs=${shelf?.inForce.length ?? 0}
        .ways=${() => this._shown.ways ?? []} .resets=${() => Boolean(this._shown.reset)} file=${file}
        ?undo=${store?.canUndo(view.id)} ?redo=${store?.canRedo(view.id)} units=${this._units}
        ?open=${sheet === 'station'} station=${store?.present.name ?? ''}
        @jw-view=${this._turned} @jw-methods=${this._methods} @jw-reset=${() => this._shown.reset?.()}
        @jw-sheet=${({detail: {name}}) => (this._sheet = sheet === name ? '' : name)}
        @jw-turn=${({detail}) => this._shown.turn(detail.way)}
        @jw-units=${({detail}) => store.change(PANEL, {units: detail.units})}></jw-masthead>
      ${cache(view === PACKS ? view.element(page) : html`${keyed(this.version, cache(view.element(page)))}`)}
      <jw-sheet class="own" ?beside=${sheet !== ''} .heading=${sheet && SHEETS[sheet]}
        @jw-close=${this._close}>${this._inSheet()}</jw-sheet>
      <jw-notice .text=${notice.text} .link=${notice.link} .action=${notice.action}></jw-notice>
    </div>`;
  }

  _inSheet() {
    if (this._sheet === 'station') return html`<jw-station-panel></jw-station-panel>`;
    if (this._sheet === '') return nothing;
    return html`<jw-saving .transport=${this._spoken} .file=${this.file} .loadCodes=${this.loadCodes}
        @jw-taken-in=${this._readAnew}></jw-saving>
      <jw-on-paper .transport=${this._spoken}></jw-on-paper>`;
  }

  /** The view that is shown. */
  get _shown() {
    return /** @type {View & {reset?: () => void}} */ (inside(this.renderRoot, '.view'));
  }

  /** To the view, past the switches of the page. */
  _skip() {
    const main = inside(/** @type {ParentNode} */ (this._shown.renderRoot), 'main');
    main.tabIndex = -1;
    main.focus();
  }

  /** Every view holds what it has read of what is kept. */
  _readAnew() {
    location.reload();
  }

  _close(event) {
    event.stopPropagation();
    this._sheet = '';
  }

  /** Undo by the keyboard goes to the station while that is open, else to the view; a field has its own. */
  _key(event) {
    const {ctrlKey, metaKey, shiftKey} = event;
    if (!(ctrlKey || metaKey) || event.key.toLowerCase() !== 'z' || this._isTyping(event)) return;
    event.preventDefault();
    const way = shiftKey ? 'redo' : 'undo';
    if (this._sheet === 'station') this._station.value.turn(way, PANEL);
    else this._shown.turn(way);
  }

  _turned({detail: {view}}) {
    if (view === this._view) return;
    this._keep(location.hash.slice(1));
    const fragment = this._fragments[view];
    history.pushState(LEFT, '', fragment ? `#${fragment}` : location.pathname + location.search);
    this._view = view;
  }

  /** What a view's address held when it was left, to come back to. */
  _keep(fragment) {
    this._fragments[viewOf(fragment, IDS)] = fragment;
  }

  /** The method stands beside the matrix; from elsewhere the way back is the browser's. */
  _methods() {
    if (this._view === MATRIX.id) /** @type {JwMatrixView} */ (/** @type {unknown} */ (this._shown)).openMethods();
    else location.hash = 'view=methods';
  }

  /** Draw the page, and the view that is shown, anew from what they hold. */
  drawAnew() {
    const view = /** @type {?import('lit').LitElement} */ (this.renderRoot.querySelector('.view'));
    if (view) drawAnew(view);
    this.requestUpdate();
  }

  /**
   * Offer a newer build of the page; `apply` loads it.
   *
   * @param {() => void} apply
   */
  offerUpdate(apply) {
    this._notice = {text: 'A newer Jointwise is ready.', link: '', action: {words: 'Load it', run: apply}};
  }
}

customElements.define('jw-app', JwApp);
