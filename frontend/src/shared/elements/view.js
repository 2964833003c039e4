import {LitElement, html} from 'lit';
import {Enquiry} from '../state/enquiry.js';
import {READY} from '../../worker/messages.js';
import './jw-progress.js';
import {send} from './send.js';

/**
 * What every view of the page is: in step with the address, in touch with the core, and heard by the reader.
 * A view's own `_restore` takes what the address says; its `_ask` asks the core for what was not asked yet.
 *
 * @property {{ask: function}} transport - how the core is reached
 * @property {string} stage - how far a core of the page's own has come in starting
 * @fires jw-notice - {text, link, action}: a sentence for the reader
 */
export class View extends LitElement {
  static properties = {transport: {attribute: false}, stage: {type: String}};

  constructor() {
    super();
    this.stage = '';
    this._travelled = () => this._restore();
  }

  connectedCallback() {
    super.connectedCallback();
    window.addEventListener('popstate', this._travelled);
    this._restore();
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    window.removeEventListener('popstate', this._travelled);
    // what was in flight is given up, and asked again on the way back
    this._asked = undefined;
  }

  updated() {
    if (this.transport !== undefined) this._ask();
  }

  /** An operation of the core, with its last answer. */
  _enquiry(operation) {
    return new Enquiry(this, (request, options) => this.transport.ask(operation, request, options));
  }

  /** The line that moves while this enquiry is at work. */
  _progress({status}) {
    return html`<jw-progress status=${status} stage=${this.stage === READY ? '' : this.stage}></jw-progress>`;
  }

  _notice(notice) {
    if (notice) send(this, 'jw-notice', notice);
  }
}
