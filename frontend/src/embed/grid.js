/** The table of an embedded matrix: the cells of the page, drawn without a template. */
import {marksOf} from '../shared/margins/marks.js';
import {readCell, stepNameOf} from '../shared/margins/reading.js';
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
 * The table of a matrix at power level `p`.
 *
 * @param {Snapshot} snapshot
 * @param {number} p
 * @param {Words} words
 */
export function grid({matrix}, p, words) {
  const {families, columns} = matrix;
  const heads = columns.map(({name}) => el('th', {scope: 'col'}, head(name)));
  const cells = (f) => columns.map((_, c) => cell(readCell(matrix, f, c, p), words, f, c));
  return frame(
    words,
    heads,
    families.map(({name}, f) => el('tr', {}, el('th', {scope: 'row'}, el('span', {}, name)), cells(f))),
  );
}

/**
 * @param {MatrixCell} read
 * @param {Words} words
 * @param {number} f
 * @param {number} c
 */
function cell(read, words, f, c) {
  const word = printedIn(words, read);
  return el(
    'td',
    {
      'aria-label': words.cell(read),
      'data-family': read.family.id,
      'data-band': read.column.id,
      'data-power': read.power,
      'data-step': stepNameOf(read),
      'data-long': word.length > 5,
      'data-row': f,
      'data-column': c,
      tabindex: f === 0 && c === 0 ? 0 : -1,
      'aria-expanded': 'false',
    },
    word,
  );
}

/**
 * Draws the marks of a row's cells.
 *
 * @param {Snapshot} snapshot
 * @param {HTMLElement[]} row - its cells
 * @param {number} f
 * @param {number} p
 */
export function markRow({matrix}, row, f, p) {
  for (const [c, td] of row.entries())
    td.append(
      marksOf(
        matrix.powers_w.map((_, level) => readCell(matrix, f, c, level)),
        p,
      ),
    );
}
