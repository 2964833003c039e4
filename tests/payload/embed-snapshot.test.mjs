/**
 * Reading a snapshot that came from anywhere: what is declared comes through, anything else is refused by its place.
 */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {LONGEST_TEXT, readSnapshot} from '../../frontend/src/embed/snapshot.js';
import {conditionsIn, printedIn, stationIn, wordsFor} from '../../frontend/src/embed/words.js';
import {snippet} from '../../frontend/src/matrix/website/snippet.js';

const symbol = (name, unit) => ({symbol: name, meaning: 'a meaning', unit});

/** One family on one band at two powers, with one step to each limit and to the match. */
const small = () => ({
  format: 'jointwise snapshot 2',
  request: {mode: 'ssb', vswr: 1.5, bands: ['2m'], cable_diameter_m: null, added_sealing: false},
  names: {mode: 'SSB, conversation'},
  matrix: {
    families: [{id: 'n', name: 'N', summary: 'a summary', receive_only: false, gate_reasons: {weather: 'not sealed'}}],
    columns: [{id: '2m', name: '2 m', low_hz: 144e6, high_hz: 146e6}],
    powers_w: [0, 100],
    limits: ['contact', 'cable', 'voltage'],
    gates: [
      {id: 'te11', name: 'TE11 cutoff', hard: true},
      {id: 'weather', name: 'Weather', hard: false},
    ],
    margin_db: [[[null, 7.7]]],
    margin_high_db: [[[null, 14.2]]],
    binding: [[[-1, 0]]],
    refused_by: [[[0, -1]]],
    marks: [[[0, 2]]],
    undecided: [[[false, false]]],
    rating_below: [false],
    contact_allowed_w: [[[589, 2600]]],
    cable_allowed_w: [[[700, 900]]],
    voltage_allowed_w: [[[6500, null]]],
    return_loss_db: [[[24, 31]]],
    largest_power_w: [[589]],
  },
  derivations: {
    formulas: [
      {
        id: 'margin',
        title: 'Margin',
        mathml: '<math></math>',
        source: 'derived',
        inputs: [symbol('P_a', 'W'), symbol('P', 'W')],
        result: symbol('M', 'dB'),
      },
      {
        id: 'allowed',
        title: 'Allowed',
        mathml: '<math></math>',
        source: 'derived',
        inputs: [symbol('x', '1')],
        result: symbol('P_a', 'W'),
      },
    ],
    purposes: [''],
    sources: ['a standard'],
    kinds: ['standard'],
    values: [
      [1, 0, 0],
      [2, -1, -1],
    ],
    steps: [[1, 0, [0], 589]],
    chains: [[0]],
    cells: [[[0, 0, 0, 0]]],
  },
  cautions: ['Take care.'],
});

const read = (snapshot) => readSnapshot(JSON.stringify(snapshot));

/** The snapshot with the value at a path replaced. */
function changed(path, value) {
  const snapshot = small();
  const names = path.split('.');
  const holder = names.slice(0, -1).reduce((inside, name) => inside[name], snapshot);
  holder[names.at(-1)] = value;
  return snapshot;
}

test('what is declared comes through', () => {
  const snapshot = read(small());

  assert.deepEqual(JSON.parse(JSON.stringify(snapshot)), small());
});

test('what is not declared stays behind', () => {
  const snapshot = read({...small(), more: 1, matrix: {...small().matrix, html: '<b>'}});

  assert.deepEqual(JSON.parse(JSON.stringify(snapshot)), small());
});

test('a snapshot may say whose station it is and of what day, and of no other kind of day', () => {
  const station = {name: 'DL0ABC', date: '2026-11-29'};
  const said = (one) => stationIn(wordsFor('en'), read({...small(), station: one}), '9.9');

  assert.equal(said(station), 'Station: DL0ABC, 29 November 2026');
  assert.equal(stationIn(wordsFor('de'), read({...small(), station}), '9.9'), 'Station: DL0ABC, 29. November 2026');
  assert.equal(said({...station, name: ''}), 'Example station, 29 November 2026');
  assert.equal(said(undefined), 'Example station, Jointwise 9.9');
  assert.equal(stationIn(wordsFor('de'), undefined, '9.9'), 'Beispielstation, Jointwise 9.9');
  assert.throws(() => said({...station, date: 'yesterday'}), /station\.date must be a day such as 2026-11-29/);
});

