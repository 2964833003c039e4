import {LitElement, html} from 'lit';
import {cache} from 'lit/directives/cache.js';
import {keyed} from 'lit/directives/keyed.js';
import {layOver} from '../shared/packs/lay.js';
import {save} from '../shared/export/save.js';
import {CHOOSE, FIRST_FRAGMENTS, FITOUT, KIT, LINE, MATRIX, PACKS, SWEEP, viewOf} from './views.js';
import {base} from '../shared/styles/base.js';
import '../choose/jw-choose-view.js';
import '../fitout/jw-fitout-view.js';
import '../kit/jw-kit-view.js';
import '../line/jw-line-view.js';
import './jw-masthead.js';
import '../matrix/jw-matrix-view.js';
import './jw-notice.js';
import '../packs/jw-packs-view.js';
import '../sweep/jw-sweep-view.js';
import {appStyles} from './styles.js';

const NO_NOTICE = {text: '', link: '', action: undefined};

/**
 * The page: the masthead with the switch between the views, the view itself, and what is said to the reader.
 *
 * A view that is left stays as it is; its part of the address comes back with it. Other packs make every view anew.
 *
 * @property {{ask: function}} transport - how the core is reached
 * @property {Shelf} shelf - the packs of the page
 * @property {string} stage - how far a core of the page's own has come in starting
 * @property {string} file - address of the page as one file; empty where there is none
 * @property {function(): Promise<object>} loadCharts - brings the chart library
 * @property {function(): Promise<string>} loadEmbed - brings the element for other websites, and its script's text
 */
class JwApp extends LitElement {
  static styles = [base, appStyles];

  static properties = {
    transport: {attribute: false},
    shelf: {attribute: false},
    stage: {type: String},
    file: {type: String},
    loadCharts: {attribute: false},
    loadEmbed: {attribute: false},
    _view: {state: true},
    _notice: {state: true},
  };

  constructor() {
    super();
    this.stage = '';
    this.file = '';
    this._notice = NO_NOTICE;
    this._packing = 0;
    this._view = viewOf(location.hash.slice(1));
    this._fragments = {...FIRST_FRAGMENTS};
    this._travelled = () => (this._view = viewOf(location.hash.slice(1)));
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
    if (!changed.has('shelf') || !this.shelf) return;
    layOver(this.shelf.inForce);
    this._tellPacks();
    this.shelf.listen(() => {
      layOver(this.shelf.inForce);
      this._packing++;
      this._tellPacks();
      this.requestUpdate();
    });
  }

  /** What the browser could not keep or read of the packs. */
  _tellPacks() {
    const {problem, spoilt} = this.shelf;
    const action = spoilt && {words: 'Save them', run: () => save('jointwise-packs-unread.txt', 'text/plain', spoilt)};
    if (problem) this._notice = {...NO_NOTICE, text: problem, action};
  }

  render() {
    const {_notice: notice} = this;
    return html`<div class="page" data-view=${this._view} @jw-notice=${({detail}) => (this._notice = {...NO_NOTICE, ...detail})} @jw-dismiss=${() => (this._notice = NO_NOTICE)}>
      <jw-masthead .view=${this._view} packs=${this.shelf?.inForce.length ?? 0} @jw-view=${this._turned} @jw-methods=${this._methods}></jw-masthead>
      ${cache(this._view === PACKS ? this._packs() : html`${keyed(this._packing, cache(this._shown()))}`)}
      <jw-notice .text=${notice.text} .link=${notice.link} .action=${notice.action}></jw-notice>
    </div>`;
  }

  _packs() {
    return html`<jw-packs-view class="view" .transport=${this.transport} .stage=${this.stage} .shelf=${this.shelf} .version=${this._packing}></jw-packs-view>`;
  }

  _shown() {
    const {transport, stage, file, loadCharts, loadEmbed} = this;
    switch (this._view) {
      case CHOOSE:
        return html`<jw-choose-view class="view" .transport=${transport} .stage=${stage}></jw-choose-view>`;
      case LINE:
        return html`<jw-line-view class="view" .transport=${transport} .stage=${stage} .loadCharts=${loadCharts}></jw-line-view>`;
      case KIT:
        return html`<jw-kit-view class="view" .transport=${transport} .stage=${stage}></jw-kit-view>`;
      case SWEEP:
        return html`<jw-sweep-view class="view" .transport=${transport} .stage=${stage} .loadCharts=${loadCharts}></jw-sweep-view>`;
      case FITOUT:
        return html`<jw-fitout-view class="view" .transport=${transport} .stage=${stage}></jw-fitout-view>`;
    }
    return html`<jw-matrix-view class="view" .transport=${transport} .stage=${stage} .file=${file} .loadCharts=${loadCharts} .loadEmbed=${loadEmbed}></jw-matrix-view>`;
  }

  _turned({detail: {view}}) {
    if (view === this._view) return;
    this._keep(location.hash.slice(1));
    const fragment = this._fragments[view];
    history.pushState(null, '', fragment ? `#${fragment}` : location.pathname + location.search);
    this._view = view;
  }

  /** What a view's address held when it was left, to come back to. */
  _keep(fragment) {
    this._fragments[viewOf(fragment)] = fragment;
  }

  /** The method stands beside the matrix; from elsewhere the way back is the browser's. */
  _methods() {
    if (this._view === MATRIX) this.renderRoot.querySelector('.view').openMethods();
    else location.hash = 'view=methods';
  }

  /** Offer a newer build of the page; `apply` loads it. */
  offerUpdate(apply) {
    this._notice = {text: 'A newer Jointwise is ready.', link: '', action: {words: 'Load it', run: apply}};
  }
}

customElements.define('jw-app', JwApp);
