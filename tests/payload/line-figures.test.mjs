/** What a line looks like as data: the drawing, the charts, and the sentences beside them. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {AXIS, ROW_HEIGHT, laidOut, twoLines} from '../../frontend/src/line/answer/drawing.js';
import {
  bandFigure,
  bandSlots,
  boundaries,
  highestDrawn,
  lossFigure,
  lossSteps,
  waveFigure,
} from '../../frontend/src/line/answer/figures.js';
import {contrast, contrastWords, noiseWords} from '../../frontend/src/line/answer/reception.js';
import {boundWords, placeIn, readElement, spokenPart} from '../../frontend/src/line/reading.js';
import {pairWords, sides} from '../../frontend/src/line/sides.js';
import {nameOf} from '../../frontend/src/shared/lines/names.js';
import {lossWords} from '../../frontend/src/shared/text/loss.js';

const part = (element, name, more = {}) => ({
  element,
  name,
  kind: 'joint',
  distance_m: 0,
  loss_db: 0.5,
  margin_db: 5,
  margin_high_db: 6,
  binding: 'contact',
  undecided: false,
  refused_by: null,
  refusal: '',
  marks: [],
  tuner: null,
  reads_vswr: null,
  ...more,
});
const band = (id, loss_db) => ({column: {id, name: id, low_hz: 1, high_hz: 2}, loss_db, vswr: 1.5, margin_db: 4});
/** @type {any} - what is read of an answer */
const RESULT = {
  column: {id: '40m'},
  power_w: 100,
  transmitter: {folded: false},
  phase_known: true,
  delivered_w: 67.6,
  delivered_low_w: 60.3,
  loss_db: 1.7,
  loss_high_db: 2.2,
  input: {vswr: 1.6, resistance_ohm: 70, reactance_ohm: -12},
  input_cautious: {vswr: 1.8, resistance_ohm: 80, reactance_ohm: 15},
  mismatch_db: 0.2,
  weakest: 1,
  parts: [
    part(0, 'one'),
    part(1, 'two', {margin_db: 2, binding: 'voltage', distance_m: 0}),
    part(1, 'three', {distance_m: 3}),
  ],
  standing_wave: {
    distance_m: [0, 1.5, 3, 3, 10],
    voltage_v: [1, 2, 3, 3, 1],
    current_a: [3, 2, 1, 1, 3],
    voltage_low_v: null,
    current_low_a: null,
    half_waves: 0.9,
  },
  sweep: {
    band: ['40m', '40m', '70cm', '70cm'],
    frequency_hz: [7e6, 7.2e6, 430e6, 440e6],
    vswr: [1, 2, 3, 4],
    margin_db: [5, 4, null, null],
    vswr_high: [1.5, 1.8, 4, 5],
  },
  bands: [band('40m', 1), band('70cm', 6)],
  reception: {whole_cost_by_band_db: [0.02, 7.2], half_decibel_cost_by_band_db: [0.01, 0.6]},
};

test('a row of the drawing is as wide as it may be, and its parts stand side by side', () => {
  const items = [{kind: 'start'}, {kind: 'joint'}, {kind: 'cable', length_m: 30}, {kind: 'joint'}, {kind: 'end'}];

  const {items: placed, height} = laidOut(items, 800);

  assert.equal(height, ROW_HEIGHT);
  placed.slice(1).forEach((item, at) => assert.ok(Math.abs(item.x - placed[at].x - placed[at].width) < 1e-9));
  assert.ok(placed.at(-1).x + placed.at(-1).width <= 800);
  assert.ok(AXIS < ROW_HEIGHT);
});

test('a line too long for its width goes on in further rows and never leaves it', () => {
  const items = [
    {kind: 'start'},
    ...Array.from({length: 20}, (_, at) => ({kind: at % 2 ? 'joint' : 'cable', length_m: 10_000})),
    {kind: 'end'},
  ];

  const {items: placed, rows} = laidOut(items, 340);

  assert.ok(rows > 5);
  for (const {x, width, y, row} of placed) {
    assert.ok(x >= 0 && x + width <= 340 + 1e-9);
    assert.equal(y, row * ROW_HEIGHT);
  }
});

