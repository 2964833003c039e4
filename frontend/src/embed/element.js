/**
 * The matrix as an element for other websites.
 *
 * It stands in a shadow root, asks for one snapshot and nothing else, and shows
 * the last good copy where the network brings none. README tells the attributes.
 *
 * @fires jointwise-ready - {from, families, bands, powers_w}: a matrix is shown; from network, kept or page
 * @fires jointwise-cell - {family, band, power_w, margin_db, margin_high_db, limit, refused_by}: a cell was opened
 * @fires jointwise-error - {message, attribute}: why there is none, or no newer one
 */
import {stepOf, STEPS} from '../colour/scale.js';
import {DISAGREES, letterOf, readCell, refusedWord} from '../matrix/reading.js';
import {destination} from '../matrix/keys.js';
import {nearestPower} from '../state/levels.js';
import {MINUS} from '../text/format.js';
import {BadAttribute, NAMES, readAttributes} from './attributes.js';
import {derivation} from './derivation.js';
import {el} from './dom.js';
import {emptyGrid, grid} from './grid.js';
import {keep, recall} from './kept.js';
import {fullPage, snapshotAddress} from './question.js';
import {readSnapshot} from './snapshot.js';
import {sheets} from './styles.js';
import {conditionsIn, wordsFor} from './words.js';

const PATIENCE_MS = 30_000;
const HEAD_PX = 40;
const ROW_PX = {full: 46, compact: 28};

/** A failure told in a sentence of the element's own. */
class Trouble extends Error {}

export class JointwiseMatrix extends HTMLElement {
  static observedAttributes = NAMES;

  #root = el('div', {class: 'root'});
  #settings;
  #words;
  /** Where the snapshot shown came from, and its text. */
  #address;
  #text;
  #snapshot;
  #given;
  #status = '';
  #trouble;
  #power;
  #opened;
  #stop;
  #begun = false;
  #awaited = false;
  #online = () => this.#trouble instanceof Trouble && this.#load();

