/** Numbers as people type them: each is read right, asked back or refused. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {
  question,
  readingsOf,
  readingsOfList,
  readingsOfRows,
  refusal,
  unmistakable,
} from '../../frontend/src/shared/text/number-typed.js';

/** @type {[typed: string, unit: string, value: number][]} */
const READ = [
  ['1,5', '', 1.5],
  ['1.5', '', 1.5],
  ['1500', '', 1500],
  ['1 500', '', 1500],
  ['1\u202f500', '', 1500],
  ["1'500", '', 1500],
  ['1’500', '', 1500],
  ['1,500.5', '', 1500.5],
  ['1.500,5', '', 1500.5],
  ["1'500,5", '', 1500.5],
  ['1 500,250', '', 1500.25],
  ['1 500.250', '', 1500.25],
  ['1,500,000', '', 1.5e6],
  ['1.500.000', '', 1.5e6],
  ['12 345 678,9', '', 12345678.9],
  ['0,125', '', 0.125],
  ['0.125', '', 0.125],
  ['00,5', '', 0.5],
  ['1234,567', '', 1234.567],
  ['1234.567', '', 1234.567],
  ['1,50', '', 1.5],
  ['1,5000', '', 1.5],
  ['.5', '', 0.5],
  [',5', '', 0.5],
  ['5.', '', 5],
  ['5,', '', 5],
  ['  7  ', '', 7],
  ['+3', '', 3],
  ['-3,5', '', -3.5],
  ['−3', '', -3],
  ['- 3', '', -3],
  ['-0', '', 0],
  ['1e3', '', 1000],
  ['1,5e-3', '', 0.0015],
  ['3:1', '', 3],
  ['1,5 : 1', '', 1.5],
  ['4:1', ': 1', 4],
  ['50 %', '', 0.5],
  ['2 %', '%', 2],
  ['100 ft', 'm', 30.48],
  ['100ft', 'm', 30.48],
  ['100 FT.', 'm', 30.48],
  ["6'", 'm', 1.8288],
  ['30,5 m', 'm', 30.5],
  ['2 km', 'm', 2000],
  ['1 mile', 'm', 1609.34],
  ['10 Meters', 'm', 10],
  ['3 in', 'm', 0.0762],
  ['3 in', 'mm', 76.2],
  ['3"', 'mm', 76.2],
  ['1 cm', 'mm', 10],
  ['1.5 kW', 'W', 1500],
  ['1,5kW', 'W', 1500],
  ['1.5k', 'W', 1500],
  ['100 w', 'W', 100],
  ['100 mW', 'W', 0.1],
  ['100 mw', 'W', 0.1],
  ['1 MW', 'W', 1e6],
  ['400 Watts', 'W', 400],
  ['14.2 MHz', 'MHz', 14.2],
  ['14.175', 'MHz', 14.175],
  ['50.313 MHz', 'Hz', 50.313e6],
  ['14,2 mhz', 'MHz', 14.2],
  ['14.2 MHz', 'Hz', 14.2e6],
  ['14.2M', 'Hz', 14.2e6],
  ['14074.123 kHz', 'MHz', 14.074123],
  ['10.4 GHz', 'MHz', 10400],
  ['-5 F', '°C', -20.5556],
  ['-5 °F', '°C', -20.5556],
  ['−5 ºf', '°C', -20.5556],
  ['104 F', '°C', 40],
  ['25 c', '°C', 25],
  ['300 K', '°C', 26.85],
  ['290 K', 'K', 290],
  ['17 °C', 'K', 290.15],
  ['250 pF', 'pF', 250],
  ['0,25 nF', 'pF', 250],
  ['250 p', 'pF', 250],
  ['2 k', 'Ω', 2000],
  ['2 kΩ', 'Ω', 2000],
  ['2 k\u2126', 'Ω', 2000],
  ['50 ohm', 'Ω', 50],
  ['5 mΩ', 'Ω', 0.005],
  ['1 Mohm', 'Ω', 1e6],
  ['500 nH', 'µH', 0.5],
  ['20 \u03bcH', 'µH', 20],
  ['20 uh', 'µH', 20],
  ['2 kV', 'V', 2000],
  ['500 mA', 'A', 0.5],
  ['2 min', 's', 120],
  ['5 Min', 's', 300],
  ['6 months', 'years', 0.5],
  ['3 dB', 'dB', 3],
  ['45 deg', '°', 45],
  ['1000 W/m2', 'W/m²', 1000],
  ['10 in-lb', 'N·m', 1.12985],
  ['1,5 N m', 'N·m', 1.5],
  ['500 matings', 'matings', 500],
  ['7 furlongs', 'furlongs', 7],
];

/** @type {[typed: string, unit: string, words: string[]][]} */
const ASKED = [
  ['1,500', '', ['1500', '1.5']],
  ['1.500', '', ['1.5', '1500']],
  ['12.345', '', ['12.345', '12345']],
  ['999,999', '', ['999999', '999.999']],
  ['-1,500', '', ['-1500', '-1.5']],
  ['1,500 kW', 'W', ['1500 kW', '1.5 kW']],
  ['14,175', 'MHz', ['14175 MHz', '14.175 MHz']],
  ['1.500 ft', 'm', ['1.5 ft', '1500 ft']],
  ['1,500:1', '', ['1500', '1.5']],
  ['1.000', '', ['1', '1000']],
];

