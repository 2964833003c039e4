/** The lines the reader works on: their history, and what the browser keeps of them. */
import {Desk as AnyDesk} from '../shared/state/desk.js';
import {FIRST_DOCUMENT} from '../shared/lines/example.js';
import {recalled, remember} from '../shared/lines/kept.js';
import {edited} from './lines.js';

export class Desk extends AnyDesk {
  /**
   * @param {function(): Storage} storage - may throw where the browser keeps nothing
   * @param {object} table - the fields of a line
   */
  constructor(storage, table) {
    super(recalled(storage, table), FIRST_DOCUMENT, (document) => remember(storage, document));
  }

  /** Which line is shown is no change of it, so that undo never only turns the page. */
  edit(edit) {
    this.put(edited(this.document, edit), edit.kind !== 'choose');
  }

  /** A line from outside: shown where it is already here, added where it is not. */
  take(line) {
    const text = JSON.stringify(line.request);
    const at = this.document.lines.findIndex(({request}) => JSON.stringify(request) === text);
    this.edit(at === -1 ? {kind: 'insert', lines: [line]} : {kind: 'choose', line: at});
  }
}
