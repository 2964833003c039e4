/** What the core is asked about a state of the matrix, and which sheet is open in it. */
import START from '../../build/start-data.json';
import {bandsOf} from '../shared/vocabulary/vocabulary.js';
import {ASKED} from './question/changes.js';

/** Fields of the scenario, without columns, rows and powers. */
const MATRIX_ONLY = new Set(['families', 'bands', 'frequencies_hz', 'powers_w']);
const FIELDS = Object.keys(START.requests.matrix);
const SCENARIO = FIELDS.filter((name) => !MATRIX_ONLY.has(name));

const CELL = ['family', 'band', 'frequency_hz', 'power_w'];

const pick = (state, names) =>
  Object.fromEntries(names.filter((name) => state[name] !== null).map((name) => [name, state[name]]));

export function matrixRequest(state, vocabulary) {
  return {...pick(state, FIELDS), bands: bandsOf(state, vocabulary)};
}

/** The cell that is open in the state; undefined when none is. */
export function cellRequest(state) {
  if (state.family === null || (state.band === null && state.frequency_hz === null)) return undefined;
  return pick(state, [...SCENARIO, ...CELL]);
}

/** The question about one cell, whose sheet need not be open. */
export const questionRequest = (state, cell) => pick({...state, ...cell}, [...SCENARIO, ...CELL]);

/** Which sheet is open: derivation, family, band, methods, website, or none. */
export function openSheet(state) {
  if (state.view === ASKED) return undefined;
  if (state.view !== null) return state.view;
  if (cellRequest(state)) return 'derivation';
  if (state.family !== null) return 'family';
  return state.band === null && state.frequency_hz === null ? undefined : 'band';
}

/** The changes that close every sheet. */
export const NOTHING_OPEN = {view: null, family: null, band: null, frequency_hz: null};
