/**
 * Reads plain data that comes from outside: a file, a link, what the browser kept.
 *
 * All or nothing: the first thing wrong is refused with one sentence naming field, value and what is allowed, the
 * message of a RangeError. What only the core can judge, it refuses when it is asked.
 */
import {cutShort} from '../text/few.js';

/** Throws the RangeError that says so. */
export function refuse(field, value, allowed) {
  const written = JSON.stringify(value) ?? 'left out';
  throw new RangeError(`${cutShort(field)} is ${cutShort(written)}; allowed: ${allowed}.`);
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

/** Characters are counted as the core counts them: one outside the basic plane is one. */
const isNoLonger = (value, longest) => value.length <= longest || [...value].length <= longest;

const CHECKS = {
  number: ({min, max}, value) => typeof value === 'number' && value >= min && value <= max,
  choice: ({choices}, value) => choices.includes(value),
  boolean: (_, value) => typeof value === 'boolean',
  text: ({longest = Infinity}, value) => typeof value === 'string' && isNoLonger(value, longest),
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
    if (!Object.hasOwn(table, name))
      refuse(`${at}${name}`, one, `only the fields ${[...also, ...Object.keys(table)].join(', ')}`);
    const field = table[name];
    if (one === null ? !field.nullable : !CHECKS[field.type](field, one))
      refuse(`${at}${name}`, one, ALLOWED[field.type](field));
  }
  for (const [name, field] of Object.entries(table)) {
    if (field.default === null && !field.nullable && !(name in value))
      refuse(`${at}${name}`, undefined, ALLOWED[field.type](field));
  }
}

/** Text of at most so many characters. */
export function text(path, value, longest) {
  if (!CHECKS.text({longest}, value)) refuse(path, value, ALLOWED.text({longest}));
  return value;
}
