import {css, html, nothing} from 'lit';
import {element, of, state} from '../shared/elements/element.js';
import {View} from '../shared/elements/view.js';
import {save} from '../shared/export/save.js';
import {browserStore} from '../shared/state/browser-store.js';
import {KeptDocument} from '../shared/state/kept-document.js';
import {kitRequest, ownOfKit, withoutOwn} from '../shared/station/kit-request.js';
import {base} from '../shared/styles/base.js';
import {pageStyles} from '../shared/styles/view.js';
import './answer/jw-kit-answer.js';
import './answer/jw-kit-verdict.js';
import {packingCsv, packingOf} from './answer/packing.js';
import {edited} from './edits.js';
import {EMPTY, EXAMPLE} from './example.js';
import './form/jw-kit-form.js';
import {KEPT_KIT} from './kept.js';
import {fromLink, toLink} from './link.js';
import {portNames} from './names.js';
import {placed} from './placed.js';
import {areAlikeButTicks, withoutTicks} from './ticks.js';

/** @import {Bounds, Request} from './edits.js' */

const TOO_LONG = 'This kit is too long for a link; the browser keeps it, and the packing list can be saved as CSV.';

/**
 * What to carry so that every pair of ports can be joined: the ports, the packing list, and how each pair is joined.
 *
 * @fires jw-notice - {text, link, action}: a sentence for the reader
 */
