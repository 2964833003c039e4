/** Refusals of the core as the page says them: label, value, what is allowed. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {refusedWords} from '../../frontend/src/shared/refusals/words.js';
import {Vocabulary} from '../../frontend/src/shared/vocabulary/vocabulary.js';

const number = (min, max, unit = '') => ({type: 'number', min, max, unit, default: min});
const list = (items) => ({type: 'list', items, least: 1, most: 24, default: []});

/** @type {any} - what of the start data a vocabulary is made of */
const START = {
  requests: {matrix: {powers_w: {default: []}}},
  ...{families: [], cables: [], wire_lines: [], modes: [], bands: []},
};
const VIEWS = [
  {
    id: 'all',
    fields: () => ({
      matrix: {
        powers_w: list(number(0, 1e5, 'W')),
        frequencies_hz: list(number(1e5, 5e10, 'Hz')),
        bands: list({type: 'text'}),
        mode: {type: 'text', default: 'ssb'},
        altitude_m: number(0, 30000, 'm'),
        vswr: number(1, 20),
      },
      choose: {power_w: number(0, 1e5, 'W')},
      cable: {length_m: number(0.01, 1e4, 'm')},
      load_vswr: {vswr: number(1, 100)},
      port: {power_w: number(0, 1e5, 'W')},
    }),
    words: () => ({
      powers_w: {label: 'Power levels', unit: 'W'},
      frequencies_hz: {label: 'Spot frequencies', factor: 1e6, unit: 'MHz'},
      bands: {label: 'Bands', named: [{id: '20m', name: '20 m'}]},
      mode: {label: 'Mode', entries: [{id: 'ssb', name: 'SSB'}]},
      altitude_m: {label: 'Altitude'},
      vswr: {label: 'VSWR on the line'},
      'choose.power_w': {label: 'Power, peak envelope'},
      'cable.length_m': {label: 'Length', unit: 'm'},
      'load_vswr.vswr': {label: 'SWR of the antenna'},
      'port.power_w': {label: 'Power, peak envelope'},
    }),
  },
];
const VOCABULARY = new Vocabulary(START, VIEWS, []);

const said = (field, value, allowed = 'the core’s words', operation = 'matrix', request = {}) =>
  refusedWords({field, value, allowed, message: 'the core’s sentence'}, VOCABULARY, operation, request);

test('a number out of its range is said with label, unit and range as they are shown', () => {
  assert.equal(said('powers_w[0]', '-5'), 'Power levels, first entry: −5 W; allowed: 0 to 100 kW.');
  assert.equal(said('powers_w[12]', '1500000'), 'Power levels, 13th entry: 1.5 MW; allowed: 0 to 100 kW.');
  assert.equal(
    said('frequencies_hz[1]', '50000'),
    'Spot frequencies, second entry: 0.05 MHz; allowed: 0.1 to 50000 MHz.',
  );
  assert.equal(said('altitude_m', '90000'), 'Altitude: 90000 m; allowed: 0 to 30000 m.');
  assert.equal(said('vswr', '"high"'), 'VSWR on the line: “high”; allowed: 1 to 20.');
  assert.equal(said('vswr', 'NaN'), 'VSWR on the line: “NaN”; allowed: 1 to 20.');
  assert.equal(said('power_w', '-1', '', 'choose'), 'Power, peak envelope: −1 W; allowed: 0 to 100 kW.');
});

test('what is within its range is refused in the core’s words', () => {
  assert.equal(said('vswr', '3'), 'VSWR on the line: 3; allowed: the core’s words.');
  assert.equal(said('powers_w', '[]'), 'Power levels: none; allowed: the core’s words.');
  assert.equal(said('vswr', 'null'), 'VSWR on the line: not given; allowed: the core’s words.');
});

test('what is chosen is called by its name', () => {
  assert.equal(said('mode', '"fax"'), 'Mode: “fax”; allowed: one of SSB.');
  assert.equal(said('bands[1]', '"19m"'), 'Bands, second entry: “19m”; allowed: one of 20 m.');
  assert.equal(said('bands[0]', '"20m"'), 'Bands, first entry: 20 m; allowed: the core’s words.');
});

test('parts of a request are counted from one', () => {
  const line = {elements: [{kind: 'joint'}, {kind: 'cable'}], load: {kind: 'vswr'}};

  assert.equal(
    said('elements[1].length_m', '-3', '', 'line', line),
    'Element 2, Length: −3 m; allowed: 0.01 to 10000 m.',
  );
  assert.equal(said('load.vswr', '0.5', '', 'line', line), 'SWR of the antenna: 0.5; allowed: 1 to 100.');
  assert.equal(said('load', '"nothing"', 'its end', 'line', line), 'The antenna: “nothing”; allowed: its end.');
  assert.equal(
    said('ports[0].power_w', '-5', '', 'kit', {ports: [{}]}),
    'Port 1, Power, peak envelope: −5 W; allowed: 0 to 100 kW.',
  );
});

test('no name of the core’s reaches the reader, whatever is refused', () => {
  for (const field of [
    'system_impedance_ohm',
    'elements[3].what',
    'receiver.noise_figure_db',
    'load.points[2].frequency_hz',
  ])
    assert.doesNotMatch(said(field, '7', 'other', 'line'), /_|\[/);
});

test('what is no field of a request is said as the core says it', () => {
  for (const field of ['request', 'Club: interfaces[0].id', undefined])
    assert.equal(said(field, '1'), 'the core’s sentence');
});
