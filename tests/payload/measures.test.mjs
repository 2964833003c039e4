/** Metric and US units on the page: what each becomes, how it is rounded, and that fields take what they show. */
import assert from 'node:assert/strict';
import {afterEach, test} from 'node:test';
import {choicesCsv} from '../../frontend/src/choose/csv.js';
import {quantitiesCsv} from '../../frontend/src/fitout/quantities.js';
import {nameOf} from '../../frontend/src/shared/lines/names.js';
import {speaking} from '../../frontend/src/shared/state/units.js';
import {
  lengthText,
  prose,
  scaleOf,
  shortLengthText,
  sizeText,
  speakIn,
  temperatureText,
  torqueText,
  unitIn,
  valueText,
} from '../../frontend/src/shared/text/measures.js';
import {readingsOf} from '../../frontend/src/shared/text/number-typed.js';
import {Vocabulary} from '../../frontend/src/shared/vocabulary/vocabulary.js';

afterEach(() => speakIn('metric'));

test('one foot, one inch, one in-lb and the points of a thermometer are those published', () => {
  // NIST Special Publication 811 (2008), appendix B.8, from memory: foot 3.048 E-01 m, inch 2.54 E-02 m,
  // pound-force inch 1.129 848 E-01 N·m; water freezes at 32 °F and boils at 212 °F
  assert.ok(Math.abs(scaleOf('m', 'us').sent(1) - 0.3048) < 1e-12);
  assert.ok(Math.abs(scaleOf('mm', 'us').sent(1) - 25.4) < 1e-12);
  assert.ok(Math.abs(scaleOf('N·m', 'us').sent(1) - 0.1129848) < 5e-8);
  assert.ok(Math.abs(scaleOf('°C', 'us').sent(32)) < 1e-9);
  assert.ok(Math.abs(scaleOf('°C', 'us').shown(100) - 212) < 1e-9);
  assert.equal(scaleOf('dB/100 m', 'us').shown(10), 3.048);
});

/** @type {[made: (units: 'metric' | 'us') => string, metric: string, us: string][]} */
const TEXTS = [
  [(units) => lengthText(17, undefined, units), '17 m', '55.8 ft'],
  [(units) => lengthText(30.48, undefined, units), '30.48 m', '100 ft'],
  [(units) => lengthText(3.81, undefined, units), '3.81 m', '12.5 ft'],
  [(units) => lengthText(999, undefined, units), '999 m', '3278 ft'],
  [(units) => lengthText(0, 3, units), '0 m', '0 ft'],
  [(units) => shortLengthText(0.06, 2, units), '60 mm', '2.4 in'],
  [(units) => shortLengthText(1.2, 2, units), '1.2 m', '3.9 ft'],
  [(units) => sizeText(0.0103, 3, units), '10.3 mm', '0.406 in'],
  [(units) => temperatureText(40, 3, units), '40 °C', '104 °F'],
  [(units) => temperatureText(-55, 3, units), '−55 °C', '−67 °F'],
  [(units) => torqueText(0.8, 2, units), '0.8 N·m', '7.1 in-lb'],
  [(units) => torqueText(25, 3, units), '25 N·m', '221 in-lb'],
  [(units) => valueText(0.0103, 'm', 4, units), '10.3 mm', '0.406 in'],
  [(units) => valueText(1e9, 'Hz', 4, units), '1 GHz', '1 GHz'],
  [(units) => valueText('screwed', '', 4, units), 'screwed', 'screwed'],
  [(units) => prose('Foam 10.3 mm, 400 size', units), 'Foam 10.3 mm, 400 size', 'Foam 0.406 in, 400 size'],
  [
    (units) => prose('600 Ω open wire, 2 mm copper', units),
    '600 Ω open wire, 2 mm copper',
    '600 Ω open wire, 0.079 in copper',
  ],
  [(units) => prose('above 0 °C, not at -40 °C', units), 'above 0 °C, not at -40 °C', 'above 32 °F, not at -40 °F'],
  [(units) => prose('2.8 to 3.4 N·m (25 to 30 in-lb).', units), '2.8 to 3.4 N·m (25 to 30 in-lb).', '25 to 30 in-lb.'],
  [(units) => prose('RG-213, 50 Ω, 7/16, 30 MHz', units), 'RG-213, 50 Ω, 7/16, 30 MHz', 'RG-213, 50 Ω, 7/16, 30 MHz'],
];

for (const [made, metric, us] of TEXTS) {
  test(`${metric} is ${us}`, () => {
    assert.equal(made('metric'), metric);
    assert.equal(made('us'), us);
  });
}

test('power, frequency, voltage, resistance and decibels are the same everywhere', () => {
  for (const unit of ['W', 'Hz', 'MHz', 'V', 'Ω', 'dB', 'K', 's', 'W/m²', '']) assert.equal(unitIn(unit, 'us'), unit);
});

