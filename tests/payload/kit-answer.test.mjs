/** A kit's answer as the page tells it: words, the packing list, the drawing. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {laidOut, markOf, spokenGraph} from '../../frontend/src/kit/answer/graph.js';
import {packingCsv, packingOf} from '../../frontend/src/kit/answer/packing.js';
import {chainWords, goalsOf, idlePorts, notesOf, ownedWords, trapsOf} from '../../frontend/src/kit/answer/reading.js';
import {pairName, portNames} from '../../frontend/src/kit/names.js';

const FAMILIES = [
  {id: 'uhf', name: 'UHF'},
  {id: 'n', name: 'N'},
  {id: 'bnc', name: 'BNC'},
];
const adapter = (one_family, one_gender, other_family, other_gender) => ({
  one_family,
  one_gender,
  other_family,
  other_gender,
});
const joint = (...ends) => ({...adapter(...ends), margin_db: 3, return_loss_db: 30, loss_db: 0.01, notes: []});

const DIRECT = {
  adapters: [],
  joints: [joint('uhf', 'jack', 'uhf', 'plug')],
  margin_db: 3,
  return_loss_db: 30,
  loss_db: 0.01,
};
const BY_ONE = {
  adapters: [adapter('uhf', 'plug', 'n', 'jack')],
  joints: [joint('uhf', 'jack', 'uhf', 'plug'), joint('n', 'jack', 'n', 'plug')],
  margin_db: 3,
  return_loss_db: 26,
  loss_db: 0.02,
};
const TURNED = {...BY_ONE, adapters: [adapter('n', 'jack', 'uhf', 'plug')]};
const BY_TWO = {...BY_ONE, adapters: [adapter('uhf', 'plug', 'n', 'jack'), adapter('uhf', 'plug', 'n', 'jack')]};

/**
 * @import {Chain, Pair} from '../../frontend/src/kit/answer/answer.js'
 *
 * @param {[number, number]} ports
 * @param {?Chain} joined
 * @param {?Chain} [joined_by_owned]
 * @param {string} [trap]
 * @returns {Pair}
 */
const pair = (ports, joined, joined_by_owned = null, trap = '') => ({
  ports,
  joined,
  joined_by_owned,
  trap,
  sentence: '',
  frequency_hz: 1e6,
  power_w: 5,
});

test('either goal is told with its number, the other with its price', () => {
  const price = {goal: 'best_joints', added: 6, optimal: true, sentence: 'One more adapter avoids UHF.'};

  assert.deepEqual(goalsOf({goal: 'fewest', added: 5, optimal: true, price}), [
    {id: 'fewest', isChosen: true, words: 'Fewest adapters: 5', price: ''},
    {id: 'best_joints', isChosen: false, words: 'Best joints: 6', price: 'One more adapter avoids UHF.'},
  ]);
  const other = {...price, goal: 'fewest', optimal: false};
  assert.deepEqual(
    goalsOf({goal: 'best_joints', added: 7, optimal: false, price: other}).map(({words}) => words),
    ['Fewest adapters: at most 6', 'Best joints: at most 7'],
  );
});

test('a chain is told from port to port', () => {
  const told = (chain) => chainWords(chain, ['Radio', 'Load'], FAMILIES);

  assert.equal(told(DIRECT), 'Radio, UHF jack – UHF plug, Load');
  assert.equal(told(BY_ONE), 'Radio, UHF jack – UHF plug/N jack adapter – N plug, Load');
});

test('what the owned adapters can do is told for a pair and for all', () => {
  const say = (one) => ownedWords(one, ['Radio', 'Load'], FAMILIES);

  assert.equal(say(pair([0, 1], DIRECT, DIRECT)), 'Needs no adapter.');
  assert.equal(say(pair([0, 1], BY_ONE)), 'What you own is not enough.');
  assert.equal(say(pair([0, 1], BY_ONE, BY_ONE)), 'With what you own already.');
  assert.match(say(pair([0, 1], DIRECT, BY_ONE)), /^Needs no adapter/);
  assert.match(
    say(pair([0, 1], BY_ONE, {...BY_ONE, adapters: [adapter('uhf', 'plug', 'bnc', 'jack')]})),
    /^With what you own alone: Radio, .* loses 0\.02 dB, return loss 26 dB at worst\.$/,
  );
});

test('a trap is told once with all its pairs, a note of a chain once', () => {
  const result = {
    pairs: [pair([0, 1], BY_ONE, null, 'Pins meet.'), pair([1, 2], null), pair([0, 3], null, null, 'Pins meet.')],
  };

  assert.deepEqual(trapsOf(result), [
    {
      sentence: 'Pins meet.',
      pairs: [
        [0, 1],
        [0, 3],
      ],
    },
  ]);
  assert.deepEqual(notesOf({joints: [{notes: ['Mind it.']}, {notes: ['Mind it.', 'And this.']}]}), [
    'Mind it.',
    'And this.',
  ]);
});

