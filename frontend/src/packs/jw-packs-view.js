import {css, html, nothing} from 'lit';
import {element, of, state, value} from '../shared/elements/element.js';
import '../shared/elements/jw-progress.js';
import {save} from '../shared/export/save.js';
import {packStyles} from '../shared/packs/mark.js';
import {Enquiry} from '../shared/state/enquiry.js';
import {AtStation} from '../shared/station/at-station.js';
import {base} from '../shared/styles/base.js';
import {panelStyles} from '../shared/styles/panels.js';
import {pageStyles} from '../shared/styles/view.js';
import {READY} from '../worker/messages.js';
import './jw-pack-form.js';
import {MOST_BYTES} from './start.js';
import {entriesInWords} from './words.js';

/**
 * @import {JwPackForm} from './jw-pack-form.js'
 * @import {Shelf} from '../shared/packs/shelf.js'
 * @import {Transport} from '../shared/answers.js'
 */

const VIEW = 'packs';

/**
 * The packs of the page: taken from files, turned off and on, saved, removed, and made.
 *
 * A pack is tried out with the others before it is taken; one that is refused changes nothing.
 */
export class JwPacksView extends element(
  {
    /** How the core is reached. */
    transport: value(/** @type {Transport} */ (of)),
    /** How far a core of the page's own has come in starting. */
    stage: {type: String},
    shelf: value(/** @type {Shelf} */ (of)),
    /** Another one after every change of the shelf. */
    version: {type: Number},
    _over: state(/** @type {boolean} */ (of)),
    _refused: state(/** @type {string | undefined} */ (of)),
    _said: state(/** @type {string} */ (of)),
    _busy: state(/** @type {boolean} */ (of)),
  },
  AtStation,
) {
  static view = VIEW;

  static styles = [
    base,
    pageStyles,
    panelStyles,
    packStyles,
    css`
      main { max-width: 1100px; margin: 0 auto; grid-template-columns: minmax(0, 1fr) !important; }
      .drop {
        margin-top: var(--space-2); display: grid; gap: var(--space-2); padding: var(--space-4);
        border: 2px dashed var(--edge);
        border-radius: var(--round); background: var(--card);
      }
      .drop[data-over] { border-color: var(--focus); background: var(--sunk); }
      input[type='file'] { padding: var(--space-2); width: 100%; }
      ::file-selector-button {
        font: inherit; padding: var(--space-1) var(--space-3); color: var(--ink); background: var(--sunk);
        border: 1px solid var(--edge);
        border-radius: 6px;
      }
      ul { list-style: none; padding: 0; display: grid; gap: var(--space-3); }
      li {
        padding: var(--space-3) var(--space-4); background: var(--card); border: 1px solid var(--line);
        border-radius: var(--round);
      }
      li[data-off] { border-style: dashed; }
      li header { display: flex; flex-wrap: wrap; gap: var(--space-1) var(--space-3); align-items: center; }
      li h3 { flex: 1 1 12rem; overflow-wrap: anywhere; }
      p { overflow-wrap: anywhere; }
      #said { min-height: 1.4em; }
      .trouble b { overflow-wrap: anywhere; }
      @media print { .drop, jw-pack-form, li header button { display: none; } }
    `,
  ];

  constructor() {
    super();
    this.stage = '';
    this._said = '';
    this._busy = false;
    this._catalogue = new Enquiry(this, (request, options) => this.transport.ask('catalogue', request, options));
  }

  updated(changed) {
    if (this.transport === undefined || this.shelf === undefined) return;
    if (changed.has('version') || changed.has('transport')) this._catalogue.ask({});
  }

  render() {
    const {_refused: refused} = this;
    const busy = this._busy ? 'pending' : this._catalogue.status;
    return html`<jw-progress status=${busy} stage=${this.stage === READY ? '' : this.stage}></jw-progress>
      <main>
        <section class="panel">
          <h2>Packs</h2>
          <p>A pack holds entries of your own: connectors, cables, adapters, bands, modes, default powers, and the
            limits your station sets itself. It stays in this browser. What comes from one is marked “from pack”
            wherever it shows; no formula is ever changed.</p>
          <div class="drop" ?data-over=${this._over} @dragover=${this._dragged} @dragleave=${() => (this._over = false)}
            @drop=${this._dropped}>
            <label for="file">Drop a pack file here, or choose one</label>
            <input id="file" type="file" accept=".json,application/json" @change=${this._picked}>
          </div>
          ${
            refused
              ? html`<p class="trouble" role="alert" id="refused">Nothing was changed. <b>${refused}</b></p>`
              : nothing
          }
          <p class="quiet" role="status" id="said">${this._said}</p>
        </section>
        <section class="panel"><h2>On this page</h2>${this._list()}</section>
        <jw-pack-form .transport=${this.transport} .taken=${[
          ...(this.shelf?.server ?? []),
          ...(this.shelf?.own ?? []),
        ].map(({id}) => id)} @jw-pack-made=${this._made}></jw-pack-form>
      </main>`;
  }

  _list() {
    const {server = [], own = []} = this.shelf ?? {};
    if (server.length + own.length === 0) return html`<p class="quiet">None: everything shown is built in.</p>`;
    return html`<ul>${server.map((pack) => this._pack(pack, true))}${own.map((pack) => this._pack(pack, false))}</ul>`;
  }

  _pack(pack, ofServer) {
    const on = ofServer || pack.on;
    const told = this._catalogue.result?.packs.find(({id}) => id === pack.id);
    return html`<li data-pack=${pack.id} ?data-off=${!on}>
      <header>
        <h3>${pack.name}</h3>
        ${
          ofServer
            ? html`<span class="quiet">of the server</span>`
            : html`<button class="turn" aria-pressed=${on} @click=${() => this._turn(pack)}>In use</button>
              <button class="change" aria-label="Change ${pack.name} in the form"
                @click=${() => this._open(pack, told)}>Change</button>`
        }
        <button class="save" aria-label="Save ${pack.name} as a file"
          @click=${() => save(`${pack.id}.json`, 'application/json', pack.text)}>Save as file</button>
        ${
          ofServer
            ? nothing
            : html`<button class="remove" aria-label="Remove ${pack.name}"
              @click=${() => this._remove(pack)}>Remove</button>`
        }
      </header>
      ${pack.refused ? html`<p class="error">Turned off: ${pack.refused}</p>` : nothing}
      ${on && told ? this._told(told) : nothing}
    </li>`;
  }

  _told({version, note, added, changed, taken}) {
    return html`<p class="quiet">Version ${version}${note ? html`. ${note}` : nothing}</p>
      ${added.length > 0 ? html`<p>Adds ${entriesInWords(added)}.</p>` : nothing}
      ${changed.length > 0 ? html`<p>Changes ${entriesInWords(changed)}.</p>` : nothing}
      ${taken.map((sentence) => html`<p class="taken">${sentence}</p>`)}`;
  }

  _dragged(event) {
    event.preventDefault();
    this._over = true;
  }

  _dropped(event) {
    event.preventDefault();
    this._over = false;
    this._read(event.dataTransfer.files[0]);
  }

  async _picked({target: input}) {
    await this._read(input.files[0]);
    input.value = ''; // so that the same file can be picked again
  }

  async _read(file) {
    if (!file) return;
    if (file.size > MOST_BYTES) {
      this._refuse(`${file.name} is ${file.size} bytes long; allowed: up to ${MOST_BYTES}.`);
      return;
    }
    await this._take(await file.text(), file.name);
  }

  /** Take a pack if the core takes it with those in force; what speaks against it, if anything does. */
  async _tried(text, label) {
    this._refused = undefined;
    this._busy = true;
    this._said = 'Checking the pack…';
    try {
      await this.transport.ask('catalogue', {}, {packs: this.shelf.with(text, label)});
      this._change(() => this.shelf.put(text));
      this._said = `${label} is in use.`;
      return undefined;
    } catch (error) {
      return /** @type {Error} */ (error);
    } finally {
      this._busy = false;
    }
  }

  async _take(text, label) {
    const error = await this._tried(text, label);
    if (error) this._refuse(error.message);
  }

  /** What the core has against a pack of the form, the form says by its labels. */
  async _made({detail: {text, label}}) {
    const error = await this._tried(text, label);
    if (!error) return this._form.accept();
    this._said = '';
    this._form.refuse(error);
  }

  get _form() {
    return /** @type {JwPackForm} */ (this.renderRoot.querySelector('jw-pack-form'));
  }

  /** One of an earlier version is opened as the core reads it. */
  _open(pack, told) {
    return this._form.open(told?.today || pack.text);
  }

  /** A change of the reader's own packs, as one step to undo. */
  _change(change) {
    const before = this.shelf.own;
    change();
    this.stationStore.change(VIEW, {}, {before, after: this.shelf.own});
  }

  /**
   * One step back, or forth again; whether there was one.
   *
   * @param {'undo' | 'redo'} way
   */
  turn(way) {
    const step = this.stationStore.turn(way, VIEW);
    if (step?.own) this.shelf.bringBack(step.own.from, step.own.to);
    if (step) this._said = way === 'undo' ? 'Undone.' : 'Done again.';
    this._refused = undefined;
    return step !== undefined;
  }

  _refuse(message) {
    this._refused = message;
    this._said = '';
  }

  /** A pack that was off is tried again, as others may have come meanwhile. */
  _turn(pack) {
    if (!pack.on) return this._take(pack.text, pack.name);
    this._refused = undefined;
    this._change(() => this.shelf.turn(pack, false));
    this._said = `${pack.name} is off.`;
  }

  _remove(pack) {
    this._refused = undefined;
    this._change(() => this.shelf.remove(pack));
    this._said = `${pack.name} is removed.`;
  }
}

customElements.define('jw-packs-view', JwPacksView);
