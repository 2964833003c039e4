/**
 * Reading one cell of a matrix result: plain values and the sentence a screen reader says.
 *
 * @import {Gate, Matrix} from '../answers.js'
 *
 * @typedef {ReturnType<typeof readCell>} MatrixCell
 */
import {decibels, frequency, largestPower, power} from '../text/format.js';
import {LIMITED_BY} from './limits.js';
import {stepOf} from './scale.js';

/** The hard gate whose cells print their return loss in place of a word. */
const MATCH = 'match';

/** What a refused cell prints: the hard gate in a word; that of the match with a number of its own. */
const REFUSED = {
  te11: 'TE11',
  cable_te11: 'TE11',
  no_figures: 'freq',
  receive_only: 'rx only',
  no_heat_room: 'hot',
  immersion: 'wet',
  house: 'house',
  match: 'RL 8',
};

/** The letter a failed soft gate leaves in the cell. */
const LETTERS = {
  customary_frequency: 'f',
  weather: 'w',
  vibration: 'v',
  wear: 's',
  cable_fit: 'c',
  cold: 't',
  match_doubt: 'm',
};

/** The mark of a margin above what a power figure from memory gives. */
export const LOWER_FROM_MEMORY = '↓';

export const refusedWord = (gate) => REFUSED[gate.id] ?? gate.name;
export const letterOf = (gate) => LETTERS[gate.id] ?? gate.name[0];

/** @type {Gate[]} */
const NONE = [];

/**
 * Soft gates that failed, from the bits of the result; most cells have none.
 *
 * @param {Gate[]} gates
 * @param {number} bits
 */
const marked = (gates, bits) => (bits === 0 ? NONE : gates.filter((_, index) => (bits >> index) & 1));

/**
 * Everything the page says of family `f` in column `c` at power level `p`.
 *
 * @param {Matrix} matrix
 * @param {number} f
 * @param {number} c
 * @param {number} p
 */
export function readCell(matrix, f, c, p) {
  const refusal = matrix.refused_by[f][c][p];
  const margin = matrix.margin_db[f][c][p];
  const [returnLoss, returnLossHigh] = matrix.return_loss_db[f][c];
  return {
    family: matrix.families[f],
    column: matrix.columns[c],
    power: matrix.powers_w[p],
    margin,
    high: matrix.margin_high_db[f][c][p],
    limit: matrix.limits[matrix.binding[f][c][p]],
    returnLoss,
    returnLossHigh,
    refusedBy: refusal === -1 ? undefined : matrix.gates[refusal],
    marks: marked(matrix.gates, matrix.marks[f][c][p]),
    undecided: matrix.undecided[f][c][p],
    lowerFromMemory: matrix.rating_below[f] && margin !== null,
    largest: matrix.largest_power_w[f][c],
  };
}

/** @param {?number} db - a cell that prints it has one */
const whole = (db) => Math.round(Number(db));

/**
 * A return loss as a cell prints it.
 *
 * @param {?number} db
 */
export const returnLossWord = (db) => `RL ${whole(db)}`;

/**
 * The name of the cell's colour: a step of the scale; refused; or holds, which has no margin in receive.
 *
 * @param {MatrixCell} cell
 */
export function stepNameOf(cell) {
  if (cell.refusedBy) return 'refused';
  return cell.margin === null ? 'holds' : stepOf(cell.margin);
}

/**
 * The letters and signs that stand in the cell.
 *
 * @param {MatrixCell} cell
 */
export const signsOf = (cell) => cell.marks.map(letterOf).join('') + (cell.lowerFromMemory ? LOWER_FROM_MEMORY : '');

/**
 * What the cell prints of its own power level: the margin, or what stands in its place.
 *
 * @param {MatrixCell} cell
 */
export function marginWord(cell) {
  if (cell.refusedBy && cell.refusedBy.id !== MATCH) return refusedWord(cell.refusedBy);
  return cell.margin === null ? returnLossWord(cell.returnLoss) : decibels(cell.margin);
}

/**
 * What the cell prints large.
 *
 * @param {MatrixCell} cell
 * @param {string} shows - margin or largest
 */
export function printed(cell, shows) {
  if (cell.refusedBy || shows === 'margin') return marginWord(cell);
  return cell.largest === null ? 'none' : largestPower(cell.largest);
}

/**
 * The cell in words: family, band, power, margin, what limits it, range, marks.
 *
 * @param {MatrixCell} cell
 */
export function spokenCell(cell) {
  const where = `${cell.family.name}, ${cell.column.name}, ${power(cell.power)}`;
  const marks = cell.marks.map((gate) => `${gate.name}: ${cell.family.gate_reasons[gate.id]}`);
  return [...told(where, cell), ...marks].join('. ');
}

/**
 * @param {string} where
 * @param {MatrixCell} cell
 */
function told(where, cell) {
  const {refusedBy} = cell;
  const returnLoss = `${returnLossWord(cell.returnLoss)}, return loss in dB`;
  if (refusedBy?.id === MATCH) return [`${where}: refused, ${returnLoss}, less than asked for`];
  if (refusedBy)
    return [`${where}: refused, ${refusedWord(refusedBy)}, ${refusedBy.name}`, cell.family.gate_reasons[refusedBy.id]];
  if (cell.margin === null) return [`${where}: ${returnLoss}; no power to bear`];
  const parts = [
    `${where}: margin ${decibels(cell.margin)} dB, limited by ${LIMITED_BY[cell.limit]} ` +
      `at ${frequency(cell.column.high_hz)}`,
    `range ${decibels(cell.margin)} to ${decibels(cell.high)} dB`,
    cell.largest === null ? 'no power holds' : `holds up to ${largestPower(cell.largest)} watts`,
  ];
  if (cell.undecided) parts.push('Undecided: sources differ on which side of the limit it lies');
  if (cell.lowerFromMemory) parts.push('A power figure from memory is lower');
  return parts;
}
