/** What the page's forms offer and how they speak of it, with packs and without. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {optional} from '../../frontend/src/shared/vocabulary/choices.js';
import {Vocabulary, bandsOf} from '../../frontend/src/shared/vocabulary/vocabulary.js';

/** @type {any} - what of the start data a vocabulary is made of */
const START = Object.freeze({
  requests: {matrix: {powers_w: {type: 'list', items: {min: 0, max: 1e5}, default: [0, 100]}}},
  families: [
    {id: 'n', name: 'N', also_called: ['Type N']},
    {id: 'bnc', name: 'BNC', also_called: []},
  ],
  cables: [{id: 'rg_213', name: 'RG-213'}],
  wire_lines: [{id: 'open', name: 'Open wire'}],
  bands: [
    {id: '20m', name: '20 m', regions: ['1', '2', '3']},
    {id: '4m', name: '4 m', regions: ['1']},
  ],
  modes: [{id: 'ssb', name: 'SSB'}],
  conditions: [],
  installations: [],
  noise_environments: [],
});
const VIEWS = [
  {
    id: 'matrix',
    fields: ({requests}, {powers_w}) => ({
      matrix: {
        powers_w: {...requests.matrix.powers_w, default: powers_w},
        vswr: {type: 'number', min: 1, max: 20, default: 1.5},
      },
    }),
    words: () => ({powers_w: {label: 'Power levels', unit: 'W'}, vswr: {label: 'VSWR on the line'}}),
  },
  {
    id: 'line',
    fields: (_, {families}) => ({
      joint: {
        family: {type: 'choice', choices: families.map(({id}) => id), default: null},
        vswr: {type: 'number', min: 1, max: 9, default: 2},
      },
      cable: {diameter_m: {type: 'number', min: 0.001, max: 0.05, default: 0.01, unit: 'm'}},
    }),
    words: ({families}) => ({
      'joint.family': {label: 'Family', options: optional('none', families)},
      'cable.diameter_m': {label: 'Diameter', factor: 1e-3, unit: 'mm'},
    }),
  },
  {id: 'packs'},
];
const PACK = {
  id: 'club',
  name: 'Club',
  interfaces: [
    {id: 'bnc', name: 'BNC, own', also_called: ['Bayonet']},
    {id: 'seven', name: '7 mm', also_called: []},
  ],
  bands: [{id: '8m', name: '8 m', regions: {2: {}, 1: {}}}],
  cables: [{id: 'hard', name: 'Hardline', outer_diameter_m: {value: 0.022, source: 'own'}}],
  wire_lines: [{id: 'cage', name: 'Cage', spacing_m: {value: 0.3, source: 'own'}}],
  default_powers_w: [0, 5],
};
const made = (...packs) =>
  new Vocabulary(
    START,
    VIEWS,
    packs.map((pack) => ({text: JSON.stringify(pack)})),
  );

test('without packs the lists are those of the start data', () => {
  const {first, isPacked, lists, views} = made();

  assert.equal(isPacked, false);
  assert.deepEqual(views, ['matrix', 'line', 'packs']);
  assert.deepEqual(lists.families, START.families);
  assert.deepEqual(first, {
    matrix: {powers_w: [0, 100], vswr: 1.5},
    joint: {family: null, vswr: 2},
    cable: {diameter_m: 0.01},
  });
});

test('a pack takes the place of an entry or adds one, says so, and leaves the start data as it was', () => {
  const before = structuredClone(START);
  const vocabulary = made(PACK);
  const {first, isPacked, lists} = vocabulary;

  assert.equal(isPacked, true);
  assert.deepEqual(lists.families, [
    {id: 'n', name: 'N', also_called: ['Type N']},
    {id: 'bnc', name: 'BNC, own (pack Club)', also_called: ['Bayonet']},
    {id: 'seven', name: '7 mm (pack Club)', also_called: []},
  ]);
  assert.deepEqual(lists.bands.at(-1), {id: '8m', regions: ['1', '2'], name: '8 m (pack Club)'});
  assert.deepEqual(lists.cables.at(-1), {id: 'hard', name: 'Hardline (pack Club)'});
  assert.deepEqual(lists.wire_lines.at(-1), {id: 'cage', name: 'Cage (pack Club)'});
  assert.deepEqual(first.matrix.powers_w, [0, 5]);
  assert.deepEqual(vocabulary.fieldOf('joint.family').choices, ['n', 'bnc', 'seven']);
  assert.deepEqual(START, before);
});

test('the last pack that gives powers decides them', () => {
  const other = {id: 'other', name: 'Other', default_powers_w: [0, 50]};

  assert.deepEqual(made(PACK, other).first.matrix.powers_w, [0, 50]);
  assert.deepEqual(made(PACK, {id: 'silent', name: 'Silent', default_powers_w: []}).first.matrix.powers_w, [0, 5]);
});

test('a field without words of its own has those of the matrix', () => {
  const vocabulary = made();

  assert.equal(vocabulary.labelOf('joint.vswr'), 'VSWR on the line');
  assert.equal(vocabulary.labelOf('joint.nothing'), undefined);
  assert.equal(vocabulary.rangeOf('joint.vswr'), '1 to 9');
  assert.equal(vocabulary.rangeOf('vswr'), '1 to 20');
});

test('numbers are shown and spoken in the unit of the page', () => {
  const vocabulary = made();

  assert.equal(vocabulary.shown('cable.diameter_m', 0.0103), 10.3);
  assert.equal(vocabulary.spoken('cable.diameter_m', 0.0103), '10.3 mm');
  assert.equal(vocabulary.spoken('powers_w', [0, 100]), '0 W, 100 W');
  assert.equal(vocabulary.spoken('joint.family', null), 'none');
  assert.equal(vocabulary.spoken('cable.diameter_m', null), 'not given');
  assert.equal(vocabulary.spoken('joint.family', 'bnc'), 'BNC');
  assert.deepEqual(vocabulary.optionsOf('joint.family'), [
    ['', 'none'],
    ['n', 'N'],
    ['bnc', 'BNC'],
  ]);
});

test('a value left out is what the core takes', () => {
  const vocabulary = made();

  assert.equal(vocabulary.valueOf({vswr: 3}, 'joint.vswr'), 3);
  assert.equal(vocabulary.valueOf(undefined, 'joint.vswr'), 2);
});

test('a Region has its own bands, and a band nobody knows is the core’s to judge', () => {
  const state = {region: '2', bands: ['20m', '4m', 'unheard']};

  assert.deepEqual(bandsOf(state, made()), ['20m', 'unheard']);
});
