import {advanced, begun, redone, undone} from './history.js';

/**
 * @import {History} from './history.js'
 * @import {Kept, Store} from './kept.js'
 */

/**
 * A document the reader works on: its history, and what the browser keeps of it.
 *
 * @template Document
 */
export class KeptDocument {
  /** @type {History<Document>} */
  #history;
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
    this.#history = begun(document ?? first);
    this.problem = problem;
    this.spoilt = spoilt;
  }

  /** The document as it stands. */
  get present() {
    return this.#history.present;
  }

  get canUndo() {
    return this.#history.past.length > 0;
  }

  get canRedo() {
    return this.#history.future.length > 0;
  }

  /**
   * Another document in place of this one; what is no step can't be undone by itself.
   *
   * @param {Document} next
   * @param {boolean} [isStep]
   */
  put(next, isStep = true) {
    this.#keep(isStep ? advanced(this.#history, next) : {...this.#history, present: next});
  }

  undo() {
    this.#keep(undone(this.#history));
  }

  redo() {
    this.#keep(redone(this.#history));
  }

  /** @param {History<Document>} history */
  #keep(history) {
    this.#history = history;
    this.problem = this.#kept.remember(this.#storage, history.present);
  }
}
