/** The lines the reader works on: their history, and what the browser keeps of them. */
import {FIRST_DOCUMENT} from './example.js';
import {advanced, begun, redone, undone} from './history.js';
import {recalled, remember} from './kept.js';
import {edited} from './lines.js';

export class Desk {
  #storage;
  #history;
  /** What the browser could not keep or read, in a sentence; empty when all is well. */
  problem;
  /** Text that was kept and could not be read. */
  spoilt;

  /**
   * @param {function(): Storage} storage - may throw where the browser keeps nothing
   * @param {object} table - the fields of a line
   */
  constructor(storage, table) {
    this.#storage = storage;
    const {document, spoilt, problem} = recalled(storage, table);
    this.#history = begun(document ?? FIRST_DOCUMENT);
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

  /** Which line is shown is no change of it, so that undo never only turns the page. */
  edit(edit) {
    const next = edited(this.document, edit);
    this.#keep(edit.kind === 'choose' ? {...this.#history, present: next} : advanced(this.#history, next));
  }

  undo() {
    this.#keep(undone(this.#history));
  }

  redo() {
    this.#keep(redone(this.#history));
  }

  /** A line from outside: shown where it is already here, added where it is not. */
  take(line) {
    const text = JSON.stringify(line.request);
    const at = this.document.lines.findIndex(({request}) => JSON.stringify(request) === text);
    this.edit(at === -1 ? {kind: 'insert', lines: [line]} : {kind: 'choose', line: at});
  }

  #keep(history) {
    this.#history = history;
    this.problem = remember(this.#storage, history.present);
  }
}
