/**
 * Reads lines that come from outside: a file, a link, what the browser kept.
 *
 * All or nothing: the first thing wrong is refused with one sentence naming
 * field, value and what is allowed. Ranges and choices are those of `table`,
 * the core's own; what only the core can judge, it refuses when it is asked.
 */
import {MOST_ELEMENTS, MOST_LINES} from '../../line/lines.js';

const ELEMENTS = ['cable', 'joint', 'part', 'measured'];
const LOADS = ['vswr', 'impedance', 'table', 'measured'];
const SHOWN_CHARACTERS = 60;
const LONGEST_NAME = 60;

export function refuse(field, value, allowed) {
  const text = JSON.stringify(value) ?? 'left out';
  const shown = text.length > SHOWN_CHARACTERS ? `${text.slice(0, SHOWN_CHARACTERS)}…` : text;
  throw new RangeError(`${field} is ${shown}; allowed: ${allowed}.`);
}

const isRecord = (value) => typeof value === 'object' && value !== null && !Array.isArray(value);

export function record(path, value) {
  if (!isRecord(value)) refuse(path, value, 'a JSON object');
  return value;
}

export function list(path, value, least, most, what) {
  if (!Array.isArray(value) || value.length < least || value.length > most) {
    refuse(path, value, `a list of ${least} to ${most} ${what}`);
  }
  return value;
}

const CHECKS = {
  number: ({min, max}, value) => typeof value === 'number' && value >= min && value <= max,
  choice: ({choices}, value) => choices.includes(value),
  boolean: (_, value) => typeof value === 'boolean',
  text: ({longest}, value) => typeof value === 'string' && value.length <= (longest ?? Infinity),
};

const ALLOWED = {
  number: ({min, max}) => `a number from ${min} to ${max}`,
  choice: ({choices}) => `one of ${choices.join(', ')}`,
  boolean: () => 'true or false',
  text: ({longest}) => (longest ? `text of up to ${longest} characters` : 'text'),
};

/** The fields of a record that stand in the table, and no others. */
export function fields(path, value, table, also = []) {
  const at = path === '' ? '' : `${path}.`;
  for (const [name, one] of Object.entries(value)) {
    if (also.includes(name)) continue;
    if (!Object.hasOwn(table, name)) refuse(`${at}${name}`, one, `only the fields ${[...also, ...Object.keys(table)].join(', ')}`);
    const field = table[name];
    if (one === null ? !field.nullable : !CHECKS[field.type](field, one)) refuse(`${at}${name}`, one, ALLOWED[field.type](field));
  }
  for (const [name, field] of Object.entries(table)) {
    if (field.default === null && !field.nullable && !(name in value)) refuse(`${at}${name}`, undefined, ALLOWED[field.type](field));
  }
}

function tagged(path, value, kinds, tableOf) {
  const {kind} = record(path, value);
  if (!kinds.includes(kind)) refuse(`${path}.kind`, kind, `one of ${kinds.join(', ')}`);
  fields(path, value, tableOf(kind), ['kind']);
}

function load(path, value, table) {
  const {kind} = record(path, value);
  if (kind !== 'table') return tagged(path, value, LOADS, (name) => table[`load_${name}`]);
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
  if (preamplifier.before_element >= count) refuse(`${at}.before_element`, preamplifier.before_element, `0 to ${count - 1}`);
}

/** A request as it may be asked. Throws a RangeError whose message is for the reader. */
export function checkedRequest(value, table, path = '') {
  const at = path === '' ? '' : `${path}.`;
  record(path || 'line', value);
  list(`${at}elements`, value.elements, 1, MOST_ELEMENTS, 'elements').forEach((element, place) => {
    tagged(`${at}elements[${place}]`, element, ELEMENTS, (kind) => table[kind]);
  });
  load(`${at}load`, value.load, table);
  if (value.receiver !== undefined) receiver(`${at}receiver`, value.receiver, table, value.elements.length);
  fields(path, value, table.station, ['elements', 'load', 'receiver']);
  return value;
}

/** Lines with their names; throws like checkedRequest. */
export function checkedLines(value, table) {
  return list('lines', value, 1, MOST_LINES, 'lines').map((line, at) => {
    const {name, request} = record(`lines[${at}]`, line);
    if (typeof name !== 'string' || name.length > LONGEST_NAME) refuse(`lines[${at}].name`, name, ALLOWED.text({longest: LONGEST_NAME}));
    return {name, request: checkedRequest(request, table, `lines[${at}].request`)};
  });
}
