/** The fragment of an address that somebody else wrote: bounded before anything is built of it. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {documentIn} from '../../frontend/src/shared/state/document-link.js';
import {LONGEST_FRAGMENT, toFragment} from '../../frontend/src/shared/state/fragment.js';
import {readable, unknownWords, viewOf, viewState} from '../../frontend/src/shared/state/view-link.js';

/** Those of a matrix, with the bounds that the core has. */
const FIELDS = {
  powers_w: {type: 'list', nullable: false, items: {type: 'number', min: 0, max: 1e5}, least: 1, most: 24},
  mode: {type: 'text', nullable: false, longest: 40, default: 'ssb'},
  bands: {type: 'list', nullable: true, items: {type: 'text', longest: 40}, least: 0, most: 100, default: null},
  families: {type: 'list', nullable: true, items: {type: 'text', longest: 40}, least: 1, most: 100, default: null},
  frequencies_hz: {type: 'list', nullable: false, items: {type: 'number', min: 1e5, max: 5e10}, least: 0, most: 200},
};
const FIRST = {powers_w: [100], bands: ['2m'], mode: 'ssb'};
const LONGEST_NOTICE = 400;

/** How many entries of a list the core takes. */
const mostOf = (name) => Number(FIELDS[name].most);

test('a list longer than the core takes is not built', () => {
  const most = mostOf('powers_w');
  const levels = (count) => Array(count).fill('5').join();

  assert.equal(viewState(`powers_w=${levels(most)}`, FIELDS, FIRST).state.powers_w.length, most);
  const {state, unknown} = viewState(`powers_w=${levels(most + 1)}`, FIELDS, FIRST);
  assert.deepEqual(state, FIRST);
  assert.equal(unknown.length, 1);
});

test('a text longer than the core takes is not taken', () => {
  const longest = Number(FIELDS.mode.longest);

  assert.equal(viewState(`mode=${'a'.repeat(longest)}`, FIELDS, FIRST).unknown.length, 0);
  assert.deepEqual(viewState(`mode=${'a'.repeat(longest + 1)}`, FIELDS, FIRST).state, FIRST);
});

test('what a link holds beside is told in a short notice', () => {
  const rubbish = Array.from({length: 900}, (_, at) => `name${at}=${'x'.repeat(at)}`).join('&');
  const {unknown} = viewState(rubbish, FIELDS, FIRST);

  assert.match(unknownWords(unknown), /: name0, name1=x, name2=xx and 897 more\./);
  assert.ok(unknownWords(viewState('y'.repeat(7000), FIELDS, FIRST).unknown).length < LONGEST_NOTICE);
  const expected = {key: 'kit', names: [], read: (value) => value, what: 'kit', instead: ''};
  assert.ok(documentIn(rubbish, expected).problem.length < LONGEST_NOTICE);
});

test('a link longer than any of the page is not read, and the reader is told', () => {
  const long = `view=choose&${'a&'.repeat(LONGEST_FRAGMENT)}`;

  assert.deepEqual(readable('view=choose'), {fragment: 'view=choose', problem: ''});
  const {fragment, problem} = readable(long);
  assert.equal(fragment, '');
  assert.match(problem, /longer than 8000 characters/);
  assert.equal(viewOf(long, ['matrix', 'choose']), 'choose');
});

test('the longest link of the page is read', () => {
  const full = (list) => Array.from({length: mostOf(list)}, (_, at) => at);
  const state = {
    bands: full('bands').map((at) => `${at}-of-a-pack`),
    families: full('families').map((at) => `family-${at}-of-a-pack`),
    frequencies_hz: full('frequencies_hz').map((at) => 1_440_000_000 + at),
    powers_w: full('powers_w').map((at) => 1000.5 + at),
  };

  assert.equal(readable(toFragment(state, {...state, ...FIRST, families: null, frequencies_hz: []})).problem, '');
});
