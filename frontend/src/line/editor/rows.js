/** An antenna's impedance as rows of text: frequency in MHz, resistance and reactance in ohms. */
import {readingsOfRows, unmistakable} from '../../shared/text/number-typed.js';

/** @import {Reading} from '../../shared/text/number-typed.js' */

const HERTZ_PER_MEGAHERTZ = 1e6;
const COLUMNS = 3;
const ROW = 'three numbers: frequency in MHz, resistance and reactance in Ω';

const pointOf = ([megahertz, resistance_ohm, reactance_ohm]) => ({
  frequency_hz: Number((megahertz * HERTZ_PER_MEGAHERTZ).toPrecision(12)),
  resistance_ohm,
  reactance_ohm,
});

/**
 * What pasted rows may mean: points in rising frequency, more than once where it has to be asked which. Throws a
 * RangeError naming the first row that can't be read.
 *
 * @param {string} text
 * @returns {Reading[]}
 */
export function readingsOfPoints(text) {
  const lines = text.split(/\r?\n/).map((row) => row.replace(/[#!].*/, '').trim());
  const wrong = lines.findIndex((row) => row !== '' && readingsOfRows([row], COLUMNS).length === 0);
  if (wrong !== -1) throw new RangeError(`Row ${wrong + 1} is “${lines[wrong]}”; allowed: ${ROW}.`);
  const rows = lines.filter((row) => row !== '');
  if (rows.length < 2)
    throw new RangeError(
      `There ${rows.length === 1 ? 'is 1 row' : 'are no rows'}; allowed: at least two, each with ${ROW}.`,
    );
  const readings = readingsOfRows(rows, COLUMNS);
  if (readings.length === 0)
    throw new RangeError(
      'Some rows have a point and some a comma before the decimals; allowed: one of them in all rows.',
    );
  return readings.map((one) => ({
    ...one,
    value: one.value.map(pointOf).sort((a, b) => a.frequency_hz - b.frequency_hz),
  }));
}

export const rowsOf = (points) =>
  points
    .map(({frequency_hz, resistance_ohm, reactance_ohm}) =>
      [frequency_hz / HERTZ_PER_MEGAHERTZ, resistance_ohm, reactance_ohm ?? 0].map(unmistakable).join('  '),
    )
    .join('\n');
