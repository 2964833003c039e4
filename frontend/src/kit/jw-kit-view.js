import {css, html, nothing} from 'lit';
import {element, of, state} from '../shared/elements/element.js';
import {View} from '../shared/elements/view.js';
import {copyLink} from '../shared/export/copy-link.js';
import {save} from '../shared/export/save.js';
import {KeptDocument} from '../shared/state/kept-document.js';
import {base} from '../shared/styles/base.js';
import {pageStyles} from '../shared/styles/forms.js';
import './answer/jw-kit-answer.js';
import './answer/jw-kit-verdict.js';
import {packingCsv, packingOf} from './answer/packing.js';
import {edited} from './edits.js';
import {EXAMPLE} from './example.js';
import './form/jw-kit-form.js';
import {KEPT_KIT} from './kept.js';
import {fromLink, toLink} from './link.js';
import {portNames} from './names.js';
import {placed} from './placed.js';

/** @import {Request} from './edits.js' */

const TOO_LONG = 'This kit is too long for a link; the browser keeps it, and the packing list can be saved as CSV.';
/** Marks the page's own entries in the history: their kit is the one at hand. */
const OWN = {kit: true};

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

  static styles = [
    base,
    pageStyles,
    css`
      .onpaper { display: none; }
      @media screen and (max-width: 1179px) {
        .answer { display: contents; }
        jw-kit-verdict, .waiting { order: -1; }
        .bar, .trouble { order: -2; }
      }
      @media (min-width: 1180px) { main { grid-template-columns: minmax(400px, 32%) minmax(0, 1fr); } }
      @media print {
        .answer { display: block; }
        .onpaper { display: block; font-size: 8pt; margin-bottom: 2mm; }
        h2.onpaper { font-size: 13pt; }
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
    this._document = new KeptDocument(KEPT_KIT, () => localStorage, this.vocabulary.fields, EXAMPLE);
    this._request = this._settled = this._document.present;
  }

  render() {
    const {answered, error, result} = this._kit;
    const request = this._document.present;
    const names = portNames(this.vocabulary.lists.families, request.ports);
    const refused = placed(error);
    return html`${this._progress(this._kit)}
      <main @jw-kit-edit=${({detail}) => this._edit(detail)} @jw-kit-search=${this._search}>
        ${this._bar(result, answered)}
        ${
          refused?.group === ''
            ? html`<p class="trouble" role="alert">${refused.message} <button
              @click=${() => this._ask(true)}>Try again</button></p>`
            : nothing
        }
        <jw-kit-form class="noprint" .request=${request} .names=${names} .refused=${refused}></jw-kit-form>
        ${
          result
            ? this._answer(result, answered, refused)
            : html`<p class="waiting ${refused ? 'error' : 'quiet'}">${refused?.message ?? 'The core is at work…'}</p>`
        }
      </main>
      <p class="unseen" role="status">${this._said}</p>`;
  }

  _answer(result, answered, refused) {
    const names = portNames(this.vocabulary.lists.families, answered.ports);
    const outdated = refused ? `Out of date, this is the answer from before the last change. ${refused.message}` : '';
    return html`<div class="answer">
      <h2 class="onpaper">Adapters to carry</h2>
      <p class="onpaper">${this._limits(answered)}</p>
      <jw-kit-verdict .result=${result} .answered=${answered} .names=${names} .outdated=${outdated}
        .searching=${this._isSearching}></jw-kit-verdict>
      <jw-kit-answer .result=${result} .answered=${answered} .names=${names}></jw-kit-answer>
    </div>`;
  }

  _bar(result, answered) {
    const {canRedo, canUndo} = this._document;
    const file = () =>
      save(
        'jointwise-packing-list.csv',
        'text/csv',
        packingCsv(packingOf(result, answered, this.vocabulary.lists.families)),
      );
    return html`<div class="bar" role="group" aria-label="Undo and take along">
      <button id="undo" ?disabled=${!canUndo} @click=${() => this._turn('undo', 'Undone.')}>Undo</button>
      <button id="redo" ?disabled=${!canRedo} @click=${() => this._turn('redo', 'Done again.')}>Redo</button>
      <button @click=${this._copy}>Copy link</button>
      <button ?disabled=${!result} @click=${file}>CSV</button>
      <button @click=${() => window.print()}>Print</button>
      <button @click=${() => this._edit({kind: 'replace', request: EXAMPLE})}>Example</button>
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

  /** Whether an answer that takes long is awaited. */
  get _isSearching() {
    return this._kit.status === 'pending' && this._asked?.search === 'thorough';
  }

  _ask(again = false) {
    const request = this._request;
    // on the way back to this view nothing was asked yet, and an answer that took long is kept
    const kept = this._asked === undefined && request === this._kit.answered;
    if (again || (request !== this._asked && !kept)) this._kit.askNext(request);
    this._asked = request;
  }

  /** Look for a smaller kit for longer; the answer at hand stays meanwhile. */
  _search() {
    this._request = {...this._document.present, search: 'thorough'};
    this.requestUpdate();
  }

  _edit(edit) {
    const next = edited(this._document.present, edit, this.vocabulary.fields.kit);
    if (next === this._document.present) return;
    this._document.put(next);
    this._said = edit.kind === 'move' ? `Moved to place ${edit.to + 1}.` : '';
    this._settle();
  }

  _turn(way, said) {
    this._document[way]();
    this._said = said;
    this._settle();
  }

  /** Every change asks for a quick answer, and a long search for the kit as it was is given up. */
  _settle() {
    if (this._document.present !== this._settled) {
      if (this._isSearching) this._kit.cancel();
      this._request = this._settled = this._document.present;
    }
    const fragment = `#${toLink(this._document.present).fragment}`;
    if (fragment !== location.hash) history.replaceState(OWN, '', fragment);
    this._tellTrouble();
    this.requestUpdate();
  }

  _restore(fragment) {
    const {request, problem} = fromLink(fragment, this.vocabulary.fields);
    this._notice(problem && {text: problem});
    // an entry of the page's own past holds an older kit than the one at hand
    if (request && (this._isNew || !history.state?.kit)) this._take(request);
    this._isNew = false;
    this._settle();
  }

  /** A kit from a link takes the place of one's own; undo brings that back. */
  _take(request) {
    if (toLink(request).fragment === toLink(this._document.present).fragment) return;
    this._document.put(request);
    this._notice({text: 'The kit of this link is shown; Undo brings back the one before.'});
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
    const {fragment, whole} = toLink(this._document.present);
    this._notice(whole ? await copyLink(`${location.href.replace(/#.*$/, '')}#${fragment}`) : {text: TOO_LONG});
  }
}

customElements.define('jw-kit-view', JwKitView);
