/** What to have ready: figures as one buys them, and the list as a file. */
import {valuesOf} from '../shared/export/values.js';

const PER_METRE = 10;
/** What a binary fraction may be off; it must not cost another tenth. */
const NOISE = 1e-9;

/** Whole pieces, and metres rounded up to a tenth: what is on the list must do. */
export const toBuy = ({quantity, unit}) =>
  unit === 'm' ? Math.ceil(quantity * PER_METRE - NOISE) / PER_METRE : Math.ceil(quantity - NOISE);

/** @type {import('../shared/export/values.js').Column[]} */
const COLUMNS = [
  ['what', (row) => row.what],
  ['detail', (row) => row.detail],
  ['quantity', toBuy],
  ['unit', (row) => row.unit],
  ['family', (row) => row.family],
  ['cable', (row) => row.cable],
];

export const quantitiesCsv = (rows) => valuesOf(COLUMNS, rows);
