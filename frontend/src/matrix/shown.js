/** What the page shows for a state while or after the core is asked. */
import START from '../../build/start-data.json';
import {bandsOf} from '../shared/vocabulary/vocabulary.js';
import {cellRequest, matrixRequest} from './requests.js';

/**
 * Before the first answer: the matrix of a first visit, or heads alone when something else was asked or packs count;
 * after a refusal the matrix of a first visit.
 */
export function awaitedMatrix(state, refused, vocabulary) {
  const {first, isPacked, lists} = vocabulary;
  const isFirst =
    JSON.stringify(matrixRequest(state, vocabulary)) === JSON.stringify(matrixRequest(first.matrix, vocabulary));
  if (refused || (isFirst && !isPacked)) return START.matrix;
  const wanted = new Set(bandsOf(state, vocabulary));
  return {
    families: lists.families.filter(({id}) => state.families === null || state.families.includes(id)),
    columns: lists.bands.filter(({id}) => wanted.has(id)),
    powers_w: state.powers_w,
  };
}

/** Whether a column is a spot frequency; heads that are still awaited have no edges. */
export const isSpot = (column) => column.low_hz !== undefined && column.low_hz === column.high_hz;

/** The column that is open; undefined when none is. */
export function openColumn(state, matrix) {
  if (state.band !== null) return matrix.columns.find(({id}) => id === state.band);
  if (state.frequency_hz === null) return undefined;
  return matrix.columns.find((column) => isSpot(column) && column.low_hz === state.frequency_hz);
}

/** Whether a cell request asks about the cell open in the state. */
export function isOpenCell(request, state) {
  const wanted = cellRequest(state);
  return wanted !== undefined && ['family', 'band', 'frequency_hz'].every((name) => request[name] === wanted[name]);
}

/** The heading of the open sheet; empty when none is open. */
export function headingOf(sheet, state, matrix, {bands, families}) {
  const nameOf = (list, id) => list.find((one) => one.id === id)?.name ?? id;
  const column = openColumn(state, matrix)?.name ?? nameOf(bands, state.band) ?? `${state.frequency_hz} Hz`;
  switch (sheet) {
    case 'methods':
      return 'Method';
    case 'website':
      return 'Put this on your website';
    case 'family':
      return nameOf(families, state.family);
    case 'band':
      return `All limits on ${column}`;
    case 'derivation':
      return `${nameOf(families, state.family)} on ${column}`;
  }
  return '';
}
