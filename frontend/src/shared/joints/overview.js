/** What is due among all joints of all lines. */
import {entriesOf, valuesOf} from './book.js';
import {dueOf, standingOf} from './due.js';
import {jointsOf} from './identity.js';

/**
 * @import {Line} from '../lines/document.js'
 * @import {Book} from './book.js'
 *
 * @typedef {{name: string, months: number}} Known - of a joint whose sheet is at hand
 *
 * @typedef {object} Standing
 * @property {string} code
 * @property {string} line
 * @property {string} name
 * @property {string} due - empty where it is not known
 * @property {ReturnType<typeof standingOf>} standing
 */

/**
 * Every joint that the book says something of, the soonest due first; of one whose sheet is not at hand name and
 * interval are those that were written down.
 *
 * @param {Book} book
 * @param {Line[]} lines
 * @param {Map<string, Known>} sheets - by the joints' codes
 * @param {string} today
 * @returns {Standing[]}
 */
export function standings(book, lines, sheets, today) {
  const written = new Map(book.joints.map((joint) => [joint.code, joint]));
  const all = lines.flatMap((line) =>
    jointsOf(line).flatMap(({code, name}) => {
      const entries = entriesOf(book, code);
      if (entries.length === 0) return [];
      const known = sheets.get(code) ?? written.get(code);
      const values = valuesOf(entries);
      const due = known ? dueOf(values, known.months) : '';
      return [{code, line: line.name, name: known?.name ?? name, due, standing: standingOf(values, due, today)}];
    }),
  );
  const last = '9999';
  return all.sort((one, other) => ((one.due || last) < (other.due || last) ? -1 : 1));
}
