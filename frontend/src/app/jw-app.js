import {ContextProvider} from '@lit/context';
import {html} from 'lit';
import {cache} from 'lit/directives/cache.js';
import {keyed} from 'lit/directives/keyed.js';
import START from '../../build/start-data.json';
import {element, of, state, value} from '../shared/elements/element.js';
import {inside} from '../shared/elements/inside.js';
import {save} from '../shared/export/save.js';
import {keepUnits, keptUnits, speaking, unitsIn, withUnits, withoutUnits} from '../shared/state/units.js';
import {viewOf} from '../shared/state/view-link.js';
import {base} from '../shared/styles/base.js';
import {speakIn} from '../shared/text/measures.js';
import {vocabularyContext} from '../shared/vocabulary/speaking.js';
import {Vocabulary} from '../shared/vocabulary/vocabulary.js';
import './jw-masthead.js';
import './jw-notice.js';
import {appStyles} from './styles.js';
import {PACKS, VIEWS} from './views.js';

/**
 * @import {LoadCharts} from '../shared/charts/jw-chart.js'
 * @import {Notice} from '../shared/elements/view.js'
 * @import {JwMatrixView} from '../matrix/jw-matrix-view.js'
 * @import {Shelf} from '../shared/packs/shelf.js'
 * @import {Transport} from '../shared/answers.js'
 * @import {Units} from '../shared/text/measures.js'
 * @import {ViewDescriptor} from './views.js'
 */

const ALL = [...VIEWS, PACKS];
const [MATRIX] = VIEWS;
const IDS = ALL.map(({id}) => id);

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
  _view: state(/** @type {string} */ (of)),
  /** Metric or US, as the switch stands. */
  _units: state(/** @type {Units} */ (of)),
  _notice: state(/** @type {Notice} */ (of)),
}) {
  static styles = [base, appStyles];

  constructor() {
    super();
    this.stage = '';
    this.file = '';
    this._notice = NO_NOTICE;
    /** Another one after every change of the packs. */
    this.version = 0;
    this._vocabulary = new ContextProvider(this, {context: vocabularyContext});
    this._view = viewOf(location.hash.slice(1), IDS);
    /** What the address of each view held when it was left; at first what leads to it. */
    this._fragments = Object.fromEntries(ALL.map((view) => [view.id, view === MATRIX ? '' : `view=${view.id}`]));
    /** The transport, asked in these units. */
    this._spoken = /** @type {Transport} */ (of);
    this._units = keptUnits(() => localStorage);
    this._takeUnits();
    this._travelled = () => {
      this._view = viewOf(location.hash.slice(1), IDS);
      this._takeUnits();
    };
    this._left = ({oldURL}) => this._keep(new URL(oldURL).hash.slice(1));
  }

  connectedCallback() {
    super.connectedCallback();
    window.addEventListener('popstate', this._travelled);
    window.addEventListener('hashchange', this._left);
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    window.removeEventListener('popstate', this._travelled);
    window.removeEventListener('hashchange', this._left);
  }

  willUpdate(changed) {
    const isSpokenAnew = changed.has('_units');
    if (isSpokenAnew) speakIn(this._units);
    if (this.transport && (isSpokenAnew || changed.has('transport'))) {
      this._spoken = speaking(this.transport, this._units);
    }
    if (!this.shelf) return;
    if (changed.has('shelf')) {
      this.shelf.listen(() => {
        this.version++;
        this._layPacks();
        this.requestUpdate();
      });
    }
    if (changed.has('shelf')) this._layPacks();
    else if (isSpokenAnew) this._speak();
  }

  _layPacks() {
    this._speak();
    this._tellPacks();
  }

  _speak() {
    this._vocabulary.setValue(new Vocabulary(START, ALL, this.shelf.inForce, this._units));
  }

  /** Those of a link count from then on. */
  _takeUnits() {
    const units = unitsIn(location.hash.slice(1));
    if (units && units !== this._units) this._measure(units);
  }

  _measure(units) {
    this._units = units;
    const text = 'This browser keeps nothing for the page, so the choice of units ends when it is closed.';
    if (!keepUnits(() => localStorage, units)) this._notice = {...NO_NOTICE, text};
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
    const {file, loadCharts, loadEmbed, shelf, stage, version} = this;
    const page = {transport: this._spoken, file, loadCharts, loadEmbed, shelf, stage, version};
    const view = /** @type {ViewDescriptor} */ (ALL.find(({id}) => id === this._view));
    return html`<div class="page" data-view=${view.id} ?data-upright=${view.upright}
      @jw-notice=${({detail}) => (this._notice = {...NO_NOTICE, ...detail})}
      @jw-dismiss=${() => (this._notice = NO_NOTICE)}>
      <jw-masthead .view=${view.id} packs=${this.shelf?.inForce.length ?? 0} units=${this._units}
        @jw-view=${this._turned} @jw-units=${this._unitsTurned}
        @jw-methods=${this._methods}></jw-masthead>
      ${cache(view === PACKS ? view.element(page) : html`${keyed(this.version, cache(view.element(page)))}`)}
      <jw-notice .text=${notice.text} .link=${notice.link} .action=${notice.action}></jw-notice>
    </div>`;
  }

  _turned({detail: {view}}) {
    if (view === this._view) return;
    this._keep(location.hash.slice(1));
    const fragment = this._fragments[view];
    history.pushState(null, '', fragment ? `#${fragment}` : location.pathname + location.search);
    this._view = view;
  }

  /** What the address says of units would bring the old ones back. */
  _unitsTurned({detail: {units}}) {
    this._measure(units);
    history.replaceState(history.state, '', withUnits(location.href, 'metric'));
  }

  /** What a view's address held when it was left, to come back to. */
  _keep(fragment) {
    this._fragments[viewOf(fragment, IDS)] = withoutUnits(fragment);
  }

  /** The method stands beside the matrix; from elsewhere the way back is the browser's. */
  _methods() {
    if (this._view === MATRIX.id) /** @type {JwMatrixView} */ (inside(this.renderRoot, '.view')).openMethods();
    else location.hash = 'view=methods';
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