test('a longer cable is drawn longer', () => {
  const [, short, long] = laidOut(
    [{kind: 'start'}, {kind: 'cable', length_m: 3}, {kind: 'cable', length_m: 30}],
    900,
  ).items;

  assert.ok(long.width > short.width * 1.3);
});

test('a name takes at most two lines of its room', () => {
  assert.deepEqual(twoLines('N', 60), ['N']);
  assert.deepEqual(twoLines('28 m of RG-213', 62), ['28 m of', 'RG-213']);
  for (const words of twoLines('a very long name of a part that nobody can print', 62)) assert.ok(words.length <= 9);
});

test('the loss steps begin where the one before ended and end at the loss of the line', () => {
  const steps = lossSteps(RESULT);

  steps.slice(1, -2).forEach((step, at) => assert.ok(Math.abs(step.from - steps[at].from - steps[at].loss) < 1e-12));
  assert.deepEqual(steps.slice(-2), [
    {name: 'Whole line', from: 0, loss: 1.7},
    {name: 'Whole line, at worst', from: 0, loss: 2.2},
  ]);
  const {from: lastFrom, loss: lastLoss} = steps[steps.length - 3];
  assert.ok(Math.abs(lastFrom + lastLoss - 1.7) < 1e-12);
  assert.deepEqual(
    lossFigure(RESULT).data[0].base,
    steps.map(({from}) => from),
  );
});

test('a line without mismatch has no step for it', () => {
  assert.equal(lossSteps({...RESULT, mismatch_db: 0})[0].name, '1. one');
});

test('every band has a slot of its own and the curve breaks between them', () => {
  const {x} = bandSlots(RESULT);
  const [worst, curve] = bandFigure({result: RESULT, key: 'vswr', title: ''}).data;

  assert.deepEqual(x.map(Math.floor), [0, 0, 1, 1]);
  assert.deepEqual(curve.y, [1, 2, null, 3, 4, null]);
  assert.deepEqual(worst.y, [1.5, 2, null, 4, 5, null]);
  assert.equal(curve.customdata[0], '7 MHz');
});

test('an SWR far above the others leaves the chart, that of the band looked at never', () => {
  const with160 = (vswr_high) => ({...RESULT, sweep: {...RESULT.sweep, vswr_high}});

  assert.equal(highestDrawn(RESULT), undefined);
  assert.equal(highestDrawn(with160([2, 2, 8000, null])), 10);
  assert.equal(highestDrawn(with160([20, 25, 8000, 5])), 30);
  /** @type {any} */
  const axis = bandFigure({result: with160([2, 2, 8000, 5]), key: 'vswr', title: ''}).layout.yaxis;
  assert.deepEqual(axis.range, [0.9, 10]);
});

test('the spread is drawn from its lowest to its highest percentile in the band it belongs to', () => {
  /** @type {any} */
  const spread = {bands: [{column: {id: '70cm'}, vswr: [1.1, 1.5, 2], margin_db: [null, null, null]}]};

  const [shade] = bandFigure({result: RESULT, spread, key: 'vswr', title: ''}).data;
  assert.deepEqual(shade.y, [1.1, 1.1, 2, 2, 1.1, null]);
  assert.ok(shade.x.slice(0, 5).every((x) => x > 1 && x < 2));
  assert.deepEqual(bandFigure({result: RESULT, spread, key: 'margin_db', title: ''}).data[0].y, []);
});

