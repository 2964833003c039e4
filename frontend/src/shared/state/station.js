/**
 * What the page is about: the fields of a request, plus what is open.
 *
 * Field names, ranges and defaults come from the core's own request types by
 * way of the snapshot; only the page's own few are declared here.
 */
import snapshot from '../../../build/snapshot.json';

const text = {type: 'text', nullable: true, default: null};

/** Every field that can stand in a link. */
export const FIELDS = {
  ...snapshot.fields,
  shows: {type: 'choice', choices: ['margin', 'largest'], default: 'margin', nullable: false},
  view: {...text, type: 'choice', choices: ['methods', 'website']},
};

/** A first visit: the core's defaults with the columns that fit a tablet. */
export const FIRST_STATE = {
  ...Object.fromEntries(Object.entries(FIELDS).map(([name, field]) => [name, field.default])),
  bands: snapshot.first_bands,
};

export const {bands: BANDS, families: FAMILIES, modes: MODES, conditions: CONDITIONS} = snapshot;
export const {cable_dielectrics: CABLE_DIELECTRICS, cautions: CAUTIONS, matrix: FIRST_MATRIX} = snapshot;

/** Whether packs count, so that the numbers that came with the page are not those asked for. */
export const isPacked = () => snapshot.packed === true;

/** Fields of the scenario, without columns, rows and powers. */
const MATRIX_ONLY = new Set(['families', 'bands', 'frequencies_hz', 'powers_w']);
const SCENARIO = snapshot.scenario_fields.filter((name) => !MATRIX_ONLY.has(name));

const pick = (state, names) =>
  Object.fromEntries(names.filter((name) => state[name] !== null).map((name) => [name, state[name]]));

/** Bands of the state that the Region has; a name the page does not know goes to the core, which says so. */
export function bandsOf(state) {
  const known = new Map(BANDS.map((band) => [band.id, band]));
  return state.bands.filter((id) => known.get(id)?.regions.includes(String(state.region)) ?? true);
}

export function matrixRequest(state) {
  return {...pick(state, snapshot.scenario_fields), bands: bandsOf(state)};
}

/** The cell that is open in the state; undefined when none is. */
export function cellRequest(state) {
  if (state.family === null || (state.band === null && state.frequency_hz === null)) return undefined;
  return pick(state, [...SCENARIO, 'family', 'band', 'frequency_hz', 'power_w']);
}

/** Which sheet is open: derivation, family, band, methods, website, or none. */
export function openSheet(state) {
  if (state.view !== null) return state.view;
  if (cellRequest(state)) return 'derivation';
  if (state.family !== null) return 'family';
  return state.band === null && state.frequency_hz === null ? undefined : 'band';
}

/** The changes that close every sheet. */
export const NOTHING_OPEN = {view: null, family: null, band: null, frequency_hz: null};