test('misshapen parts are refused by their place', () => {
  /** @type {[path: string, value: any, words: string][]} */
  const cases = [
    ['format', 'jointwise snapshot 9', 'format must be "jointwise snapshot 2"'],
    ['names.mode', 7, 'names.mode must be a text of at most 200 characters'],
    ['cautions', 'care', 'cautions must be a list of 0 to 30'],
    ['request', [], 'request must be an object of at most 60 fields'],
    ['request.vswr', {deep: 1}, 'request.vswr must be a text'],
    ['matrix.families', [], 'matrix.families must be a list of 1 to 100'],
    ['matrix.margin_db', [[[7]]], 'matrix.margin_db[0][0] must be a list of 2'],
    ['matrix.margin_db', [[[null, '7']]], 'matrix.margin_db[0][0][1] must be a number'],
    ['matrix.binding', [[[0, 3]]], 'matrix.binding[0][0][1] must be a whole number from -1 to 2'],
    ['matrix.refused_by', [[[2, 0]]], 'matrix.refused_by[0][0][0] must be a whole number from -1 to 1'],
    ['matrix.marks', [[[4, 0]]], 'matrix.marks[0][0][0] must be a whole number from 0 to 3'],
    ['matrix.limits', ['voltage'], 'matrix.limits must be a list of 3'],
    ['matrix.limits', ['cable', 'heat', 'voltage'], 'matrix.limits[1] must be one of contact, cable, voltage'],
    ['matrix.rating_below', [true, false], 'matrix.rating_below must be a list of 1'],
    ['derivations.steps', [[9, 0, [0], 1]], 'derivations.steps[0][0] must be a whole number from 0 to 1'],
    ['derivations.steps', [[0, 0, [0], 1]], 'derivations.steps[0][2] must be a list of 2'],
    ['derivations.values', [[1, 1, 0]], 'derivations.values[0][1] must be a whole number from -1 to 0'],
    ['derivations.chains', [[5]], 'derivations.chains[0][0] must be a whole number from 0 to 0'],
    ['derivations.cells', [[[0, 0, 0]]], 'derivations.cells[0][0] must be a list of 4'],
    ['derivations.cells', [[[0, 0, 0, 1]]], 'derivations.cells[0][0][3] must be a whole number from 0 to 0'],
    ['derivations.formulas', [], 'derivations.formulas must be a list of 1 to 300'],
  ];
  for (const [path, value, words] of cases) {
    assert.throws(
      () => read(changed(path, value)),
      (/** @type {Error} */ error) => error.message.startsWith(words),
      `${path}: ${words}`,
    );
  }
});

test('every declared part is needed', () => {
  const paths = (inside, before = '') =>
    Object.entries(inside).flatMap(([name, value]) => {
      const path = before + name;
      return [
        path,
        ...(typeof value === 'object' && !Array.isArray(value) && !['request', 'names'].includes(name)
          ? paths(value, `${path}.`)
          : []),
      ];
    });
  for (const path of paths(small())) {
    assert.throws(
      () => read(changed(path, undefined)),
      (/** @type {Error} */ error) => error.message.startsWith(path),
      path,
    );
  }
});

test('names that reach for a prototype touch nothing', () => {
  const reaching = JSON.stringify(small()).replace('"weather":', '"__proto__":');
  assert.throws(() => readSnapshot(reaching), /gate_reasons must be an object whose names are small letters/);
  assert.throws(
    () => readSnapshot(JSON.stringify(small()).replace('"vswr":1.5', '"__proto__":{"polluted":true}')),
    /request must be/,
  );

  const around = JSON.stringify(small()).replace(
    '{"format"',
    '{"__proto__":{"polluted":true},"constructor":{"prototype":{"polluted":true}},"format"',
  );
  assert.equal('polluted' in readSnapshot(around), false);
  assert.equal({}.polluted, undefined);
  assert.equal(Object.getPrototypeOf(read(small()).request), null);
});

test('text that is no snapshot is refused in a sentence', () => {
  assert.throws(() => readSnapshot('<!doctype html>'), /^Error: it must be JSON$/);
  assert.throws(() => readSnapshot('null'), /must be an object/);
  assert.throws(() => readSnapshot('['.repeat(500_000)), /it must be JSON/);
  assert.throws(() => readSnapshot('['.repeat(400_000) + ']'.repeat(400_000)), /must be/);
  assert.throws(() => readSnapshot(' '.repeat(LONGEST_TEXT + 1)), /at most 1000000 characters/);
});

