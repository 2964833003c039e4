/** @import {Kept, Store} from './kept.js' */

/**
 * A document the reader works on, and what the browser keeps of it, which other tabs change too.
 *
 * @template Document
 */
export class KeptDocument {
  /** The document as it stands. */
  present;
  #kept;
  #storage;
  #fields;
  /** @type {Document} - as it was last seen in what the browser keeps, */
  #seen;
  /** @type {string | undefined} - and its text */
  #text;
  /** @type {(before: Document) => void} */
  #came = () => {};
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
    this.#text = text;
    this.wasKept = document !== undefined;
    this.present = this.#seen = document ?? first;
    this.problem = problem;
    this.spoilt = spoilt;
  }

  /**
   * Keeps in step with other tabs while the view is shown; `came` is called when something came in from one.
   *
   * @param {import('lit').ReactiveControllerHost} host
   * @param {(before: Document) => void} came
   */
  attach(host, came) {
    this.#came = came;
    const follow = () => {
      const before = this.present;
      if (this.catchUp()) came(before);
    };
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
   * Another document in place of this one.
   *
   * @param {Document} next
   */
  put(next) {
    if (next === this.present) return;
    const before = this.present;
    if (this.catchUp()) this.#came(before);
    this.present = this.#kept.merged({base: before, mine: next, theirs: this.present});
    this.problem = this.#kept.remember(this.#storage, this.present);
    if (this.problem !== '') return;
    this.#seen = this.present;
    this.#text = JSON.stringify(this.present);
  }

  /**
   * One side of a step, with what came in since the other.
   *
   * @param {Document} from
   * @param {Document} to
   */
  turned(from, to) {
    return this.#kept.merged({base: from, mine: to, theirs: this.present});
  }

  /** Takes what another tab has kept since; whether there was any. */
  catchUp() {
    const {document: theirs, text} = this.#kept.recalled(this.#storage, this.#fields);
    if (theirs === undefined || text === this.#text) return false;
    const before = this.present;
    this.present = this.#kept.merged({base: this.#seen, mine: before, theirs});
    this.#seen = theirs;
    this.#text = text;
    return this.present !== before;
  }
}
