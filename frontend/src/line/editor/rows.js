/** An antenna's impedance as rows of text: frequency in MHz, resistance and reactance in ohms. */

const HERTZ_PER_MEGAHERTZ = 1e6;
const ROW = 'three numbers: frequency in MHz, resistance and reactance in Ω';

/** Points of pasted rows, in rising frequency. Throws a RangeError naming the first row that can't be read. */
export function pointsOf(text) {
  const rows = text.split(/\r?\n/).map((row) => row.replace(/[#!].*/, '').trim());
  const points = rows.flatMap((row, at) => {
    if (row === '') return [];
    const [megahertz, resistance_ohm, reactance_ohm, ...more] = row.split(/[\s;,]+/).map(Number);
    const wrong = [megahertz, resistance_ohm, reactance_ohm].some((one) => one === undefined || Number.isNaN(one));
    if (wrong || more.length > 0) throw new RangeError(`Row ${at + 1} is “${row}”; allowed: ${ROW}.`);
    return [{frequency_hz: Number((megahertz * HERTZ_PER_MEGAHERTZ).toPrecision(12)), resistance_ohm, reactance_ohm}];
  });
  if (points.length < 2)
    throw new RangeError(
      `There ${points.length === 1 ? 'is 1 row' : 'are no rows'}; allowed: at least two, each with ${ROW}.`,
    );
  return points.sort((a, b) => a.frequency_hz - b.frequency_hz);
}

export const rowsOf = (points) =>
  points
    .map((one) => `${one.frequency_hz / HERTZ_PER_MEGAHERTZ}  ${one.resistance_ohm}  ${one.reactance_ohm ?? 0}`)
    .join('\n');
