/**
 * The packs of this page: those of the server, and the reader's own, which the browser keeps.
 *
 * @import {AskedPack} from '../answers.js'
 * @import {Pack} from './read.js'
 * @import {Store} from '../state/kept.js'
 *
 * @typedef {Pack & {on: boolean, refused: string}} OwnPack - `refused` is the core's sentence about a pack it took
 * before and takes no more; it is off then
 */
import {Kept} from '../state/kept.js';
import {mergedLists} from '../state/merge.js';
import {readPack} from './read.js';

const PLACE = {
  key: 'jointwise-packs',
  blocked: 'This browser keeps nothing for the page: your packs end when it is closed. Keep their files.',
  full: 'This browser has no room for all of your packs: they end when the page is closed. Keep their files.',
  spoilt:
    'The packs kept in this browser could not be read and were set aside. ' +
    'Save them as a file to look for what is left.',
};

/** @typedef {{own: OwnPack[], server: Pack[]}} Shelved */

/** @type {Kept<Shelved>} */
export const KEPT_PACKS = new Kept(
  PLACE,
  ({own, server}) => ({
    own: own.map(({text, on, refused}) => ({...readPack(text), on: on === true, refused: String(refused ?? '')})),
    server: server.map(({text}) => readPack(text)),
  }),
  ({base, mine, theirs}) => ({
    own: mergedLists({base: base.own, mine: mine.own, theirs: theirs.own}, ({id}) => id),
    server: mine.server,
  }),
);

export class Shelf {
  /** @type {Pack[]} - those of the server, as it last told */
  server = [];
  /** @type {OwnPack[]} - the reader's own */
  own = [];
  /** What the browser could not keep or read, in a sentence; empty when all is well. */
  problem = '';
  /** @type {string | undefined} - text that was kept and could not be read */
  spoilt;
  #storage;
  /** @type {Shelved} - as they were last seen in what the browser keeps */
  #seen;
  /** @type {Set<() => void>} */
  #heard = new Set();

  /** @param {() => Store} storage - may throw where the browser keeps nothing */
  constructor(storage) {
    this.#storage = storage;
    const {document, problem, spoilt} = KEPT_PACKS.recalled(storage);
    Object.assign(this, document, {problem, spoilt});
    this.#seen = {own: this.own, server: this.server};
  }

  /** Keeps in step with other tabs. */
  follow() {
    KEPT_PACKS.listen(() => {
      const before = JSON.stringify(this.own);
      this.#catchUp();
      if (JSON.stringify(this.own) !== before) this.#tell();
    });
  }

  /**
   * Calls `heard` whenever the packs change; the function returned ends that.
   *
   * @param {() => void} heard
   */
  listen(heard) {
    this.#heard.add(heard);
    return () => this.#heard.delete(heard);
  }

  /** The packs that count, the server's first. */
  get inForce() {
    return [...this.server, ...this.own.filter(({on}) => on)];
  }

  /** Whether the reader's own packs count, which the server does not know. */
  get hasOwn() {
    return this.own.some(({on}) => on);
  }

  /**
   * The packs that would count with one more text, which takes the place of an own pack with its id.
   *
   * @param {string} text
   * @param {string} label
   */
  with(text, label) {
    let id;
    try {
      ({id} = readPack(text));
    } catch {
      // the core says what is wrong with it
    }
    return [...asked(this.inForce.filter((pack) => pack.id !== id || this.server.includes(pack))), {label, text}];
  }

  /**
   * Put a text that the core has taken on the shelf, in force.
   *
   * @param {string} text
   */
  put(text) {
    const pack = {...readPack(text), on: true, refused: ''};
    const at = this.own.findIndex(({id}) => id === pack.id);
    this.own = at === -1 ? [...this.own, pack] : this.own.with(at, pack);
    this.#changed();
  }

  /**
   * @param {Pack} pack
   * @param {boolean} on
   * @param {string} [refused]
   */
  turn(pack, on, refused = '') {
    this.own = this.own.map((one) => (one.id === pack.id ? {...one, on, refused} : one));
    this.#changed();
  }

  /**
   * The reader's own packs as they were, or will be.
   *
   * @param {OwnPack[]} from
   * @param {OwnPack[]} to
   */
  bringBack(from, to) {
    this.own = mergedLists({base: from, mine: to, theirs: this.own}, ({id}) => id);
    this.#changed();
  }

  /** @param {Pack} pack */
  remove(pack) {
    this.own = this.own.filter(({id}) => id !== pack.id);
    this.#changed();
  }

  /**
   * Take what the server tells; nothing changes where it is what it told before.
   *
   * @param {string[]} texts
   */
  takeServer(texts) {
    const server = texts.map(readPack);
    if (JSON.stringify(server) === JSON.stringify(this.server)) return;
    this.server = server;
    this.#changed();
  }

  /** Takes what another tab has kept since. */
  #catchUp() {
    const {document: theirs} = KEPT_PACKS.recalled(this.#storage);
    if (theirs === undefined) return;
    const {own, server} = KEPT_PACKS.merged({base: this.#seen, mine: {own: this.own, server: this.server}, theirs});
    Object.assign(this, {own, server});
    this.#seen = theirs;
  }

  #changed() {
    this.#catchUp();
    const mine = {own: this.own, server: this.server};
    this.problem = KEPT_PACKS.remember(this.#storage, mine);
    if (this.problem === '') this.#seen = mine;
    this.#tell();
  }

  #tell() {
    for (const heard of this.#heard) heard();
  }
}

/**
 * Packs as the core is asked with them.
 *
 * @param {Pack[]} packs
 * @returns {AskedPack[]}
 */
export const asked = (packs) => packs.map(({name, text}) => ({label: name, text}));
