/** A kit as data: edits, links, what the browser keeps, refusals. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {checkedKit} from '../../frontend/src/kit/checked.js';
import {edited, everyPair, pairsOf} from '../../frontend/src/kit/edits.js';
import {EMPTY, EXAMPLE, NEW_ADAPTER, NEW_PORT} from '../../frontend/src/kit/example.js';
import {KEPT_KIT} from '../../frontend/src/kit/kept.js';
import {fromLink, toLink} from '../../frontend/src/kit/link.js';
import {placed} from '../../frontend/src/kit/placed.js';
import {areAlikeButTicks, rowKey, withoutTicks} from '../../frontend/src/kit/ticks.js';
import {LONGEST_LINK, encoded} from '../../frontend/src/shared/state/document-link.js';
import {KeptDocument} from '../../frontend/src/shared/state/kept-document.js';

const number = (min, max, value) => ({type: 'number', min, max, default: value, nullable: false});
const family = {type: 'choice', choices: ['uhf', 'n', 'bnc', 'sma', 'rp_sma', 'f'], default: null, nullable: false};
const gender = {type: 'choice', choices: ['plug', 'jack'], default: null, nullable: false};
const TABLE = {
  port: {
    name: {type: 'text', longest: 60, default: '', nullable: false},
    ...{family, gender},
    highest_frequency_hz: number(1e5, 5e10, null),
    power_w: number(0, 1e5, 100),
    impedance_ohm: {...number(25, 150, null), nullable: true},
  },
  owned: {one_family: family, one_gender: gender, other_family: family, other_gender: gender, count: number(1, 20, 1)},
  kit: {
    ports: {type: 'list', least: 2, most: 60},
    pairs: {type: 'list', least: 0, most: 400},
    owned: {type: 'list', least: 0, most: 200},
    most_in_series: number(1, 4, 2),
    most_loss_db: number(0.01, 20, 0.5),
    impedance_steps: {type: 'boolean', default: false, nullable: false},
  },
};
/** @type {{ports: any[], pairs: [number, number][]}} */
const SMALL = {
  ports: ['a', 'b', 'c', 'd'].map((name) => ({...NEW_PORT, name})),
  pairs: [
    [0, 1],
    [1, 3],
    [2, 3],
  ],
};
const edit = (request, one) => edited(request, one, TABLE.kit);
const named = (request) =>
  pairsOf(request)
    .map((pair) =>
      pair
        .map((at) => request.ports[at].name)
        .sort()
        .join(''),
    )
    .sort();

test('pairs follow a port that moves', () => {
  const moved = edit(SMALL, {kind: 'move', at: 0, to: 3});

  assert.deepEqual(
    moved.ports.map(({name}) => name),
    ['b', 'c', 'd', 'a'],
  );
  assert.deepEqual(named(moved), ['ab', 'bd', 'cd']);
  assert.deepEqual(moved.pairs, [
    [0, 2],
    [0, 3],
    [1, 2],
  ]);
  assert.equal(edit(SMALL, {kind: 'move', at: 3, to: 4}), SMALL);
});

test('a copy of a port is joined as its original, and not with it', () => {
  const {ports, pairs} = edit(SMALL, {kind: 'duplicate', at: 1});

  assert.deepEqual(
    ports.map(({name}) => name),
    ['a', 'b', 'b', 'c', 'd'],
  );
  assert.deepEqual(pairs, [
    [0, 1],
    [0, 2],
    [1, 4],
    [2, 4],
    [3, 4],
  ]);
});

test('a port that goes takes its pairs along, down to the last', () => {
  const less = edit(SMALL, {kind: 'remove', at: 1});

  assert.deepEqual(less.pairs, [[1, 2]]);
  assert.deepEqual(edit({ports: SMALL.ports.slice(0, 1)}, {kind: 'remove', at: 0}), EMPTY);
});

