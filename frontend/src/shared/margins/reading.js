/**
 * Reading one cell of a matrix result: plain values and the sentence a screen reader says.
 *
 * @import {Gate, Matrix} from '../answers.js'
 *
 * @typedef {ReturnType<typeof readCell>} MatrixCell
 */
import {decibels, frequency, largestPower, power} from '../text/format.js';
import {LIMITED_BY} from './limits.js';
import {stepOf, stepWords} from './scale.js';

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

/** The mark of a failed soft gate, and what it says. */
const MARKS = {
  customary_frequency: ['f', 'above its usual frequency'],
  weather: ['w', 'not sealed for this weather'],
  vibration: ['v', 'its coupling does not suit this vibration'],
  wear: ['s', 'more swaps than it is made for'],
  cable_fit: ['c', 'not made for this cable diameter'],
  cold: ['t', 'too cold for it'],
  match_doubt: ['m', 'match in doubt: only the generous figures give the return loss asked for'],
};

/** The mark of a margin above what a power figure from memory gives. */
export const LOWER_FROM_MEMORY = '↓';

/** The mark of a margin on whose sign the sources disagree. */
export const UNCERTAIN = '?';

/** What a refused cell prints, in a word. */
export const refusedWord = (gate) => REFUSED[gate.id] ?? gate.name;
export const letterOf = (gate) => MARKS[gate.id]?.[0] ?? gate.name[0];

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
 * The marks of a cell, a sign and its words each.
 *
 * @param {MatrixCell} cell
 * @returns {[sign: string, words: string][]}
 */
export function signedWords(cell) {
  /** @type {[string, string][]} */
  const marks = cell.marks.map((gate) => [letterOf(gate), MARKS[gate.id]?.[1] ?? gate.name]);
  if (cell.undecided) marks.push([UNCERTAIN, 'uncertain: the sources disagree on which side of the limit it lies']);
  if (cell.lowerFromMemory) marks.push([LOWER_FROM_MEMORY, 'a power figure from memory is lower']);
  return marks;
}

/**
 * The marks of a cell without their words.
 *
 * @param {MatrixCell} cell
 */
export const signsOf = (cell) =>
  signedWords(cell)
    .map(([sign]) => sign)
    .join('');

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
  if (cell.margin === null) return [`${where}: ${returnLoss}; no power to carry`];
  const parts = [
    `${where}: margin ${decibels(cell.margin)} dB, ${stepWords(cell.margin)}, limited by ${LIMITED_BY[cell.limit]} ` +
      `at ${frequency(cell.column.high_hz)}`,
    `between ${decibels(cell.margin)} and ${decibels(cell.high)} dB, by how good the parts are`,
    cell.largest === null ? 'no power is safe' : `safe up to ${largestPower(cell.largest)} watts`,
  ];
  if (cell.undecided) parts.push('Uncertain: the sources disagree on which side of the limit it lies');
  if (cell.lowerFromMemory) parts.push('A power figure from memory is lower');
  return parts;
}
