/** The joint book: which joint is which, entries of two devices, what is due. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {
  ASIDE,
  EMPTY_BOOK,
  checkedBook,
  entriesOf,
  mergedBooks,
  strays,
  valuesOf,
  withEntry,
} from '../../frontend/src/shared/joints/book.js';
import {dueOf, standingOf} from '../../frontend/src/shared/joints/due.js';
import {CODE, jointsOf, spokenCode, typedCode} from '../../frontend/src/shared/joints/identity.js';
import {KEPT_JOINTS} from '../../frontend/src/shared/joints/kept.js';
import {EXAMPLE} from '../../frontend/src/shared/lines/example.js';
import {daysBetween, isDay, monthsLater} from '../../frontend/src/shared/text/days.js';

const line = (...elements) => ({name: 'Hut', request: {elements}});
const n = {kind: 'joint', family: 'n'};
const uhf = {kind: 'joint', family: 'uhf'};
const cable = {kind: 'cable', cable: 'rg_58', length_m: 3};
const codes = (one) => jointsOf(one).map(({code}) => code);
const NOON = Date.parse('2026-11-29T12:00:00.000Z');
const CODES = codes(line(n, uhf, {...n, name: 'Top'}));
const JOINT = {code: CODES[0], line: 'Hut', name: 'Joint 1', joins: 'N between a and b', months: 24};
const said = (book, code) => valuesOf(entriesOf(book, code));

/** A book of entries in this order, a minute apart. */
const bookOf = (...entries) =>
  entries.reduce((book, [field, value], at) => withEntry(book, JOINT, {field, value}, NOON + at * 60_000), EMPTY_BOOK);

test('a joint stays the same while others and cables come and go, and with a name wherever it goes', () => {
  const named = {...n, name: 'Top'};
  const [first, , top] = CODES;
  assert.deepEqual(codes(line(cable, n, cable, {...named, exposure: 'exposed'})), [first, top]);
  assert.equal(codes(line(named, n))[0], top);
  assert.equal(codes(line(n, n))[0], first);
  assert.equal(new Set(codes(line(n, n, named, named, uhf))).size, 5);
  assert.notEqual(codes({...line(n), name: 'Shed'})[0], first);
});

test('an adapter has a joint at either end, and every code can be read aloud', () => {
  const joints = jointsOf(EXAMPLE);
  assert.deepEqual(
    joints.map(({element, end}) => [element, end]),
    [
      [0, 'whole'],
      [2, 'whole'],
      [4, 'transmitter'],
      [4, 'antenna'],
      [6, 'whole'],
    ],
  );
  for (const {code} of joints) {
    assert.match(code, CODE);
    assert.equal(typedCode(spokenCode(code).toLowerCase()), code);
  }
  assert.equal(typedCode(' o1il-abcd '), '0111ABCD');
});

test('of a field the newest entry counts, and what was said before stays', () => {
  const book = bookOf(['state', 'good'], ['torque', '1 N·m'], ['state', 'watch'], ['torque', '']);
  assert.deepEqual(
    [said(book, JOINT.code).state, said(book, JOINT.code).torque, said(book, JOINT.code).note],
    ['watch', '', ''],
  );
  assert.equal(entriesOf(book, JOINT.code).length, 4);
});

test('an entry counts even where the clock of its device is behind', () => {
  const book = withEntry(bookOf(['state', 'good']), JOINT, {field: 'state', value: 'faulty'}, NOON - 1e9);
  assert.equal(said(book, JOINT.code).state, 'faulty');
});

test('two devices put together lose nothing, in whichever order', () => {
  const base = bookOf(['fitted_on', '2026-01-31']);
  const mine = withEntry(base, JOINT, {field: 'state', value: 'good'}, NOON + 1000);
  const theirs = withEntry(base, {...JOINT, joins: 'newer'}, {field: 'state', value: 'watch'}, NOON + 2000);
  const other = withEntry(EMPTY_BOOK, {...JOINT, code: CODES[1]}, {field: 'note', value: 'x'}, NOON);

  const one = KEPT_JOINTS.merged({base, mine, theirs: mergedBooks({mine: theirs, theirs: other})});
  const two = mergedBooks({mine: mergedBooks({mine: other, theirs}), theirs: mine});

  const byCode = ({joints}) => joints.toSorted((a, b) => (a.code < b.code ? -1 : 1));
  assert.deepEqual(byCode(one), byCode(two));
  assert.equal(said(one, JOINT.code).state, 'watch');
  assert.equal(entriesOf(one, JOINT.code).length, 3);
  assert.equal(one.joints[0].joins, 'newer');
  assert.deepEqual(mergedBooks({mine: one, theirs: one}), one);
});