test('without named pairs every two ports are joined; ticking one off names the rest', () => {
  const {pairs: _, ...all} = SMALL;

  assert.deepEqual(pairsOf(all), everyPair(4));
  assert.equal(everyPair(4).length, 6);
  assert.deepEqual(edit(all, {kind: 'join', pair: [3, 0], joined: false}).pairs, [
    [0, 1],
    [0, 2],
    [1, 2],
    [1, 3],
    [2, 3],
  ]);
  assert.deepEqual(edit(SMALL, {kind: 'join', pair: [0, 3], joined: true}).pairs, [
    [0, 1],
    [0, 3],
    [1, 3],
    [2, 3],
  ]);
  assert.equal('pairs' in edit(SMALL, {kind: 'pairs', pairs: undefined}), false);
});

test('a kit has no more ports than the core takes', () => {
  const full = {ports: Array(60).fill(NEW_PORT)};

  assert.equal(edit(full, {kind: 'add', port: NEW_PORT}), full);
  assert.equal(edit(full, {kind: 'duplicate', at: 0}), full);
});

test('what is emptied is left out; adapters come and go', () => {
  const port = edit(SMALL, {kind: 'set', at: 0, changes: {impedance_ohm: 75}}).ports[0];
  assert.equal(port.impedance_ohm, 75);
  assert.equal(
    'impedance_ohm' in edit({ports: [port, port]}, {kind: 'set', at: 0, changes: {impedance_ohm: null}}).ports[0],
    false,
  );

  const one = edit(SMALL, {kind: 'acquire', adapter: NEW_ADAPTER});
  assert.equal(edit(one, {kind: 'own', at: 0, changes: {count: 3}}).owned?.[0].count, 3);
  assert.deepEqual(edit(one, {kind: 'discard', at: 0}).owned, []);
  assert.equal(edit(SMALL, {kind: 'limit', changes: {most_loss_db: 1}}).most_loss_db, 1);
});

test('a link brings the whole kit back', () => {
  const kit = {...EXAMPLE, most_in_series: 3, impedance_steps: true};
  kit.ports = kit.ports.with(0, {...kit.ports[0], impedance_ohm: 75, name: 'Größe Ω'});

  const {fragment, whole} = toLink(kit);

  assert.ok(whole);
  assert.ok(fragment.length <= LONGEST_LINK);
  assert.deepEqual(fromLink(fragment, TABLE), {request: kit, problem: ''});
});

test('a kit too long for a link is left out of it', () => {
  const kit = {ports: Array(60).fill({...NEW_PORT, name: 'A port with quite a long name of its own'})};

  assert.deepEqual(toLink(kit), {fragment: 'view=kit', whole: false});
  assert.deepEqual(fromLink('view=kit', TABLE), {request: undefined, problem: ''});
});

test('a link that is spoilt, or holds what is not allowed, is refused in a sentence', () => {
  const of = (kit) => fromLink(`view=kit&kit=${encoded(JSON.stringify(kit))}`, TABLE);
  const row = (power) => ['a', 'n', 'jack', 1e6, power];

  assert.match(fromLink('view=kit&kit=%%%', TABLE).problem, /cut short or altered/);
  assert.match(of({ports: 5}).problem, /cut short or altered/);
  assert.match(of({ports: [row(-1), row(1)]}).problem, /ports\[0\]\.power_w is -1; allowed: a number from 0 to 100000/);
  assert.match(of({ports: Array(61).fill(row(1))}).problem, /a list of 0 to 60 ports/);
  assert.match(
    of({ports: [row(1), row(1)], pairs: [[0, 2]]}).problem,
    /pairs\[0\] is \[0,2\]; allowed: numbers of ports, 0 to 1/,
  );
  assert.match(of({ports: [row(1), row(1)], colour: 1}).problem, /colour is 1/);
  assert.equal(fromLink('view=kit&colour=blue', TABLE).problem, 'This link holds what the page does not know: colour.');
});

