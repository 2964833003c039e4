import {css, html, nothing} from 'lit';
import {element, of, state, value} from '../../shared/elements/element.js';
import {send} from '../../shared/elements/send.js';
import {Enquiry} from '../../shared/state/enquiry.js';
import {base} from '../../shared/styles/base.js';
import {Speaking} from '../../shared/vocabulary/speaking.js';
import {READY} from '../../worker/messages.js';
import {questionRequest} from '../requests.js';
import {FIRST_CELL, askedChanges, chosenCell} from './changes.js';
import './jw-answer.js';
import './jw-sentence.js';
import './jw-typed-question.js';

/**
 * @import {Transport} from '../../shared/answers.js'
 * @import {State} from '../fields.js'
 * @import {Answer} from './answer.js'
 * @import {AskedCell} from './changes.js'
 */

/** A drag asks once it rests, and the matrix, which is all that a first visit shows, asks first. */
const REST_MS = 200;

/** @type {Answer} */
const UNREAD_NOTHING = {
  ...{asked: null, sentence: '', read: [], unread: [], missing: [], verdict: null, margin_db: null},
  ...{largest_power_w: null, limited_by: null, doubts: [], better: []},
};

/**
 * One question about one joint, filled in or typed, and its answer; it stands for the cell that is chosen in the
 * matrix, and for the one asked about last where none is.
 *
 * @fires jw-asked - {changes}: of the matrix's state, by which the cell asked about is chosen in it
 * @fires jw-why - {cell}: whose derivation is wanted
 */
export class JwQuestion extends element(
  {
    state: value(/** @type {State} */ (of)),
    transport: value(/** @type {Transport} */ (of)),
    /** How far a core of the page's own has come in starting. */
    stage: {type: String},
    _cell: state(/** @type {AskedCell} */ (of)),
    _typed: state(/** @type {Answer} */ (of)),
  },
  Speaking,
) {
  static styles = [
    base,
    css`
      :host {
        display: grid; gap: var(--space-2); padding: var(--space-2) var(--space-3) var(--space-3);
        background: var(--card);
        border: 1px solid var(--line); border-radius: var(--round);
      }
      jw-answer { margin-top: var(--space-1); }
      .onpaper { display: none; }
      @media print {
        :host { padding: 0; border: 0; }
        :host(:not([chosen])), jw-sentence, jw-typed-question, jw-answer { display: none; }
        .onpaper { display: block; font-size: var(--type-text); }
      }
    `,
  ];

  constructor() {
    super();
    this.stage = '';
    this._cell = FIRST_CELL;
    this._typed = UNREAD_NOTHING;
    /** @type {Enquiry<Answer>} */
    this._answer = new Enquiry(this, (request, options) => this.transport.ask('question', request, options));
    /** @type {Enquiry<Answer>} */
    this._reader = new Enquiry(this, (request, options) => this.transport.ask('question', request, options));
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    clearTimeout(this._rest);
    this._asked = undefined;
  }

  willUpdate(changed) {
    if (changed.has('state')) this._cell = chosenCell(this.state) ?? this._cell;
  }

  updated() {
    this.toggleAttribute('chosen', chosenCell(this.state) !== undefined);
    const request = questionRequest(this.state, this._cell);
    const text = JSON.stringify(request);
    if (this.transport === undefined || text === this._asked) return;
    this._asked = text;
    clearTimeout(this._rest);
    this._rest = setTimeout(() => this._answer.askNext(request), REST_MS);
  }

  render() {
    const {error, result} = this._answer;
    const {unread, missing} = this._typed;
    return html`<h2 class="unseen">Ask about one joint</h2>
      <jw-sentence .state=${this.state} .cell=${this._cell} @jw-ask=${this._chosen}></jw-sentence>
      <jw-typed-question .unread=${unread} .missing=${missing} .problem=${this._reader.error?.message ?? ''}
        ?busy=${this._reader.status === 'pending'} @jw-type=${this._type}></jw-typed-question>
      <jw-answer .answer=${error ? undefined : result} ?outdated=${this._isOutdated} .waiting=${this._waiting}
        @jw-ask=${this._chosen} @jw-why=${this._why}></jw-answer>
      ${result?.verdict && !error ? this._onPaper(result) : nothing}`;
  }

  /** @param {Answer} answer */
  _onPaper({sentence, verdict, limited_by: limit}) {
    const answered = `${sentence}: ${verdict?.headline}. ${verdict?.sentence}`;
    const why = limit && !answered.includes(limit.sentence) ? ` ${limit.sentence}` : '';
    return html`<p class="onpaper">${answered}${why}</p>`;
  }

  /** Whether the answer shown is not of what the sentence says. */
  get _isOutdated() {
    const {answered} = this._answer;
    return answered !== undefined && JSON.stringify(answered) !== this._asked;
  }

  get _waiting() {
    if (this._answer.error) return this._answer.error.message;
    return this.stage === READY || this.stage === ''
      ? 'Calculating…'
      : 'The core is starting; the answer comes by itself.';
  }

  _chosen(event) {
    this._typed = UNREAD_NOTHING;
    this._change(event.detail.values);
  }

  async _type(event) {
    const {text} = event.detail;
    await this._reader.ask({...questionRequest(this.state, this._cell), text});
    const {answered, error, result} = this._reader;
    if (error || result === undefined || answered.text !== text) return;
    this._typed = result;
    if (result.asked && result.read.length > 0)
      this._change(Object.fromEntries(result.read.map(({field, value: read}) => [field, read])));
  }

  /** All that a question changes goes this way. */
  _change(values) {
    const {most} = this.vocabulary.fieldOf('powers_w');
    const changes = askedChanges(values, this._cell, this.state, this.vocabulary.lists, Number(most));
    send(this, 'jw-asked', {changes});
  }

  _why(event) {
    event.stopPropagation();
    send(this, 'jw-why', {cell: this._cell});
  }
}

customElements.define('jw-question', JwQuestion);