/** @type {[typed: string, unit: string][]} */
const REFUSED = [
  ['', ''],
  ['lots', ''],
  ['1.2.3', ''],
  ['1,00,000', ''],
  ['1,2.3.4', ''],
  ['1.500.00', ''],
  ['1,500,00', ''],
  ['1 50', ''],
  ['1 500,250.5', ''],
  ['1,500 000', ''],
  ['0,500,000', ''],
  ['5 -1', ''],
  ['5 -', ''],
  ['--5', ''],
  ['3-5', ''],
  ['1:3', ''],
  ['10²', ''],
  ['1/2', 'm'],
  ['NaN', ''],
  ['Infinity', ''],
  ['0x10', ''],
  ['1e999', ''],
  ['.', ''],
  [',', ''],
  ['3 m', ''],
  ['100 lb', 'm'],
  ['100 M', 'm'],
  ['5 MM', 'mm'],
  ['14.2 m', 'MHz'],
  ['3 dB', 'W'],
  ['50 dBm', 'W'],
  ['5 m', 'W'],
  ['5 F', 'm'],
  ['300 k', 'K'],
  ['5 MV', 'V'],
  ['5 MF', 'pF'],
  ["6' 3", 'm'],
  ['7 miles', 'furlongs'],
];

for (const [typed, unit, value] of READ) {
  test(`“${typed}” is read${unit && ` in ${unit}`}`, () => {
    assert.deepEqual(
      readingsOf(typed, unit).map((one) => one.value),
      [value],
    );
  });
}

for (const [typed, unit, words] of ASKED) {
  test(`“${typed}” is asked back${unit && ` in ${unit}`}`, () => {
    assert.deepEqual(
      readingsOf(typed, unit).map((one) => one.words),
      words,
    );
  });
}

for (const [typed, unit] of REFUSED) {
  test(`“${typed}” is refused${unit && ` in ${unit}`}`, () => {
    assert.deepEqual(readingsOf(typed, unit), []);
  });
}

test('what is converted is said, and what is not needs no words', () => {
  const converted = (typed, unit) => readingsOf(typed, unit).map((one) => one.converted);

  assert.deepEqual(converted('100 ft', 'm'), ['100 ft is 30.48 m']);
  assert.deepEqual(converted('-5 f', '°C'), ['-5 °F is -20.5556 °C']);
  assert.deepEqual(converted('2 k', 'Ω'), ['2 kΩ is 2000 Ω']);
  assert.deepEqual(converted('100 metres', 'm'), ['']);
  assert.deepEqual(converted('1,5', ''), ['']);
});

test('a conversion keeps the digits that were typed, and drops those it makes up', () => {
  const values = (typed, unit) => readingsOf(typed, unit).map((one) => one.value);

  assert.deepEqual(values('10368123.4 kHz', 'MHz'), [10368.1234]);
  assert.deepEqual(values('33.3 ft', 'm'), [10.1498]);
  assert.deepEqual(values('77.77777 ft', 'm'), [23.70666]);
});

test('a list is read by spaces, semicolons and commas, each number with its unit', () => {
  const values = (typed) => readingsOfList(typed, 'W').map((one) => one.value);

  assert.deepEqual(values('5 25 100'), [[5, 25, 100]]);
  assert.deepEqual(values('5, 25, 100'), [[5, 25, 100]]);
  assert.deepEqual(values('5;25'), [[5, 25]]);
  assert.deepEqual(values('5,25,100'), [[5, 25, 100]]);
  assert.deepEqual(values('1,5; 2,5 100'), [[1.5, 2.5, 100]].concat([[1, 5, 2, 5, 100]]));
  assert.deepEqual(values('100 W, 1.5 kW'), [[100, 1500]]);
  assert.deepEqual(values('14.175 7.1'), [[14.175, 7.1]]);
  assert.deepEqual(values(' '), [[]]);
  assert.deepEqual(values('5 lots 100'), []);
  assert.deepEqual(values('5 m'), []);
  assert.deepEqual(values("1'500 1'50"), []);
});

test('a list that could be several is asked back with each', () => {
  const words = (typed) => readingsOfList(typed, 'W').map((one) => one.words);

  assert.deepEqual(words('5,25'), ['5.25 W', '5 W and 25 W']);
  assert.deepEqual(words('1,500'), ['1500 W', '1.5 W', '1 W and 500 W']);
  assert.deepEqual(words('14.175 21.225'), ['14.175 W and 21.225 W', '14175 W and 21225 W']);
});

test('a table is read in one way throughout', () => {
  const values = (...rows) => readingsOfRows(rows, 2).map((one) => one.value);

  assert.deepEqual(values('14,1;50', '14,2;51'), [
    [
      [14.1, 50],
      [14.2, 51],
    ],
  ]);
  assert.deepEqual(values('14,1;50', '14.2;51'), []);
  assert.deepEqual(values('14.1;50', '14.2'), []);
});

test('a refusal names the label, what was typed and what is allowed', () => {
  assert.equal(
    refusal('Length', '100 lb', '0.01 to 10000 m', 'm'),
    'Length is “100 lb”; allowed: 0.01 to 10000 m, also in km, cm, mm, µm, ft, in, yd, mi.',
  );
  assert.equal(refusal('SWR', ' 3 m ', '1 to 20'), 'SWR is “3 m”; allowed: 1 to 20, without a unit.');
  assert.equal(refusal('Loss', '', '0 to 100 dB', 'dB'), 'Loss is empty; allowed: 0 to 100 dB.');
});

test('a question names both readings', () => {
  assert.equal(question('SWR', '1,500', readingsOf('1,500')), 'SWR is “1,500”: is that 1500 or 1.5?');
});

test('a number written unmistakably is read back in one way', () => {
  for (const number of [14.175, -1.5, 1500, 0.125, 1234.567, 1e-7, 999.999, 0.1 + 0.2]) {
    const [{value}, ...others] = readingsOf(unmistakable(number));
    assert.ok(Math.abs(value - number) <= 1e-12 * Math.abs(number));
    assert.deepEqual(others, []);
  }
});
