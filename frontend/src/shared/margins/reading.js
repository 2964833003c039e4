/**
 * Reading one cell of a matrix result: plain values and the sentence a screen reader says.
 *
 * @import {Gate, Matrix} from '../answers.js'
 *
 * @typedef {ReturnType<typeof readCell>} MatrixCell
 */
import {decibels, frequency, largestPower, power} from '../text/format.js';

/** What a refused cell prints: the hard gate in a word. */
const REFUSED = {
  te11: 'TE11',
  no_figures: 'freq',
  receive_only: 'rx only',
  no_heat_room: 'hot',
  immersion: 'wet',
  house: 'house',
};

/** The letter a failed soft gate leaves in the cell. */
const LETTERS = {customary_frequency: 'f', weather: 'w', vibration: 'v', wear: 's', cable_fit: 'c', cold: 't'};

/** The mark of a cell whose two ways to the heat limit are far apart. */
export const DISAGREES = '≠';

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
  return {
    family: matrix.families[f],
    column: matrix.columns[c],
    power: matrix.powers_w[p],
    margin: matrix.margin_db[f][c][p],
    high: matrix.margin_high_db[f][c][p],
    limit: matrix.limits[matrix.binding[f][c][p]],
    refusedBy: refusal === -1 ? undefined : matrix.gates[refusal],
    marks: marked(matrix.gates, matrix.marks[f][c][p]),
    undecided: matrix.undecided[f][c][p],
    disagrees: matrix.heat_disagrees[f][c],
    largest: matrix.largest_power_w[f][c],
  };
}

/**
 * What the cell prints large.
 *
 * @param {MatrixCell} cell
 * @param {string} shows - margin or largest
 */
export function printed(cell, shows) {
  if (cell.refusedBy) return refusedWord(cell.refusedBy);
  if (shows === 'margin') return decibels(cell.margin);
  return cell.largest === null ? 'none' : largestPower(cell.largest);
}

/**
 * The cell in words: family, band, power, margin, what binds, range, marks.
 *
 * @param {MatrixCell} cell
 */
export function spokenCell(cell) {
  const where = `${cell.family.name}, ${cell.column.name}, ${power(cell.power)}`;
  const marks = cell.marks.map((gate) => `${gate.name}: ${cell.family.gate_reasons[gate.id]}`);
  if (cell.refusedBy) {
    return [
      `${where}: refused, ${refusedWord(cell.refusedBy)}, ${cell.refusedBy.name}`,
      cell.family.gate_reasons[cell.refusedBy.id],
      ...marks,
    ].join('. ');
  }
  const largest = cell.largest === null ? 'no power holds' : `holds up to ${largestPower(cell.largest)} watts`;
  const parts = [
    `${where}: margin ${decibels(cell.margin)} dB, set by ${cell.limit} at ${frequency(cell.column.high_hz)}`,
    `range ${decibels(cell.margin)} to ${decibels(cell.high)} dB`,
    largest,
  ];
  if (cell.undecided) parts.push('Undecided: sources differ on which side of the limit it lies');
  if (cell.disagrees) parts.push('The two ways to the heat limit differ by more than three times');
  return [...parts, ...marks].join('. ');
}
