/**
 * Checks that plain data has a declared shape, and copies what is declared.
 *
 * A check is a function (value, path) that gives the value back, or throws a
 * Misshapen naming the path. What is not declared is left behind.
 */

export class Misshapen extends Error {}

const refuse = (path, allowed) => {
  throw new Misshapen(`${path || 'it'} must be ${allowed}`);
};

export const number = (value, path) => (Number.isFinite(value) ? value : refuse(path, 'a number'));
export const orNull = (check) => (value, path) => (value === null ? null : check(value, path));
export const boolean = (value, path) => (typeof value === 'boolean' ? value : refuse(path, 'true or false'));

export const text = (longest) => (value, path) =>
  typeof value === 'string' && value.length <= longest
    ? value
    : refuse(path, `a text of at most ${longest} characters`);

export const oneOf = (words) => (value, path) =>
  words.includes(value) ? value : refuse(path, `one of ${words.join(', ')}`);

export const exactly = (wanted) => (value, path) => (value === wanted ? value : refuse(path, `"${wanted}"`));

/** A whole number from `least` to below `end`. */
export const index =
  (end, least = 0) =>
  (value, path) =>
    Number.isInteger(value) && value >= least && value < end
      ? value
      : refuse(path, `a whole number from ${least} to ${end - 1}`);

/** A list of `least` to `most` entries. */
export const list =
  (check, least, most = least) =>
  (value, path) => {
    if (!Array.isArray(value) || value.length < least || value.length > most) {
      refuse(path, least === most ? `a list of ${least}` : `a list of ${least} to ${most}`);
    }
    return value.map((item, i) => check(item, `${path}[${i}]`));
  };

/** A list whose places have checks of their own. */
export const places =
  (...checks) =>
  (value, path) => {
    if (!Array.isArray(value) || value.length !== checks.length) refuse(path, `a list of ${checks.length}`);
    return checks.map((check, i) => check(value[i], `${path}[${i}]`));
  };

/** A day such as 2026-11-29. */
export const day = (value, path) =>
  typeof value === 'string' && /^\d{4}-\d\d-\d\d$/.test(value) && Number.isFinite(Date.parse(value))
    ? value
    : refuse(path, 'a day such as 2026-11-29');

/** What may be left out. */
export const optional = (check) => (value, path) => (value === undefined ? undefined : check(value, path));

const isObject = (value) => typeof value === 'object' && value !== null && !Array.isArray(value);

/** An object with these fields; each check is given the fields before it too. */
export const record = (checks) => (value, path) => {
  if (!isObject(value)) refuse(path, 'an object');
  const made = {};
  for (const [name, check] of Object.entries(checks)) {
    const where = path ? `${path}.${name}` : name;
    made[name] = check(Object.hasOwn(value, name) ? value[name] : undefined, where, made);
  }
  return made;
};

const PLAIN_NAME = /^[a-z][a-z0-9_]*$/;

/** An object of any small names, without a prototype for one of them to touch. */
export const dictionary = (check, most) => (value, path) => {
  if (!isObject(value) || Object.keys(value).length > most) refuse(path, `an object of at most ${most} fields`);
  const made = Object.create(null);
  for (const name of Object.keys(value)) {
    if (!PLAIN_NAME.test(name)) refuse(path, 'an object whose names are small letters, digits and _');
    made[name] = check(value[name], `${path}.${name}`);
  }
  return made;
};
