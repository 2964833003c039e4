/** A sweep as data: requests, files that are not read, lines to choose from, figures, and the kept history. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {FIRST_DOCUMENT} from '../../frontend/src/shared/lines/document.js';
import {EXAMPLE} from '../../frontend/src/shared/lines/example.js';
import {EXAMPLES} from '../../frontend/src/sweep/example-sweeps.js';
import {changeWords, spotsOf} from '../../frontend/src/sweep/change.js';
import {
  changeFigure,
  distanceFigure,
  echoFigure,
  historyFigure,
  impedanceOf,
  lineSmith,
} from '../../frontend/src/sweep/figures.js';
import {
  added,
  checkedEntries,
  contentOf,
  entryOf,
  fromFile,
  historyOf,
} from '../../frontend/src/shared/sweeps/history.js';
import {STEPS, checkedHunt, errand, stepAfter} from '../../frontend/src/sweep/hunt.js';
import {NO_LINE, choices, isExample, lineOf, ownId} from '../../frontend/src/sweep/lines.js';
import {placeAt} from '../../frontend/src/sweep/places.js';
import {findingOf, leastWords, oddsWords, partsOf, refusalWords, sizeWords} from '../../frontend/src/sweep/reading.js';
import {MOST_BYTES, spanRequest, sweepRequest, tooLarge} from '../../frontend/src/sweep/request.js';

const ANALYSER = {length_m: 30, velocity_factor: 0.8, lowest_hz: 1e6, highest_hz: 9e8, most_points: 201};
/** @type {import('../../frontend/src/sweep/request.js').SweepState} */
const STATE = {of: 'line', way: 'judge', end: 'short', length_tolerance: 0.02, window_shape: null, ...ANALYSER};
const FILE = {name: 'mast.s1p', text: '# MHz S RI R 50\n1 0 0\n'};
const JOINT = {
  element: 2,
  name: 'N',
  distance_m: 3,
  measured: 0.1,
  expected: 0.01,
  excess: 0.09,
  threshold: 0.02,
  state: 'bad',
  words: 'adds about 2 Ω in series',
  least_resistance_ohm: 0.2,
  least_capacitance_f: 2e-12,
};
const CABLE = {element: 1, name: '3 m of RG-58', from_m: 0, to_m: 3, state: 'sound', words: 'no sign of damage'};
const FAULT = {element: 2, part: 'N', where: 'joint', distance_m: 3, low_m: 2.9, high_m: 3.1, name: 'adds', likely: ''};
/** @type {any} */
const CHECK = {
  finding: 'suspect',
  faults: [FAULT],
  apart: [],
  transform: 'low-pass',
  resolution_m: 0.5,
  range_m: 100,
  joints: [JOINT],
  cables: [CABLE],
  profile: {distance_m: [0, 3], measured: [0, 0.1], expected: [0, null], earlier: [], threshold: [0.02, 0.02]},
  curves: {frequency_hz: [1e6], measured_real: [-1], measured_imaginary: [0], fitted_real: [0], fitted_imaginary: [1]},
};
const RESULT = {ports: 1, verdict: 'Bad.', line: CHECK, part: null};
/** The example line as it is asked: with what the station gives. */
const WHOLE = {
  ...EXAMPLE,
  request: {...EXAMPLE.request, load: {kind: 'vswr', vswr: 2}, power_w: 100, mode: 'ssb', band: '20m'},
};

const entry = (date, more = {}) => ({...entryOf({date, line: 'Hut', file: FILE, result: RESULT}), ...more});

test('the request holds what the line consists of, its end and the file, and nothing only the Line view asks', () => {
  const request = sweepRequest(STATE, WHOLE, FILE, undefined);

  assert.deepEqual(request.load, {kind: 'end', what: 'short'});
  assert.deepEqual(request.elements, WHOLE.request.elements);
  assert.equal(request.touchstone, FILE.text);
  assert.deepEqual(
    ['power_w', 'band', 'earlier', 'window_shape'].filter((name) => name in request),
    [],
  );
});

test('the antenna of the line may stand at its end, and an earlier sweep beside', () => {
  const request = sweepRequest({...STATE, end: 'antenna', window_shape: 4}, WHOLE, FILE, {text: 'before'});

  assert.deepEqual(request.load, WHOLE.request.load);
  assert.deepEqual([request.earlier, request.window_shape], ['before', 4]);
});

test('of a line not described its velocity factor is asked, and nothing of its end or lengths', () => {
  const request = sweepRequest(STATE, lineOf(NO_LINE, FIRST_DOCUMENT), FILE, undefined);

  assert.deepEqual(request, {elements: [], velocity_factor: 0.8, touchstone: FILE.text});
});

