import {css, html, nothing} from 'lit';
import {carriedBy, carriedIn, gathered, packsIn, stationFile, takeIn} from '../saved/carried.js';
import {collected, fromTexts} from '../saved/on-paper.js';
import {filledPage} from '../saved/page-file.js';
import {stationTables} from '../saved/station-tables.js';
import {element, of, state, value} from '../shared/elements/element.js';
import {send} from '../shared/elements/send.js';
import {save, saveBlob} from '../shared/export/save.js';
import {browserStore} from '../shared/state/browser-store.js';
import {AtStation} from '../shared/station/at-station.js';
import {base} from '../shared/styles/base.js';
import {panelStyles, pickStyles} from '../shared/styles/panels.js';
import {today} from '../shared/text/days.js';
import {fewOf} from '../shared/text/few.js';
import {codesIn} from './pictures.js';
import {PLACES} from './places.js';
import {stationAnswers, stationSnapshot} from './station-answers.js';

/**
 * @import {Transport} from '../shared/answers.js'
 * @import {Carried} from '../saved/carried.js'
 * @import {ReadCodes} from './pictures.js'
 */

const LONGEST_NAME = 60;
const CARRIED = carriedBy(document);

/** A name as a file may have it. */
const fileName = (name, end) =>
  `${[
    'jointwise',
    name
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, '-')
      .replace(/^-|-$/g, ''),
  ]
    .filter(Boolean)
    .join('-')}.${end}`;

/**
 * All of the reader's own as a page or a file to take along, and back from one.
 *
 * @fires jw-notice - {text}
 * @fires jw-taken-in - what is kept has changed: everything is to be read anew
 */
