/** The matrix as comma-separated values: one line for each family, column and power level. */
import {readCell} from '../matrix/reading.js';

const COLUMNS = [
  ['family', (cell) => cell.family.name],
  ['band', (cell) => cell.column.name],
  ['low_hz', (cell) => cell.column.low_hz],
  ['high_hz', (cell) => cell.column.high_hz],
  ['power_w', (cell) => cell.power],
  ['margin_db', (cell) => cell.margin],
  ['margin_high_db', (cell) => cell.high],
  ['set_by', (cell) => cell.limit],
  ['computed_at_hz', (cell) => cell.column.high_hz],
  ['undecided', (cell) => cell.undecided],
  ['refused_by', (cell) => cell.refusedBy?.name],
  ['marks', (cell) => cell.marks.map((gate) => gate.name).join('; ')],
  ['largest_power_w', (cell) => cell.largest],
];

const quoted = (value) => (/[",\n]/.test(value) ? `"${value.replaceAll('"', '""')}"` : value);

export function matrixCsv(matrix) {
  const lines = [COLUMNS.map(([name]) => name)];
  matrix.families.forEach((_, f) =>
    matrix.columns.forEach((_, c) =>
      matrix.powers_w.forEach((_, p) => {
        const cell = readCell(matrix, f, c, p);
        lines.push(COLUMNS.map(([, read]) => quoted(String(read(cell) ?? ''))));
      }),
    ),
  );
  return lines.map((line) => `${line.join(',')}\r\n`).join('');
}
