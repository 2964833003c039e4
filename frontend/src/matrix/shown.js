/** What the page shows for a state while or after the core is asked. */
import {BANDS, FAMILIES, FIRST_MATRIX, FIRST_STATE, bandsOf, cellRequest, isPacked, matrixRequest} from '../shared/state/station.js';

/** Before the first answer: the snapshot, or heads alone when something else was asked or packs count; after a refusal the snapshot. */
export function awaitedMatrix(state, refused) {
  const isFirst = JSON.stringify(matrixRequest(state)) === JSON.stringify(matrixRequest(FIRST_STATE));
  if (refused || (isFirst && !isPacked())) return FIRST_MATRIX;
  const wanted = new Set(bandsOf(state));
  return {
    families: FAMILIES.filter(({id}) => state.families === null || state.families.includes(id)),
    columns: BANDS.filter(({id}) => wanted.has(id)),
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
export function headingOf(sheet, state, matrix) {
  const nameOf = (list, id) => list.find((one) => one.id === id)?.name ?? id;
  const column = openColumn(state, matrix)?.name ?? nameOf(BANDS, state.band) ?? `${state.frequency_hz} Hz`;
  switch (sheet) {
    case 'methods':
      return 'Method';
    case 'website':
      return 'Put this on your website';
    case 'family':
      return nameOf(FAMILIES, state.family);
    case 'band':
      return `All limits on ${column}`;
    case 'derivation':
      return `${nameOf(FAMILIES, state.family)} on ${column}`;
  }
  return '';
}
