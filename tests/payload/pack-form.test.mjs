/** A pack made by form: the document of its file, changed by paths; its sources, its rows, what is wrong in words. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {
  FIRST_DOCUMENT,
  added,
  blankEntry,
  documentOf,
  freeId,
  kindOf,
  ofKind,
  removed,
  sourceOf,
  textOf,
  withField,
  withFigure,
  withPart,
  withRow,
  withSource,
} from '../../frontend/src/packs/entries.js';
import {faultsOf, placeOf, refused, titleOf} from '../../frontend/src/packs/faults.js';
import {at, put} from '../../frontend/src/packs/paths.js';
import {blankOf, factorOf, groupsOf, tablesOf, unitOf, wordsOf} from '../../frontend/src/packs/shapes.js';

const number = (label, unit, sheet, min, max, rest = {}) => ({
  label,
  required: true,
  type: 'number',
  unit,
  sheet_unit: sheet,
  min,
  max,
  ...rest,
});
const text = (label, rest = {}) => ({label, required: true, type: 'text', shortest: 1, longest: 80, ...rest});
const part = (name) => ({type: 'part', of: name});
const rows = (label, of, rest = {}) => ({
  label,
  required: true,
  type: 'list',
  of: part(of),
  least: 0,
  most: 9,
  ...rest,
});

/** A few fields of each kind, as the core declares them. */
const SHAPES = {
  Pack: {
    id: text('Id'),
    name: text('Name of the pack'),
    sources: rows('Sources', 'PackSource'),
    cables: rows('Cable', 'Cable', {required: false, default: []}),
    bands: rows('Band', 'Band', {required: false, default: []}),
  },
  PackSource: {id: text('Id'), title: text('Title of the source'), seen: text('How it was seen')},
  Cable: {
    id: text('Id'),
    name: text('Name'),
    bore_m: number('Bore', 'm', 'mm', 0.001, 0.5, {type: 'quantity'}),
    pin_m: number('Pin', 'm', 'mm', 0.001, 0.5, {type: 'quantity', required: false, default: null}),
    working_v: number('Voltage', 'V', 'V', 1, 1000, {type: 'interval'}),
    jacket: {label: 'Jacket', required: true, type: 'label', choices: {pvc: 'PVC', pe: 'PE'}},
    attenuation: rows('Attenuation', 'Row', {least: 1}),
    layers: {label: 'Layers', required: false, default: null, ...part('Layers')},
    joins: {label: 'Through', required: false, default: [], type: 'list', of: {type: 'text'}, table: 'cables'},
  },
  Row: {
    frequency_hz: number('Frequency', 'Hz', 'MHz', 1e4, 2e11),
    db_per_m: number('Loss', 'dB/m', 'dB/100 m', 1e-6, 1000),
    air_c: number('Air', '°C', '°C', -100, 600),
    source: text('Source'),
    kind: text('Kind'),
    note: text('Note', {required: false, default: '', shortest: 0}),
  },
  Layers: {area_m2: number('Metal', 'm²', 'mm²', 1e-9, 0.01, {type: 'quantity'})},
  Band: {
    id: text('Id'),
    name: text('Name'),
    regions: {label: 'Region', required: true, type: 'map', keys: ['1', '2'], of: part('Row')},
  },
};

const built = (value) => ({value, source: 'built_in', kind: 'handbook', note: 'as quoted'});
const CABLE = {
  id: 'thick',
  name: 'Thick',
  bore_m: built(0.01),
  working_v: {low: built(300), high: built(500)},
  jacket: built('pvc'),
  attenuation: [
    {
      frequency_hz: 1e8,
      db_per_m: 0.02,
      air_c: 40,
      source: 'built_in',
      kind: 'handbook',
      note: '2 dB/100 m',
      fit: false,
    },
  ],
  unknown: {kept: [1, 2]},
};
const PATH = ['cables', 0];
const OWN = 'own_cables_thick';
const started = () => withSource(added({...FIRST_DOCUMENT, id: 'p', name: 'P'}, 'cables', CABLE), PATH);
const nameOf = (id) => id.toUpperCase();

