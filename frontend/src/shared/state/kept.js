/** @typedef {Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>} Store */

/**
 * What the browser keeps for the page under one key; every failure is a sentence, never an error.
 *
 * @template Document
 */
export class Kept {
  #place;
  #read;

  /**
   * @param {{key: string, blocked: string, full: string, spoilt: string}} place - the key, and the sentences for a
   * browser that keeps nothing, has no room, or holds what can't be read
   * @param {(value: any, fields: any) => Document} read - the document of the parsed text; throws where it is none
   */
  constructor(place, read) {
    this.#place = place;
    this.#read = read;
  }

  /**
   * What was kept; `spoilt` is the text that could not be read.
   *
   * @param {() => Store} storage - may throw where the browser keeps nothing
   * @param {object} [fields] - by which the document is read
   * @returns {{document?: Document, spoilt?: string, problem: string}}
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
      return {document: this.#read(JSON.parse(text), fields), problem: ''};
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
    let store;
    try {
      store = storage();
    } catch {
      return blocked;
    }
    try {
      store.setItem(key, JSON.stringify(document));
      return '';
    } catch {
      return full;
    }
  }
}

function setAside(store, key, text) {
  try {
    store.removeItem(key);
    store.setItem(`${key}-set-aside`, text);
  } catch {
    // it is still offered as a file
  }
}
