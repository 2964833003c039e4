import {html} from 'lit';
import {READY} from '../../worker/messages.js';
import {copyFileLink, copyLink} from '../export/copy-link.js';
import {refusedWords} from '../refusals/words.js';
import {Enquiry} from '../state/enquiry.js';
import {readable, unknownWords, viewOf} from '../state/view-link.js';
import {AtStation} from '../station/at-station.js';
import {NOTHING_SAID, stationIn, stationPart} from '../station/link.js';
import {broughtBack, changed, fromLink} from '../station/station.js';
import {addressOf, isServed} from '../station/web-address.js';
import {element, of, value} from './element.js';
import './jw-progress.js';
import {send} from './send.js';

/**
 * @import {Transport} from '../answers.js'
 * @import {StationChanges} from '../station/station.js'
 * @import {Way} from '../export/ways.js'
 *
 * @typedef {{words: string, run: () => void}} Action - what the reader may do about it
 * @typedef {{text: string, link: string, action: Action | undefined}} Notice - a sentence, and a link to copy
 */

const same = (one, other) => JSON.stringify(one) === JSON.stringify(other);

/** Marks the page's own entries in the history: they hold all that differed from a first visit. */
const OWN = {own: true};

/** Leads to a view whose question stays as it was left; what the fragment says of the station is of then. */
export const LEFT = {left: true};

/**
 * What every view of the page is: in step with the address and the station, in touch with the core, and heard by the
 * reader. A view's own `view` is its name in the address, `_begin` makes its question `_own` once the vocabulary is
 * there, `_restore` takes what a fragment of the address says of that, `_fragment` writes it, `_ask` asks the core for
 * what was not asked yet.
 *
 * @fires jw-notice - {text, link, action}: a sentence for the reader
 */
