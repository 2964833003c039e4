/** What is fitted as data: requests, links with a line in them, addresses, codes, quantities, origins. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import jsQR from '../../frontend/node_modules/jsqr/dist/jsQR.js';
import {codeText, jointText} from '../../frontend/src/fitout/code.js';
import {fromWords, numbered} from '../../frontend/src/fitout/from.js';
import {jointIn, lineIn, withLine} from '../../frontend/src/fitout/link.js';
import {quantitiesCsv, toBuy} from '../../frontend/src/fitout/quantities.js';
import {elementsOf, fieldOf, jointRequest, lineRequest} from '../../frontend/src/fitout/request.js';
import {codePath} from '../../frontend/src/shared/codes/path.js';
import {EXAMPLE} from '../../frontend/src/shared/lines/example.js';
import {sweptJoint} from '../../frontend/src/shared/sweeps/of-joint.js';

const name = {type: 'text', longest: 60, nullable: false, default: ''};
const number = (min, max, more = {}) => ({type: 'number', min, max, nullable: false, default: null, ...more});
const choice = (choices, nullable = false) => ({type: 'choice', choices, nullable, default: null});
const TABLE = {
  cable: {cable: choice(['rg_58', 'rg_213']), length_m: number(0.01, 10_000), name},
  joint: {
    family: choice(['uhf', 'n']),
    adapter_to: choice(['uhf', 'n'], true),
    exposure: choice(['exposed'], true),
    name,
  },
  part: {
    what: {...choice(['arrester', 'other']), default: 'other'},
    loss_db: number(0, 100),
    vswr: number(1, 20),
    power_limit_w: number(0, 1e6),
    voltage_limit_v: number(0, 1e6),
    name,
  },
  load_vswr: {vswr: number(1, 100)},
  station: {power_w: number(0, 1e5, {default: 100}), mode: {...name, default: 'ssb'}, band: {...name, nullable: true}},
};
const JOINT = {
  family: 'n',
  adapter_to: null,
  name: '',
  cable: 'rg_213',
  length_m: 10,
  station: 'Hut',
  date: '',
  power_w: 100,
  band: null,
};

test('a line is asked for without its antenna and receiver, with the words for the labels', () => {
  const rest = {...EXAMPLE.request, power_w: 100, mode: 'ssb', band: '20m'};
  const request = {...rest, load: {kind: 'vswr', vswr: 2}, receiver: {noise_figure_db: 3}};

  assert.deepEqual(lineRequest({station: 'Hut', date: ''}, request), {...rest, station: 'Hut'});
});

test('a single joint stands at the end of its cable, or alone', () => {
  assert.deepEqual(elementsOf(JOINT), [
    {kind: 'cable', cable: 'rg_213', length_m: 10},
    {kind: 'joint', family: 'n'},
  ]);
  assert.deepEqual(elementsOf({...JOINT, cable: null, adapter_to: 'uhf', name: 'Top'}), [
    {kind: 'joint', family: 'n', adapter_to: 'uhf', name: 'Top'},
  ]);
  assert.deepEqual(jointRequest(JOINT, ['station', 'date', 'power_w', 'band']), {
    elements: elementsOf(JOINT),
    station: 'Hut',
    power_w: 100,
  });
});

test('a refusal inside an element means the field of the form', () => {
  assert.equal(fieldOf({field: 'elements[0].length_m'}), 'length_m');
  assert.equal(fieldOf({field: 'date'}), 'date');
  assert.equal(fieldOf(undefined), '');
});

test('a link carries its line there and back', () => {
  const {fragment, whole} = withLine('view=fitout&shown=3', EXAMPLE);

  assert.equal(whole, true);
  assert.deepEqual(lineIn(fragment, TABLE), {line: EXAMPLE, rest: 'view=fitout&shown=3', problem: ''});
  assert.deepEqual(lineIn('view=fitout', TABLE), {line: undefined, rest: 'view=fitout', problem: ''});
});

test('a line too long for a link is left out, and one that is cut short is named', () => {
  const long = {
    ...EXAMPLE,
    request: {
      ...EXAMPLE.request,
      elements: Array(60).fill({kind: 'cable', cable: 'rg_58', length_m: 1, name: 'x'.repeat(60)}),
    },
  };
  const {fragment} = withLine('view=fitout', EXAMPLE);

  assert.deepEqual(withLine('view=fitout', long), {fragment: 'view=fitout', whole: false});
  const {line, problem} = lineIn(fragment.replace(/line=\w{9}/, 'line='), TABLE);
  assert.equal(line, undefined);
  assert.match(problem, /^The line in this link can’t be used/);
});

/** What a reader of codes sees in a path. */
function decoded({size, path}) {
  const scale = 4;
  const side = size * scale;
  const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)v1H\d+z/g)) {
    for (let row = 0; row < scale; row++) {
      const from = ((Number(y) * scale + row) * side + Number(x) * scale) * 4;
      for (let at = from; at < from + Number(length) * scale * 4; at++) if (at % 4 !== 3) pixels[at] = 0;
    }
  }
  return jsQR.default ? jsQR.default(pixels, side, side)?.data : jsQR(pixels, side, side)?.data;
}

