/** The page's packs: the shelf the browser keeps, the transport that asks with them, and the form's pack. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {entriesInWords} from '../../frontend/src/packs/words.js';
import {readPack} from '../../frontend/src/shared/packs/read.js';
import {Shelf, asked} from '../../frontend/src/shared/packs/shelf.js';
import {Refusal} from '../../frontend/src/transport/refusal.js';
import {withPacks} from '../../frontend/src/transport/with-packs.js';

const pack = (id, rest = {}) => JSON.stringify({id, name: `Pack ${id}`, version: '1', sources: [], ...rest});

/** A storage in memory; `room` is how many characters it takes. */
function storage(held = {}, room = Infinity) {
  return {
    held,
    getItem: (key) => held[key] ?? null,
    setItem: (key, text) => {
      if (text.length > room) throw new Error('full');
      held[key] = text;
    },
    removeItem: (key) => delete held[key],
  };
}

test('what is put on the shelf is there after a reload, off where it was turned off', () => {
  const store = storage();
  const shelf = new Shelf(() => store);
  shelf.put(pack('a'));
  shelf.put(pack('b'));
  shelf.turn(shelf.own[0], false);

  const again = new Shelf(() => store);

  assert.deepEqual(
    again.own.map(({id, on}) => [id, on]),
    [
      ['a', false],
      ['b', true],
    ],
  );
  assert.deepEqual(asked(again.inForce), [{label: 'Pack b', text: pack('b')}]);
});

test('a pack with the id of one on the shelf takes its place', () => {
  const shelf = new Shelf(() => storage());
  shelf.put(pack('a'));
  const newer = pack('a', {version: '2'});

  assert.deepEqual(shelf.with(newer, 'a.json'), [{label: 'a.json', text: newer}]);
  shelf.put(newer);
  assert.deepEqual(
    shelf.own.map(({text}) => text),
    [newer],
  );
});

test('a text that is no pack is tried out with the others, for the core to refuse', () => {
  const shelf = new Shelf(() => storage());
  shelf.put(pack('a'));

  assert.deepEqual(
    shelf.with('{', 'bad.json').map(({label}) => label),
    ['Pack a', 'bad.json'],
  );
});

test('kept packs that can not be read are set aside, and the page goes on without', () => {
  const bad = [
    '{',
    '{"own": 5, "server": []}',
    JSON.stringify({own: [{text: '[]', on: true}], server: []}),
    JSON.stringify({own: [{text: pack('a', {bands: [{id: 'x', name: 'X'}]}), on: true}], server: []}),
  ];
  for (const text of bad) {
    const store = storage({'jointwise-packs': text});
    const shelf = new Shelf(() => store);

    assert.deepEqual(shelf.inForce, []);
    assert.match(shelf.problem, /set aside/);
    assert.equal(shelf.spoilt, text);
    assert.equal(store.held['jointwise-packs-set-aside'], text);
  }
});

test('a browser that keeps nothing, or has no room, still holds the packs and says so', () => {
  const blocked = new Shelf(() => {
    throw new Error('denied');
  });
  const full = new Shelf(() => storage({}, 20));
  for (const shelf of [blocked, full]) {
    shelf.put(pack('a'));
    assert.equal(shelf.inForce.length, 1);
    assert.match(shelf.problem, /Keep their files/);
  }
});

test('whoever listens hears of a change, and of none where the server tells what it told', () => {
  const shelf = new Shelf(() => storage());
  let heard = 0;
  shelf.listen(() => heard++);

  shelf.takeServer([pack('s')]);
  shelf.takeServer([pack('s')]);
  shelf.put(pack('a'));
  shelf.remove(shelf.own[0]);

  assert.equal(heard, 3);
});

test('names that mean something to JavaScript are read as text', () => {
  const text =
    '{"id": "a", "name": "A", "__proto__": {"polluted": true}, "constructor": {"prototype": {"polluted": true}}}';

  readPack(text);

  assert.equal({}.polluted, undefined);
});

/**
 * A transport that notes what it was asked with.
 *
 * @param {string} name
 * @param {(options: any) => any} [answer]
 */
const transport = (name, answer = () => name) => ({
  /** @type {any[]} */
  options: [],
  async ask(operation, request, options) {
    this.options.push(options);
    return answer(options);
  },
});

test('the server is asked while only its own packs count, the browser once the reader has some', async () => {
  const [plain, worker] = [transport('server'), transport('browser')];
  const shelf = new Shelf(() => storage());
  const ask = withPacks({plain, worker, shelf});
  shelf.takeServer([pack('s')]);

  assert.equal(await ask.ask('matrix', {}), 'server');
  shelf.put(pack('a'));
  assert.equal(await ask.ask('matrix', {}), 'browser');

  assert.deepEqual(
    plain.options[0].packs.map(({label}) => label),
    ['Pack s'],
  );
  assert.deepEqual(
    worker.options[0].packs.map(({label}) => label),
    ['Pack s', 'Pack a'],
  );
});

test('a thorough search is for the browser', async () => {
  const [plain, worker] = [transport('server'), transport('browser')];
  const ask = withPacks({plain, worker, shelf: new Shelf(() => storage())});

  assert.equal(await ask.ask('kit', {search: 'quick'}), 'server');
  assert.equal(await ask.ask('kit', {search: 'thorough'}), 'browser');
});

test('packs on trial go to the browser in the place of those in force', async () => {
  const [plain, worker] = [transport('server'), transport('browser')];
  const packs = [{label: 'new.json', text: pack('new')}];

  assert.equal(
    await withPacks({plain, worker, shelf: new Shelf(() => storage())}).ask('catalogue', {}, {packs}),
    'browser',
  );
  assert.deepEqual(worker.options[0].packs, packs);
});

test('a pack the core takes no more is turned off with the reason, and the request answered without it', async () => {
  const refused = {detail: 'Pack a: modes[0].id is "x"; allowed: other.', field: 'Pack a: modes[0].id'};
  const worker = transport('browser', () => {
    throw new Refusal(refused);
  });
  const shelf = new Shelf(() => storage());
  shelf.put(pack('a'));

  assert.equal(await withPacks({plain: transport('server'), worker, shelf}).ask('matrix', {}), 'server');
  assert.deepEqual(
    shelf.own.map(({on, refused: why}) => [on, why]),
    [[false, refused.detail]],
  );
});

test('a refusal of the request itself is the answer', async () => {
  const worker = transport('browser', () => {
    throw new Refusal({detail: 'vswr is 0', field: 'vswr'});
  });
  const shelf = new Shelf(() => storage());
  shelf.put(pack('a'));

  await assert.rejects(withPacks({plain: transport('server'), worker, shelf}).ask('matrix', {}), {field: 'vswr'});
  assert.equal(shelf.hasOwn, true);
});

test('what a pack changes is told entry by entry', () => {
  const paths = [
    'interfaces/bnc',
    'interfaces/bnc.working_voltage_rms_v.low',
    'modes/cw.duty_factor',
    'default_powers_w',
    'house_limits/old',
  ];

  assert.equal(
    entriesInWords(paths),
    'connector bnc (working voltage rms v low); mode cw (duty factor); default powers; house limit old',
  );
});
