/** The matrix that is shown, as a file. */
import {save, saveJson} from '../shared/export/save.js';
import {askedIn} from '../shared/state/units.js';
import {unitsInForce} from '../shared/text/measures.js';
import {matrixCsv} from './csv.js';

export const saveCsv = (matrix) => save('jointwise-matrix.csv', 'text/csv', matrixCsv(matrix));

export const saveAnswer = (matrix, request) =>
  saveJson('jointwise-matrix.json', {request: askedIn(request, unitsInForce()), result: matrix});