test('ports in no pair are known, and a port without a name is called by its place and its end', () => {
  assert.deepEqual(idlePorts({ports: [1, 2, 3]}, {pairs: [pair([0, 2], null)]}), [1]);
  const ports = ['', 'Radio', 'Load', 'Radio'].map((name) => ({name, family: 'n', gender: 'plug'}));
  const names = portNames(FAMILIES, ports);
  assert.deepEqual(names, ['port 1 (N plug)', 'Radio (port 2)', 'Load', 'Radio (port 4)']);
  assert.equal(pairName([0, 2], names), 'port 1 (N plug) – Load');
});

const ADDED = {
  ...adapter('uhf', 'plug', 'n', 'jack'),
  name: 'UHF plug to N jack',
  count: 1,
  source: 'x',
  kind: 'memory',
  pack: '',
  stated: '',
};

test('the packing list has what is to be added and the owned ones in use, whichever way round', () => {
  const result = {adapters: [ADDED], pairs: [pair([0, 1], TURNED, TURNED), pair([0, 2], BY_TWO), pair([1, 2], null)]};
  const owned = [
    {...adapter('n', 'jack', 'uhf', 'plug'), count: 1},
    {...adapter('bnc', 'plug', 'n', 'jack'), count: 4},
  ];

  const rows = packingOf(result, {owned}, FAMILIES);

  assert.deepEqual(
    rows.map(({what, count, from, pairs}) => [what, count, from, pairs]),
    [
      [
        'UHF plug to N jack',
        1,
        'add',
        [
          [0, 1],
          [0, 2],
        ],
      ],
      [
        'N jack to UHF plug',
        1,
        'own',
        [
          [0, 1],
          [0, 2],
        ],
      ],
    ],
  );
  assert.equal(
    packingCsv(rows, ['Radio', 'Load', 'Mast']).split('\r\n')[1],
    'UHF plug to N jack,uhf,plug,n,jack,1,add,Radio – Load; Radio – Mast,memory',
  );
});

test('of owned adapters no more are packed than a pair uses at once', () => {
  const owned = [{...adapter('uhf', 'plug', 'n', 'jack'), count: 5}];

  const [row] = packingOf({adapters: [], pairs: [pair([0, 1], BY_TWO, BY_TWO)]}, {owned}, FAMILIES);

  assert.equal(row.count, 2);
});

const everyPair = (count) =>
  Array.from({length: count}, (_, one) =>
    Array.from({length: count - one - 1}, (_, more) => [one, one + more + 1]),
  ).flat();

for (const width of [330, 720, 940]) {
  test(`a drawing ${width} pixels wide keeps everything inside, and its marks apart`, () => {
    const pairs = everyPair(8);
    const {height, lines, ports} = laidOut(8, pairs, width);

    assert.equal(ports.length, 8);
    for (const {x, y} of [...ports, ...lines.map(({mark}) => mark)]) {
      assert.ok(x > 0 && x < width && y > 0 && y < height, `${x} ${y}`);
    }
    const marks = lines.map(({mark}) => mark);
    const near = marks.flatMap((a, at) => marks.slice(at + 1).filter((b) => Math.hypot(a.x - b.x, a.y - b.y) < 20));
    assert.ok(near.length <= 2, `${near.length} marks on top of each other`);
  });
}

test('a line begins and ends at its ports', () => {
  const {lines, ports} = laidOut(5, [[1, 4]], 800);

  const numbers = lines[0].path.match(/[\d.]+/g).map(Number);
  assert.deepEqual(
    numbers.slice(0, 2),
    [ports[1].x, ports[1].y].map((one) => Number(one.toFixed(1))),
  );
  assert.deepEqual(
    numbers.slice(-2),
    [ports[4].x, ports[4].y].map((one) => Number(one.toFixed(1))),
  );
});

test('a line is marked by words, not by colour alone', () => {
  assert.equal(markOf(pair([0, 1], BY_ONE)), '1');
  assert.equal(markOf(pair([0, 1], null, null, 'Pins meet.')), 'no!');
  assert.equal(
    spokenGraph(3, {pairs: [1, 2, 3], joined: 2}),
    '3 ports and 3 pairs: 2 can be joined, 1 can’t. Every pair is in the list below.',
  );
  assert.equal(
    spokenGraph(2, {pairs: [1], joined: 1}),
    '2 ports and 1 pair: all can be joined. Every pair is in the list below.',
  );
});
