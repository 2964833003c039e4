import {css, html, nothing} from 'lit';
import START from '../../../build/start-data.json';
import {element, of, state, value} from '../../shared/elements/element.js';
import {inside} from '../../shared/elements/inside.js';
import {send} from '../../shared/elements/send.js';
import {base} from '../../shared/styles/base.js';
import {completed} from './completions.js';

/** @import {UnreadWord} from './answer.js' */

const LONGEST = START.requests.question.text.longest;

/**
 * One field that takes the question as it is typed, and what of it was not understood.
 *
 * @fires jw-type - {text}
 */
class JwTypedQuestion extends element({
  unread: value(/** @type {UnreadWord[]} */ (of)),
  /** What must be said before there is an answer, a sentence each. */
  missing: value(/** @type {string[]} */ (of)),
  /** Whether the text is being read. */
  busy: {type: Boolean},
  /** A refusal in a sentence. */
  problem: {type: String},
  _offers: state(/** @type {string[]} */ (of)),
}) {
  static styles = [
    base,
    css`
      form { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: var(--space-2); }
      #text { font-size: var(--type-text); }
      ul {
        list-style: none; margin: var(--space-2) 0 0; padding: 0; display: grid; gap: var(--space-1);
        font-size: var(--type-text);
      }
      li { display: flex; flex-wrap: wrap; gap: var(--space-1) var(--space-2); align-items: center; }
    `,
  ];

  constructor() {
    super();
    this.unread = [];
    this.missing = [];
    this.problem = '';
    this._offers = [];
  }

  render() {
    const said = [...this.missing, this.problem].filter(Boolean);
    return html`<form @submit=${this._submitted}>
        <label class="unseen" for="text">Or type the question</label>
        <input id="text" type="text" list="offers" autocomplete="off" autocapitalize="off" spellcheck="false"
          maxlength=${LONGEST} enterkeyhint="go" placeholder="or type it: so239 1kw ft8 10m swr 3"
          aria-describedby="unread" aria-invalid=${said.length > 0 ? 'true' : 'false'}
          @input=${this._typed}>
        <datalist id="offers">${this._offers.map((offer) => html`<option value=${offer}></option>`)}</datalist>
        <button class="primary" aria-busy=${this.busy ? 'true' : 'false'}>Answer</button>
      </form>
      <div id="unread" role="status">${
        this.unread.length + said.length > 0
          ? html`<ul>
              ${this.unread.map((word) => this._unread(word))}
              ${said.map((sentence) => html`<li>${sentence}</li>`)}
            </ul>`
          : nothing
      }</div>`;
  }

  _unread({typed, words, near}) {
    const named = words.includes(typed) ? words : `“${typed}”: ${words}`;
    return html`<li><span>${named}</span>${near.map(
      (one) => html`<button type="button" @click=${() => this._put(typed, one)}>${one}</button>`,
    )}</li>`;
  }

  get _field() {
    return /** @type {HTMLInputElement} */ (inside(this.renderRoot, '#text'));
  }

  _typed() {
    this._offers = completed(this._field.value, START.question.names);
  }

  _submitted(event) {
    event.preventDefault();
    send(this, 'jw-type', {text: this._field.value});
  }

  /** What is near takes the place of what was typed. */
  _put(typed, near) {
    this._field.value = this._field.value.replace(typed, () => near);
    send(this, 'jw-type', {text: this._field.value});
    this._field.focus();
  }
}

customElements.define('jw-typed-question', JwTypedQuestion);