export class JwKitView extends element(
  {
    _said: state(/** @type {string} */ (of)),
  },
  View,
) {
  static view = 'kit';

  static ownNames = ['kit'];

  static styles = [
    base,
    pageStyles,
    css`
      @media screen and (max-width: 1179px) {
        .answer { display: contents; }
        jw-kit-verdict, .waiting { order: -1; }
        .trouble { order: -2; }
      }
      @media (min-width: 1180px) { main { grid-template-columns: minmax(400px, 32%) minmax(0, 1fr); } }
      @media print {
        .answer { display: block; }
        .onpaper { display: block; margin-bottom: 2mm; }
        h2.onpaper { font-size: var(--type-title); }
      }
    `,
  ];

  constructor() {
    super();
    this._said = '';
    this._told = '';
    this._isNew = true;
    this._kit = this._enquiry('kit');
    /** Made once the vocabulary is there. */
    this._document = /** @type {KeptDocument<Request>} */ (of);
    /** What the core is to be asked, and the kit as it was when that was last settled. */
    this._request = this._settled = /** @type {Request} */ (of);
  }

  _begin() {
    this._document = new KeptDocument(KEPT_KIT, browserStore, this.vocabulary.fields, this._firstKit);
    this._document.attach(this, (before) => {
      this.stationStore.change(this._name, {}, {before, after: this._own});
      this._notice({text: 'The kit was changed in another tab; Undo brings back the one that was here.'});
      this._settle();
    });
    this._request = this._settled = this._wholeKit;
  }

  get _own() {
    return this._document.present;
  }

  set _own(kit) {
    this._document.put(kit);
  }

  /** The gear of the station to start from, or an example. */
  get _firstKit() {
    const {gear} = this.station;
    return gear.length >= this._least ? {ports: gear} : EXAMPLE;
  }

  /** How few ports can be joined. */
  get _least() {
    return /** @type {Bounds} */ (this.vocabulary.fields.kit.ports).least;
  }

  /** The ports of the station's gear; which must join, and what is owned, is another matter. */
  _fromGear() {
    const {owned} = this._own;
    this._edit({kind: 'replace', request: {ports: this.station.gear, ...(owned && {owned})}});
  }

  /** The kit with what it leaves to the station, the same object until one of them changes. */
  get _wholeKit() {
    const parts = [this._own, this.station];
    const before = this._parts;
    if (!before || parts.some((part, at) => part !== before[at])) {
      this._parts = parts;
      this._whole = kitRequest(this._own, this.station, this.vocabulary);
    }
    return /** @type {Request} */ (this._whole);
  }

  render() {
    const {answered, error, result} = this._kit;
    const request = this._wholeKit;
    const names = portNames(this.vocabulary.lists.families, request.ports);
    const refused = placed(error);
    return html`${this._progress(this._kit)}
      <main @jw-kit-edit=${({detail}) => this._edit(detail)} @jw-kit-search=${this._search}>
        ${this._bar()}
        ${
          refused?.group === ''
            ? html`<p class="trouble" role="alert">${refused.message} <button
              @click=${() => this._ask(true)}>Try again</button></p>`
            : nothing
        }
        <jw-kit-form class="noprint" .request=${request} .own=${ownOfKit(this._own, this.station, this.vocabulary)}
          .names=${names} .refused=${refused}></jw-kit-form>
        ${
          result
            ? this._answer(result, answered, refused)
            : html`<p class="waiting ${this._lacksPorts ? 'empty' : ''} ${refused ? 'error' : 'quiet'}">
                ${refused?.message ?? this._waitingWords}</p>`
        }
      </main>
      <p class="unseen" role="status">${this._said}</p>`;
  }

  _answer(result, answered, refused) {
    const names = portNames(this.vocabulary.lists.families, answered.ports);
    const outdated = refused ? `Out of date: this is the answer before the last change. ${refused.message}` : '';
    return html`<div class="answer">
      <h2 class="onpaper">Adapters to carry</h2>
      <p class="onpaper">${this._limits(answered)}</p>
      <jw-kit-verdict .result=${result} .answered=${answered} .names=${names} .outdated=${outdated}
        .ticked=${this._document.present.ticked ?? []}
        .searching=${this._isSearching}></jw-kit-verdict>
      <jw-kit-answer .result=${result} .answered=${answered} .names=${names}></jw-kit-answer>
    </div>`;
  }

  get ways() {
    const [link, print] = super.ways;
    const {answered, result} = this._kit;
    const csv = () => this._withAnswer(result, () => this._saveCsv(result, answered));
    return [{...link, run: () => this._copy()}, {id: 'csv', words: 'Save as CSV', run: csv}, print];
  }

  _saveCsv(result, answered) {
    const {families} = this.vocabulary.lists;
    const list = packingCsv(packingOf(result, answered, families), portNames(families, answered.ports));
    save('jointwise-packing-list.csv', 'text/csv', list);
  }

  _bar() {
    return html`<div class="bar" role="group" aria-label="Kit">
      <button @click=${() => this._edit({kind: 'replace', request: EXAMPLE})}>Example</button>
      <button id="empty" @click=${() => this._edit({kind: 'replace', request: EMPTY})}>Start empty</button>
      ${
        this.station.gear.length > 0
          ? html`<button id="gear" @click=${this._fromGear}>From the station’s gear</button>`
          : nothing
      }
    </div>`;
  }

  /** What was asked beside the ports, for paper. */
  _limits({ports, pairs: _, owned: __, ...rest}) {
    const first = this.vocabulary.first.kit;
    const fields = {most_in_series: first.most_in_series, most_loss_db: first.most_loss_db, ...rest};
    const said = Object.entries(fields).map(
      ([name, value]) => `${this.vocabulary.labelOf(`kit.${name}`)}: ${this.vocabulary.spoken(`kit.${name}`, value)}`,
    );
    return [`${ports.length} ports`, ...said].join(' · ');
  }

  /** Whether there is no pair to ask about yet. */
  get _lacksPorts() {
    return this._request.ports.length < this._least;
  }

  get _waitingWords() {
    return this._lacksPorts
      ? 'Type the ports of your gear; from the second on the answer stands here.'
      : 'Calculating…';
  }

  /** Whether an answer that takes long is awaited. */
  get _isSearching() {
    return this._kit.status === 'pending' && this._asked?.search === 'thorough';
  }

  _ask(again = false) {
    const request = withoutTicks(this._request);
    if (this._lacksPorts) {
      this._asked = undefined;
      if (this._kit.status !== 'initial') this._kit.forget();
      return;
    }
    // on the way back to this view nothing was asked yet, and an answer that took long is kept
    const kept = this._asked === undefined && request === this._kit.answered;
    if (again || (request !== this._asked && !kept)) this._kit.askNext(request);
    this._asked = request;
  }

  /** Look for a smaller kit for longer; the answer at hand stays meanwhile. */
  _search() {
    this._request = {...this._wholeKit, search: 'thorough'};
    this.requestUpdate();
  }

  _edit(edit) {
    const {own, changes} = this._parted(edit);
    if (own === this._own && !changes) return;
    this._put(own, changes, {isEntry: false});
    this._said = edit.kind === 'move' ? `Moved to place ${edit.to + 1}.` : '';
    this._settle();
  }

  /** An edit as a change of the kit and of the station: what was the kit's own of a setting is the station's again. */
  _parted(edit) {
    const {fields} = this.vocabulary;
    const isSetting = (name) => Object.hasOwn(fields.settings, name);
    if (edit.kind === 'leave') return {own: withoutOwn(this._own, edit.names)};
    if (edit.kind !== 'limit' || !Object.keys(edit.changes).some(isSetting))
      return {own: edited(this._own, edit, fields.kit)};
    const names = Object.keys(edit.changes).filter((name) => name in this._own);
    const left = Object.fromEntries(names.map((name) => [name, null]));
    return {
      own: names.length > 0 ? edited(this._own, {kind: 'limit', changes: left}, fields.kit) : this._own,
      changes: {settings: this._settings(edit.changes)},
    };
  }

  turn(way) {
    const isTurned = super.turn(way);
    if (isTurned) this._said = way === 'undo' ? 'Undone.' : 'Done again.';
    this._settle();
    return isTurned;
  }

  _stationChanged(live) {
    super._stationChanged(live);
    if (this._begun) this._settle();
  }

  /** Every change asks for a quick answer, and a long search for the kit as it was is given up. */
  _settle() {
    if (!areAlikeButTicks(this._wholeKit, this._settled)) {
      if (this._isSearching) this._kit.cancel();
      this._request = this._settled = this._wholeKit;
    }
    this._address(true);
    this._tellTrouble();
    this.requestUpdate();
  }

  get _fragment() {
    return toLink(this._own).fragment;
  }

  _restore(fragment, isOwnEntry) {
    const {request, problem} = fromLink(fragment, this.vocabulary.fields);
    // an entry of the page's own past holds an older kit than the one at hand, or kept
    const isOlder = isOwnEntry && (!this._isNew || this._document.wasKept);
    const taken = request && !isOlder ? this._take(request) : '';
    this._isNew = false;
    this._settle();
    return {text: [problem, taken].filter(Boolean).join(' ')};
  }

  /** A kit from a link takes the place of one's own; undo brings that back. */
  _take(request) {
    if (toLink(request).fragment === toLink(this._own).fragment) return '';
    this._put(request);
    return 'The kit of this link is shown; Undo brings back the one before.';
  }

  /** What the browser cannot keep is said once. */
  _tellTrouble() {
    const {problem, spoilt} = this._document;
    if (problem === this._told) return;
    this._told = problem;
    const action = spoilt && {words: 'Save it', run: () => save('jointwise-kit-unread.txt', 'text/plain', spoilt)};
    this._notice(problem && {text: problem, action});
  }

  async _copy() {
    const {whole} = toLink(this._own);
    if (whole) await this._copyLink();
    else this._notice({text: TOO_LONG});
  }
}

customElements.define('jw-kit-view', JwKitView);
