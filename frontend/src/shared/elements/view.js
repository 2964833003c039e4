import {html} from 'lit';
import {READY} from '../../worker/messages.js';
import {refusedWords} from '../refusals/words.js';
import {Enquiry} from '../state/enquiry.js';
import {readable, viewOf} from '../state/view-link.js';
import {Speaking} from '../vocabulary/speaking.js';
import {element, of, value} from './element.js';
import './jw-progress.js';
import {send} from './send.js';

/**
 * @import {Transport} from '../answers.js'
 *
 * @typedef {{words: string, run: () => void}} Action - what the reader may do about it
 * @typedef {{text: string, link: string, action: Action | undefined}} Notice - a sentence, and a link to copy
 */

/**
 * What every view of the page is: in step with the address, in touch with the core, and heard by the reader.
 * A view's own `view` is its name in the address, `_begin` makes its state once the vocabulary is there, `_restore`
 * takes what a fragment of the address says, `_ask` asks the core for what was not asked yet.
 *
 * @fires jw-notice - {text, link, action}: a sentence for the reader
 */
export class View extends element(
  {
    transport: value(/** @type {Transport} */ (of)),
    /** How far a core of the page's own has come in starting. */
    stage: {type: String},
  },
  Speaking,
) {
  static view = '';

  constructor() {
    super();
    this.stage = '';
    this._begun = false;
    this._travelled = () => this._follow(location.hash.slice(1));
  }

  connectedCallback() {
    super.connectedCallback();
    window.addEventListener('popstate', this._travelled);
    if (!this._begun) this._begin();
    this._begun = true;
    this._travelled();
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    window.removeEventListener('popstate', this._travelled);
    // what was in flight is given up, and asked again on the way back
    this._asked = undefined;
  }

  /** Without a state there is nothing to draw, as when its beginning failed. */
  shouldUpdate() {
    return this._begun;
  }

  updated() {
    if (this.transport !== undefined) this._ask();
  }

  /** The address may have come to another view, which takes this one's place. */
  _follow(fragment) {
    if (viewOf(fragment, this.vocabulary.views) !== /** @type {typeof View} */ (this.constructor).view) return;
    const read = readable(fragment);
    this._restore(read.fragment);
    this._notice(read.problem && {text: read.problem});
  }

  _begin() {}

  /** @param {string} _fragment */
  _restore(_fragment) {}

  _ask() {}

  /**
   * An operation of the core, with its last answer.
   *
   * @param {string} operation
   * @returns {Enquiry<any>}
   */
  _enquiry(operation) {
    return new Enquiry(this, (request, options) => this._call(operation, request, options));
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