/** @type {any} */
const START = {
  requests: {matrix: {powers_w: {default: [100]}}},
  ...Object.fromEntries(['families', 'bands', 'modes', 'conditions', 'installations'].map((list) => [list, []])),
  cables: [{id: 'foam', name: 'Foam 10.3 mm, 400 size'}],
  wire_lines: [],
};
const number = (min, max, unit) => ({type: 'number', min, max, default: null, unit});
const VIEW = {
  id: 'matrix',
  fields: () => ({
    matrix: {
      length_m: number(0.01, 1000, 'm'),
      diameter_m: number(0.0005, 0.1, 'm'),
      ambient_temperature_c: number(-60, 80, '°C'),
      altitude_m: number(0, 30000, 'm'),
      power_w: number(0, 1e5, 'W'),
      frequency_hz: number(1e5, 5e10, 'Hz'),
      solar_w_per_m2: number(0, 1400, 'W/m²'),
    },
  }),
  words: () => ({
    length_m: {label: 'Length'},
    diameter_m: {label: 'Diameter', factor: 1e-3, unit: 'mm', step: 0.1},
    ambient_temperature_c: {label: 'Air'},
    altitude_m: {label: 'Altitude', step: 10},
    power_w: {label: 'Power'},
    frequency_hz: {label: 'Frequency', factor: 1e6, unit: 'MHz'},
    solar_w_per_m2: {label: 'Sun'},
  }),
};
const METRIC = new Vocabulary(START, [VIEW], []);
const US = new Vocabulary(START, [VIEW], [], 'us');

/**
 * What is typed into a field, and what is sent in the core's unit: in metric and in US units. Several are asked back.
 *
 * @type {[field: string, typed: string, metric: number | number[], us: number | number[]][]}
 */
const TYPED = [
  ['length_m', '17', 17, 5.1816],
  ['length_m', '17 m', 17, 17],
  ['length_m', '100 m', 100, 100],
  ['length_m', '55.8 ft', 17.0078, 17.00784],
  ['length_m', '100 ft', 30.48, 30.48],
  ['length_m', "100'", 30.48, 30.48],
  ['length_m', '12,5', 12.5, 3.81],
  ['length_m', '12.5', 12.5, 3.81],
  ['length_m', '12,5 m', 12.5, 12.5],
  ['length_m', '12,5 ft', 3.81, 3.81],
  ['length_m', '2 km', 2000, 2000],
  ['length_m', '30 cm', 0.3, 0.3],
  ['length_m', '6 in', 0.1524, 0.1524],
  ['length_m', '1,500', [1500, 1.5], [457.2, 0.4572]],
  ['length_m', '1.500', [1.5, 1500], [0.4572, 457.2]],
  ['length_m', '1,500 m', [1500, 1.5], [1500, 1.5]],
  ['length_m', '1.500 ft', [0.4572, 457.2], [0.4572, 457.2]],
  ['length_m', '1 500', 1500, 457.2],
  ['length_m', '100 lb', [], []],
  ['length_m', '5 F', [], []],
  ['length_m', '', [], []],
  ['diameter_m', '10.3', 0.0103, 0.26162],
  ['diameter_m', '10,3', 0.0103, 0.26162],
  ['diameter_m', '10.3 mm', 0.0103, 0.0103],
  ['diameter_m', '10,3 mm', 0.0103, 0.0103],
  ['diameter_m', '0.405', 0.000405, 0.010287],
  ['diameter_m', '.405 in', 0.010287, 0.010287],
  ['diameter_m', '0,405"', 0.010287, 0.010287],
  ['diameter_m', '0.4 inch', 0.01016, 0.01016],
  ['diameter_m', '1 cm', 0.01, 0.01],
  ['diameter_m', '0.0103 m', 0.0103, 0.0103],
  ['diameter_m', '3 dB', [], []],
  ['ambient_temperature_c', '40', 40, 4.44444444444],
  ['ambient_temperature_c', '40 °C', 40, 40],
  ['ambient_temperature_c', '40 C', 40, 40],
  ['ambient_temperature_c', '104', 104, 40],
  ['ambient_temperature_c', '104 F', 40, 40],
  ['ambient_temperature_c', '104 °F', 40, 40],
  ['ambient_temperature_c', '77,5', 77.5, 25.2777777778],
  ['ambient_temperature_c', '-5', -5, -20.5555555556],
  ['ambient_temperature_c', '−5 °F', -20.5556, -20.5555555556],
  ['ambient_temperature_c', '−5 °C', -5, -5],
  ['ambient_temperature_c', '0', 0, -17.7777777778],
  ['ambient_temperature_c', '300 K', 26.85, 26.85],
  ['ambient_temperature_c', '5 ft', [], []],
  ['altitude_m', '1500', 1500, 457.2],
  ['altitude_m', '1500 m', 1500, 1500],
  ['altitude_m', '5000 ft', 1524, 1524],
  ['altitude_m', '5,000', [5000, 5], [1524, 1.524]],
  ['altitude_m', '5.000 ft', [1.524, 1524], [1.524, 1524]],
  ['altitude_m', '5 000 ft', 1524, 1524],
  ['altitude_m', '1,5 km', 1500, 1500],
  ['altitude_m', '1 mile', 1609.34, 1609.344],
  ['power_w', '1,5', 1.5, 1.5],
  ['power_w', '1.5 kW', 1500, 1500],
  ['power_w', '1,500', [1500, 1.5], [1500, 1.5]],
  ['power_w', '1k', 1000, 1000],
  ['power_w', '5 ft', [], []],
  ['frequency_hz', '14.175', 14.175e6, 14.175e6],
  ['frequency_hz', '14,2', 14.2e6, 14.2e6],
  ['frequency_hz', '14,175', [14175e6, 14.175e6], [14175e6, 14.175e6]],
  ['frequency_hz', '7100 kHz', 7.1e6, 7.1e6],
  ['frequency_hz', '5 m', [], []],
  ['solar_w_per_m2', '1000', 1000, 1000],
  ['solar_w_per_m2', '1,000', [1000, 1], [1000, 1]],
];