test('a document is changed at a path and stays itself elsewhere', () => {
  const before = {a: [{b: 1}, {b: 2}], c: {d: 3}};

  assert.deepEqual(put(before, ['a', 1, 'b'], 5), {a: [{b: 1}, {b: 5}], c: {d: 3}});
  assert.deepEqual(put(before, ['a', 0], undefined), {a: [{b: 2}], c: {d: 3}});
  assert.deepEqual(put(before, ['c', 'd'], undefined), {a: before.a, c: {}});
  assert.deepEqual(put(before, ['e', 'f'], 1).e, {f: 1});
  assert.equal(put(before, ['c', 'd'], 4).a, before.a);
  assert.equal(at(before, ['x', 'y']), undefined);
});

test('a text opened and written again holds all that it held, what the form does not know too', () => {
  const document = {...started(), strange: {deep: [{x: null}]}, note: ''};

  assert.deepEqual(JSON.parse(textOf(documentOf(JSON.stringify(document)))), document);
});

test('a changed figure has the source of its entry, the others keep theirs', () => {
  const changed = withFigure(started(), [...PATH, 'bore_m'], 0.012, 'datasheet');

  assert.deepEqual(changed.cables[0], {
    ...CABLE,
    bore_m: {value: 0.012, source: OWN, kind: 'datasheet', note: ''},
  });
  assert.deepEqual(changed.sources, [{id: OWN, title: 'My own data', seen: 'read'}]);
  assert.equal(withFigure(changed, [...PATH, 'bore_m'], 0.012, 'memory'), changed);
});

test('a figure from a source of the pack keeps it', () => {
  const listed = {...started(), sources: [{id: 'sheet', title: 'Sheet', seen: 'read'}]};
  const credited = put(listed, [...PATH, 'bore_m'], {value: 1, source: 'sheet', kind: 'memory', note: 'old'});

  assert.equal(sourceOf(credited, PATH), 'sheet');
  assert.deepEqual(withFigure(credited, [...PATH, 'bore_m'], 2, 'datasheet').cables[0].bore_m, {
    value: 2,
    source: 'sheet',
    kind: 'memory',
    note: '',
  });
});

test('ends of an interval are changed one by one, and what may be left out goes when it is emptied', () => {
  const low = withFigure(started(), [...PATH, 'working_v', 'low'], 200, 'datasheet');
  const pin = withFigure(low, [...PATH, 'pin_m'], 0.002, 'datasheet');

  assert.deepEqual(low.cables[0].working_v, {
    low: {value: 200, source: OWN, kind: 'datasheet', note: ''},
    high: built(500),
  });
  assert.equal('pin_m' in withFigure(pin, [...PATH, 'pin_m'], null, 'datasheet').cables[0], false);
});

test('a row that is changed is the reader’s own as a whole', () => {
  const changed = withField(started(), [...PATH, 'attenuation', 0, 'db_per_m'], 0.03, 'datasheet');

  assert.deepEqual(changed.cables[0].attenuation, [
    {...CABLE.attenuation[0], db_per_m: 0.03, source: OWN, kind: 'datasheet'},
  ]);
});

test('a new row has gaps for its figures and the circumstances of the one above', () => {
  const [, row] = withRow(SHAPES, started(), [...PATH, 'attenuation'], 'Row', 'memory').cables[0].attenuation;

  assert.deepEqual(row, {frequency_hz: null, db_per_m: null, air_c: 40, source: OWN, kind: 'memory'});
});

test('a part that was left out has the entry’s source where it names one', () => {
  const document = added(started(), 'bands', {id: 'b', name: 'B', regions: {}});

  assert.deepEqual(withPart(SHAPES, started(), [...PATH, 'layers'], 'Layers', 'memory').cables[0].layers, {
    area_m2: null,
  });
  assert.equal(
    withPart(SHAPES, document, ['bands', 0, 'regions', '1'], 'Row', 'memory').bands[0].regions[1].source,
    'own_bands_b',
  );
});

