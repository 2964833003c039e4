/**
 * The station in the fragment of an address: its settings by name, as links to the matrix always held them, and the
 * rest as one document.
 */
import {decoded, encoded} from '../state/document-link.js';
import {fromFragment, toFragment} from '../state/fragment.js';
import {checkedStation} from './checked.js';
import {FIRST_STATION} from './station.js';

/**
 * @import {Groups} from '../vocabulary/start-data.js'
 * @import {Station, StationChanges} from './station.js'
 */

const KEY = 'setup';
const US = 'units=us';

const same = (one, other) => JSON.stringify(one) === JSON.stringify(other);

/** Those of a record that a test picks by their names. */
const picked = (record, test) => Object.fromEntries(Object.entries(record).filter(([name]) => test(name)));

const nothing = (record) => Object.keys(record).length === 0;

/**
 * What of a station differs from a first visit, as part of a fragment.
 *
 * @param {Station} station
 * @param {string[]} own - names that mean something else in this fragment; such settings go into the document
 */
export function stationPart(station, own = []) {
  // where the page is served is the reader's own matter
  const {settings, units, address: _, ...rest} = station;
  const flat = picked(settings, (name) => !own.includes(name));
  const others = picked(settings, (name) => own.includes(name));
  const document = {
    ...picked(rest, (name) => !same(rest[name], FIRST_STATION[name])),
    ...(!nothing(others) && {settings: others}),
  };
  const names = Object.fromEntries(Object.keys(flat).map((name) => [name, undefined]));
  const written = nothing(document) ? '' : `${KEY}=${encoded(JSON.stringify(document))}`;
  return [toFragment(flat, names), units === FIRST_STATION.units ? '' : US, written].filter(Boolean).join('&');
}

/** As in a link of a station of which nothing is said: it must not be taken for one that says nothing of a station. */
export const NOTHING_SAID = 'mode=ssb';

/**
 * What a fragment says of the station: the fragment without it, the changes it makes to the station at hand (none
 * where it says nothing), and what in it can't be used.
 *
 * @param {string} fragment
 * @param {string[]} own - names that mean something else in this fragment
 * @param {Groups} table
 * @returns {{rest: string, changes: StationChanges | undefined, unknown: string[], problem: string}}
 */
export function stationIn(fragment, own, table) {
  const parts = fragment.split('&');
  const nameOf = (part) => part.split('=')[0];
  const isSetting = (part) => Object.hasOwn(table.settings, nameOf(part)) && !own.includes(nameOf(part));
  const isSaid = (part) => isSetting(part) && !part.endsWith('=null');
  const isDocument = (part) => nameOf(part) === KEY;
  const isUs = parts.includes(US);
  const rest = parts.filter((part) => !isSetting(part) && !isDocument(part) && part !== US).join('&');
  const {state: flat, unknown} = fromFragment(parts.filter(isSaid).join('&'), table.settings, {});
  const {document, problem} = documentOf(parts.find(isDocument), table);
  if (nothing(flat) && document === undefined && !isUs) return {rest, changes: undefined, unknown, problem};
  const settings = {...document?.settings, ...flat};
  const said = picked(settings, (name) => !same(settings[name], table.settings[name].default));
  return {rest, changes: {...document, ...(isUs && {units: 'us'}), settings: said}, unknown, problem};
}

function documentOf(part, table) {
  if (part === undefined) return {document: undefined, problem: ''};
  try {
    const document = JSON.parse(decoded(part.slice(KEY.length + 1)));
    checkedStation(document, table);
    return {document, problem: ''};
  } catch (error) {
    const why = error instanceof RangeError ? error.message : 'it is cut short or altered.';
    return {document: undefined, problem: `The station in this link can’t be used: ${why} Yours is kept.`};
  }
}
