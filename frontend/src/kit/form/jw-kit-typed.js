import {css, html} from 'lit';
import {element, of, state, value} from '../../shared/elements/element.js';
import {inside} from '../../shared/elements/inside.js';
import {send} from '../../shared/elements/send.js';
import {base} from '../../shared/styles/base.js';
import {Speaking} from '../../shared/vocabulary/speaking.js';
import {NEW_PORT} from '../example.js';
import {dutyWords, endWords} from '../names.js';
import {typedPort} from './typed-port.js';

/** @import {Port} from '../edits.js' */

/**
 * A port as one line: what it is, its connector, the highest frequency and the power.
 *
 * @fires jw-kit-edit
 */
class JwKitTyped extends element(
  {
    /** Those there are: what is not typed is as in the last of them. */
    ports: value(/** @type {Port[]} */ (of)),
    /** Whether there may be no more. */
    full: {type: Boolean},
    _text: state(/** @type {string} */ (of)),
    _problem: state(/** @type {string} */ (of)),
  },
  Speaking,
) {
  static styles = [
    base,
    css`
      :host { margin-top: var(--space-3); }
      form { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: var(--space-2); }
      label { grid-column: 1 / -1; font-size: var(--type-small); font-weight: 600; }
      p { min-height: 1.4em; margin: var(--space-half) 0 var(--space-1); }
    `,
  ];

  constructor() {
    super();
    this._text = this._problem = '';
  }

  render() {
    return html`<form @submit=${this._add}>
        <label for="typed">Type a port and press Enter</label>
        <input id="typed" autocomplete="off" autocapitalize="off" spellcheck="false" enterkeyhint="done" maxlength="160"
          placeholder="Handheld SMA plug 450 MHz 5 W" aria-describedby="read"
          aria-invalid=${this._problem ? 'true' : 'false'} ?disabled=${this.full} .value=${this._text}
          @input=${this._typed}>
        <button ?disabled=${this.full}>Add</button>
      </form>
      <p id="read" class=${this._problem ? 'error' : 'quiet'} role="status">${this._problem || this._reading}</p>`;
  }

  /** What the line is read as, while it is typed; before that, what may be typed. */
  get _reading() {
    if (this._text.trim() === '')
      return 'Name, connector, highest MHz, watts (0 or “rx” for receive only); left out, as in the port before.';
    const {port} = this._read;
    if (!port) return '…';
    const end = endWords(this.vocabulary.lists.families, port.family, port.gender);
    return `${[port.name, end].filter(Boolean).join(': ')}, ${dutyWords(port)}`;
  }

  get _read() {
    const {fields, lists} = this.vocabulary;
    const ranges = /** @type {any} */ (fields.port);
    return typedPort(this._text, lists.families, ranges, this.ports.at(-1) ?? NEW_PORT);
  }

  _typed({target}) {
    this._text = target.value;
    this._problem = '';
  }

  _add(event) {
    event.preventDefault();
    const {port, problem} = this._read;
    if (!port) {
      this._problem = problem ?? '';
      return;
    }
    this._text = '';
    send(this, 'jw-kit-edit', {kind: 'add', port});
    inside(this.renderRoot, '#typed').focus();
  }
}

customElements.define('jw-kit-typed', JwKitTyped);