  constructor() {
    super();
    const shadow = this.attachShadow({mode: 'open'});
    shadow.adoptedStyleSheets = sheets;
    shadow.append(this.#root);
  }

  connectedCallback() {
    window.addEventListener('online', this.#online);
    this.#begun = true;
    this.#refresh();
  }

  disconnectedCallback() {
    window.removeEventListener('online', this.#online);
    this.#stop?.abort();
    this.#address = undefined;
  }

  attributeChangedCallback() {
    if (!this.#begun || this.#awaited) return;
    this.#awaited = true;
    queueMicrotask(() => {
      this.#awaited = false;
      if (this.isConnected) this.#refresh();
    });
  }

  /** A snapshot as text, in place of one that is fetched. */
  set snapshot(text) {
    this.#given = text;
    this.#address = undefined;
    if (this.isConnected) this.#refresh();
  }

  #refresh() {
    this.#words = wordsFor((this.closest('[lang]') ?? document.documentElement).lang);
    try {
      this.#settings = readAttributes(this, this.#given !== undefined);
    } catch (error) {
      if (!(error instanceof BadAttribute)) throw error;
      this.#settings = this.#address = undefined;
      this.#forget();
      return this.#fail(error);
    }
    const {src, block, link} = this.#settings;
    const address = this.#given === undefined ? (src?.href ?? (block ? `#${block}` : snapshotAddress(link).href)) : 'given';
    if (address !== this.#address) {
      this.#address = address;
      this.#forget();
      this.#load();
    } else {
      this.#power = undefined;
      this.#draw();
    }
  }

  #forget() {
    this.#stop?.abort();
    this.#text = this.#snapshot = this.#power = this.#opened = this.#trouble = undefined;
  }

  #load() {
    this.#stop?.abort();
    this.#trouble = undefined;
    this.#status = '';
    const {block} = this.#settings;
    if (this.#given !== undefined) return this.#take(this.#given, 'page');
    if (block) return this.#read(block);
    return this.#fetch();
  }

  #read(id) {
    const text = document.getElementById(id)?.textContent;
    if (text !== undefined) return this.#take(text, 'page');
    if (document.readyState !== 'loading') return this.#fail(new Trouble(this.#words.noBlock(id)));
    this.#draw();
    document.addEventListener('DOMContentLoaded', () => this.isConnected && this.#load(), {once: true});
  }

  async #fetch() {
    const address = this.#address;
    const kept = this.#text === undefined ? recall(address) : undefined;
    if (!kept || !this.#take(kept.text, 'kept')) {
      this.#status = this.#words.fetching;
      this.#draw();
    }
    const stop = (this.#stop = new AbortController());
    try {
      const text = await this.#answer(address, AbortSignal.any([stop.signal, AbortSignal.timeout(PATIENCE_MS)]));
      if (stop.signal.aborted) return;
      if (text === this.#text) return this.#say('');
      if (this.#take(text, 'network')) keep(address, text);
    } catch (error) {
      if (stop.signal.aborted) return;
      if (!this.#snapshot) return this.#fail(error);
      this.#say(this.#words.kept(this.#words.day(kept?.day ?? new Date().toISOString())));
      this.#tell('jointwise-error', {message: error.message});
    }
  }

  /** The text of the answer; a refusal of a Jointwise server is its own sentence. */
  async #answer(address, signal) {
    let answer, text;
    try {
      answer = await fetch(address, {signal, credentials: 'omit', referrerPolicy: 'no-referrer', cache: 'no-cache'});
      text = await answer.text();
    } catch {
      throw new Trouble(this.#words.unreachable);
    }
    if (answer.ok) return text;
    throw new Trouble(detailOf(text) ?? this.#words.refused(answer.status));
  }

  /** Show a snapshot; whether it is one. */
  #take(text, from) {
    try {
      this.#snapshot = readSnapshot(text);
    } catch (error) {
      const trouble = new Trouble(this.#words.misshapen(this.#given === undefined ? this.#address : 'snapshot', error.message));
      if (from === 'kept') return false;
      if (!this.#snapshot) this.#fail(trouble);
      else this.#tell('jointwise-error', {message: trouble.message});
      return false;
    }
    this.#text = text;
    this.#trouble = undefined;
    this.#status = '';
    this.#opened = undefined;
    this.#draw();
    const {families, columns, powers_w} = this.#snapshot.matrix;
    this.#tell('jointwise-ready', {from, families: families.map(({id}) => id), bands: columns.map(({id}) => id), powers_w});
    return true;
  }

  #fail(error) {
    this.#trouble = error;
    this.#status = '';
    this.#draw();
    this.#tell('jointwise-error', {message: error.message, attribute: error.attribute});
  }

  #tell(name, detail) {
    this.dispatchEvent(new CustomEvent(name, {detail, bubbles: true, composed: true}));
  }

  #say(status) {
    this.#status = status;
    this.#root.querySelector('.status').textContent = status;
  }

  get #level() {
    const {powers_w: levels} = this.#snapshot.matrix;
    const wanted = this.#power ?? this.#settings.power ?? Number(this.#snapshot.request.power_w ?? levels[0]);
    return levels.indexOf(nearestPower(levels, wanted));
  }

  #draw() {
    const {theme, compact, size} = this.#settings ?? {theme: 'auto', compact: false};
    const words = this.#words;
    Object.assign(this.#root.dataset, {theme});
    this.#root.toggleAttribute('data-compact', compact);
    this.#root.lang = words.code;
    this.#root.dir = 'ltr';
    const columns = this.#snapshot?.matrix.columns.length ?? size?.columns ?? 0;
    this.#root.style.setProperty('--columns', columns);
    this.#root.style.setProperty('--room', size ? `${HEAD_PX + size.rows * ROW_PX[compact ? 'compact' : 'full']}px` : '0');
    const busy = !this.#snapshot && !this.#trouble;
    const card = el('div', {class: 'card', role: 'group', 'aria-label': words.title, 'aria-busy': String(busy)},
      el('div', {class: 'bar'}, el('h2', {}, words.title), this.#snapshot ? this.#powers() : undefined),
      this.#trouble ? this.#troubled() : el('div', {class: 'scroll'}),
      this.#foot(compact));
    this.#root.replaceChildren(card);
    if (!this.#trouble) this.#fill();
  }

  #fill() {
    const room = this.#root.querySelector('.scroll');
    if (!this.#snapshot) return room.replaceChildren(emptyGrid(this.#words, this.#settings.size));
    const {powers_w: levels} = this.#snapshot.matrix;
    this.#root.style.setProperty('--levels', levels.length);
    this.#root.style.setProperty('--chosen', `${(this.#level / Math.max(levels.length - 1, 1)) * 100}%`);
    const table = grid(this.#snapshot, this.#level, this.#words, this.#settings.compact);
    table.addEventListener('keydown', (event) => this.#moved(event));
    table.addEventListener('click', ({target}) => target.closest('td > button') && this.#open(target.closest('td > button')));
    room.replaceChildren(table);
    const opened = this.#opened;
    this.#opened = undefined;
    if (opened) this.#unfold(opened);
  }

  #troubled() {
    const again = () => this.#load();
    return el('div', {class: 'trouble', role: 'alert'},
      el('p', {}, this.#trouble.message),
      this.#trouble instanceof Trouble ? el('button', {class: 'again', onclick: again}, this.#words.again) : undefined);
  }

  #powers() {
    const words = this.#words;
    const chosen = (event) => {
      this.#power = this.#snapshot.matrix.powers_w[event.target.selectedIndex];
      this.#fill();
    };
    const level = this.#level;
    const options = this.#snapshot.matrix.powers_w.map((watts, p) => el('option', {selected: p === level}, words.level(watts)));
    return el('label', {}, words.power, el('select', {onchange: chosen}, options));
  }

  #foot(compact) {
    const words = this.#words;
    const link = this.#snapshot && this.#settings?.link;
    return el('div', {class: 'foot'},
      compact ? undefined : legend(words),
      el('p', {class: 'caution'}, words.caution),
      el('p', {class: 'status soft', role: 'status'}, this.#status),
      el('details', {}, el('summary', {}, words.conditions), this.#snapshot
        ? el('ul', {class: 'conditions'}, conditionsIn(words, this.#snapshot).map(([label, value]) => el('li', {}, `${label}: ${value}`))) : undefined),
      el('details', {}, el('summary', {}, words.marks), this.#snapshot ? marks(words, this.#snapshot.matrix) : undefined),
      this.#settings?.link ? el('p', {class: 'ends'}, el('a', {
        href: link ? fullPage(link, this.#snapshot, this.#snapshot.matrix.powers_w[this.#level]) : this.#settings.link.href,
        target: '_blank', rel: 'noopener',
      }, words.full)) : undefined);
  }

  #moved(event) {
    if (event.key === 'Escape' && this.#opened) return this.#close();
    const {row, column} = event.target.dataset;
    if (row === undefined) return;
    const {families, columns} = this.#snapshot.matrix;
    const to = destination(event, [Number(row), Number(column)], families.length, columns.length);
    if (to === undefined) return;
    event.preventDefault();
    this.#focus(this.#button(to.map((at) => Math.max(at, 0))));
  }

  #button([f, c]) {
    return this.#root.querySelector(`td > button[data-row="${f}"][data-column="${c}"]`);
  }

  #focus(button) {
    for (const one of this.#root.querySelectorAll('td > button[tabindex="0"]')) one.tabIndex = -1;
    button.tabIndex = 0;
    button.focus();
  }

  #open(button) {
    const at = [Number(button.dataset.row), Number(button.dataset.column)];
    if (String(this.#opened) === String(at)) return this.#close();
    this.#focus(button);
    this.#unfold(at);
    this.#root.querySelector('#heading').focus();
    const cell = readCell(this.#snapshot.matrix, ...at, this.#level);
    this.#tell('jointwise-cell', {
      family: cell.family.id, band: cell.column.id, power_w: cell.power, margin_db: cell.margin, margin_high_db: cell.high,
      limit: cell.limit ?? null, refused_by: cell.refusedBy?.id ?? null,
    });
  }

  /** Put the derivation of a cell below its row. */
  #unfold(at) {
    this.#fold();
    this.#opened = at;
    const cell = readCell(this.#snapshot.matrix, ...at, this.#level);
    const link = this.#settings.link && fullPage(this.#settings.link, this.#snapshot, cell.power, cell);
    const button = this.#button(at);
    button.setAttribute('aria-expanded', 'true');
    const shown = derivation(this.#snapshot, cell, at, this.#words, link, () => this.#close());
    const wide = el('td', {colspan: this.#snapshot.matrix.columns.length + 1}, shown);
    button.closest('tr').after(el('tr', {class: 'open'}, wide));
  }

  #fold() {
    this.#root.querySelector('tr.open')?.remove();
    this.#root.querySelector('td > button[aria-expanded="true"]')?.setAttribute('aria-expanded', 'false');
  }

  #close() {
    const button = this.#button(this.#opened);
    this.#fold();
    this.#opened = undefined;
    button.focus();
  }
}

/** The sentence of a server's refusal, if it is one. */
function detailOf(text) {
  try {
    const {detail} = JSON.parse(text);
    return typeof detail === 'string' ? detail.slice(0, 500) : undefined;
  } catch {
    return undefined;
  }
}

const signed = (edge) => `${edge > 0 ? '+' : edge < 0 ? MINUS : ''}${Math.abs(edge)}`;

function legend(words) {
  const range = ({from}, i) => {
    const high = STEPS[i + 1]?.from;
    if (from === -Infinity) return words.below(signed(high));
    return high === undefined ? words.above(signed(from)) : words.between(signed(from), signed(high));
  };
  return [
    el('p', {class: 'legend soft', id: 'legend'}, words.legend),
    el('div', {class: 'scale', role: 'img', 'aria-labelledby': 'legend'},
      STEPS.map((step, i) => el('span', {'data-step': stepOf(step.from === -Infinity ? -1e9 : step.from)}, range(step, i)))),
  ];
}

function marks(words, {gates}) {
  const row = (mark, text, lang) => el('li', {lang}, el('b', {}, mark), el('span', {}, text));
  return el('ul', {class: 'marks-list'},
    row('?', words.undecided),
    row(DISAGREES, words.disagrees),
    gates.map((gate) => row(gate.hard ? (words.words[gate.id] ?? refusedWord(gate)) : letterOf(gate), gate.name, 'en')));
}
