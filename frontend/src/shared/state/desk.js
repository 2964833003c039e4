/** A document the reader works on: its history, and what the browser keeps of it. */
import {advanced, begun, redone, undone} from './history.js';

export class Desk {
  #history;
  #remember;
  /** What the browser could not keep or read, in a sentence; empty when all is well. */
  problem;
  /** Text that was kept and could not be read. */
  spoilt;

  /**
   * @param {{document: ?object, spoilt: ?string, problem: string}} kept - what the browser kept
   * @param {object} first - the document where nothing is kept
   * @param {function(object): string} remember - keeps a document; the sentence that says why it could not
   */
  constructor({document, spoilt, problem}, first, remember) {
    this.#remember = remember;
    this.#history = begun(document ?? first);
    this.problem = problem;
    this.spoilt = spoilt;
  }

  get document() {
    return this.#history.present;
  }

  get canUndo() {
    return this.#history.past.length > 0;
  }

  get canRedo() {
    return this.#history.future.length > 0;
  }

  /** Another document in place of this one; what is no step can't be undone by itself. */
  put(next, isStep = true) {
    this.#keep(isStep ? advanced(this.#history, next) : {...this.#history, present: next});
  }

  undo() {
    this.#keep(undone(this.#history));
  }

  redo() {
    this.#keep(redone(this.#history));
  }

  #keep(history) {
    this.#history = history;
    this.problem = this.#remember(history.present);
  }
}
