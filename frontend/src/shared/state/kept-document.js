import {advanced, begun, redone, undone} from './history.js';

/**
 * @import {History} from './history.js'
 * @import {Kept, Store} from './kept.js'
 */

/**
 * A document the reader works on: its history, and what the browser keeps of it, which other tabs change too.
 *
 * @template Document
 */
export class KeptDocument {
  /** @type {History<Document>} */
  #history;
  #kept;
  #storage;
  #fields;
  /** @type {Document} - as it was last seen in what the browser keeps, */
  #seen;
  /** @type {string | undefined} - and its text */
  #text;
  /** Whether the browser had kept one. */
  wasKept;
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
    const {document, text, spoilt, problem} = kept.recalled(storage, fields);
    this.#kept = kept;
    this.#storage = storage;
    this.#fields = fields;
    this.wasKept = document !== undefined;
    this.#seen = document ?? first;
    this.#text = text;
    this.#history = begun(this.#seen);
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
   * Keeps in step with other tabs while the view is shown; `came` is called when something came in from one.
   *
   * @param {import('lit').ReactiveControllerHost} host
   * @param {() => void} came
   */
  attach(host, came) {
    const follow = () => this.catchUp() && came();
    let stop = () => {};
    host.addController({
      hostConnected: () => {
        stop = this.#kept.listen(follow);
        follow();
      },
      hostDisconnected: () => stop(),
    });
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

  /**
   * Takes what another tab has kept since; whether there was any.
   *
   * What is merged has no step of its own: undo takes back what was done here. What can only be taken whole has one.
   */
  catchUp() {
    const before = this.present;
    this.#history = this.#caughtUp(this.#history);
    return this.present !== before;
  }

  /** @param {History<Document>} history */
  #caughtUp(history) {
    const {document: theirs, text} = this.#kept.recalled(this.#storage, this.#fields);
    if (theirs === undefined || text === this.#text) return history;
    const base = this.#seen;
    this.#seen = theirs;
    this.#text = text;
    const merged = (mine) => this.#kept.merged({base, mine, theirs});
    if (this.#kept.isWhole) return advanced(advanced(history, theirs), merged(history.present));
    return {past: history.past.map(merged), present: merged(history.present), future: history.future.map(merged)};
  }

  /** @param {History<Document>} history */
  #keep(history) {
    this.#history = this.#caughtUp(history);
    this.problem = this.#kept.remember(this.#storage, this.present);
    if (this.problem !== '') return;
    this.#seen = this.present;
    this.#text = JSON.stringify(this.present);
  }
}