test('the span is asked of the line as it is, with what the analyser can do', () => {
  const request = spanRequest(STATE, WHOLE);

  assert.equal(request.elements, WHOLE.request.elements);
  assert.equal(request.mode, WHOLE.request.mode);
  assert.deepEqual(
    ['power_w', 'load', 'band', 'end'].filter((name) => name in request),
    [],
  );
  assert.equal(request.most_points, 201);
});

test('a file is refused by its size, before it is read', () => {
  assert.equal(tooLarge({name: 'a.s1p', size: MOST_BYTES}), '');
  assert.equal(tooLarge({name: 'a.s1p', size: 100e6}), 'a.s1p has 100 MB; allowed: a Touchstone file of at most 8 MB.');
});

test('a file that can’t be used is spoken of by its own name, with the line or what was found', () => {
  const said = (value, allowed, field = 'touchstone') =>
    refusalWords({field, message: 'All.', value, allowed}, 'a.s1p');

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
    ['line', 'jumper', ownId(0), NO_LINE],
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
  assert.equal(layout.annotations[0].text, '! 3 · N');
});

test('a damaged stretch of cable is shaded, and drawn as no joint', () => {
  const {layout} = distanceFigure({...CHECK, faults: [{...FAULT, element: 1, where: 'cable'}]});

  assert.deepEqual(
    layout.shapes.map(({type, x0, x1}) => [type, x0, x1]),
    [
      ['rect', 0, 3],
      ['line', 3, 3],
    ],
  );
});

test('joints and cables stand in the order of the line, each with its place', () => {
  assert.deepEqual(
    partsOf(CHECK).map(({element, place}) => [element, place]),
    [
      [1, '0 to 3 m'],
      [2, 'at 3 m'],
    ],
  );
});

test('each finding has a mark, and an answer without a line is one of echoes', () => {
  /** @param {any} answer */
  const found = (answer) => findingOf({line: null, part: null, ...answer});

  assert.equal(found({line: {finding: 'cannot tell'}}).words, 'Can’t tell');
  assert.equal(found({part: {finding: 'failed'}}).mark, '!');
  assert.equal(found({echoes: {}}).words, 'Echoes by distance');
});

