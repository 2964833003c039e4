import {css, html} from 'lit';
import {element, of, state} from '../shared/elements/element.js';
import {send} from '../shared/elements/send.js';
import {base} from '../shared/styles/base.js';
import {tooLarge} from './request.js';

/**
 * A place to drop a Touchstone file, or to pick one.
 *
 * @fires jw-sweep-file - {name, file: {name, text}}
 */
class JwSweepFile extends element({
  /** The request's field. */
  name: {type: String},
  label: {type: String},
  /** Name of the file that is held; empty where there is none. */
  held: {type: String},
  /** Why it can't be used. */
  error: {type: String},
  _problem: state(/** @type {string} */ (of)),
  _over: state(/** @type {boolean} */ (of)),
}) {
  static styles = [
    base,
    css`
      label { display: block; font-size: var(--type-small); font-weight: 600; margin-bottom: var(--space-1); }
      .drop {
        position: relative; display: grid; place-content: center; min-height: 76px;
        padding: var(--space-2) var(--space-3);
        text-align: center; font-size: var(--type-text); overflow-wrap: anywhere;
        border: 2px dashed var(--edge); border-radius: var(--round); background: var(--card);
      }
      .drop:hover, .over { border-color: var(--focus); }
      .drop:focus-within { outline: 3px solid var(--focus); outline-offset: 2px; }
      .drop.bad { border-color: var(--alarm); }
      input { position: absolute; inset: 0; width: 100%; height: 100%; opacity: 0; cursor: pointer; }
      .under {
        display: block; min-height: 1.35em; margin-top: var(--space-half); font-size: var(--type-small);
        color: var(--soft);
      }
      .under.error { color: var(--alarm); font-weight: 600; }
    `,
  ];

  constructor() {
    super();
    Object.assign(this, {held: '', error: '', _problem: '', _over: false});
  }

  render() {
    const problem = this._problem || this.error;
    return html`<label for=${this.name}>${this.label}</label>
      <div class="drop ${problem ? 'bad' : ''} ${this._over ? 'over' : ''}" @dragenter=${() => (this._over = true)}
        @dragleave=${() => (this._over = false)} @drop=${() => (this._over = false)}>
        <b>${this.held || 'Drop the file here, or tap to pick it'}</b>
        <span class="quiet">Touchstone, .s1p or .s2p</span>
        <input id=${this.name} type="file" accept=".s1p,.s2p,.ts,.txt"
          aria-invalid=${problem ? 'true' : 'false'} aria-describedby="under" @change=${this._picked}>
      </div>
      <span id="under" class=${problem ? 'under error' : 'under'} role=${problem ? 'alert' : 'note'}>
        ${problem || 'It stays on this device, unless the page asks a server.'}
      </span>`;
  }

  async _picked({target: input}) {
    const [file] = input.files;
    if (!file) return;
    // judged by its size before it is read: a file too large would fill the memory
    this._problem = tooLarge(file);
    const text = this._problem ? undefined : await file.text();
    input.value = '';
    if (text !== undefined) send(this, 'jw-sweep-file', {name: this.name, file: {name: file.name, text}});
  }
}

customElements.define('jw-sweep-file', JwSweepFile);