const WANTED = {
  server: 'https://club.example/jw/',
  fragment: 'mode=ft8&vswr=2',
  page: '',
  theme: 'auto',
  lang: '',
  compact: false,
  rows: 19,
  columns: 16,
};

test('the line to paste brings the matrix in by files, by server or in a frame', () => {
  assert.equal(
    snippet('files', {...WANTED, page: 'jointwise.html', lang: 'de', compact: true}),
    '<script src="embed.js"></script><jointwise-matrix src="club-matrix.json" size="19x16" link="jointwise.html" ' +
      'lang="de" compact></jointwise-matrix>',
  );
  assert.equal(
    snippet('server', {...WANTED, theme: 'dark'}),
    '<script src="https://club.example/jw/embed.js"></script>' +
      '<jointwise-matrix link="https://club.example/jw/#mode=ft8&amp;vswr=2" theme="dark"></jointwise-matrix>',
  );
  const frame = snippet('frame', {...WANTED, theme: 'dark', compact: true});
  const address = 'https://club.example/jw/embed.html?theme=dark&amp;compact=#mode=ft8&amp;vswr=2';
  assert.ok(frame.startsWith(`<iframe src="${address}" title=`));
  assert.match(frame, /^<iframe [^>]* title="[^"]+" width="100%" height="992" loading="lazy"><\/iframe><script>/);
});

test('nothing typed into the panel can leave its attribute', () => {
  const line = snippet('files', {...WANTED, page: '"><script>alert(1)</script>'});

  assert.ok(line.includes('link="&quot;>&lt;script>alert(1)&lt;/script>"'));
});

test('every language is whole', () => {
  const [english, german] = ['en', 'de-AT'].map(wordsFor);

  assert.equal(german.code, 'de');
  assert.equal(wordsFor('eo'), english);
  for (const part of ['fields', 'choices', 'limits'])
    assert.deepEqual(Object.keys(german[part]), Object.keys(english[part]), part);
  assert.deepEqual(Object.keys(german), Object.keys(english));
});

/** What is read of a cell that the match refuses. */
const MISSED = {
  family: {name: 'UHF'},
  column: {name: '70 cm'},
  power: 100,
  margin: null,
  returnLoss: 8.4,
  returnLossHigh: 9.6,
  refusedBy: {id: 'match', name: 'Match', hard: true},
  marks: [],
};

test('a cell that the match refuses prints its return loss in every language, and both ends of it are told', () => {
  const [english, german] = ['en', 'de'].map(wordsFor);

  assert.deepEqual([printedIn(english, MISSED), printedIn(german, MISSED)], ['RL 8', 'RL 8']);
  assert.match(english.verdict(MISSED), /^Refused: .*8\.4 dB .*9\.6 dB .*less than asked for\.$/);
  assert.match(german.verdict(MISSED), /^Ausgeschlossen: .*8,4 dB, .*9,6 dB, weniger als verlangt\.$/);
});

test('the conditions name the cable counted', () => {
  const cable = (request, names) => Object.fromEntries(conditionsIn(wordsFor('en'), {request, names})).Cable;

  assert.equal(cable({cable: 'rg_213'}, {cable: '10.3 mm, solid'}), '10.3 mm, solid');
  assert.equal(cable({cable: null}, {}), 'the usual one of each connector');
});

test('the conditions of a snapshot are told in the units it was made in', () => {
  const told = (request) => Object.fromEntries(conditionsIn(wordsFor('en'), {request, names: {}}));
  const request = {ambient_temperature_c: 40, altitude_m: 1500, cable_diameter_m: 0.0103, system_impedance_ohm: 50};

  assert.deepEqual(told(request), told({...request, units: 'metric'}));
  assert.equal(told(request)['Air temperature'], '40 °C');
  const us = told({...request, units: 'us'});
  assert.equal(us['Air temperature'], '104 °F');
  assert.equal(us.Altitude, '4921 ft');
  assert.equal(us['Other cable, diameter'], '0.406 in');
  assert.equal(us['Line impedance'], '50 Ω');
});
