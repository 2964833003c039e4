/** What to get: figures as one buys them, and the list as a file. */
import {valuesOf} from '../shared/export/values.js';
import {scaleOf} from '../shared/text/measures.js';

const TENTHS = 10;
/** What a binary fraction may be off; it must not cost another tenth. */
const NOISE = 1e-9;

/** Whole pieces, and metres or feet rounded up to a tenth: what is on the list must do. */
export function toBuy({quantity, unit}) {
  if (unit !== 'm') return Math.ceil(quantity - NOISE);
  return Math.ceil(scaleOf(unit).shown(quantity) * TENTHS - NOISE) / TENTHS;
}

/** Pieces need no word. */
export const unitOf = ({unit}) => (unit === 'm' ? ` ${scaleOf(unit).unit}` : '');

/** @type {import('../shared/export/values.js').Column[]} */
const COLUMNS = [
  ['what', (row) => row.what],
  ['detail', (row) => row.detail],
  ['quantity', toBuy],
  ['unit', ({unit}) => scaleOf(unit).unit],
  ['family', (row) => row.family],
  ['cable', (row) => row.cable],
];

export const quantitiesCsv = (rows) => valuesOf(COLUMNS, rows);
