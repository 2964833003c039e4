/**
 * The joint book: what was done to each joint, as dated entries.
 *
 * An entry is never changed and never goes: a correction is one more, and of a field the newest entry counts. So two
 * tabs or two devices have only to put their entries together, and nothing of either is lost.
 */
import {fields, list, record, refuse, text} from '../state/check.js';
import {isDay} from '../text/days.js';
import {CODE} from './identity.js';

/**
 * @typedef {object} Entry
 * @property {string} at - when it was written, in universal time
 * @property {string} field
 * @property {string} value - empty takes back what was said
 *
 * @typedef {object} JointRecord
 * @property {string} code - the joint's identity
 * @property {string} line - its line's name
 * @property {string} name - the joint's, as its sheet has it
 * @property {string} joins - what it joined when it was last written of
 * @property {number} months - between inspections, as of then
 * @property {Entry[]} entries - the newest last
 *
 * @typedef {{joints: JointRecord[]}} Book
 *
 * @typedef {Record<string, string>} Values - what counts of a record's fields; empty where nothing was said
 */

/** @type {Book} */
export const EMPTY_BOOK = {joints: []};

export const STATES = ['good', 'watch', 'faulty'];
/** In the place of a joint's code: its record is set aside. */
export const ASIDE = 'none';

const DAY = 'a day as 2026-11-29, or nothing';
/** @type {Record<string, {longest: number} | {is: (value: string) => boolean, allowed: string}>} */
const FIELDS = {
  fitted_by: {longest: 60},
  fitted_on: {is: isDay, allowed: DAY},
  torque: {longest: 40},
  sealed: {longest: 120},
  inspected_on: {is: isDay, allowed: DAY},
  state: {is: (value) => STATES.includes(value), allowed: `one of ${STATES.join(', ')}, or nothing`},
  note: {longest: 500},
  belongs_to: {is: (value) => value === ASIDE || CODE.test(value), allowed: `a joint's code, "${ASIDE}", or nothing`},
};
export const FIELD_NAMES = Object.keys(FIELDS);

/** The most characters of a field; undefined where its values are bounded otherwise. @param {string} field */
export function longestOf(field) {
  const rule = FIELDS[field];
  return 'longest' in rule ? rule.longest : undefined;
}

const MOST_JOINTS = 5000;
const MOST_ENTRIES = 5000;
const MOST_MONTHS = 1200;
const LONGEST = {line: 60, name: 60, joins: 300};
const MOMENT = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}\.\d{3}Z$/;

/** In order of time; what is of one moment in an order that is the same on every device. */
const order = (entry) => `${entry.at} ${entry.field} ${entry.value}`;
const newest = ({entries}) => entries.at(-1)?.at ?? '';

/**
 * Both records of a joint as one.
 *
 * @param {JointRecord} one
 * @param {JointRecord} other
 * @returns {JointRecord}
 */
function together(one, other) {
  const later = newest(other) > newest(one) ? other : one;
  const all = new Map([...one.entries, ...other.entries].map((entry) => [order(entry), entry]));
  const entries = [...all.keys()].sort().map((key) => /** @type {Entry} */ (all.get(key)));
  return {...later, entries};
}

/**
 * All that is in either book.
 *
 * @param {{mine: Book, theirs: Book}} books
 * @returns {Book}
 */
export function mergedBooks({mine, theirs}) {
  const joints = new Map(mine.joints.map((joint) => [joint.code, joint]));
  for (const joint of theirs.joints) {
    const own = joints.get(joint.code);
    joints.set(joint.code, own ? together(own, joint) : joint);
  }
  return {joints: [...joints.values()]};
}

/**
 * The book with one more entry, whose moment is later than any of its joint's, whatever the clock says.
 *
 * @param {Book} book
 * @param {Omit<JointRecord, 'entries'>} joint
 * @param {{field: string, value: string}} entry
 * @param {number} now - ms
 * @returns {Book}
 */
export function withEntry(book, joint, {field, value}, now) {
  const before = book.joints.find(({code}) => code === joint.code);
  const entries = before?.entries ?? [];
  const last = entries.at(-1);
  const at = new Date(last ? Math.max(now, Date.parse(last.at) + 1) : now).toISOString();
  const after = {...joint, entries: [...entries, {at, field, value}]};
  return {joints: before ? book.joints.map((one) => (one === before ? after : one)) : [...book.joints, after]};
}

/** What the newest entries say. @param {Entry[]} entries @returns {Values} */
export const valuesOf = (entries) =>
  Object.fromEntries(FIELD_NAMES.map((name) => [name, entries.findLast(({field}) => field === name)?.value ?? '']));

const ownerOf = ({code, entries}) => valuesOf(entries).belongs_to || code;

/**
 * The entries about a joint, those of records that were said to be its own among them.
 *
 * @param {Book} book
 * @param {string} code
 * @returns {Entry[]}
 */
export function entriesOf(book, code) {
  const own = book.joints.filter((joint) => ownerOf(joint) === code);
  const all = own.flatMap(({entries}) => entries).filter(({field}) => field !== 'belongs_to');
  return all.sort((one, other) => (order(one) < order(other) ? -1 : 1));
}

/**
 * Records of joints that none of these is, and that were not set aside.
 *
 * @param {Book} book
 * @param {Set<string>} codes - of all joints there are
 */
export const strays = ({joints}, codes) =>
  joints.filter((joint) => ownerOf(joint) !== ASIDE && !codes.has(ownerOf(joint)));

function checkedEntry(path, value) {
  const {at, field, value: said} = record(path, value);
  fields(path, value, {}, ['at', 'field', 'value']);
  if (typeof at !== 'string' || !MOMENT.test(at) || Number.isNaN(Date.parse(at)))
    refuse(`${path}.at`, at, 'a moment as 2026-11-29T12:00:00.000Z');
  if (typeof field !== 'string' || !Object.hasOwn(FIELDS, field))
    refuse(`${path}.field`, field, `one of ${FIELD_NAMES.join(', ')}`);
  const rule = FIELDS[field];
  if ('longest' in rule) text(`${path}.value`, said, rule.longest);
  else if (said !== '' && (typeof said !== 'string' || !rule.is(said))) refuse(`${path}.value`, said, rule.allowed);
  return {at, field, value: said};
}

/**
 * A book that comes from outside. Throws a RangeError whose message is for the reader.
 *
 * @param {any} value
 * @returns {Book}
 */
export function checkedBook(value) {
  const joints = list('joints', record('joint book', value).joints, 0, MOST_JOINTS, 'joints').map((joint, at) => {
    const path = `joints[${at}]`;
    const {code, months, entries, ...texts} = record(path, joint);
    if (typeof code !== 'string' || !CODE.test(code)) refuse(`${path}.code`, code, 'eight digits and capital letters');
    if (!Number.isInteger(months) || months < 1 || months > MOST_MONTHS)
      refuse(`${path}.months`, months, `a whole number from 1 to ${MOST_MONTHS}`);
    for (const [name, longest] of Object.entries(LONGEST)) text(`${path}.${name}`, texts[name], longest);
    const read = list(`${path}.entries`, entries, 0, MOST_ENTRIES, 'entries').map((entry, place) =>
      checkedEntry(`${path}.entries[${place}]`, entry),
    );
    const {line, name, joins} = texts;
    return {code, line, name, joins, months, entries: read.sort((one, other) => (order(one) < order(other) ? -1 : 1))};
  });
  return mergedBooks({mine: EMPTY_BOOK, theirs: {joints}});
}
