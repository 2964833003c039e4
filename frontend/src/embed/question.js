/** What a link to the page asks of a server, and the link that shows what a snapshot holds. */
import {bands as BANDS, families as FAMILIES, first_bands as FIRST_BANDS} from '../../build/start-data.json';
import {toFragment} from '../shared/state/fragment.js';

/** What a link opens on the page, but does not ask the core. */
const OF_THE_PAGE = ['family', 'band', 'frequency_hz', 'shows', 'view'];
/** What links held that were copied before a cable was asked for instead; the core takes it no more. */
const OF_THE_PAST = ['cable_dielectric'];
/** Sheets of the matrix; any other view is not one. */
const SHEETS = [null, 'methods', 'website'];

/** @param {URL} link */
const fieldsOf = (link) => new URLSearchParams(link.hash.slice(1).replaceAll('+', '%2B'));

/** @param {URL} link */
export const leadsToMatrix = (link) => SHEETS.includes(fieldsOf(link).get('view'));

/** The columns of a first visit that the Region has. */
function firstBands(region) {
  const known = new Map(BANDS.map((band) => [band.id, band]));
  return FIRST_BANDS.filter((id) => known.get(id)?.regions.includes(region));
}

/**
 * The address that answers a link with a snapshot.
 *
 * @param {URL} link
 */
export function snapshotAddress(link) {
  const fields = fieldsOf(link);
  for (const name of [...OF_THE_PAGE, ...OF_THE_PAST]) fields.delete(name);
  if (!fields.has('bands')) fields.set('bands', firstBands(fields.get('region') ?? '1').join());
  const address = new URL('api/v1/snapshot', link);
  address.search = String(fields);
  return address;
}

/** The largest table that a server answers with. */
const MOST = {rows: 100, columns: 300};

const count = (text) => text.split(',').filter(Boolean).length;

/**
 * Rows and columns a link will have; those of a first visit where it does not say, the most there are where it says
 * more.
 *
 * @param {URL} [link]
 */
export function expectedSize(link) {
  const fields = link ? fieldsOf(link) : new URLSearchParams();
  const named = (name, otherwise) => (fields.has(name) ? count(String(fields.get(name))) : otherwise);
  return {
    rows: Math.min(named('families', FAMILIES.length), MOST.rows),
    columns: Math.min(named('bands', FIRST_BANDS.length) + named('frequencies_hz', 0), MOST.columns),
  };
}

/**
 * The address of the full page showing a snapshot's scenario, with a cell open if one is given.
 *
 * @param {URL} link
 * @param {import('./snapshot.js').Snapshot} snapshot
 * @param {number} power
 * @param {import('../shared/margins/reading.js').MatrixCell} [cell]
 */
export function fullPage(link, {request, matrix}, power, cell) {
  const bands = matrix.columns.filter(({low_hz: low, high_hz: high}) => low !== high).map(({id}) => id);
  const isSpot = cell && cell.column.low_hz === cell.column.high_hz;
  const open = !cell
    ? {}
    : {family: cell.family.id, ...(isSpot ? {frequency_hz: cell.column.low_hz} : {band: cell.column.id})};
  const state = {...request, bands, power_w: power, ...open};
  const said = Object.keys(state).filter((name) => state[name] !== null);
  const first = {...Object.fromEntries(said.map((name) => [name, undefined])), bands: FIRST_BANDS};
  const address = new URL(link);
  address.hash = toFragment(state, first);
  return address.href;
}
