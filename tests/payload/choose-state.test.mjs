/** The demands on a joint as data: links, the way to the matrix, relaxations, words, and the file. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {cellFragment} from '../../frontend/src/choose/cell.js';
import {choicesCsv} from '../../frontend/src/choose/csv.js';
import {chooseRequest, missingWords} from '../../frontend/src/choose/fields.js';
import {BY_RANK, ordered, tapped} from '../../frontend/src/choose/order.js';
import {placed, withPlace} from '../../frontend/src/choose/place.js';
import {
  bindingWords,
  marginWords,
  planWords,
  reasonWords,
  rankWords,
  rangeWords,
  stepNameOf,
  wearWords,
  weatherWords,
} from '../../frontend/src/choose/reading.js';
import {valuesOf} from '../../frontend/src/shared/export/values.js';
import {refusedField} from '../../frontend/src/shared/fields/refused.js';
import {given} from '../../frontend/src/shared/state/given.js';
import {levelsWith} from '../../frontend/src/shared/state/levels.js';
import {viewFragment, viewState} from '../../frontend/src/shared/state/view-link.js';

const number = (min, max) => ({type: 'number', min, max, nullable: false});
const FIELDS = {power_w: number(0, 1e5), plan: {type: 'text', nullable: true}, added_sealing: {type: 'boolean'}};
const FIRST = {power_w: 100, plan: null, added_sealing: false};

const MATRIX = {
  ...{
    vswr: 1.5,
    exposure: 'indoor',
    vibration: 'none',
    cable: null,
    cable_diameter_m: null,
    family: null,
  },
  ...{band: null, frequency_hz: null, bands: ['20m', '2m'], frequencies_hz: [], power_w: 100, powers_w: [0, 100, 400]},
};
const MILD = {exposure: 'indoor', vibration: 'none', added_sealing: false};
const MAST = {exposure: 'exposed', vibration: 'vehicle', added_sealing: false};
const PLACES = {
  installations: [
    {id: 'fixed', name: 'Indoors', ...MILD},
    {id: 'mast', name: 'Mast', ...MAST},
    {id: 'taped', name: 'Mast, taped', ...MAST, added_sealing: true},
  ],
};
const REQUEST = {
  vswr: 2,
  exposure: 'exposed',
  vibration: 'vehicle',
  margin_asked_db: 3,
  dc_current_a: 1,
  dc_voltage_v: 12,
  power_w: 250,
  use: 'transmit',
  bands: ['4m'],
  frequencies_hz: [],
};
const COLUMNS = [
  {id: '4m', name: '4 m', low_hz: 70e6, high_hz: 70.5e6, pack: ''},
  {id: 'spot', name: '100 MHz', low_hz: 100e6, high_hz: 100e6, pack: ''},
];

function choice(more = {}) {
  return {
    ...{
      family: 'n',
      name: 'N',
      passes: true,
      rank: 1,
      margin_db: 3.14,
      margin_high_db: 5,
      undecided: false,
      binding: 'contact',
      return_loss_db: 25.7,
      return_loss_high_db: 30,
    },
    ...{
      binding_column: '4 m',
      port_binds: false,
      loss_db: 0.001,
      diameter_m: 0.02,
      coupling: 'threaded',
      torque_nm: 1.3,
    },
    ...{
      needs_adapter: false,
      has_margin_asked: true,
      reasons: ['made for this cable', 'larger than N'],
      rejections: [],
    },
    ...{also_called: [], dc_stands_a: 5},
    wear: {needed: 50, good_for: 500, runs_out_after_years: 100},
    weather: {stands: 'exposed', stands_sealed: 'exposed', asked: 'exposed'},
    ...more,
  };
}

const fragmentOf = (one, request = REQUEST, others = []) =>
  Object.fromEntries(
    new URLSearchParams(
      cellFragment(one, request, {columns: COLUMNS, power_w: request.power_w, choices: [one, ...others]}, MATRIX),
    ),
  );

test('a link holds what differs from a first visit and brings it back', () => {
  const fragment = viewFragment('choose', {...FIRST, power_w: 400, plan: 'n'}, FIRST);

  assert.equal(fragment, 'view=choose&power_w=400&plan=n');
  assert.deepEqual(viewState(fragment, FIELDS, FIRST), {
    state: {power_w: 400, plan: 'n', added_sealing: false},
    unknown: [],
  });
  assert.deepEqual(viewState('view=choose&colour=blue', FIELDS, FIRST), {state: FIRST, unknown: ['colour=blue']});
  assert.equal(viewFragment('choose', FIRST, FIRST), 'view=choose');
});

test('what is not given is left out of a request', () => {
  assert.deepEqual(given(FIRST), {power_w: 100, added_sealing: false});
});

test('a family leads to its cell with weather and shaking, at the very power', () => {
  assert.deepEqual(fragmentOf(choice()), {
    ...{vswr: '2', exposure: 'exposed', vibration: 'vehicle', family: 'n', band: '4m', bands: '20m,2m,4m'},
    ...{power_w: '250', powers_w: '0,100,250,400'},
  });
});

test('the cable in use leads along', () => {
  const found = fragmentOf(choice(), {...REQUEST, cable: 'ptfe'});

  assert.deepEqual([found.cable, found.cable_diameter_m], ['ptfe', undefined]);
});

test('a spot frequency leads to a column of its own', () => {
  const found = fragmentOf(choice({binding_column: '100 MHz'}));

  assert.deepEqual([found.band, found.frequency_hz, found.frequencies_hz], [undefined, '100000000', '100000000']);
});

test('where the port binds, its own cell opens; where nothing binds, the highest column', () => {
  const port = choice({family: 'uhf', binding_column: '100 MHz'});

  const found = fragmentOf(choice({port_binds: true}), {...REQUEST, port: 'uhf'}, [port]);
  assert.deepEqual([found.family, found.frequency_hz], ['uhf', '100000000']);
  assert.equal(fragmentOf(choice({margin_db: null, binding_column: null})).frequency_hz, '100000000');
});

test('levels take in a power that is missing, in rising order', () => {
  const levels = [0, 100];

  assert.equal(levelsWith(levels, 100), levels);
  assert.deepEqual(levelsWith([0, 100], 50), [0, 50, 100]);
});

test('equal ranks are marked as ties', () => {
  const all = [choice(), choice({family: 'uhf'}), choice({family: 'bnc', rank: 3}), choice({family: 'f', rank: null})];

  assert.deepEqual(
    all.map((one) => rankWords(one, all)),
    ['1=', '1=', '3', ''],
  );
});

test('the plan is told against the best', () => {
  const best = choice({family: 'hn', name: 'HN', margin_db: 6.14});
  const say = (one) => planWords('n', {choices: [one, best], passing: ['n', 'hn']});

  assert.equal(
    say(choice({rank: 2})),
    'Your plan, N, meets every demand: rank 2 of 2 (made for this cable; larger than N).',
  );
  assert.equal(say(choice()), 'Your plan, N, meets every demand, and nothing comes before it.');
  assert.equal(say(choice({passes: false, rank: null, rejections: [{}]})), 'Your plan, N, misses one demand.');
  assert.equal(planWords('x', {choices: [], passing: []}), '');
});

test('a margin names what limits it; where there is none, the return loss stands or the family is refused', () => {
  const none = {margin_db: null, margin_high_db: null, binding: null, binding_column: null};
  const refusedBy = (demand) => choice({...none, rejections: [{demand, name: '', hard: true, sentence: ''}]});
  const shown = (one) => [marginWords(one), stepNameOf(one), bindingWords(one)];

  assert.deepEqual(shown(choice()), ['+3.1 dB', 'fine', 'limited by its contact on 4 m']);
  assert.deepEqual(shown(choice(none)), ['RL 26', 'holds', '']);
  assert.deepEqual(shown(refusedBy('match')), ['RL 26', 'refused', '']);
  assert.deepEqual(shown(refusedBy('frequency')), ['refused', 'refused', '']);
});

test('a place sets its three fields, and each may be changed after it', () => {
  const mast = withPlace({installation: 'mast'}, {installation: 'fixed', ...MILD}, PLACES);

  assert.deepEqual(mast, {installation: 'mast', ...MAST});
  assert.deepEqual(withPlace({vibration: 'none'}, mast, PLACES), {...MAST, vibration: 'none'});
  assert.deepEqual(withPlace({power_w: 5}, mast, PLACES), {power_w: 5});
  assert.deepEqual(withPlace({installation: 'balloon'}, mast, PLACES), {installation: 'balloon'});
  assert.deepEqual(withPlace({exposure: 'indoor'}, {installation: 'mast', ...MAST, vibration: 'none'}, PLACES), {
    installation: 'fixed',
    ...MILD,
  });
});

test('a link that names a place alone has what the place sets; one that says more has that', () => {
  assert.deepEqual(placed({installation: 'taped', ...MILD}, PLACES), {
    installation: 'taped',
    ...MAST,
    added_sealing: true,
  });
  const changed = {installation: 'mast', ...MAST, vibration: 'none'};
  assert.equal(placed(changed, PLACES), changed);
  assert.deepEqual(withPlace({vibration: 'severe'}, {installation: 'mast', ...MILD}, PLACES), {
    ...MAST,
    vibration: 'severe',
  });
});

const BANDS = {lists: {...PLACES, bands: [{id: '20m', name: '20 m', regions: ['1']}]}};

test('the core is asked by the three fields, and for nothing while no band is picked', () => {
  const state = {installation: 'mast', ...MILD, bands: ['20m'], frequencies_hz: [], region: 1, plan: null};
  const vocabulary = /** @type {any} */ (BANDS);

  assert.deepEqual(chooseRequest(state, vocabulary), {...MAST, bands: ['20m'], frequencies_hz: [], region: 1});
  assert.equal(missingWords(state, vocabulary), '');
  assert.equal(missingWords({...state, bands: []}, vocabulary), 'Pick a band, or type a spot frequency.');
  assert.equal(missingWords({...state, region: 2}, vocabulary), 'Pick a band, or type a spot frequency.');
  assert.equal(missingWords({...state, bands: [], frequencies_hz: [1e8]}, vocabulary), '');
});

