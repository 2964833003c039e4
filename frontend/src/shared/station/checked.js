/** Reads a station that comes from outside: a file, a link, what the browser kept. */
import {checkedLoad} from '../lines/checked.js';
import {fields, list, record, refuse, text} from '../state/check.js';
import {FIRST_STATION, VERSION} from './station.js';

/**
 * @import {Groups} from '../vocabulary/start-data.js'
 * @import {Station} from './station.js'
 */

/** How many of each a station may have: more than anybody's, and few enough for an address. */
export const MOST = {rigs: 12, antennas: 24, gear: 60, cables: 40};

const LONGEST_ID = 40;

/** A number out of range may stand in a setting as it may in a form: the core refuses it where it is asked. */
const ofAnySize = (field) =>
  field.type === 'number' ? {...field, min: -Number.MAX_VALUE, max: Number.MAX_VALUE} : field;

function checkSettings(value, table) {
  const {bands, ...rest} = record('settings', value);
  const {bands: many, ...single} = table;
  const loose = Object.entries(single).map(([name, field]) => [name, ofAnySize(field)]);
  fields('settings', rest, Object.fromEntries(loose));
  if (bands !== undefined) texts('settings.bands', bands, many.most);
}

const texts = (path, value, most) =>
  list(path, value, 0, most, 'names').forEach((id, at) => text(`${path}[${at}]`, id, LONGEST_ID));

function checkPlace(path, value, count) {
  if (!Number.isInteger(value) || value < -1 || value >= count) refuse(path, value, `a place from -1 to ${count - 1}`);
}

/**
 * A station; what is left out of it is as on a first visit. Throws a RangeError whose message is for the reader.
 *
 * @param {any} value
 * @param {Groups} table
 * @returns {Station}
 */
export function checkedStation(value, table) {
  const station = {...FIRST_STATION, ...record('station', value)};
  const {version, settings, rigs, rig, antennas, antenna, gear: _, cables, ...shack} = station;
  if (version !== VERSION) refuse('version', version, `${VERSION}`);
  fields('', shack, table.shack);
  checkSettings(settings, table.settings);
  const each = (name, check) =>
    list(name, station[name], 0, MOST[name], name).forEach((one, at) => {
      const path = `${name}[${at}]`;
      check(path, record(path, one));
    });
  each('rigs', (path, one) => fields(path, one, table.rig));
  each('gear', (path, one) => fields(path, one, table.port));
  each('antennas', (path, one) => {
    fields(path, one, table.antenna, ['load']);
    checkedLoad(`${path}.load`, one.load, table);
  });
  texts('cables', cables, MOST.cables);
  checkPlace('rig', rig, rigs.length);
  checkPlace('antenna', antenna, antennas.length);
  return station;
}