test('an override is named, and goes with its entry and its source', () => {
  const document = withSource(added({...FIRST_DOCUMENT, sources: []}, 'cables', CABLE, true), PATH);

  assert.deepEqual(document.overrides, {cables: ['thick']});
  const rest = removed(document, 'cables', 0);
  assert.deepEqual([rest.cables, rest.overrides, rest.sources], [[], {cables: []}, []]);
});

test('a source that something else names stays when its entry goes', () => {
  const other = {...CABLE, id: 'other', bore_m: {value: 1, source: OWN, kind: 'memory', note: ''}};

  assert.deepEqual(
    removed(added(started(), 'cables', other), 'cables', 0).sources.map(({id}) => id),
    [OWN],
  );
});

test('the kind of an entry’s own figures is changed as a whole', () => {
  const changed = withFigure(started(), [...PATH, 'bore_m'], 0.012, 'datasheet');
  const remembered = ofKind(changed, PATH, 'memory');

  assert.deepEqual([kindOf(started(), PATH), kindOf(remembered, PATH)], ['datasheet', 'memory']);
  assert.equal(remembered.cables[0].bore_m.kind, 'memory');
  assert.equal(remembered.cables[0].jacket.kind, 'handbook');
});

test('ids are made of names and are never given twice', () => {
  assert.equal(freeId('Öl & Bajonett 50 Ω', []), 'o_l_bajonett_50');
  assert.equal(freeId('RG-58', ['rg_58', 'rg_58_2']), 'rg_58_3');
  assert.equal(freeId('x'.repeat(90), ['x'.repeat(40)]).length, 40);
  assert.match(
    blankEntry(SHAPES, {...FIRST_DOCUMENT, name: 'My -- station'}, 'bands', 'Band').id,
    /^[a-z0-9][a-z0-9_]*$/,
  );
});

test('numbers are shown in the units of data sheets', () => {
  const shown = Object.entries({
    bore_m: 1e-3,
    working_v: 1,
  }).map(([name, factor]) => [factorOf(SHAPES.Cable[name]), factor]);

  for (const [factor, wanted] of shown) assert.equal(factor, wanted);
  assert.equal(factorOf(SHAPES.Row.frequency_hz), 1e6);
  assert.equal(factorOf(SHAPES.Row.db_per_m), 0.01);
  assert.equal(factorOf(SHAPES.Layers.area_m2), 1e-6);
  assert.equal(factorOf({unit: 'F/m', sheet_unit: 'pF/m'}), 1e-12);
  assert.equal(factorOf({unit: 'Ω/m', sheet_unit: 'Ω/km'}), 1e-3);
  assert.equal(factorOf({unit: '1/Hz', sheet_unit: '1/GHz'}), 1e-9);
  assert.equal(unitOf({unit: '1', sheet_unit: '1'}), '');
});

test('each number, text and choice is a control, an interval two', () => {
  assert.deepEqual(Object.keys(groupsOf(SHAPES).Cable), [
    ...['id', 'name', 'bore_m', 'pin_m', 'working_v-low', 'working_v-high', 'jacket', 'joins'],
  ]);
  const words = wordsOf(SHAPES);
  assert.deepEqual(words['Row.db_per_m'], {label: 'Loss', unit: 'dB/100 m', factor: 0.01});
  assert.equal(words['Cable.working_v-high'].label, 'Voltage, most');
  assert.deepEqual(words['Cable.jacket'].options, {pvc: 'PVC', pe: 'PE'});
  assert.deepEqual(
    tablesOf(SHAPES).map(({table, part: name}) => [table, name]),
    [
      ['cables', 'Cable'],
      ['bands', 'Band'],
    ],
  );
});

