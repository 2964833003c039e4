/** The checklist: its boxes, its ticks, and the tables without scripts that have both and the joint book. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {stationTables} from '../../frontend/src/saved/station-tables.js';
import {checklistOf} from '../../frontend/src/shared/checklist/items.js';
import {KEPT_TICKS, NO_TICKS, checkedTicks, withTick} from '../../frontend/src/shared/checklist/kept.js';
import {EMPTY_BOOK, withEntry} from '../../frontend/src/shared/joints/book.js';
import {jointsOf} from '../../frontend/src/shared/joints/identity.js';

const advice = (...texts) => texts.map((text) => ({text, source: 'memory', kind: 'memory'}));
const sheet = (number, family, more = {}) => ({
  heading: `Joint ${number}: ${family} between a and b`,
  family_name: family,
  tools: advice('A cutter', `A wrench for ${family}`),
  steps: [],
  torque: {tightened: true, figures: '1 N·m', sentence: '1 N·m'},
  sealing: {sentence: 'Sealed.', layers: [{name: 'tape', text: 'Tape it.'}]},
  inspection: {interval_months: 12, checks: advice('Look at it.')},
  label: {name: `Joint ${number}`, family, frequency_hz: 14e6, expected_loss_db: 0.1, least_return_loss_db: 20},
  ...more,
});
const LINE = {
  name: 'Hut </script>',
  request: {
    elements: [
      {kind: 'joint', family: 'n'},
      {kind: 'joint', family: 'bnc'},
    ],
  },
  sheets: {
    joints: [
      sheet(1, 'N'),
      sheet(2, 'BNC', {
        torque: {tightened: false, figures: '', sentence: ''},
        sealing: {sentence: 'Dry.', layers: []},
      }),
    ],
    measurement: {frequency_hz: 14.35e6, least_return_loss_db: 23.4},
  },
  line: {
    verdict: 'Fine.',
    frequency_hz: 14e6,
    power_w: 100,
    loss_db: 1,
    input: {vswr: 1.1},
    parts: [],
  },
};
const KIT = {adapters: [{name: 'N jack to BNC plug', count: 2}], pairs: [], verdict: 'Two adapters.'};
const [N] = jointsOf(LINE).map(({code}) => code);
const words = (groups) => groups.map(({heading, items}) => [heading, items.map((item) => item.words)]);

test('what to pack comes of kit and joints, each tool once and a spare of each family', () => {
  assert.deepEqual(words(checklistOf([LINE, {...LINE, name: 'Shed'}], KIT).pack), [
    ['Adapters', ['2 × N jack to BNC plug']],
    ['Tools', ['A cutter', 'A wrench for N', 'A wrench for BNC']],
    ['Spares', ['Spare plug and jack of N, for 2 joints', 'Spare plug and jack of BNC, for 2 joints']],
  ]);
  assert.deepEqual(checklistOf([], undefined), {pack: [], arrival: []});
});

test('on arrival each joint has its boxes, and the line is measured', () => {
  const list = checklistOf([LINE], undefined);
  assert.deepEqual(words(list.arrival), [
    [
      'Hut </script>',
      [
        'Joint 1, N: looked at, clean and dry',
        'Joint 1, N: tightened, 1 N·m',
        'Joint 1, N: sealed with tape',
        'Joint 2, BNC: looked at, clean and dry',
        'Measured with a good load: return loss 23 dB or more at 14.35 MHz',
      ],
    ],
  ]);
  const ids = [...list.pack, ...list.arrival].flatMap(({items}) => items.map(({id}) => id));
  assert.equal(new Set(ids).size, ids.length);
  assert.ok(ids.includes(`joint/${N}/tightened`));
});

test('ticks of two tabs are put together, and what one took back is gone', () => {
  const base = {ticked: ['a', 'b']};
  const mine = withTick(base, 'c', true);
  const theirs = withTick(base, 'a', false);
  assert.deepEqual(KEPT_TICKS.merged({base, mine, theirs}), {ticked: ['b', 'c']});
  assert.deepEqual(withTick(base, 'a', true), base);
  assert.deepEqual(checkedTicks({ticked: ['a', 'a']}), {ticked: ['a']});
  assert.throws(() => checkedTicks({ticked: [7]}), {name: 'RangeError', message: /^ticked\[0\] is 7/});
  assert.throws(() => checkedTicks([]), {name: 'RangeError', message: /^checklist is/});
});

const answers = (more) => ({
  name: 'Hut',
  date: '2026-11-29',
  words: 'SSB',
  heading: 'Margins',
  matrix: null,
  lines: [LINE],
  kit: {ports: [], answer: KIT},
  book: EMPTY_BOOK,
  sweeps: [],
  ticked: NO_TICKS.ticked,
  refused: [],
  cautions: [],
  ...more,
});

test('the tables without scripts have the checklist as it was ticked', () => {
  const markup = stationTables(answers({ticked: [`joint/${N}/tightened`]}));
  assert.match(markup, /<li>☑ Joint 1, N: tightened, 1 N·m/);
  assert.match(markup, /<li>☐ Joint 1, N: looked at/);
  assert.doesNotMatch(markup, /<\/script>/);
});

test('the tables without scripts have the joint book with every entry, and sweeps of the joint', () => {
  const joint = {code: N, line: LINE.name, name: 'Joint 1', joins: '', months: 12};
  const entries = [
    ['fitted_on', '2026-01-31'],
    ['note', '<img src=x onerror=alert(1)>'],
    ['state', 'watch'],
  ];
  const book = entries.reduce((all, [field, value]) => withEntry(all, joint, {field, value}, 0), EMPTY_BOOK);
  const sweep = {date: '2026-05-05', line: LINE.name, ports: 1, name: 'a.s1p', text: '', resistance_ohm: null};
  const sweeps = [{...sweep, verdict: 'Sound.', joints: [{element: 0, name: 'N', excess: 0.01}]}];

  const markup = stationTables(answers({book, sweeps}));

  assert.match(markup, /<th scope=row>Hut &lt;\/script&gt;, Joint 1<td>2027-01-31<td>to be watched/);
  assert.match(markup, /<li>Note: &lt;img src=x onerror=alert\(1\)&gt;/);
  assert.match(markup, /<td>State<td>to be watched/);
  assert.match(markup, /<th scope=row>2026-05-05<td>0\.010<td>Sound\./);
  assert.doesNotMatch(markup, /<img/);
  assert.doesNotMatch(stationTables(answers({})), /Joint book/);
});
