/** The ways to take the shown matrix along; each resolves to a notice for the reader, or to nothing. */
import {save, saveJson} from '../shared/export/save.js';
import {askedIn} from '../shared/state/units.js';
import {unitsInForce} from '../shared/text/measures.js';
import {matrixCsv} from './csv.js';

export const WAYS = {
  csv: async (matrix) => save('jointwise-matrix.csv', 'text/csv', matrixCsv(matrix)),
  json: async (matrix, request) =>
    saveJson('jointwise-matrix.json', {request: askedIn(request, unitsInForce()), result: matrix}),
  print: async () => window.print(),
};

/** The ways that need the numbers. */
export const MATRIX_WAYS = new Set(['csv', 'json']);