test('a code says what it was made of', () => {
  const text = codeText('https://example.org/', {fragment: 'family=n&band=20m&power_w=100'}, [0, 100]);

  assert.equal(text, 'https://example.org/#family=n&band=20m&power_w=100');
  assert.equal(decoded(codePath(text)), text);
});

test('the code of a joint opens it where the page has an address, and else says which it is', () => {
  const text = jointText('https://example.org/', 'K7Q42MXA');

  assert.equal(text, 'https://example.org/#view=fitout&joint=K7Q42MXA');
  assert.equal(decoded(codePath(text)), text);
  assert.equal(jointText('file:///hut.html', 'K7Q42MXA'), 'Joint K7Q4-2MXA');
  assert.deepEqual(jointIn('view=fitout&joint=K7Q42MXA&shown=2'), {joint: 'K7Q42MXA', rest: 'view=fitout&shown=2'});
  assert.deepEqual(jointIn('view=fitout'), {joint: '', rest: 'view=fitout'});
});

test('sweeps of a line tell of a joint by its name, or by its place', () => {
  const told = (element, called, excess) => ({element, name: called, excess});
  const plain = {ports: 1, name: 'a.s1p', text: '', resistance_ohm: null};
  const sweep = (date, line, joints) => ({...plain, date, line, joints, verdict: date});
  const sweeps = [
    sweep('2026-01-01', 'Hut', [told(0, 'N', 0.1), told(2, 'Top', null)]),
    sweep('2026-02-02', 'Shed', [told(0, 'N', 0.2)]),
    sweep('2026-03-03', 'Hut', [told(0, 'N', 0.3), told(4, 'Top', 0.4)]),
  ];
  const excesses = (joint) =>
    sweptJoint(sweeps, 'Hut', {code: '', end: 'whole', ...joint}).map(({date, excess}) => [date, excess]);

  assert.deepEqual(excesses({element: 0, name: ''}), [
    ['2026-01-01', 0.1],
    ['2026-03-03', 0.3],
  ]);
  assert.deepEqual(excesses({element: 2, name: 'Top'}), [
    ['2026-01-01', null],
    ['2026-03-03', 0.4],
  ]);
  assert.deepEqual(excesses({element: 9, name: ''}), []);
});

test('a power that is no level of the matrix becomes one', () => {
  assert.equal(
    codeText('', {fragment: 'family=n&power_w=250'}, [0, 100, 400]),
    '#family=n&power_w=250&powers_w=0,100,250,400',
  );
});

test('quantities are rounded up to what can be bought, and no further', () => {
  assert.equal(toBuy({quantity: 3.3000000000000003, unit: 'm'}), 3.3);
  assert.equal(toBuy({quantity: 0.9868, unit: 'm'}), 1);
  assert.equal(toBuy({quantity: 0.4847, unit: 'm'}), 0.5);
  assert.equal(toBuy({quantity: 2, unit: 'pieces'}), 2);
});

test('the list as a file holds the rounded quantities', () => {
  const rows = [{what: 'Vinyl tape, 19 mm', detail: 'for 1 joint', quantity: 0.9868, unit: 'm', family: '', cable: ''}];

  assert.equal(
    quantitiesCsv(rows),
    'what,detail,quantity,unit,family,cable\r\n"Vinyl tape, 19 mm",for 1 joint,1,m,,\r\n',
  );
});

test('texts are numbered in the order they come up; practice and memory have none', () => {
  const numbers = numbered(
    {tools: [{source: 'common_practice'}, {source: 'a_book'}], bends: [{fixed_source: 'a_sheet', repeated_source: ''}]},
    {sources: ['a_book', 'memory']},
  );

  assert.deepEqual(
    [...numbers],
    [
      ['a_book', 1],
      ['a_sheet', 2],
    ],
  );
  assert.equal(fromWords(['handbook', 'handbook'], ['a_sheet', 'a_book'], numbers), 'handbook [2, 1]');
  assert.equal(fromWords(['common practice'], ['common_practice'], numbers), '');
});