test('a record whose joint is gone is given to another, or set aside, and can be had back', () => {
  const book = bookOf(['torque', '1 N·m']);
  const [, to] = CODES;
  assert.deepEqual(strays(book, new Set([JOINT.code])), []);
  assert.deepEqual(strays(book, new Set([to])), book.joints);

  const given = withEntry(book, JOINT, {field: 'belongs_to', value: to}, NOON + 1e6);
  assert.equal(said(given, to).torque, '1 N·m');
  assert.equal(said(given, JOINT.code).torque, '');
  assert.deepEqual(strays(given, new Set([to])), []);
  const aside = withEntry(given, JOINT, {field: 'belongs_to', value: ASIDE}, NOON + 2e6);
  assert.deepEqual(strays(aside, new Set()), []);
  const back = withEntry(aside, JOINT, {field: 'belongs_to', value: ''}, NOON + 3e6);
  assert.equal(said(back, JOINT.code).torque, '1 N·m');
});

test('a book from outside is taken whole or refused with field, value and what is allowed', () => {
  const book = bookOf(['fitted_by', '</script><b>'], ['inspected_on', '2026-02-28']);
  assert.deepEqual(checkedBook(JSON.parse(JSON.stringify(book))), book);
  const [joint] = book.joints;
  const withFirst = (entry) => ({joints: [{...joint, entries: [{...joint.entries[0], ...entry}]}]});
  const refusals = [
    [[], /^joint book is \[\]; allowed: a JSON object\.$/],
    [{joints: 7}, /^joints is 7; allowed: a list/],
    [{joints: [{...joint, code: 'abc'}]}, /^joints\[0\]\.code is "abc"/],
    [{joints: [{...joint, months: 0}]}, /^joints\[0\]\.months is 0; allowed: a whole number from 1/],
    [withFirst({field: 'constructor'}), /\.field is "constructor"; allowed: one of fitted_by/],
    [withFirst({at: 'yesterday'}), /\.at is "yesterday"/],
    [withFirst({value: 'x'.repeat(61)}), /\.value is .*allowed: text of up to 60 characters/],
    [withFirst({field: 'fitted_on', value: '2026-02-30'}), /\.value is "2026-02-30"; allowed: a day as/],
    [withFirst({field: 'state', value: 'fine'}), /allowed: one of good, watch, faulty, or nothing/],
    [withFirst({more: 1}), /\.more is 1; allowed: only the fields/],
  ];
  for (const [value, message] of refusals) assert.throws(() => checkedBook(value), {name: 'RangeError', message});
});

test('an inspection is due its interval after the last one, or after the fitting', () => {
  const dated = (values) => dueOf({fitted_on: '', inspected_on: '', ...values}, 6);
  assert.equal(dated({}), '');
  assert.equal(dated({fitted_on: '2026-01-31'}), '2026-07-31');
  assert.equal(dated({fitted_on: '2026-08-31', inspected_on: '2026-05-01'}), '2027-02-28');
  const standing = (due, state = 'good') => standingOf({state}, due, '2026-11-29');
  assert.deepEqual(
    ['', '2026-11-28', '2026-11-29', '2026-12-29', '2026-12-30'].map((due) => standing(due)),
    ['', 'overdue', 'soon', 'soon', 'later'],
  );
  assert.equal(standing('2030-01-01', 'faulty'), 'faulty');
});

test('days are those of the calendar', () => {
  assert.equal(monthsLater('2024-01-31', 1), '2024-02-28');
  assert.equal(monthsLater('2026-11-30', 14), '2028-01-30');
  assert.equal(daysBetween('2026-12-31', '2027-01-02'), 2);
  assert.deepEqual(['2026-02-29', '2028-02-29', '2026-2-1', 7].map(isDay), [false, true, false, false]);
});
