/** Writing the cells of the matrix: text and colour alone, and of both only what changed, which a drag lives by. */
import {marksOf} from '../shared/margins/marks.js';
import {marginWord, signsOf, stepNameOf} from '../shared/margins/reading.js';

/** @import {MatrixCell} from '../shared/margins/reading.js' */

/** From so many characters on a word is set small. */
const LONG = 6;

function put(td, name, value) {
  if (td.dataset[name] === value) return;
  if (value === undefined) delete td.dataset[name];
  else td.dataset[name] = value;
}

/** @param {HTMLTableCellElement} td */
function write(td, word) {
  const {firstChild} = td;
  if (td.childNodes.length === 1 && firstChild instanceof Text) {
    if (firstChild.data !== word) firstChild.data = word;
  } else td.replaceChildren(word);
  put(td, 'long', word.length >= LONG ? '' : undefined);
}

/** A cell whose number is still awaited. */
export function writeNothing(td) {
  write(td, '');
  put(td, 'step', undefined);
}

/**
 * A word in the colour of the margin.
 *
 * @param {HTMLTableCellElement} td
 * @param {MatrixCell} cell
 * @param {string} word
 */
export function writeCell(td, cell, word) {
  write(td, word);
  put(td, 'step', stepNameOf(cell));
}

/**
 * The same with its marks below it.
 *
 * @param {HTMLTableCellElement} td
 * @param {MatrixCell[]} levels - the cell at every power level
 * @param {number} p - the level that is shown
 * @param {string} word
 */
export function writeMarked(td, levels, p, word) {
  writeCell(td, levels[p], word);
  td.append(marksOf(levels, p));
}

/**
 * As on paper: a line for the power level shown; where marks are asked for, one with them for every level.
 *
 * @param {HTMLTableCellElement} td
 * @param {MatrixCell[]} levels
 * @param {number} p - the level that is shown
 * @param {boolean} marked
 */
export function writeLevels(td, levels, p, marked) {
  const lines = levels.flatMap((cell, level) => {
    if (level !== p && !marked) return [];
    const line = document.createElement('span');
    line.dataset.step = stepNameOf(cell);
    line.toggleAttribute('data-chosen', level === p);
    const signs = document.createElement('small');
    signs.textContent = marked ? signsOf(cell) : '';
    line.append(signs, marginWord(cell));
    return line;
  });
  put(td, 'step', undefined);
  td.replaceChildren(...lines);
}