export class View extends element(
  {
    transport: value(/** @type {Transport} */ (of)),
    /** How far a core of the page's own has come in starting. */
    stage: {type: String},
  },
  AtStation,
) {
  static view = '';

  /** Names in the view's address that mean something else there than in the station's settings. */
  static ownNames = /** @type {string[]} */ ([]);

  constructor() {
    super();
    this.stage = '';
    this._begun = false;
    this._isChanging = false;
    this._isFollowing = false;
    this._travelled = () => this._follow(location.hash.slice(1), true);
    /** @type {Enquiry<any>[]} */
    this._enquiries = [];
  }

  connectedCallback() {
    super.connectedCallback();
    window.addEventListener('popstate', this._travelled);
    if (!this._begun) this._begin();
    this._begun = true;
    this._follow(location.hash.slice(1));
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    window.removeEventListener('popstate', this._travelled);
    // what was in flight is given up, and asked again on the way back
    this._asked = undefined;
  }

  willUpdate(before) {
    if (before.get('transport')) this._askAnew();
  }

  /** Without a state there is nothing to draw, as when its beginning failed. */
  shouldUpdate() {
    return this._begun;
  }

  updated() {
    if (this.transport !== undefined) this._ask();
  }

  /**
   * What this view asks beside what the station says: a plain value, exchanged as a whole.
   *
   * @returns {any}
   */
  get _own() {
    return undefined;
  }

  set _own(_value) {
    throw new Error('A view without a question of its own has none to change.');
  }

  /** The address may have come to another view, which takes this one's place; `isWithin` says that it was here. */
  _follow(fragment, isWithin = false) {
    if (viewOf(fragment, this.vocabulary.views) !== this._name) return;
    const {own: isOwnEntry = false, left: isLeft = false} = history.state ?? {};
    const read = readable(fragment);
    const found = stationIn(read.fragment, this._ownNames, this.vocabulary.fields);
    this._isFollowing = true;
    const brought = isLeft ? '' : this._bring(found.changes, isOwnEntry, isWithin);
    const {unknown = [], ...notice} = this._restore(found.rest, isOwnEntry || isLeft) ?? {};
    this._isFollowing = false;
    const all = [...unknown, ...found.unknown];
    const texts = [read.problem, found.problem, all.length > 0 && unknownWords(all), notice.text, brought];
    const text = texts.filter(Boolean).join(' ');
    this._notice(text && {...notice, text});
    this._address(true);
  }

  /** The station of an address takes the place of the one at hand; what is said of that. */
  _bring(changes, isOwnEntry, isWithin) {
    const store = this.stationStore;
    if (isOwnEntry && !store.isNew) {
      // the way back within a view brings back what it showed; from another view the station comes along
      if (isWithin) store.put(broughtBack(store.present, changes));
    } else if (changes) return store.bring(this._name, fromLink(store.present, changes));
    return '';
  }

  get _name() {
    return /** @type {typeof View} */ (this.constructor).view;
  }

  get _ownNames() {
    return /** @type {typeof View} */ (this.constructor).ownNames;
  }

  _begin() {}

  /**
   * @param {string} _fragment - without the station
   * @param {boolean} _isOwnEntry - whether the page wrote it, so that what is at hand is newer
   * @returns {(Partial<Notice> & {unknown?: string[]}) | undefined} - what the reader is told, and names not known
   */
  _restore(_fragment, _isOwnEntry) {
    return undefined;
  }

  /** What the address says of the view's question. */
  get _fragment() {
    return '';
  }

  /** The whole fragment: the view's question and the station. */
  get _wholeFragment() {
    return [this._fragment, stationPart(this.station, this._ownNames)].filter(Boolean).join('&');
  }

  /**
   * A link to a question at this station; one from a page that is a file leads to the station's address.
   *
   * @param {string} [fragment] - of the question
   */
  _linkTo(fragment = this._fragment) {
    const part = stationPart(this.station, this._ownNames) || NOTHING_SAID;
    const page = isServed(location.href) ? location.href.replace(/#.*$/, '') : addressOf(this.station, location);
    return `${page}#${[fragment, part].filter(Boolean).join('&')}`;
  }

  /**
   * Copies a link, and says what became of it.
   *
   * @param {string} [fragment] - of the question
   */
  async _copyLink(fragment) {
    const link = this._linkTo(fragment);
    this._notice(isServed(link) ? await copyLink(link) : await copyFileLink(link, (notice) => this._notice(notice)));
  }

  /** Another transport answers otherwise, as in other units. */
  _askAnew() {
    this._asked = undefined;
    for (const enquiry of this._enquiries) enquiry.outdate();
  }

  _ask() {}

  /**
   * A change of the view's question, of the station, or of both: one step to undo.
   *
   * @param {any} own
   * @param {StationChanges} [changes]
   * @param {{live?: boolean, isStep?: boolean, isEntry?: boolean}} [how] - `live` while more is to come, as from a
   * slider that is dragged; what is no step is not undone; what is no entry of the history is undone alone
   */
  _put(own, changes = {}, {live = false, isStep = true, isEntry = true} = {}) {
    const before = this._own;
    this._isChanging = true;
    this._own = own;
    if (isStep) this.stationStore.change(this._name, changes, {before, after: own}, live);
    else this.stationStore.put(changed(this.station, changes));
    this._isChanging = false;
    // a drag would fill the history
    if (!live) this._address(!isEntry);
    this.requestUpdate();
  }

  /**
   * Changed settings as the station keeps them: what is as on a first visit need not be said.
   *
   * @param {Record<string, any>} changes
   * @param {Record<string, any>} [first] - the values of a first visit
   */
  _settings(changes, first = this.vocabulary.first.settings) {
    const said = Object.entries(changes).map(([name, one]) => [name, same(one, first[name]) ? undefined : one]);
    return Object.fromEntries(said);
  }

  /**
   * A change of the station alone.
   *
   * @param {StationChanges} changes
   * @param {boolean} [live]
   */
  changeStation(changes, live = false) {
    this._put(this._own, changes, {live});
  }

  /** @param {boolean} live */
  _stationChanged(live) {
    super._stationChanged(live);
    if (!live && !this._isChanging && this._begun) this._address(true);
  }

  /** @param {boolean} isSame - whether it is no entry of its own in the history */
  _address(isSame) {
    if (this._isFollowing) return;
    const fragment = this._wholeFragment;
    const isThere = fragment === location.hash.slice(1);
    if (isThere && (!isSame || history.state?.own)) return;
    const address = fragment ? `#${fragment}` : location.pathname + location.search;
    history[isSame ? 'replaceState' : 'pushState'](OWN, '', address);
  }

  /**
   * How what is shown can be taken along.
   *
   * @returns {Way[]}
   */
  get ways() {
    return [
      {id: 'link', words: 'Copy link', run: () => this._copyLink()},
      {id: 'print', words: 'Print', run: () => window.print()},
    ];
  }

  /** Does something with the answer, once there is one. */
  _withAnswer(answer, run) {
    if (answer) run(answer);
    else this._notice({text: 'The numbers are not there yet; try again when they are.'});
  }

  /**
   * One step back, or forth again; whether there was one.
   *
   * @param {'undo' | 'redo'} way
   */
  turn(way) {
    this._isChanging = true;
    const step = this.stationStore.turn(way, this._name);
    this._isChanging = false;
    if (step?.own) this._own = this._turned(step.own);
    if (step) this._address(true);
    this.requestUpdate();
    return step !== undefined;
  }

  /**
   * What the question comes to by a step.
   *
   * @param {{from: any, to: any}} step
   */
  _turned({to}) {
    return to;
  }

  /**
   * An operation of the core, with its last answer.
   *
   * @param {string} operation
   * @returns {Enquiry<any>}
   */
  _enquiry(operation) {
    const enquiry = new Enquiry(this, (request, options) => this._call(operation, request, options));
    this._enquiries.push(enquiry);
    return enquiry;
  }

  /**
   * The core's answer; its refusal comes in the reader's words.
   *
   * @param {string} operation
   * @param {any} request
   * @param {import('../answers.js').Options} [options]
   */
  async _call(operation, request, options) {
    try {
      return await this.transport.ask(operation, request, options);
    } catch (error) {
      const refused = /** @type {import('../answers.js').Refused} */ (error);
      if (refused.field) refused.message = refusedWords(refused, this.vocabulary, operation, request);
      throw refused;
    }
  }

  /**
   * The line that moves while this enquiry is at work.
   *
   * @param {{status: string}} enquiry
   */
  _progress({status}) {
    return html`<jw-progress status=${status} stage=${this.stage === READY ? '' : this.stage}></jw-progress>`;
  }

  /** @param {Partial<Notice> | false | '' | null} [notice] - falsy where there is nothing to say */
  _notice(notice) {
    if (notice) send(this, 'jw-notice', notice);
  }
}