test('what is missing is told by its label with what is allowed', () => {
  const document = {id: '', name: '', sources: [], cables: [{...blankOf(SHAPES, 'Cable'), id: 'x', name: 'X'}]};
  const grown = withRow(SHAPES, document, [...PATH, 'attenuation'], 'Row', 'memory');

  assert.deepEqual(
    faultsOf(SHAPES, grown, nameOf).map(({words}) => words),
    [
      'Name of the pack is empty; allowed: a text.',
      'Cable X, Bore is empty; allowed: 1 to 500 mm.',
      'Cable X, Voltage, least is empty; allowed: 1 to 1000 V.',
      'Cable X, Voltage, most is empty; allowed: 1 to 1000 V.',
      'Cable X, Jacket is empty; allowed: one of the list.',
      'Cable X, Attenuation 1, Frequency is empty; allowed: 0.01 to 200000 MHz.',
      'Cable X, Attenuation 1, Loss is empty; allowed: 0.0001 to 100000 dB/100 m.',
      'Cable X, Attenuation 1, Air is empty; allowed: −100 to 600 °C.',
    ],
  );
  assert.match(faultsOf(SHAPES, document, nameOf).at(-1)?.words ?? '', /Attenuation is empty; allowed: at least 1/);
});

test('a number outside its range is told in the unit shown', () => {
  const document = withFigure(started(), [...PATH, 'working_v', 'high'], 2000, 'memory');

  assert.deepEqual(faultsOf(SHAPES, withFigure(document, [...PATH, 'pin_m'], 2, 'memory'), nameOf), [
    {
      path: [...PATH, 'pin_m'],
      words: 'Cable Thick, Pin is 2000 mm; allowed: 1 to 500 mm.',
      brief: 'Pin is 2000 mm; allowed: 1 to 500 mm.',
      isTold: true,
    },
    {
      path: [...PATH, 'working_v', 'high'],
      words: 'Cable Thick, Voltage, most is 2000 V; allowed: 1 to 1000 V.',
      brief: 'Voltage, most is 2000 V; allowed: 1 to 1000 V.',
      isTold: true,
    },
  ]);
});

test('nothing of a whole pack is missing', () => {
  assert.deepEqual(faultsOf(SHAPES, started(), nameOf), []);
});

test('what the core refuses is said by the label, in the unit shown', () => {
  const told = (field, value, allowed) =>
    refused(SHAPES, started(), {message: `${field} is bad`, field, value, allowed}, nameOf);

  assert.deepEqual(told('P: cables[0].bore_m.value', '0.6', 'a number from 0.001 to 0.5 m'), {
    path: ['cables', 0, 'bore_m'],
    words: 'Cable Thick, Bore is 600 mm; allowed: 1 to 500 mm.',
    brief: 'Bore is 600 mm; allowed: 1 to 500 mm.',
  });
  assert.equal(
    told('cables[0].bore_m.value', '0.0064', '1.05 to 12 times pin_m, 0.00195').words,
    'Cable Thick, Bore is 6.4 mm; allowed: 1.05 to 12 times Pin, 1.95 mm.',
  );
  assert.deepEqual(told('P: cables[0].working_v.low.value', '600', 'no more than the high end, 500'), {
    path: ['cables', 0, 'working_v', 'low'],
    words: 'Cable Thick, Voltage, least is 600 V; allowed: no more than what stands as most, 500 V.',
    brief: 'Voltage, least is 600 V; allowed: no more than what stands as most, 500 V.',
  });
  assert.equal(
    told('P: cables[0].attenuation[0].db_per_m', '0', 'a number from 1e-06 to 1000').words,
    'Cable Thick, Attenuation 1, Loss is 0 dB/100 m; allowed: 0.0001 to 100000 dB/100 m.',
  );
  assert.deepEqual(told('something', '1', 'x'), {path: [], words: 'something is bad'});
});

test('a place in a map is called by its key', () => {
  const document = added(FIRST_DOCUMENT, 'bands', {id: 'b', name: 'B', regions: {1: {}}});

  assert.equal(
    placeOf(SHAPES, document, ['bands', 0, 'regions', '1', 'frequency_hz'], nameOf).label,
    'Band B, Region 1, Frequency',
  );
});

test('an entry without a name is called by what it joins or limits', () => {
  assert.equal(titleOf({id: 'n', joins: []}, nameOf), 'N to others');
  assert.equal(titleOf({plug: 'n', jack: 'sma'}, nameOf), 'N on SMA');
  assert.equal(titleOf({power_w: 50}, nameOf), '50 W');
  assert.equal(titleOf({power_w: null}, nameOf), 'new');
});
