import {html} from 'lit';
import {READY} from '../../worker/messages.js';
import {Enquiry} from '../state/enquiry.js';
import {withoutUnits} from '../state/units.js';
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
    /** @type {Enquiry<any>[]} */
    this._enquiries = [];
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

  willUpdate(changed) {
    if (changed.get('transport')) this._askAnew();
  }

  updated() {
    if (this.transport !== undefined) this._ask();
  }

  /** The address may have come to another view, which takes this one's place. */
  _follow(fragment) {
    if (viewOf(fragment, this.vocabulary.views) !== /** @type {typeof View} */ (this.constructor).view) return;
    const read = readable(withoutUnits(fragment));
    this._restore(read.fragment);
    this._notice(read.problem && {text: read.problem});
  }

  _begin() {}

  /** Another transport answers otherwise, as in other units. */
  _askAnew() {
    this._asked = undefined;
    for (const enquiry of this._enquiries) enquiry.outdate();
  }

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
    const enquiry = new Enquiry(this, (request, options) => this.transport.ask(operation, request, options));
    this._enquiries.push(enquiry);
    return enquiry;
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
