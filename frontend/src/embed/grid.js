/** The table of an embedded matrix: the cells of the page, drawn without a template. */
import {ladderClass} from '../shared/margins/ladder.js';
import {rangeClass} from '../shared/margins/range.js';
import {readCell, signsOf, stepNameOf} from '../shared/margins/reading.js';
import {stepOf} from '../shared/margins/scale.js';
import {el} from './dom.js';
import {printedIn} from './words.js';

/**
 * @import {MatrixCell} from '../shared/margins/reading.js'
 * @import {Snapshot} from './snapshot.js'
 * @import {Words} from './words.js'
 */

const head = (name) => {
  const [number, ...unit] = name.split(' ');
  return [number, ' ', el('small', {}, unit.join(' '))];
};

function frame(words, heads, rows) {
  const blank = el('th', {}, el('span', {class: 'unseen'}, words.family));
  return el(
    'table',
    {role: 'grid', 'aria-label': words.title},
    el('thead', {}, el('tr', {}, blank, heads)),
    el('tbody', {}, rows),
  );
}

/**
 * The table before there are numbers: the same room, nothing in it.
 *
 * @param {Words} words
 * @param {{rows: number, columns: number}} size
 */
export function emptyGrid(words, {rows, columns}) {
  const times = (count, make) => Array.from({length: count}, make);
  const row = () =>
    el(
      'tr',
      {},
      el('th', {scope: 'row'}, '\u00a0'),
      times(columns, () => el('td', {}, el('span', {class: 'empty'}))),
    );
  const table = frame(
    words,
    times(columns, () => el('th', {scope: 'col'}, '\u00a0')),
    times(rows, row),
  );
  table.setAttribute('aria-hidden', 'true');
  return table;
}

/**
 * The table of a matrix at power level `p`; `compact` leaves all but the number out.
 *
 * @param {Snapshot} snapshot
 * @param {number} p
 * @param {Words} words
 * @param {boolean} compact
 */
export function grid({matrix}, p, words, compact) {
  const {families, columns, powers_w: levels} = matrix;
  const heads = columns.map(({name}) => el('th', {scope: 'col'}, head(name)));
  const cells = (f) =>
    columns.map((_, c) => {
      const ladder = compact ? [] : levels.map((_, level) => readCell(matrix, f, c, level));
      return cell(readCell(matrix, f, c, p), ladder, words, f, c);
    });
  return frame(
    words,
    heads,
    families.map(({name}, f) => el('tr', {}, el('th', {scope: 'row'}, el('span', {}, name)), cells(f))),
  );
}

/**
 * @param {MatrixCell} read
 * @param {MatrixCell[]} ladder
 * @param {Words} words
 * @param {number} f
 * @param {number} c
 */
function cell(read, ladder, words, f, c) {
  const word = printedIn(words, read);
  const number = el('span', {class: word.length > 5 ? 'number long' : 'number'}, word);
  const button = el(
    'button',
    {
      ...(ladder.length > 0 && around(read, ladder)),
      'aria-label': words.cell(read),
      'data-step': stepNameOf(read),
      'data-undecided': read.undecided,
      'data-row': f,
      'data-column': c,
      tabindex: f === 0 && c === 0 ? 0 : -1,
      'aria-expanded': 'false',
    },
    number,
    ladder.length > 0 && read.margin !== null ? el('i', {class: rangeClass(read.margin, read.high)}) : undefined,
  );
  return el('td', {'data-family': read.family.id, 'data-band': read.column.id, 'data-power': read.power}, button);
}

/** What the style sheet draws around the number: ladder and thread, marks, the corner of an undecided cell. */
const around = (read, ladder) => ({
  class: ladderClass(ladder.map(stepNameOf), stepNameOf(read)),
  'data-letters': signsOf(read) || undefined,
  'data-high': read.undecided && stepOf(read.high),
});
