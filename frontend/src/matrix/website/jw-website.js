import {css, html, nothing} from 'lit';
import {element, of, state, value} from '../../shared/elements/element.js';
import {send} from '../../shared/elements/send.js';
import {copyLink} from '../../shared/export/copy-link.js';
import {save} from '../../shared/export/save.js';
import {refusedWords} from '../../shared/refusals/words.js';
import {Enquiry} from '../../shared/state/enquiry.js';
import {toFragment} from '../../shared/state/fragment.js';
import {base} from '../../shared/styles/base.js';
import {AtStation} from '../../shared/station/at-station.js';
import {NOTHING_OPEN, matrixRequest} from '../requests.js';
import {SCRIPT_FILE, SNAPSHOT_FILE, snippet} from './snippet.js';

/**
 * @import {Transport} from '../../shared/answers.js'
 * @import {State} from '../fields.js'
 * @import {Look} from './snippet.js'
 */

const WAYS = [
  [
    'files',
    'Two files',
    'Save both files, put them into the folder of your web page, and paste the line into the page.',
  ],
  ['server', 'This server', 'Paste the line; this server answers your visitors, so they must be able to reach it.'],
  [
    'frame',
    'A frame',
    'For sites that take no script: paste the line; where even its last part is refused, the height stays as given.',
  ],
];
const THEMES = [
  ['auto', 'as the web page'],
  ['light', 'light'],
  ['dark', 'dark'],
];
const LANGUAGES = [
  ['', 'as the web page'],
  ['en', 'English'],
  ['de', 'Deutsch'],
];

/** A computer that only answers itself is nothing to send members to. */
const isPublic = ({protocol, hostname}) => protocol.startsWith('http') && !/^(localhost|127\.|\[::1\])/.test(hostname);

/**
 * The line that puts the shown matrix on another website, the files it needs, and how it looks there.
 *
 * @fires jw-notice - {text, link}: the line was copied, or is to be copied by hand
 */