test('numbers of a fault and odds are told as one says them', () => {
  assert.equal(leastWords(JOINT), '200 mΩ, 2 pF');
  assert.equal(leastWords({...JOINT, least_capacitance_f: null}), '200 mΩ, –');
  assert.equal(oddsWords({evidence: Math.log(20)}), '20 to 1');
  assert.equal(oddsWords({evidence: Math.log(3e7)}), '10^7 to 1');
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

const PROFILE = {
  distance_m: [0, 1, 2, 3, 4, 5, 6, 7, 8],
  measured: [0, 0.001, 0, 0.1, 0, -0.001, 0, 0, -0.9],
  expected: [0, 0, 0, 0.01, 0, 0, 0, 0, -0.9],
  earlier: [],
  threshold: [0.02, 0.02, 0.02, 0.02, 0.02, 0.02, 0.02, 0.02, 0.02],
};
/** @type {any} */
const ALONG = {
  ...CHECK,
  profile: PROFILE,
  cables: [CABLE, {...CABLE, element: 3, name: '5 m of RG-58', from_m: 3, to_m: 8}],
};
/** @type {any} */
const ECHOES = {
  resolution_m: 0.5,
  range_m: 100,
  transform: 'low-pass',
  velocity_factor: 0.8,
  echoes: [
    {distance_m: 3, low_m: 2.9, high_m: 3.1, reflection: 0.1, sign: 'higher', words: 'The impedance rises there.'},
    {distance_m: 8, low_m: 7.9, high_m: 8.1, reflection: -0.9, sign: 'lower', words: 'It may be the end.'},
  ],
  profile: {...PROFILE, expected: PROFILE.expected.map(() => null)},
};

test('a distance is told by the part that lies there, what comes back, and how far the joints are', () => {
  assert.deepEqual(placeAt(ALONG, 3), {
    echo: '0.1 of the wave comes back from there, more than a good line shows.',
    part: 'That is N, at 3 m: adds about 2 Ω in series.',
  });
  assert.deepEqual(placeAt(ALONG, 5), {
    echo: '0.001 of the wave comes back from there: nothing that stands out.',
    part: 'That is in 5 m of RG-58, 2 m after N: no sign of damage.',
  });
  assert.match(placeAt(ALONG, 200).echo, /sees no farther than 100 m/);
  assert.match(placeAt(ALONG, 50).echo, /beyond the end of the chart, 8 m/);
});

test('without a line a distance is told by the nearest echo', () => {
  assert.equal(placeAt(ECHOES, 3.2).part, 'The echo at 3 m (2.9 m to 3.1 m): The impedance rises there.');
  assert.match(placeAt(ECHOES, 5).part, /^The nearest echo is at 3 m .*, 2 m away:/);
  assert.equal(placeAt({...ECHOES, echoes: []}, 5).part, 'No echo stands out in this sweep.');
});

/** @type {any} */
const BEFORE = {line: ALONG, part: null, echoes: null};
/** @returns {any} */
const swept = (measured, finding, faults, earlier = PROFILE.measured) => ({
  line: {...ALONG, finding, faults, profile: {...PROFILE, measured, earlier}},
  part: null,
  echoes: null,
});
const mendedTo = (echo) => PROFILE.measured.map((value, at) => (at === 3 ? echo : value + 0.0005));

test('after a repair the page says whether the place still stands out, and what does now', () => {
  const other = {...FAULT, element: 3, part: 'Cable', where: 'cable', distance_m: 5};

  assert.deepEqual(changeWords(BEFORE, swept(mendedTo(0.01), 'sound', [])), [
    'N no longer stands out: the echo there went from 0.1 to 0.01.',
    'Nothing else is found.',
  ]);
  assert.match(changeWords(BEFORE, swept(mendedTo(0.05), 'suspect', [FAULT]))[0], /^N changed and still stands out/);
  assert.match(changeWords(BEFORE, swept(mendedTo(0.1005), 'suspect', [FAULT]))[0], /^N is as it was/);
  assert.equal(changeWords(BEFORE, swept(mendedTo(0.01), 'damage', [other]))[1], 'What stands out now: Cable at 5 m.');
  assert.match(changeWords(BEFORE, swept(mendedTo(0.01), 'cannot tell', []))[0], /second sweep can’t be judged/);
});

test('of two sweeps that name nothing, and of a part, the change is told too', () => {
  const none = {...BEFORE, line: {...ALONG, finding: 'sound', faults: []}};

  assert.match(changeWords(none, swept(mendedTo(0.01), 'sound', []))[0], /differ most at 3 m, by 0\.09/);
  assert.match(changeWords(none, swept(mendedTo(0.1005), 'sound', []))[0], /^Nothing changed/);
  /** @type {any} */
  const part = {line: null, echoes: null, part: {trend: {sentence: 'It has risen.'}}};
  assert.deepEqual(changeWords(part, part), ['It has risen.']);
});

test('without a line each echo but the last is compared', () => {
  /** @type {any} */
  const then = {line: null, part: null, echoes: ECHOES};
  const now = {...ECHOES, profile: {...PROFILE, measured: mendedTo(0.02), earlier: PROFILE.measured}};

  assert.deepEqual(changeWords(then, {...then, echoes: now}), [
    '3 m got better: the echo there went from 0.1 to 0.02.',
  ]);
  assert.equal(echoFigure(ECHOES).layout.annotations[0].text, '3 m');
});

test('before and after are drawn over each other, and the end’s echo does not flatten them', () => {
  const check = swept(mendedTo(0.01), 'sound', []).line;
  const {data, layout} = changeFigure({profile: check.profile, places: spotsOf(BEFORE)});

  assert.deepEqual(
    data.map(({name, y}) => [name, y[3]]),
    [
      ['before', 0.1],
      ['after', 0.01],
    ],
  );
  assert.equal(layout.annotations[0].text, 'N');
  assert.ok(layout.yaxis.range[1] > 0.1);
});

test('a kept hunt comes back at its step, and one that was changed from outside does not', () => {
  assert.deepEqual(checkedHunt({of: 'own-0', at: 'compare', file: FILE}), {of: 'own-0', at: 'again', file: FILE});
  assert.deepEqual(checkedHunt({of: 'none', at: 'safe', file: null}), {of: 'none', at: 'safe', file: null});
  for (const spoilt of [null, {of: 'none', at: 'home', file: null}, {of: 'none', at: 'safe', file: {name: 'a'}}])
    assert.throws(() => checkedHunt(spoilt), RangeError);
});

test('each step of the hunt leads to the next, and the errand follows the verdict', () => {
  const walked = [];
  for (let at = STEPS[0][0]; at; at = stepAfter(at)) walked.push(at);
  assert.deepEqual(
    walked,
    STEPS.map(([id]) => id),
  );

  assert.deepEqual(errand(BEFORE).places, ['N, 2.9 m to 3.1 m from the analyser']);
  const exact = {...ALONG, faults: [{...FAULT, low_m: 3, high_m: 3}]};
  assert.deepEqual(errand({...BEFORE, line: exact}).places, ['N, 3 m from the analyser']);
  const inCable = {...ALONG, finding: 'damage', faults: [{...FAULT, where: 'cable'}]};
  assert.match(errand({...BEFORE, line: inCable}).work[0], /^Follow the cable/);
  const unclear = {...ALONG, finding: 'unclear', faults: [], apart: [1, 2]};
  assert.deepEqual(errand({...BEFORE, line: unclear}).places, [
    '3 m of RG-58, 1.5 m from the analyser',
    'N, 3 m from the analyser',
  ]);
  assert.deepEqual(errand({...BEFORE, line: {...ALONG, finding: 'sound', faults: []}}).places, []);
});