test('there are at least sixty inputs in the table', () => assert.ok(TYPED.length >= 60));

for (const [field, typed, metric, us] of TYPED) {
  test(`${field}: “${typed}” is read right or asked back in both systems`, () => {
    for (const [vocabulary, wanted] of /** @type {[Vocabulary, number | number[]][]} */ ([
      [METRIC, metric],
      [US, us],
    ])) {
      const sent = readingsOf(typed, vocabulary.unitOf(field)).map(({value}) => vocabulary.sent(field, value));
      assert.deepEqual(sent, [wanted].flat());
    }
  });
}

test('fields show values and ranges in the unit of the switch', () => {
  assert.equal(US.unitOf('length_m'), 'ft');
  assert.equal(US.unitOf('diameter_m'), 'in');
  assert.equal(US.unitOf('power_w'), 'W');
  assert.equal(US.shown('length_m', 17), 55.8);
  assert.equal(US.shown('ambient_temperature_c', 40), 104);
  assert.equal(US.spoken('ambient_temperature_c', 40), '104 °F');
  assert.equal(US.spoken('diameter_m', 0.0103), '0.406 in');
  assert.equal(US.spoken('power_w', 100), '100 W');
  assert.equal(US.rangeOf('ambient_temperature_c'), '−76 to 176 °F');
  assert.equal(US.rangeOf('power_w'), METRIC.rangeOf('power_w'));
  assert.equal(METRIC.rangeOf('length_m'), '0.01 to 1000 m');
  assert.equal(US.isConverted('length_m'), true);
  assert.equal(METRIC.isConverted('length_m'), false);
  assert.equal(US.isConverted('power_w'), false);
});

test('both edges of a printed range may be typed', () => {
  for (const field of ['length_m', 'diameter_m', 'ambient_temperature_c', 'altitude_m']) {
    const {min, max} = /** @type {any} */ (US.fieldOf(field));
    const [low, high] = US.rangeOf(field)
      .split(' ')
      .filter((word) => /\d/.test(word));
    for (const edge of [low, high]) {
      const sent = US.sent(field, Number(edge.replace('−', '-')));
      assert.ok(sent >= min && sent <= max, `${field}: ${edge} is ${sent}`);
    }
  }
});

test('what a field shows is taken for the value it stands for, and an arrow adds a round step', () => {
  for (const value of [1.2192, 30.48, 17.0688, 3.81]) {
    assert.equal(US.sent('length_m', US.shown('length_m', value)), value);
  }
  assert.equal(US.stepOf('length_m'), 1);
  assert.equal(US.stepOf('ambient_temperature_c'), 1);
  assert.equal(US.stepOf('diameter_m'), 0.001);
  assert.equal(METRIC.stepOf('diameter_m'), 0.1);
});

test('names of cables and of elements tell their sizes in the unit of the switch', () => {
  assert.equal(US.lists.cables[0].name, 'Foam 0.406 in, 400 size');
  speakIn('us');
  assert.equal(nameOf({kind: 'cable', cable: 'foam', length_m: 17}, US.lists), '55.8 ft of Foam 0.406 in, 400 size');
});

test('files for a spreadsheet have the unit in their headings or beside their numbers', () => {
  const rows = [{what: 'Cable', detail: '', quantity: 3.3, unit: 'm', family: '', cable: 'rg_58'}];
  /** @type {any} */
  const choice = {
    choices: [{name: 'N', diameter_m: 0.0203, torque_nm: 1.5, wear: {}, weather: {}, rejections: [], reasons: []}],
  };

  assert.match(quantitiesCsv(rows), /,3\.3,m,/);
  assert.match(choicesCsv(choice), /diameter_m,coupling,torque_nm/);
  speakIn('us');
  assert.match(quantitiesCsv(rows), /,10\.9,ft,/);
  assert.match(choicesCsv(choice), /diameter_in,coupling,torque_in_lb/);
  assert.match(choicesCsv(choice), /,0\.799,.*,13\.3,/);
});

test('the core is asked in the units of the switch', async () => {
  const asked = [];
  /** @type {any} */
  const transport = {ask: async (...all) => asked.push(all)};

  await speaking(transport, 'metric').ask('line', {a: 1});
  await speaking(transport, 'us').ask('line', {a: 1}, {packs: []});
  assert.deepEqual(asked, [
    ['line', {a: 1}],
    ['line', {a: 1, units: 'us'}, {packs: []}],
  ]);
});
