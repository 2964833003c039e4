/** What can be done with the lists of a station; each gives the changes that do it. */
import {MOST} from './checked.js';
import {FIRST_STATION, withAntenna, withRig} from './station.js';

/**
 * @import {Station, StationChanges} from './station.js'
 *
 * @typedef {'rigs' | 'antennas' | 'gear'} List
 */

/** The list's place of the one in use; gear has none. */
const IN_USE = {rigs: 'rig', antennas: 'antenna'};
const USE = {rigs: withRig, antennas: withAntenna};

/** What a new one starts as. */
const NEW = {
  rigs: {name: '', power_w: 100},
  antennas: {name: '', load: {kind: 'vswr', vswr: 1.5}},
  gear: {name: '', family: 'n', gender: 'jack', highest_frequency_hz: 54e6, power_w: 100},
};

/** A null takes back what may be left out. */
const filled = (record) => Object.fromEntries(Object.entries(record).filter(([, value]) => value !== null));

const merged = (one, {settings, ...rest}) => ({...one, ...rest, settings: {...one.settings, ...settings}});

/** @param {Station} station @param {List} list */
export const isFull = (station, list) => station[list].length >= MOST[list];

/**
 * One more; the first rig or antenna is put to use at once.
 *
 * @param {Station} station
 * @param {List} list
 * @param {object} [given] - what it starts as
 * @returns {StationChanges}
 */
export function withOneMore(station, list, given = NEW[list]) {
  const all = [...station[list], given];
  const changes = {[list]: all};
  const isFirst = list in IN_USE && station[IN_USE[list]] === -1;
  return isFirst ? merged(changes, USE[list]({...station, ...changes}, all.length - 1)) : changes;
}

/**
 * Without one of them; what is in use stays in use, or none is.
 *
 * @param {Station} station
 * @param {List} list
 * @param {number} at
 * @returns {StationChanges}
 */
export function withoutOne(station, list, at) {
  const changes = {[list]: station[list].toSpliced(at, 1)};
  if (!(list in IN_USE)) return changes;
  const inUse = station[IN_USE[list]];
  if (inUse === at) return {...changes, [IN_USE[list]]: -1};
  return {...changes, [IN_USE[list]]: inUse > at ? inUse - 1 : inUse};
}

/**
 * With one changed; a rig in use gives its new power, an antenna in use its new SWR.
 *
 * @param {Station} station
 * @param {List} list
 * @param {number} at
 * @param {object} fields
 * @returns {StationChanges}
 */
export function withChanged(station, list, at, fields) {
  const changes = {[list]: station[list].map((one, place) => (place === at ? filled({...one, ...fields}) : one))};
  const gives = 'power_w' in fields || 'load' in fields;
  const isInUse = list in IN_USE && station[IN_USE[list]] === at;
  return gives && isInUse ? merged(changes, USE[list]({...station, ...changes}, at)) : changes;
}

/**
 * Another one in use.
 *
 * @param {Station} station
 * @param {List} list - rigs or antennas
 * @param {number} at - -1 for none
 */
export const withInUse = (station, list, at) => USE[list](station, at);

/**
 * A whole station in place of this one, whose reader stays the same.
 *
 * @param {Station} station
 * @param {StationChanges} [other] - left out, one of which nothing is said
 * @returns {StationChanges}
 */
export function inPlaceOf({address, settings, units}, other = {}) {
  const unsaid = Object.fromEntries(Object.keys(settings).map((name) => [name, undefined]));
  return {...FIRST_STATION, address, units, ...other, settings: {...unsaid, ...other.settings}};
}
