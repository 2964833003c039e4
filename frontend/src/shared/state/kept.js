import {placeOf} from './browser-store.js';

/**
 * @typedef {Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>} Store
 */

/**
 * What two tabs made of a document, and what they made it of.
 *
 * @template Document
 * @typedef {{base: Document, mine: Document, theirs: Document}} Versions
 */

const same = (one, other) => one === other || JSON.stringify(one) === JSON.stringify(other);

/**
 * What the browser keeps for the page under one key; every failure is a sentence, never an error.
 *
 * @template Document
 */
export class Kept {
  #place;
  #read;
  #merged;

  /**
   * @param {{key: string, blocked: string, full: string, spoilt: string}} place - the key, and the sentences for a
   * browser that keeps nothing, has no room, or holds what can't be read
   * @param {(value: any, fields: any) => Document} read - the document of the parsed text; throws where it is none
   * @param {(versions: Versions<Document>) => Document} [merged] - of what two tabs made of it; left out, it can only
   * be taken whole
   */
  constructor(place, read, merged) {
    this.#place = place;
    this.#read = read;
    this.#merged = merged;
  }

  /**
   * The document of a value from outside; throws where it is none.
   *
   * @param {any} value
   * @param {any} [fields]
   */
  checked(value, fields) {
    return this.#read(value, fields);
  }

  /**
   * The document with what another tab kept since `base`; where it can only be taken whole, this tab’s if it changed.
   *
   * @param {Versions<Document>} versions
   * @returns {Document}
   */
  merged(versions) {
    const {base, mine, theirs} = versions;
    if (same(theirs, base) || same(theirs, mine)) return mine;
    if (same(mine, base)) return theirs;
    return this.#merged?.(versions) ?? mine;
  }

  /**
   * Calls `heard` whenever another tab has kept a document; the function returned ends that.
   *
   * @param {() => void} heard
   */
  listen(heard) {
    const {key} = this.#place;
    const told = (event) => (event.key === placeOf(key) || event.key === null) && heard();
    window.addEventListener('storage', told);
    return () => window.removeEventListener('storage', told);
  }

  /**
   * What was kept, and its text; `spoilt` is one that could not be read.
   *
   * @param {() => Store} storage - may throw where the browser keeps nothing
   * @param {object} [fields] - by which the document is read
   * @returns {{document?: Document, text?: string, spoilt?: string, problem: string}}
   */
  recalled(storage, fields) {
    const {key, blocked, spoilt} = this.#place;
    let text;
    try {
      text = storage().getItem(key);
    } catch {
      return {problem: blocked};
    }
    if (text === null) return {problem: ''};
    try {
      return {document: this.#read(JSON.parse(text), fields), text, problem: ''};
    } catch {
      setAside(storage(), key, text);
      return {spoilt: text, problem: spoilt};
    }
  }

  /**
   * Keeps the document; the sentence that says why it could not, or nothing.
   *
   * @param {() => Store} storage
   * @param {Document} document
   */
  remember(storage, document) {
    const {key, blocked, full} = this.#place;
    try {
      storage().setItem(key, JSON.stringify(document));
      return '';
    } catch (error) {
      return isFull(error) ? full : blocked;
    }
  }
}

/** By its own name, the standard's, or the one of older engines; a storage that is barred or missing throws others. */
const isFull = (error) => error instanceof DOMException && /Quota/i.test(error.name);

function setAside(store, key, text) {
  try {
    store.removeItem(key);
    store.setItem(`${key}-set-aside`, text);
  } catch {
    // it is still offered as a file
  }
}