test('what a kit of the past asked of its cables is left behind, and a link says so', () => {
  const past = {...SMALL, cable_dielectric: 'ptfe'};
  const ports = SMALL.ports.map(({name, family: of, gender: end, highest_frequency_hz: hertz, power_w: watts}) => [
    ...[name, of, end, hertz, watts],
  ]);
  const link = encoded(JSON.stringify({ports, cable_dielectric: 'ptfe'}));

  assert.deepEqual(checkedKit(past, TABLE), SMALL);
  const {request, problem} = fromLink(`view=kit&kit=${link}`, TABLE);
  assert.deepEqual(request.ports, SMALL.ports);
  assert.match(problem, /does not know: cable_dielectric\. Everything else is restored\.$/);
});

function storage(held = {}) {
  return {
    getItem: (key) => held[key] ?? null,
    setItem: (key, text) => (held[key] = text),
    removeItem: (key) => delete held[key],
    held,
  };
}

test('the browser keeps the kit, and sets a spoilt one aside', () => {
  const store = storage();
  assert.equal(
    KEPT_KIT.remember(() => store, SMALL),
    '',
  );
  const recalled = KEPT_KIT.recalled(() => store, TABLE);
  assert.deepEqual(recalled.document, SMALL);
  assert.equal(recalled.problem, '');

  store.setItem('jointwise-kit', '{"ports": 5}');
  const {spoilt, problem} = KEPT_KIT.recalled(() => store, TABLE);
  assert.equal(spoilt, '{"ports": 5}');
  assert.match(problem, /set aside/);
  assert.equal(store.held['jointwise-kit-set-aside'], spoilt);
});

test('a kit that is put in place of another is kept', () => {
  const store = storage();
  const document = new KeptDocument(KEPT_KIT, () => store, TABLE, EXAMPLE);

  document.put(SMALL);

  assert.deepEqual(document.present, SMALL);
  assert.deepEqual(JSON.parse(store.held['jointwise-kit']), SMALL);
});

test('what is packed goes with the kit, but neither into its link nor to the core', () => {
  const row = {from: 'add', one_family: 'n', one_gender: 'plug', other_family: 'bnc', other_gender: 'jack'};
  const turned = {from: 'add', one_family: 'bnc', one_gender: 'jack', other_family: 'n', other_gender: 'plug'};
  const key = rowKey(row);
  const packed = edit(SMALL, {kind: 'tick', key, ticked: true});

  assert.equal(rowKey(turned), key);
  assert.notEqual(rowKey({...row, from: 'own'}), key);
  assert.deepEqual(packed.ticked, [key]);
  assert.deepEqual(edit(packed, {kind: 'tick', key, ticked: true}).ticked, [key]);
  assert.deepEqual(edit(packed, {kind: 'tick', key, ticked: false}).ticked, []);
  assert.deepEqual(edit(packed, {kind: 'limit', changes: {most_in_series: 1}}).ticked, [key]);
  assert.deepEqual(checkedKit(packed, TABLE), packed);
  assert.throws(() => checkedKit({...SMALL, ticked: [1]}, TABLE), /ticked\[0\] is 1; allowed: text/);
  assert.deepEqual(toLink(packed), toLink(SMALL));
  assert.deepEqual(withoutTicks(packed), SMALL);
  assert.equal(withoutTicks(packed), withoutTicks(packed));
  assert.equal(withoutTicks(SMALL), SMALL);
  assert.ok(areAlikeButTicks(packed, SMALL));
  assert.ok(!areAlikeButTicks(packed, {...SMALL, most_in_series: 1}));
});

test('a refusal belongs to its field', () => {
  const say = (field) => placed({field, message: 'Why.'});

  assert.deepEqual(say('ports[1].family'), {group: 'ports', at: 1, field: 'family', message: 'Why.'});
  assert.deepEqual(say('owned[0].count'), {group: 'owned', at: 0, field: 'count', message: 'Why.'});
  assert.deepEqual(say('vswr'), {group: 'limits', field: 'vswr', message: 'Why.'});
  assert.equal(say('pairs')?.group, 'pairs');
  assert.equal(placed({message: 'No answer.'})?.group, '');
  assert.equal(placed(undefined), undefined);
});

test('the example is a kit that may be asked', () => {
  assert.deepEqual(checkedKit(EXAMPLE, TABLE), EXAMPLE);
});