test('the bounds of the VSWR are told for the band looked at', () => {
  /** @type {any} */
  const here = {column: {name: '20 m'}, vswr: [1.59, 1.6, 1.7, 1.8, 1.952], likely_vswr: 1.77, worst_vswr: null};

  assert.equal(
    boundWords({bands: [here]}),
    'On 20 m the SWR at the transmitter is 1.59 to 1.95 in nine of ten; ' +
      'by the root of the sum of squares 1.77, at the worst without bound.',
  );
});

test('the ends of the elements are marked once each along the wave', () => {
  assert.deepEqual(boundaries(RESULT), [0, 3, 10]);
  assert.equal(waveFigure(RESULT).layout.shapes.length, 3);
});

test('a long line is drawn between the largest and the least of each half wave', () => {
  const {data} = waveFigure({
    ...RESULT,
    standing_wave: {...RESULT.standing_wave, voltage_low_v: [1, 1, 1, 1, 0.5], current_low_a: [1, 1, 0.5, 0.5, 1]},
  });

  assert.deepEqual(
    data.map(({y}) => y[0]),
    [1, 1, 1, 3],
  );
  assert.deepEqual(
    data.map(({fill}) => fill),
    [undefined, 'tonexty', undefined, undefined],
  );
  assert.equal(waveFigure(RESULT).data.length, 2);
  const none = {...RESULT.standing_wave, distance_m: [], voltage_v: [], current_a: []};
  assert.deepEqual(waveFigure({...RESULT, standing_wave: none}).layout.yaxis2.range, [0, 1]);
});

test('the load itself loses nothing of the line', () => {
  const withLoad = {...RESULT, parts: [...RESULT.parts, part(2, 'Dummy load', {kind: 'load', loss_db: null})]};

  assert.deepEqual(lossSteps(withLoad), lossSteps(RESULT));
});

test('what is likely stands beside the worst, and an impedance only where it is known', () => {
  const words = sides(RESULT).map(({id, likely, worst}) => [id, likely, worst]);

  assert.deepEqual(words, [
    ['delivered', '67.6 W', '60.3 W'],
    ['loss', '1.70 dB', '2.20 dB'],
    ['swr', '1.6', '1.8'],
    ['impedance', '70 − j 12 Ω', '80 + j 15 Ω'],
  ]);
  const unknown = {vswr: 3, resistance_ohm: null, reactance_ohm: null};
  const ids = sides({...RESULT, power_w: 0, input: unknown, input_cautious: unknown}).map(({id}) => id);
  assert.deepEqual(ids, ['loss', 'swr']);
  assert.equal(pairWords({likely: '67.6 W', worst: '60.3 W'}), '67.6 W, at worst 60.3 W');
  assert.equal(pairWords({likely: '1.6', worst: '1.6'}), '1.6');
});

test('a meter says what it reads, and a tuner what it found', () => {
  const meter = part(0, 'SWR meter', {kind: 'part', reads_vswr: [1.4, 1.93]});
  const sentence = 'It can’t match this.';
  const parts = [
    {what: 'capacitor', henry: null, farad: 130e-12},
    {what: 'coil', henry: 2.79e-6, farad: null},
  ];
  const tuner = part(1, 'Tuner', {kind: 'tuner', tuner: {reachable: false, parts, sentence}});
  const read = (at) => readElement({...RESULT, parts: [meter, tuner]}, at);

  assert.equal(read(0).brief, 'reads SWR 1.4 to 1.93');
  assert.equal(read(1).brief, 'can’t match this');
  assert.deepEqual(read(1).says, ['Tuner: it can’t match this. Set to 130 pF, 2.79 µH, from the transmitter on.']);
});

test('an element says its smallest margin, what sets it and what it loses in all', () => {
  const adapter = readElement(RESULT, 1);

  assert.equal(adapter.margin, 2);
  assert.equal(adapter.limited, 'voltage');
  assert.equal(adapter.loss, 1);
  assert.equal(adapter.weakest, true);
  assert.equal(readElement(RESULT, 0).weakest, false);
});

