/**
 * The matrix as an element for other websites.
 *
 * It stands in a shadow root, asks for one snapshot and nothing else, and shows
 * the last good copy where the network brings none. README tells the attributes.
 *
 * @fires jointwise-ready - {from, families, bands, powers_w}: a matrix is shown; from network, kept or page
 * @fires jointwise-cell - {family, band, power_w, margin_db, margin_high_db, limit, return_loss_db, refused_by}: a cell
 * was opened
 * @fires jointwise-error - {message, attribute}: why there is none, or no newer one
 */
import {version} from '../../build/start-data.json';
import {inside} from '../shared/elements/inside.js';
import {readCell} from '../shared/margins/reading.js';
import {destination} from '../shared/margins/keys.js';
import {nearestPower} from '../shared/state/levels.js';
import {Trouble, answered} from './answer.js';
import {groundOf, onColoursAround} from './around.js';
import {BadAttribute, NAMES, readAttributes} from './attributes.js';
import {derivation} from './derivation.js';
import {el} from './dom.js';
import {foot} from './foot.js';
import {key} from './key.js';
import {emptyGrid, grid, markRow} from './grid.js';
import {keep, recall} from './kept.js';
import {fullPage, snapshotAddress} from './question.js';
import {readSnapshot} from './snapshot.js';
import {snapshotText} from './source.js';
import {sheets} from './styles.js';
import {stationIn, wordsFor} from './words.js';

/** @import {MatrixCell} from '../shared/margins/reading.js' */

const HEAD_PX = 40;
const ROW_PX = {full: 46, compact: 28};

export class JointwiseMatrix extends HTMLElement {
  static observedAttributes = NAMES;

  #root = el('div', {class: 'root'});
  #settings;
  #words = wordsFor('');
  /** Where the snapshot shown came from, and its text. */
  #address;
  #text;
  /** When it was fetched. */
  #day;
  /** @type {any} - a Snapshot, where one is shown */
  #snapshot;
  #given;
  #status = '';
  #trouble;
  #power;
  #opened;
  #stop;
  #deaf;
  #begun = false;
  #awaited = false;
  /** Try again where a matrix, or a newer one, could not be had. */
  #online = () => (this.#trouble instanceof Trouble || this.#status) && this.#load();