test('a tap on a column brings the best to the top, the next turns the order round', () => {
  /** @type {any[]} */
  const choices = [
    choice({family: 'n', name: 'N', rank: 1, margin_db: 3, loss_db: 0.2, diameter_m: 0.02}),
    choice({family: 'tnc', name: 'TNC', rank: 2, margin_db: 9, loss_db: 0.2, diameter_m: 0.015}),
    choice({family: 'bnc', name: 'BNC', rank: 2, margin_db: 1, loss_db: 0.1, diameter_m: 0.0145}),
  ];
  const by = (order) => ordered(choices, order).map(({family}) => family);

  assert.deepEqual(by(BY_RANK), ['n', 'tnc', 'bnc']);
  assert.deepEqual(by(tapped(BY_RANK, 'margin')), ['tnc', 'n', 'bnc']);
  assert.deepEqual(by(tapped(tapped(BY_RANK, 'margin'), 'margin')), ['bnc', 'n', 'tnc']);
  assert.deepEqual(by(tapped(BY_RANK, 'loss')), ['bnc', 'n', 'tnc']);
  assert.deepEqual(by(tapped(BY_RANK, 'size')), ['bnc', 'tnc', 'n']);
  assert.deepEqual(by(tapped(BY_RANK, 'name')), ['bnc', 'n', 'tnc']);
  assert.deepEqual(tapped(tapped(BY_RANK, 'size'), 'rank'), BY_RANK);
});

