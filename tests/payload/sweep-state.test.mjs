/** A sweep as data: requests, files that are not read, lines to choose from, figures, and the kept history. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {FIRST_DOCUMENT} from '../../frontend/src/shared/lines/document.js';
import {EXAMPLE} from '../../frontend/src/shared/lines/example.js';
import {EXAMPLES} from '../../frontend/src/sweep/example-sweeps.js';
import {distanceFigure, historyFigure, impedanceOf, lineSmith} from '../../frontend/src/sweep/figures.js';
import {added, checkedEntries, contentOf, entryOf, fromFile, historyOf} from '../../frontend/src/sweep/history.js';
import {choices, isExample, lineOf, ownId} from '../../frontend/src/sweep/lines.js';
import {jointWords, leastWords, refusalWords, sizeWords} from '../../frontend/src/sweep/reading.js';
import {MOST_BYTES, sweepRequest, tooLarge} from '../../frontend/src/sweep/request.js';

const STATE = {of: 'line', end: 'short', length_tolerance: 0.02, window_shape: null};
const FILE = {name: 'mast.s1p', text: '# MHz S RI R 50\n1 0 0\n'};
const JOINT = {
  element: 2,
  name: 'N',
  distance_m: 3,
  measured: 0.1,
  expected: 0.01,
  excess: 0.09,
  threshold: 0.02,
  seen: true,
  shadowed: false,
  least_resistance_ohm: 0.2,
};
const CHECK = {
  suspect: 2,
  apart: [],
  transform: 'low-pass',
  joints: [JOINT],
  profile: {distance_m: [0, 3], measured: [0, 0.1], expected: [0, null], earlier: [], threshold: [0.02, 0.02]},
  curves: {frequency_hz: [1e6], measured_real: [-1], measured_imaginary: [0], fitted_real: [0], fitted_imaginary: [1]},
};
const RESULT = {ports: 1, verdict: 'Bad.', line: CHECK, part: null};
const entry = (date, more = {}) => ({...entryOf({date, line: 'Hut', file: FILE, result: RESULT}), ...more});

test('the request holds what the line consists of, its end and the file, and nothing only the Line view asks', () => {
  const request = sweepRequest(STATE, EXAMPLE, FILE, undefined);

  assert.deepEqual(request.load, {kind: 'end', what: 'short'});
  assert.deepEqual(request.elements, EXAMPLE.request.elements);
  assert.equal(request.touchstone, FILE.text);
  assert.deepEqual(
    ['power_w', 'band', 'earlier', 'window_shape'].filter((name) => name in request),
    [],
  );
});

test('the antenna of the line may stand at its end, and an earlier sweep beside', () => {
  const request = sweepRequest({...STATE, end: 'antenna', window_shape: 4}, EXAMPLE, FILE, {text: 'before'});

  assert.deepEqual(request.load, EXAMPLE.request.load);
  assert.deepEqual([request.earlier, request.window_shape], ['before', 4]);
});

test('a file is refused by its size, before it is read', () => {
  assert.equal(tooLarge({name: 'a.s1p', size: MOST_BYTES}), '');
  assert.equal(tooLarge({name: 'a.s1p', size: 100e6}), 'a.s1p has 100 MB; allowed: a Touchstone file of at most 8 MB.');
});

test('a file that can’t be used is spoken of by its own name, with the line or what was found', () => {
  const said = (value, allowed, field = 'touchstone') => refusalWords({field, message: 'All.', value, allowed}, 'a.s1p');

  assert.equal(
    said('"2 zero 0"', 'on line 3, numbers such as 14.2'),
    'a.s1p can’t be read: line 3 is "2 zero 0". What can stand there: numbers such as 14.2.',
  );
  assert.equal(said('"3 points"', 'a sweep of 16'), 'a.s1p can’t be used: found 3 points, needed a sweep of 16.');
  assert.equal(said('7', 'less', 'length_tolerance'), 'All.');
});

test('examples and the lines of the Line view can be chosen; an unknown one is the first example', () => {
  assert.deepEqual(
    choices(FIRST_DOCUMENT).map(([id]) => id),
    ['line', 'jumper', ownId(0)],
  );
  assert.equal(lineOf(ownId(0), FIRST_DOCUMENT).name, EXAMPLE.name);
  assert.equal(lineOf(ownId(7), FIRST_DOCUMENT).name, EXAMPLES.line.name);
  assert.ok(isExample('jumper') && !isExample(ownId(0)));
});

test('a reflection stands on the Smith chart at its impedance', () => {
  assert.deepEqual(impedanceOf(0, 0), [1, 0]);
  assert.deepEqual(impedanceOf(-1, 0), [0, 0]);
  assert.deepEqual(impedanceOf(0, 1), [0, 1]);
  assert.deepEqual(impedanceOf(null, 0), [null, null]);
  assert.equal(lineSmith(CHECK).data[0].type, 'scattersmith');
});

test('the bad joint is marked on the distance axis, and the shading is open where nothing is known', () => {
  const {data, layout} = distanceFigure(CHECK);

  assert.deepEqual(
    layout.shapes.map(({x0, line}) => [x0, line.width]),
    [[3, 2.5]],
  );
  assert.deepEqual(data[1].y, [0.02, null]);
  assert.equal(layout.annotations[0].text, '3 · N');
});

test('a joint is told as bad, as one of some, as hidden behind the fault, or as sound', () => {
  assert.equal(jointWords(JOINT, CHECK), 'bad');
  assert.equal(jointWords(JOINT, {suspect: null, apart: [2]}), 'one of these');
  assert.equal(jointWords({...JOINT, shadowed: true}, {suspect: 0, apart: []}), 'behind the fault');
  assert.equal(
    jointWords({...JOINT, seen: false, least_resistance_ohm: null}, {suspect: null, apart: []}),
    'not to be judged with this end',
  );
  assert.equal(leastWords(JOINT), '200 mΩ');
  assert.equal(
    sizeWords({name: 'added resistance', unit: 'Ω', value: 1.25, low: 1.2, high: 1.3}),
    'added resistance 1.25 Ω (1.2 Ω to 1.3 Ω)',
  );
});

test('kept sweeps stand by day, one of a line, day and file once', () => {
  const kept = [entry('2026-11-02'), entry('2026-10-01'), entry('2026-11-02', {verdict: 'Again.'})].reduce(added, []);

  assert.deepEqual(
    kept.map(({date, verdict}) => [date, verdict]),
    [
      ['2026-10-01', 'Bad.'],
      ['2026-11-02', 'Again.'],
    ],
  );
});

test('history is drawn from two sweeps of a line on: each joint, or the resistance of a part', () => {
  const part = (date, ohm) => entry(date, {ports: 2, joints: [], resistance_ohm: ohm});

  assert.equal(historyOf([entry('2026-10-01')], 'Hut'), undefined);
  assert.deepEqual(historyOf([entry('2026-10-01'), entry('2026-11-02')], 'Hut')?.series, [
    {name: '3 · N', dates: ['2026-10-01', '2026-11-02'], values: [0.09, 0.09]},
  ]);
  const ofPart = historyOf([part('2026-10-01', 0.1), part('2026-11-02', 0.4)], 'Hut');
  assert.ok(ofPart);
  assert.deepEqual(historyFigure(ofPart).data[0].y, [0.1, 0.4]);
});

test('kept sweeps go into a file and come back whole', () => {
  const kept = [entry('2026-10-01'), entry('2026-11-02', {ports: 2, joints: [], resistance_ohm: 0.3})];

  assert.deepEqual(fromFile(JSON.stringify({made_by: 'Jointwise 0.2.0', ...contentOf(kept)})), kept);
});

test('a bad file of kept sweeps is refused with what is wrong', () => {
  const refused = (changes, words) =>
    assert.throws(() => checkedEntries([{...entry('2026-10-01'), ...changes}]), {name: 'RangeError', message: words});

  refused({date: '2026-13-01'}, /^sweeps\[0\]\.date is "2026-13-01"; allowed/);
  refused({ports: 3}, /^sweeps\[0\]\.ports is 3/);
  refused({joints: [{element: -1, name: '', excess: 0}]}, /^sweeps\[0\]\.joints\[0\]\.element is -1/);
  refused({text: 7}, /^sweeps\[0\]\.text is 7/);
  assert.throws(() => fromFile('{'), /no JSON/);
  assert.throws(() => fromFile('{"format":"lines"}'), /^RangeError: format is "lines"/);
});
