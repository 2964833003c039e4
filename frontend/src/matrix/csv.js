/** The matrix as comma-separated values: one line for each family, column and power level. */
import {valuesOf} from '../shared/export/values.js';
import {readCell} from '../shared/margins/reading.js';

/** @type {import('../shared/export/values.js').Column[]} */
const COLUMNS = [
  ['family', (cell) => cell.family.name],
  ['band', (cell) => cell.column.name],
  ['low_hz', (cell) => cell.column.low_hz],
  ['high_hz', (cell) => cell.column.high_hz],
  ['power_w', (cell) => cell.power],
  ['margin_db', (cell) => cell.margin],
  ['margin_high_db', (cell) => cell.high],
  ['set_by', (cell) => cell.limit],
  ['return_loss_db', (cell) => cell.returnLoss],
  ['return_loss_high_db', (cell) => cell.returnLossHigh],
  ['computed_at_hz', (cell) => cell.column.high_hz],
  ['undecided', (cell) => cell.undecided],
  ['refused_by', (cell) => cell.refusedBy?.name],
  ['marks', (cell) => cell.marks.map((gate) => gate.name).join('; ')],
  ['figure_from_memory_is_lower', (cell) => cell.lowerFromMemory],
  ['largest_power_w', (cell) => cell.largest],
  ['family_from_pack', (cell) => cell.family.pack],
  ['band_from_pack', (cell) => cell.column.pack],
];

export function matrixCsv(matrix) {
  const cells = matrix.families.flatMap((_, f) =>
    matrix.columns.flatMap((_, c) => matrix.powers_w.map((_, p) => readCell(matrix, f, c, p))),
  );
  return valuesOf(COLUMNS, cells);
}