test('wear, weather, range and reasons are said in words', () => {
  assert.equal(wearWords({needed: 50, good_for: 500}), '50 matings of 500');
  assert.equal(
    weatherWords({stands: 'sheltered', stands_sealed: 'exposed'}),
    'damp, no rain; weatherproof once sealed',
  );
  assert.equal(rangeWords(choice({margin_db: -1, margin_high_db: 2, undecided: true})), 'up to +2.0 dB, uncertain');
  assert.equal(reasonWords(choice()), 'Made for this cable; larger than N');
});

test('a refusal finds its field', () => {
  assert.equal(refusedField({field: 'bands[0]', message: 'bands[0] is "x"; allowed: one of 20m.'}), 'bands');
  assert.equal(refusedField(undefined), '');
});

test('the file has a line for each family with what it misses', () => {
  const text = choicesCsv({
    choices: [choice(), choice({name: 'N, 75', rejections: [{sentence: 'Too hot.'}, {sentence: 'Too wet.'}]})],
  });

  const [heads, first, second, end] = text.split('\r\n');
  assert.match(heads, /^family,passes,rank,margin_db,.*,missed$/);
  assert.match(first, /^N,true,1,3\.14,5,false,contact,4 m,25\.7,30,/);
  assert.match(second, /^"N, 75",.*,Too hot\. Too wet\.$/);
  assert.equal(end, '');
});

test('text that a spreadsheet would run is marked as text; numbers stay numbers', () => {
  /** @type {import('../../frontend/src/shared/export/values.js').Column[]} */
  const columns = [
    ['what', (row) => row.what],
    ['value', (row) => row.value],
  ];

  assert.equal(valuesOf(columns, [{what: '=1+1', value: -1}]), "what,value\r\n'=1+1,-1\r\n");
  for (const hidden of ['\t=1+1', '\r=1+1', '\r\n\t+1', ' @SUM(1)', '\u00a0-1']) {
    const [, cell] = valuesOf([columns[0]], [{what: hidden}]).match(/^what\r\n"?(.*?)"?\r\n$/s) ?? [];
    assert.equal(cell, `'${hidden}`);
  }
  assert.equal(valuesOf([columns[0]], [{what: 'a = b'}]), 'what\r\na = b\r\n');
});
