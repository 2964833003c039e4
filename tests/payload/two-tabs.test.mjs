/** Two tabs that keep in one browser: nothing that one of them kept vanishes through the other. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {Kept} from '../../frontend/src/shared/state/kept.js';
import {KeptDocument} from '../../frontend/src/shared/state/kept-document.js';
import {freeName, mergedLists} from '../../frontend/src/shared/state/merge.js';
import {KEPT_STATION} from '../../frontend/src/shared/station/kept.js';
import {FIRST_STATION} from '../../frontend/src/shared/station/station.js';

const PLACE = {key: 'notes', blocked: 'blocked', full: 'full', spoilt: 'spoilt'};
const keyOf = ({name}) => name;
const both = (note, taken) => ({...note, name: freeName(note.name, taken, 20)});
const LISTED = new Kept(
  PLACE,
  (value) => value,
  (versions) => mergedLists(versions, keyOf, both),
);
const WHOLE = new Kept(PLACE, (value) => value);

function storage() {
  const held = {};
  return {
    getItem: (key) => held[key] ?? null,
    setItem: (key, text) => (held[key] = text),
    removeItem: (key) => delete held[key],
  };
}

/** Numbers from 0 to 1 that come again with their seed. */
function dice(seed) {
  let state = seed;
  return () => (state = (state * 1_103_515_245 + 12_345) % 2 ** 31) / 2 ** 31;
}

const tabs = (kept, first) => {
  const store = storage();
  return [0, 1].map(() => new KeptDocument(kept, () => store, {}, first));
};
const names = (document) => document.present.map(keyOf).sort();

test('twenty random interleavings lose nothing that nobody took away', () => {
  for (let seed = 1; seed <= 20; seed++) {
    const roll = dice(seed);
    const [one, other] = tabs(LISTED, [{name: 'first', text: ''}]);
    const expected = new Set(['first']);
    for (let step = 0; step < 40; step++) {
      const tab = roll() < 0.5 ? one : other;
      // a tab may have heard of the other's change or not
      if (roll() < 0.5) tab.catchUp();
      const own = tab.present.filter(({name}) => expected.has(name));
      if (roll() < 0.7 || own.length === 0) {
        tab.put([...tab.present, {name: `note ${step}`, text: ''}]);
        expected.add(`note ${step}`);
      } else {
        const {name} = own[Math.floor(roll() * own.length)];
        tab.put(tab.present.filter((note) => note.name !== name));
        expected.delete(name);
      }
    }
    one.catchUp();
    other.catchUp();
    assert.deepEqual(names(one), [...expected].sort());
    assert.deepEqual(names(other), names(one));
  }
});

test('what both changed stands twice, and what one changed is not lost with what the other removed', () => {
  const [one, other] = tabs(LISTED, [
    {name: 'a', text: 'old'},
    {name: 'b', text: 'old'},
  ]);
  one.put([
    {name: 'a', text: 'of one'},
    {name: 'b', text: 'of one'},
  ]);
  other.put([{name: 'a', text: 'of the other'}]);
  one.catchUp();

  const notes = [
    {name: 'a', text: 'of one'},
    {name: 'a (2)', text: 'of the other'},
    {name: 'b', text: 'of one'},
  ];
  const sorted = (document) =>
    document.present.toSorted((x, y) => x.text.localeCompare(y.text) || (x.name < y.name ? -1 : 1));
  assert.deepEqual(new Set(sorted(one).map(({text}) => text)), new Set(notes.map(({text}) => text)));
  assert.equal(one.present.length, 3);
  assert.deepEqual(sorted(one), sorted(other));
});

test('undo takes back what was done here, and not what came in', () => {
  const [one, other] = tabs(LISTED, []);
  one.put([{name: 'of one', text: ''}]);
  other.put([...other.present, {name: 'of the other', text: ''}]);
  one.catchUp();

  one.put(one.turned([{name: 'of one', text: ''}], []));
  assert.deepEqual(names(one), ['of the other']);
  other.catchUp();
  assert.deepEqual(names(other), ['of the other']);
});

test('what can only be taken whole is told with what stood before, so that it can be a step to undo', () => {
  const [one, other] = tabs(WHOLE, {ports: 0});
  /** @type {any} */
  const host = {addController: () => {}};
  const came = [];
  other.attach(host, (before) => came.push([before, other.present]));
  one.put({ports: 1});
  other.put({ports: 2});

  // the other wrote over a kit it had not heard of, and heard of it then
  assert.deepEqual(came, [[{ports: 0}, {ports: 1}]]);
  assert.deepEqual(other.present, {ports: 2});
  assert.equal(one.catchUp(), true);
  assert.deepEqual(one.present, {ports: 2});
});

test('what two tabs changed of a station is all there, and of one setting the last', () => {
  const rig = (name, power_w) => ({name, power_w});
  const base = {...FIRST_STATION, rigs: [rig('home', 100)], rig: 0, settings: {mode: 'fm', vswr: 2}};
  const mine = {...base, rigs: [rig('new', 5), rig('home', 100)], rig: 1, settings: {mode: 'cw', vswr: 2}};
  const theirs = {...base, name: 'Hill hut', rigs: [rig('home', 100), rig('car', 50)], settings: {mode: 'am', vswr: 3}};

  const merged = KEPT_STATION.merged({base, mine, theirs});

  assert.equal(merged.name, 'Hill hut');
  assert.deepEqual(merged.rigs.map(({name}) => name).sort(), ['car', 'home', 'new']);
  assert.equal(merged.rigs[merged.rig].name, 'home');
  assert.deepEqual(merged.settings, {mode: 'cw', vswr: 3});
});