test('a refused part takes the number away and says why', () => {
  const refused = {
    ...RESULT,
    parts: [part(0, 'one', {refused_by: 'te11', refusal: 'A second mode.', margin_db: null})],
  };

  assert.deepEqual([readElement(refused, 0).margin, readElement(refused, 0).refusal], [null, 'A second mode.']);
  assert.match(spokenPart(refused.parts[0], false), /refused: A second mode/);
});

test('an element moved since the answer is found by itself, a changed one is not', () => {
  const [a, b] = [{kind: 'joint'}, {kind: 'joint'}];
  const answered = {elements: [a, b]};

  assert.equal(placeIn(answered, b, 1), 1);
  assert.equal(placeIn(answered, a, 1), 0);
  assert.equal(placeIn(answered, {...a}, 0), -1);
  assert.equal(placeIn(undefined, a, 0), -1);
});

test('an element without a name is called what it is', () => {
  const names = {
    cables: [{id: 'x', name: 'X-1'}],
    families: [{id: 'n', name: 'N'}],
    wire_lines: [{id: 'w', name: '450 Ω window line'}],
  };

  assert.equal(nameOf({kind: 'cable', cable: 'x', length_m: 2.5}, names), '2.5 m of X-1');
  assert.equal(nameOf({kind: 'joint', family: 'n', adapter_to: 'q'}, names), 'N to q');
  assert.equal(nameOf({kind: 'part', loss_db: 1, name: 'Switch'}, names), 'Switch');
  assert.equal(nameOf({kind: 'part', loss_db: 1, what: 'meter'}, names), 'Meter');
  assert.equal(nameOf({kind: 'wires', line: 'w', length_m: 20}, names), '20 m of 450 Ω window line');
  assert.equal(nameOf({kind: 'tuner'}, names), 'Tuner');
  assert.equal(nameOf({kind: 'transformer', ratio: 4}, names), 'Transformer');
  assert.equal(nameOf({kind: 'section', impedance_ohm: 75, length_m: 3.49}, names), '3.49 m section of 75 Ω');
});

test('a loss is told to a hundredth, a tiny one by its first digit', () => {
  assert.deepEqual([0.7014, 0.00299, 0, null].map(lossWords), ['0.70 dB', '0.003 dB', '0 dB', '–']);
});

test('the sentence on receive holds the numbers of its two bands', () => {
  assert.deepEqual(
    contrast(RESULT).map(({id}) => id),
    ['40m', '70cm'],
  );
  const words = contrastWords(RESULT);
  assert.match(words, /On 40m this line loses up to 1\.0 dB and costs nothing audible on receive \(0\.02 dB\)/);
  assert.match(words, /0\.01 dB of signal over noise on 40m.*0\.60 dB on 70cm/);
});

test('what comes in by the antenna is told in kelvin where it is a number one would say', () => {
  /** @type {any} - what is read of it */
  const reception = {
    heard: 'Sky, 30° up; rural',
    external_noise_db: -5.93,
    system_noise_db: -0.76,
    antenna_temperature_k: 74.04,
    system_temperature_k: 243.6,
  };

  assert.equal(
    noiseWords(reception),
    'Sky, 30° up; rural. Noise at the antenna 74 K, with line and receiver 244 K. ' +
      'Over k·T₀·b: −5.9 dB at the antenna, −0.8 dB with line and receiver.',
  );
  const loud = {
    heard: 'Rural',
    external_noise_db: 43.79,
    system_noise_db: 43.8,
    antenna_temperature_k: 6.9e6,
    system_temperature_k: 7e6,
  };
  assert.equal(
    noiseWords({...reception, ...loud}),
    'Rural. Over k·T₀·b: +43.8 dB at the antenna, +43.8 dB with line and receiver.',
  );
  assert.equal(noiseWords({...reception, system_noise_db: null}), '');
});

test('without two bands to set against each other nothing is claimed', () => {
  assert.equal(contrastWords({...RESULT, bands: [band('40m', 1)]}), '');
});
