/** What a saved page carries, and a station file: gathered, read, and taken into what a browser keeps. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {carriedIn, gathered, takeIn} from '../../frontend/src/saved/carried.js';
import {Kept} from '../../frontend/src/shared/state/kept.js';
import {freeName, mergedLists} from '../../frontend/src/shared/state/merge.js';

const SENTENCES = {blocked: 'blocked', full: 'full', spoilt: 'spoilt'};
const isList = (value) => {
  if (!Array.isArray(value)) throw new RangeError('no list');
  return value;
};
const same = (one) => (other) => JSON.stringify(one.request) === JSON.stringify(other.request);
const LINES = new Kept({key: 'jointwise-lines', ...SENTENCES}, isList, (versions) =>
  mergedLists(
    versions,
    ({name}) => name,
    (line, taken) => (versions.mine.some(same(line)) ? undefined : {...line, name: freeName(line.name, taken, 60)}),
  ),
);
const KIT = new Kept({key: 'jointwise-kit', ...SENTENCES}, (value) => value);
const PLACES = {lines: {kept: LINES, nothing: []}, kit: {kept: KIT}};

function storage(held = {}) {
  return {
    held,
    getItem: (key) => held[key] ?? null,
    setItem: (key, text) => (held[key] = text),
    removeItem: (key) => delete held[key],
  };
}
const withKept = (kept) =>
  storage(Object.fromEntries(Object.entries(kept).map(([key, value]) => [`jointwise-${key}`, JSON.stringify(value)])));
const lines = (...names) => names.map((name) => ({name, request: {of: name}}));

test('all that is kept is gathered, and keeps its day while nothing changes', () => {
  const store = withKept({lines: lines('a'), kit: {ports: 2}});
  const first = gathered(store, 'Hill club', '2026-11-29', null);
  assert.deepEqual(first.kept, {lines: lines('a'), kit: {ports: 2}});
  assert.equal(gathered(store, 'Hill club', '2026-12-24', first), first);
  store.setItem('jointwise-kit', '{"ports":3}');
  assert.equal(gathered(store, 'Hill club', '2026-12-24', first).date, '2026-12-24');
});

test('a station file and a saved page are read alike, and hostile names stay text', () => {
  const name = '</script><img src=x onerror=alert(1)><!--';
  const file = gathered(withKept({lines: lines(name)}), name, '2026-11-29', null);
  assert.deepEqual(carriedIn(JSON.stringify(file)), file);
  const inPage = JSON.stringify(file).replaceAll('<', '\\u003c');
  assert.deepEqual(carriedIn(`<p><script type="application/json" id="carried">${inPage}</script>`), file);
});

test('what is neither a page nor a station file is refused in a sentence', () => {
  const refusals = {
    'no JSON': /neither a station file/,
    '<script type="application/json" id="carried">null</script>': /without a station/,
    '{"format": "other"}': /^format is "other"; allowed: "jointwise station"\.$/,
    '{"format": "jointwise station", "version": 2}': /^version is 2; allowed: 1; this page is older/,
    '{"format": "jointwise station", "version": 1, "kept": []}': /^kept is \[\]; allowed: a JSON object\.$/,
  };
  for (const [text, message] of Object.entries(refusals))
    assert.throws(() => carriedIn(text), {name: 'RangeError', message});
});

test('what is carried is merged by name, and what can only be taken whole is asked about', () => {
  const mine = [...lines('mine'), {name: 'both', request: {of: 'mine'}}];
  const store = withKept({lines: mine, kit: {ports: 2}});
  const carried = gathered(withKept({lines: lines('both', 'theirs'), kit: {ports: 9}}), 'x', '2026-11-29', null);

  assert.deepEqual(
    takeIn(PLACES, () => store, {}, carried),
    {asks: ['kit'], problem: ''},
  );
  const names = JSON.parse(store.held['jointwise-lines']).map(({name}) => name);
  assert.deepEqual(names.sort(), ['both', 'both (2)', 'mine', 'theirs']);
  assert.equal(store.held['jointwise-kit'], '{"ports":2}');

  assert.deepEqual(takeIn(PLACES, () => store, {}, carried, ['kit']).asks, []);
  assert.equal(store.held['jointwise-kit'], '{"ports":9}');
  assert.equal(JSON.parse(store.held['jointwise-lines']).length, 4);
});

test('where one document can’t be read nothing is taken', () => {
  const store = withKept({lines: lines('mine')});
  const before = {...store.held};
  const carried = gathered(withKept({kit: {ports: 9}, lines: 7}), 'x', '2026-11-29', null);
  assert.throws(() => takeIn(PLACES, () => store, {}, carried), {message: 'no list'});
  assert.deepEqual(store.held, before);
});

test('what a reader stumbles over is refused in a sentence', () => {
  const stumbling = new Kept({key: 'jointwise-packs', ...SENTENCES}, ({own}) => own.map(({text}) => JSON.parse(text)));
  const carried = gathered(withKept({packs: {own: 5}}), 'x', '', null);
  assert.throws(() => takeIn({packs: {kept: stumbling}}, () => storage(), {}, carried), {
    name: 'RangeError',
    message: 'The packs of the file can’t be read.',
  });
});
