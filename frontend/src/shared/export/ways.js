/** The ways to take the shown matrix along; each resolves to a notice for the reader, or to nothing. */
import {matrixCsv} from '../../matrix/csv.js';
import {save} from './save.js';

/** Without leave to use the clipboard the link is shown, to be copied by hand. */
export async function copyLink(address = location.href) {
  try {
    await navigator.clipboard.writeText(address);
    return {text: 'Link copied. It holds everything you set.', link: ''};
  } catch {
    return {text: 'Copy this link; it holds everything you set.', link: address};
  }
}

export const WAYS = {
  link: () => copyLink(),
  csv: async (matrix) => save('jointwise-matrix.csv', 'text/csv', matrixCsv(matrix)),
  json: async (matrix, request) =>
    save('jointwise-matrix.json', 'application/json', JSON.stringify({request, result: matrix}, null, 1)),
  print: async () => window.print(),
};

/** The ways that need the numbers. */
export const MATRIX_WAYS = new Set(['csv', 'json']);