class JwWebsite extends element(
  {
    state: value(/** @type {State} */ (of)),
    /** The power level printed, in W. */
    power: {type: Number},
    transport: value(/** @type {Transport} */ (of)),
    /** Defines the element, resolves to its script's text. */
    loadEmbed: value(/** @type {() => Promise<string>} */ (of)),
    _way: state(/** @type {string} */ (of)),
    _look: state(/** @type {Look} */ (of)),
    _script: state(/** @type {string} */ (of)),
    _failed: state(/** @type {string} */ (of)),
  },
  AtStation,
) {
  static styles = [
    base,
    css`
      :host > * + * { margin-top: var(--space-4); }
      .ways { display: flex; flex-wrap: wrap; gap: var(--space-2); }
      .choices {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(190px, 1fr)); gap: var(--space-3) var(--space-4);
        align-items: end;
      }
      label { display: grid; gap: var(--space-1); font-size: var(--type-small); }
      label:has([type='checkbox']) {
        display: flex; gap: var(--space-3); align-items: center; min-height: var(--target);
      }
      input[type='checkbox'] { width: 22px; height: 22px; }
      .wide { grid-column: 1 / -1; }
      textarea {
        width: 100%; min-height: 7.5rem; padding: var(--space-3); font: var(--type-small)/1.45 ui-monospace, monospace;
        color: inherit;
        resize: vertical;
        background: var(--sunk); border: 1px solid var(--edge); border-radius: var(--round); overflow-wrap: anywhere;
      }
      .acts { display: flex; flex-wrap: wrap; gap: var(--space-2); }
      .preview { min-height: 320px; }
    `,
  ];

  constructor() {
    super();
    this._way = 'files';
    this._look = {theme: 'auto', lang: '', compact: false, page: isPublic(location) ? this._server : ''};
    this._snapshot = new Enquiry(this, (request, options) => this.transport.ask('snapshot', request, options));
  }

  firstUpdated() {
    this.loadEmbed().then(
      (script) => (this._script = script),
      (error) => (this._failed = error.message),
    );
  }

  updated(changed) {
    const request = {...matrixRequest(this.state, this.vocabulary), power_w: this.power};
    const text = JSON.stringify(request);
    if (text !== this._asked || changed.get('transport')) this._snapshot.askNext(request);
    this._asked = text;
  }

  render() {
    const ways = location.protocol.startsWith('http') ? WAYS : WAYS.slice(0, 1);
    const [, , words] = WAYS.find(([way]) => way === this._way) ?? WAYS[0];
    return html`<p>The matrix as it is set now, with every derivation, on a page of your own. Each cell opens there as
    it does here.</p>
      <div class="ways" role="group" aria-label="How it is brought in">
        ${ways.map(
          ([way, name]) =>
            html`<button data-way=${way} aria-pressed=${way === this._way}
              @click=${() => (this._way = way)}>${name}</button>`,
        )}
      </div>
      <p class="quiet">${words}</p>
      <div class="choices">
        ${this._select('theme', 'Colours', THEMES)} ${this._select('lang', 'Language', LANGUAGES)}
        <label><input id="site-compact" type="checkbox" .checked=${this._look.compact}
          @change=${({target}) => this._set('compact', target.checked)}>Compact: numbers only</label>
        ${
          this._way === 'files'
            ? html`<label class="wide">Where the full page lies for your visitors; empty for nowhere
              <input id="site-page" placeholder="jointwise.html" .value=${this._look.page}
                @input=${({target}) => this._set('page', target.value.trim())}></label>`
            : nothing
        }
      </div>
      ${this._made()}`;
  }

  _select(name, words, options) {
    return html`<label>${words}
      <select id="site-${name}" @change=${({target}) => this._set(name, target.value)}>
        ${options.map(
          ([id, label]) => html`<option value=${id} ?selected=${id === this._look[name]}>${label}</option>`,
        )}
      </select></label>`;
  }

  _set(name, chosen) {
    this._look = {...this._look, [name]: chosen};
  }

  get _server() {
    return location.origin + location.pathname;
  }

  /** The line, the files and the preview; or what they wait for. */
  _made() {
    const {result, error} = this._snapshot;
    const trouble = this._failed ?? (error && refusedWords(error, this.vocabulary, 'snapshot', {}));
    if (trouble) return html`<p class="error" role="alert">${trouble}</p>`;
    if (!result || !this._script) return html`<p class="preview" role="status">Calculating…</p>`;
    const station = {name: this.station.name, date: new Date().toISOString().slice(0, 10)};
    const text = JSON.stringify({...result, station});
    const {families, columns} = result.matrix;
    const fragment = toFragment({...this.state, ...NOTHING_OPEN, power_w: this.power}, this.vocabulary.first.matrix);
    const line = snippet(this._way, {
      ...this._look,
      server: this._server,
      fragment,
      rows: families.length,
      columns: columns.length,
    });
    const {theme, lang, compact, page} = this._look;
    return html`<textarea id="snippet" readonly aria-label="The line to paste" .value=${line}></textarea>
      <div class="acts">
        <button id="copy" @click=${async () => send(this, 'jw-notice', await copied(line))}>Copy the line</button>
        ${
          this._way === 'files'
            ? html`<button id="save-script" @click=${() => save(SCRIPT_FILE, 'text/javascript', this._script)}>Save
            ${SCRIPT_FILE}</button>
              <button id="save-snapshot" @click=${() => save(SNAPSHOT_FILE, 'application/json', text)}>Save
              ${SNAPSHOT_FILE}</button>`
            : nothing
        }
      </div>
      <h3>As your visitors see it</h3>
      <div class="preview"><jointwise-matrix .snapshot=${text} theme=${theme} lang=${lang || nothing}
        ?compact=${compact} link=${page || nothing}></jointwise-matrix></div>`;
  }
}

async function copied(line) {
  const {link} = await copyLink(line);
  return link
    ? {text: 'Copy the line by hand out of its field.'}
    : {text: 'Line copied; paste it where the matrix shall stand.'};
}

customElements.define('jw-website', JwWebsite);
