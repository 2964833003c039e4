/** Reads lines that come from outside. Ranges and choices are those of `table`, the core's own. */
import {fields, list, record, refuse, text} from '../state/check.js';
import {MOST_ELEMENTS, MOST_READ} from './document.js';
import {ELEMENTS, LOADS} from './kinds.js';

/**
 * @import {Groups} from '../vocabulary/start-data.js'
 * @import {Line, LineRequest} from './document.js'
 */

export const LONGEST_NAME = 60;

function tagged(path, value, kinds, tableOf) {
  const {kind} = record(path, value);
  if (!kinds.includes(kind)) refuse(`${path}.kind`, kind, `one of ${kinds.join(', ')}`);
  fields(path, value, tableOf(kind), ['kind']);
}

/** What a line ends in. Throws a RangeError whose message is for the reader. */
export function checkedLoad(path, value, table) {
  const {kind} = record(path, value);
  if (kind !== 'table') return tagged(path, value, Object.keys(LOADS), (name) => table[`load_${name}`]);
  list(`${path}.points`, value.points, 2, 2000, 'points').forEach((point, at) => {
    fields(`${path}.points[${at}]`, record(`${path}.points[${at}]`, point), table.point);
  });
}

function receiver(path, value, table, count) {
  const {preamplifier = null} = record(path, value);
  fields(path, value, table.receiver, ['preamplifier']);
  if (preamplifier === null) return;
  const at = `${path}.preamplifier`;
  fields(at, record(at, preamplifier), table.preamplifier);
  if (preamplifier.before_element >= count)
    refuse(`${at}.before_element`, preamplifier.before_element, `0 to ${count - 1}`);
}

/**
 * A request as it may be asked. Throws a RangeError whose message is for the reader.
 *
 * @param {any} value
 * @param {Groups} table
 * @param {string} [path] - where it stands in what was read
 * @returns {LineRequest}
 */
export function checkedRequest(value, table, path = '') {
  const at = path === '' ? '' : `${path}.`;
  record(path || 'line', value);
  list(`${at}elements`, value.elements, 0, MOST_ELEMENTS, 'elements').forEach((element, place) => {
    tagged(`${at}elements[${place}]`, element, Object.keys(ELEMENTS), (kind) => table[kind]);
  });
  if (value.load !== undefined) checkedLoad(`${at}load`, value.load, table);
  if (value.transmitter !== undefined)
    fields(`${at}transmitter`, record(`${at}transmitter`, value.transmitter), table.transmitter);
  if (value.receiver !== undefined) receiver(`${at}receiver`, value.receiver, table, value.elements.length);
  fields(path, value, table.station, ['elements', 'load', 'transmitter', 'receiver']);
  return value;
}

/**
 * Lines with their names; throws like checkedRequest.
 *
 * @param {any} value
 * @param {Groups} table
 * @returns {Line[]}
 */
export function checkedLines(value, table) {
  return list('lines', value, 1, MOST_READ, 'lines').map((line, at) => {
    const {name, request} = record(`lines[${at}]`, line);
    return {
      name: text(`lines[${at}].name`, name, LONGEST_NAME),
      request: checkedRequest(request, table, `lines[${at}].request`),
    };
  });
}
