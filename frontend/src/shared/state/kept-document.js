/** @import {Kept, Store} from './kept.js' */

/**
 * A document the reader works on, and what the browser keeps of it.
 *
 * @template Document
 */
export class KeptDocument {
  /** The document as it stands. */
  present;
  #kept;
  #storage;
  /** What the browser could not keep or read, in a sentence; empty when all is well. */
  problem;
  /** Text that was kept and could not be read. */
  spoilt;

  /**
   * @param {Kept<Document>} kept - where the browser keeps it
   * @param {() => Store} storage - may throw where the browser keeps nothing
   * @param {object} fields - by which it is read
   * @param {Document} first - the document where nothing is kept
   */
  constructor(kept, storage, fields, first) {
    const {document, spoilt, problem} = kept.recalled(storage, fields);
    this.#kept = kept;
    this.#storage = storage;
    this.present = document ?? first;
    this.problem = problem;
    this.spoilt = spoilt;
  }

  /**
   * Another document in place of this one.
   *
   * @param {Document} next
   */
  put(next) {
    if (next === this.present) return;
    this.present = next;
    this.problem = this.#kept.remember(this.#storage, next);
  }
}