  constructor() {
    super();
    const shadow = this.attachShadow({mode: 'open'});
    shadow.adoptedStyleSheets = sheets;
    shadow.append(this.#root);
  }

  connectedCallback() {
    window.addEventListener('online', this.#online);
    this.#deaf = onColoursAround(() => this.#colour());
    this.#begun = true;
    this.#refresh();
  }

  disconnectedCallback() {
    window.removeEventListener('online', this.#online);
    this.#deaf?.();
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
    const {lang} = /** @type {HTMLElement} */ (this.closest('[lang]') ?? document.documentElement);
    this.#words = wordsFor(lang);
    try {
      this.#settings = readAttributes(this, this.#given !== undefined);
    } catch (error) {
      if (!(error instanceof BadAttribute)) throw error;
      this.#settings = this.#address = undefined;
      this.#forget();
      return this.#fail(error);
    }
    const {src, block, link} = this.#settings;
    const address =
      this.#given === undefined ? (src?.href ?? (block ? `#${block}` : snapshotAddress(link).href)) : 'given';
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
    if (!kept || !this.#take(kept.text, 'kept', kept.day)) {
      this.#status = this.#words.fetching;
      this.#draw();
    }
    const stop = (this.#stop = new AbortController());
    try {
      const content = await answered(address, this.#words, stop.signal);
      if (stop.signal.aborted) return;
      if (this.#take(content, 'network')) keep(address, this.#text);
    } catch (error) {
      if (stop.signal.aborted) return;
      if (!this.#snapshot) return this.#fail(error);
      this.#say(this.#words.kept(this.#words.day(this.#day)));
      this.#tell('jointwise-error', {message: /** @type {Error} */ (error).message});
    }
  }

  /** Show the snapshot of a file; whether it has another than the one shown. */
  #take(content, from, day = new Date().toISOString()) {
    let text;
    try {
      text = snapshotText(content);
      if (text === this.#text) {
        this.#say('');
        return false;
      }
      this.#snapshot = readSnapshot(text);
    } catch (error) {
      if (from === 'kept') return false;
      const trouble = new Trouble(
        this.#words.misshapen(
          this.#given === undefined ? this.#address : 'snapshot',
          /** @type {Error} */ (error).message,
        ),
      );
      if (!this.#snapshot) this.#fail(trouble);
      else this.#tell('jointwise-error', {message: trouble.message});
      return false;
    }
    this.#text = text;
    this.#day = day;
    this.#trouble = undefined;
    this.#status = '';
    this.#opened = undefined;
    this.#draw();
    const {families, columns, powers_w} = this.#snapshot.matrix;
    this.#tell('jointwise-ready', {
      from,
      families: families.map(({id}) => id),
      bands: columns.map(({id}) => id),
      powers_w,
    });
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
    inside(this.#root, '.status').textContent = status;
  }

  get #level() {
    const {powers_w: levels} = this.#snapshot.matrix;
    const wanted = this.#power ?? this.#settings.power ?? Number(this.#snapshot.request.power_w ?? levels[0]);
    return levels.indexOf(nearestPower(levels, wanted));
  }

  /** What no attribute says is as the page around has it. */
  #colour() {
    const {style, dataset} = this.#root;
    const ground = dataset.theme === 'auto' ? groundOf(this) : undefined;
    style.setProperty('--ground', ground?.colour ?? 'Canvas');
    style.colorScheme = ground ? (ground.isDark ? 'dark' : 'light') : '';
  }

  #draw() {
    const {theme, compact, size} = this.#settings ?? {theme: 'auto', compact: false};
    const words = this.#words;
    Object.assign(this.#root.dataset, {theme});
    this.#colour();
    this.#root.toggleAttribute('data-compact', compact);
    this.#root.lang = words.code;
    this.#root.dir = 'ltr';
    const columns = this.#snapshot?.matrix.columns.length ?? size?.columns ?? 0;
    this.#root.style.setProperty('--columns', columns);
    this.#root.style.setProperty(
      '--room',
      size ? `${HEAD_PX + size.rows * ROW_PX[compact ? 'compact' : 'full']}px` : '0',
    );
    const busy = !this.#snapshot && !this.#trouble;
    const card = el(
      'div',
      {class: 'card', role: 'group', 'aria-label': words.title, 'aria-busy': String(busy)},
      el(
        'div',
        {class: 'bar'},
        el(
          'div',
          {},
          el('h2', {}, words.title),
          el('p', {class: 'station soft'}, stationIn(words, this.#snapshot, version)),
        ),
        this.#snapshot ? this.#powers() : undefined,
      ),
      key(words),
      this.#trouble ? this.#troubled() : el('div', {class: 'scroll'}),
      foot(words, {link: this.#link(), status: this.#status, snapshot: this.#snapshot}),
    );
    this.#root.replaceChildren(card);
    if (!this.#trouble) this.#fill();
  }

  #fill() {
    const room = inside(this.#root, '.scroll');
    if (!this.#snapshot) return room.replaceChildren(emptyGrid(this.#words, this.#settings.size));
    const table = grid(this.#snapshot, this.#level, this.#words);
    table.addEventListener('keydown', (event) => this.#moved(event));
    table.addEventListener('click', ({target}) => {
      const cell = /** @type {Element} */ (target).closest('td[data-row]');
      if (cell) this.#open(cell);
    });
    room.replaceChildren(table);
    this.#root.querySelector('.ends a')?.setAttribute('href', this.#link());
    const opened = this.#opened;
    this.#opened = undefined;
    if (opened) this.#unfold(opened);
  }

  #troubled() {
    const again = () => this.#load();
    return el(
      'div',
      {class: 'trouble', role: 'alert'},
      el('p', {}, this.#trouble.message),
      this.#trouble instanceof Trouble ? el('button', {class: 'again', onclick: again}, this.#words.again) : undefined,
    );
  }

  #powers() {
    const words = this.#words;
    const chosen = (event) => {
      this.#power = this.#snapshot.matrix.powers_w[event.target.selectedIndex];
      this.#fill();
    };
    const level = this.#level;
    const options = this.#snapshot.matrix.powers_w.map((watts, p) =>
      el('option', {selected: p === level}, words.level(watts)),
    );
    return el('label', {}, words.power, el('select', {onchange: chosen}, options));
  }

  /**
   * Where the full page shows the scenario, with a cell open if one is given; undefined when the site links to none.
   *
   * @param {MatrixCell} [cell]
   */
  #link(cell) {
    const link = this.#settings?.link;
    if (!link || !this.#snapshot) return link?.href;
    return fullPage(link, this.#snapshot, this.#snapshot.matrix.powers_w[this.#level], cell);
  }

  #moved(event) {
    if (event.key === 'Escape' && this.#opened) return this.#close();
    const {row, column} = event.target.dataset;
    if (row === undefined) return;
    if (event.key === 'Enter' || event.key === ' ') {
      event.preventDefault();
      return this.#open(event.target);
    }
    const {families, columns} = this.#snapshot.matrix;
    const to = destination(event, [Number(row), Number(column)], families.length, columns.length);
    if (to === undefined) return;
    event.preventDefault();
    this.#focus(this.#cellAt(to.map((at) => Math.max(at, 0))));
  }

  /** @param {number[]} at - row and column */
  #cellAt([f, c]) {
    return inside(this.#root, `td[data-row="${f}"][data-column="${c}"]`);
  }

  #focus(cell) {
    const reached = /** @type {NodeListOf<HTMLElement>} */ (this.#root.querySelectorAll('td[data-row][tabindex="0"]'));
    for (const one of reached) one.tabIndex = -1;
    cell.tabIndex = 0;
    cell.focus();
  }

  #open(chosen) {
    /** @type {[number, number]} */
    const at = [Number(chosen.dataset.row), Number(chosen.dataset.column)];
    if (String(this.#opened) === String(at)) return this.#close();
    this.#focus(chosen);
    this.#unfold(at);
    inside(this.#root, '#heading').focus();
    const cell = readCell(this.#snapshot.matrix, ...at, this.#level);
    this.#tell('jointwise-cell', {
      family: cell.family.id,
      band: cell.column.id,
      power_w: cell.power,
      margin_db: cell.margin,
      margin_high_db: cell.high,
      limit: cell.limit ?? null,
      return_loss_db: cell.returnLoss,
      refused_by: cell.refusedBy?.id ?? null,
    });
  }

  /**
   * Put the derivation of a cell below its row.
   *
   * @param {[number, number]} at - row and column
   */
  #unfold(at) {
    this.#fold();
    this.#opened = at;
    const cell = readCell(this.#snapshot.matrix, ...at, this.#level);
    const chosen = this.#cellAt(at);
    const row = /** @type {HTMLTableRowElement} */ (chosen.parentElement);
    chosen.setAttribute('aria-expanded', 'true');
    if (!this.#settings.compact) markRow(this.#snapshot, this.#cellsOf(row), at[0], this.#level);
    const shown = derivation(this.#snapshot, cell, at, this.#words, this.#link(cell), () => this.#close());
    row.after(el('tr', {class: 'open'}, el('td', {colspan: row.cells.length}, shown)));
  }

  /** @returns {HTMLElement[]} */
  #cellsOf(row) {
    return [...row.querySelectorAll('td[data-row]')];
  }

  #fold() {
    this.#root.querySelector('tr.open')?.remove();
    for (const marks of this.#root.querySelectorAll('td > .marks')) marks.remove();
    this.#root.querySelector('td[aria-expanded="true"]')?.setAttribute('aria-expanded', 'false');
  }

  #close() {
    const cell = this.#cellAt(this.#opened);
    this.#fold();
    this.#opened = undefined;
    cell.focus();
  }
}