class JwSaving extends element(
  {
    transport: value(/** @type {Transport} */ (of)),
    /** Address of the page as one file; empty where this is one. */
    file: {type: String},
    /** Brings what reads codes out of pictures. */
    loadCodes: value(/** @type {() => Promise<ReadCodes>} */ (of)),
    _name: state(/** @type {string} */ (of)),
    _busy: state(/** @type {boolean} */ (of)),
    /** What was read of a sheet of codes so far. */
    _read: state(/** @type {string} */ (of)),
    _asked: state(/** @type {{carried: Carried, asks: string[]} | undefined} */ (of)),
  },
  AtStation,
) {
  static styles = [
    base,
    panelStyles,
    pickStyles,
    css`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); margin-top: var(--space-3); }
      .panel { display: grid; gap: var(--space-2); justify-items: start; background: none; }
      h2 { margin-bottom: 0; }
      .row { display: flex; flex-wrap: wrap; gap: var(--space-2); }
      .name {
        display: grid; gap: var(--space-1); width: 100%; max-width: 20rem; font-size: var(--type-small);
        font-weight: 600;
      }
    `,
  ];

  constructor() {
    super();
    this.file = '';
    this._busy = false;
    this._read = '';
    /** @type {string[]} */
    this._codes = [];
    this._name = CARRIED?.name ?? '';
  }

  render() {
    return html`<section class="panel">
        <h2>Save my page</h2>
        <p class="quiet">A page as one file, with your station, lines, kit, packs and sweeps in it. It opens with no
          network, and its tables can be read with scripts off. A station file holds the same and is small; a
          website shows its matrix.</p>
        <label class="name">Name on it<input id="save-name" maxlength=${LONGEST_NAME} autocomplete="off"
          .value=${this._called} @input=${({target}) => (this._name = target.value)}></label>
        <div class="row">
          <button id="save-page" class="primary" ?disabled=${this._busy} @click=${this._savePage}>
            ${this._busy ? 'Calculating…' : 'Save my page'}</button>
          <button id="save-station" ?disabled=${this._busy} @click=${this._saveStation}>Save as a station file</button>
        </div>
        ${this._carriedNote()}
      </section>
      <section class="panel">
        <h2>Open what was saved</h2>
        <p class="quiet">Its lines, packs and sweeps are added to yours. Nothing of yours is overwritten without
          asking.</p>
        <label class="pick">Open a saved page or station file<input id="open-station" type="file" accept=".json,.html"
          @change=${this._picked}></label>
        <label class="pick">Read pictures of its codes<input id="open-pictures" type="file" accept="image/*" multiple
          @change=${this._pictured}></label>
        <p id="read" role="status">${this._read}</p>
        ${this._asked ? this._question() : nothing}
      </section>`;
  }

  get _called() {
    return this._name || this.station.name;
  }

  _carriedNote() {
    if (!CARRIED) return nothing;
    return html`<p id="carried-note">This page carries “${CARRIED.name}” of ${CARRIED.date}. What you change here stays
      with this page in this browser; save the page again to take it along.</p>`;
  }

  _question() {
    const {asks} = /** @type {{asks: string[]}} */ (this._asked);
    const what = asks.join(' and ');
    return html`<div class="row" role="alert">
      <p>This browser already holds a ${what}. Replace it with the one from the file?</p>
      <button id="replace-own" @click=${() => this._takeIn(asks)}>Replace mine</button>
      <button id="keep-own" @click=${this._done}>Keep mine</button>
    </div>`;
  }

  _gathered() {
    return gathered(browserStore(), this._called.trim(), today(), CARRIED);
  }

  async _savePage() {
    this._busy = true;
    try {
      const carried = this._gathered();
      const {name, date} = carried;
      const source = this.file ? await parsed(this.file) : document;
      const called = {name, date};
      const answers = await stationAnswers(this.transport, browserStore, this.station, this.vocabulary, called);
      const title = [name, 'Jointwise'].filter(Boolean).join(' · ');
      saveBlob(fileName(name, 'html'), filledPage(source, {title, tables: stationTables(answers), carried}));
    } catch (error) {
      this._say(`The page could not be saved: ${error instanceof Error ? error.message : error}`);
    }
    this._busy = false;
  }

  async _saveStation() {
    let carried;
    try {
      carried = this._gathered();
    } catch {
      this._say('This browser keeps nothing for the page, so there is nothing to put into a file.');
      return;
    }
    this._busy = true;
    const snapshot = await stationSnapshot(this.transport, this.station, this.vocabulary).catch(({message}) => {
      this._say(`The file has no matrix for a website in it: ${message}`);
      return undefined;
    });
    save(fileName(carried.name, 'json'), 'application/json', stationFile(carried, snapshot));
    this._busy = false;
  }

  async _picked({target}) {
    const [file] = target.files;
    target.value = '';
    if (file) await this._take(async () => carriedIn(await file.text()));
  }

  /** Pictures of a sheet of codes, which may come one after the other. */
  async _pictured({target}) {
    const files = [...target.files];
    target.value = '';
    if (files.length === 0) return;
    this._read = 'Reading…';
    try {
      const {texts, unread} = await codesIn(files, await this.loadCodes());
      this._codes.push(...texts);
      const found = collected(this._codes);
      this._read = collectedWords(found, unread);
      if (found.total === 0 || found.missing.length > 0) return;
      this._codes = [];
      await this._take(() => fromTexts(found.texts));
    } catch (error) {
      this._read = error instanceof Error ? error.message : String(error);
    }
  }

  /** @param {() => Promise<Carried>} read */
  async _take(read) {
    try {
      this._asked = {carried: await read(), asks: []};
      this._takeIn([]);
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      this._asked = undefined;
      this._say(`Nothing was changed. ${error.message}`);
    }
  }

  /** @param {string[]} replaced */
  _takeIn(replaced) {
    const {carried} = /** @type {{carried: Carried}} */ (this._asked);
    // lines and kit may name what only a pack of the file knows
    const {fields} = this.vocabulary.withPacks(packsIn(carried));
    const {asks, problem} = takeIn(PLACES, browserStore, fields, carried, replaced);
    if (problem) return this._say(problem);
    if (asks.length > 0) this._asked = {carried, asks};
    else this._done();
  }

  _done() {
    this._asked = undefined;
    send(this, 'jw-taken-in', {});
  }

  _say(text) {
    send(this, 'jw-notice', {text});
  }
}

/**
 * What was read of a sheet of codes, in words.
 *
 * @param {import('../saved/on-paper.js').Collected} found
 * @param {string[]} unread
 */
function collectedWords({total, missing, isMixed}, unread) {
  const words = [
    unread.length > 0 ? `No picture: ${fewOf(unread)}.` : '',
    isMixed ? 'Some codes are of another station and were left out.' : '',
  ];
  if (total === 0)
    words.push('No code of a station was found. Hold the sheet flat, in even light, and fill the picture.');
  else if (missing.length === 0) words.push(total === 1 ? 'The code was read.' : `All ${total} codes were read.`);
  else
    words.push(
      `${total - missing.length} of ${total} codes were read; missing: ${missing.join(', ')}. Add a picture of ` +
        `${missing.length === 1 ? 'it' : 'them'}.`,
    );
  return words.filter(Boolean).join(' ');
}

/** The one-file page at an address. */
async function parsed(address) {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error('the server did not send it.');
  return new DOMParser().parseFromString(await answer.text(), 'text/html');
}

customElements.define('jw-saving', JwSaving);
