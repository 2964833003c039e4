/** The lines of the page as data: edits, undo, links, files, and what the browser keeps. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {landing} from '../../frontend/src/line/editor/drag.js';
import {readingsOfPoints, rowsOf} from '../../frontend/src/line/editor/rows.js';
import {edited} from '../../frontend/src/line/edits.js';
import {contentOf, fromFile} from '../../frontend/src/line/file.js';
import {newLoads, offered} from '../../frontend/src/line/new-parts.js';
import {explained, headingOf} from '../../frontend/src/line/open.js';
import {placed, placeOf} from '../../frontend/src/line/placed.js';
import {taken} from '../../frontend/src/line/take.js';
import {checkedRequest} from '../../frontend/src/shared/lines/checked.js';
import {FIRST_DOCUMENT, currentOf} from '../../frontend/src/shared/lines/document.js';
import {EXAMPLE} from '../../frontend/src/shared/lines/example.js';
import {groupOf} from '../../frontend/src/shared/lines/kinds.js';
import {KEPT_LINES} from '../../frontend/src/shared/lines/kept.js';
import {fromLink, toLink} from '../../frontend/src/shared/lines/link.js';
import {LONGEST_LINK} from '../../frontend/src/shared/state/document-link.js';
import {KeptDocument} from '../../frontend/src/shared/state/kept-document.js';

const number = (min, max, more = {}) => ({type: 'number', min, max, nullable: false, default: null, ...more});
const name = {type: 'text', longest: 60, nullable: false, default: ''};
const TABLE = {
  cable: {
    cable: {type: 'choice', choices: ['rg_58', 'rg_213'], nullable: false, default: null},
    length_m: number(0.01, 10_000),
    name,
  },
  joint: {
    family: {type: 'choice', choices: ['uhf', 'n'], nullable: false, default: null},
    adapter_to: {type: 'choice', choices: ['uhf', 'n'], nullable: true, default: null},
    exposure: {type: 'choice', choices: ['indoor', 'exposed'], nullable: true, default: null},
    name,
  },
  part: {
    what: {type: 'choice', choices: ['arrester', 'meter', 'other'], nullable: false, default: 'other'},
    loss_db: number(0, 100),
    vswr: number(1, 20, {default: 1}),
    power_limit_w: number(0.001, 1e6, {nullable: true}),
    voltage_limit_v: number(1, 1e6, {nullable: true}),
    name,
  },
  measured: {touchstone: {type: 'text', longest: 100, nullable: false, default: null}, name},
  load_vswr: {vswr: number(1, 100), angle_deg: number(-360, 360, {nullable: true})},
  transmitter: {
    behaviour: {type: 'choice', choices: ['transceiver', 'keeps_forward'], nullable: false, default: 'transceiver'},
    holds_to_vswr: number(1, 100, {nullable: true}),
  },
  point: {
    frequency_hz: number(1e5, 5e10),
    resistance_ohm: number(0, 1e6),
    reactance_ohm: number(-1e6, 1e6, {default: 0}),
  },
  receiver: {
    noise_figure_db: number(0, 60, {default: 6}),
    antenna_view: {type: 'choice', choices: ['horizon', 'sky'], nullable: false, default: 'horizon'},
    elevation_deg: number(0, 90, {default: 30}),
    antenna_temperature_k: number(1, 1e9, {nullable: true}),
  },
  preamplifier: {before_element: number(0, 59), gain_db: number(0, 60, {default: 15})},
  station: {
    power_w: number(0, 1e5, {default: 100}),
    mode: {...name, default: 'ssb'},
    band: {...name, nullable: true, default: null},
  },
};

const kinds = (document) => currentOf(document).request.elements.map(({kind}) => kind);
const elementsAfter = (edit) => currentOf(edited(FIRST_DOCUMENT, edit)).request.elements;
const elementless = (load) => currentOf(edited(FIRST_DOCUMENT, {kind: 'load', load})).request;
const {elements} = EXAMPLE.request;

test('an edit of a field changes that field alone and leaves the old document whole', () => {
  const before = JSON.stringify(FIRST_DOCUMENT);

  const after = elementsAfter({kind: 'set', at: 1, changes: {length_m: 5}});

  assert.deepEqual(after[1], {...elements[1], length_m: 5});
  assert.equal(after[0], elements[0]);
  assert.equal(JSON.stringify(FIRST_DOCUMENT), before);
});

test('a view takes the place of a temperature of the antenna', () => {
  const given = edited(FIRST_DOCUMENT, {kind: 'receiver', changes: {antenna_temperature_k: 40}});
  const viewed = edited(given, {kind: 'receiver', changes: {antenna_view: 'sky', antenna_temperature_k: null}});

  assert.deepEqual(currentOf(given).request.receiver, {antenna_temperature_k: 40});
  assert.deepEqual(currentOf(viewed).request.receiver, {antenna_view: 'sky'});
});

test('a field set to nothing is left out', () => {
  assert.equal('exposure' in elementsAfter({kind: 'set', at: 6, changes: {exposure: null}})[6], false);
});

test('a moved element stands at its new place and the others close up', () => {
  const moved = elementsAfter({kind: 'move', at: 1, to: 3});

  assert.deepEqual(moved, [elements[0], elements[2], elements[3], elements[1], ...elements.slice(4)]);
});

test('a move beyond either end changes nothing', () => {
  assert.equal(edited(FIRST_DOCUMENT, {kind: 'move', at: 0, to: -1}), FIRST_DOCUMENT);
  assert.equal(edited(FIRST_DOCUMENT, {kind: 'move', at: 6, to: 7}), FIRST_DOCUMENT);
});

test('a duplicate follows its original; the last element cannot be removed', () => {
  assert.equal(elementsAfter({kind: 'duplicate', at: 3})[4], elements[3]);
  const single = {lines: [{name: 'one', request: {...EXAMPLE.request, elements: [elements[0]]}}], current: 0};
  assert.equal(edited(single, {kind: 'remove', at: 0}), single);
});

test('a preamplifier stays at its element when others move, come or go, and goes with it', () => {
  const preamplifier = {before_element: 3, gain_db: 15};
  const withIt = edited(FIRST_DOCUMENT, {kind: 'receiver', changes: {preamplifier}});
  const placeAfter = (edit) => currentOf(edited(withIt, edit)).request.receiver.preamplifier?.before_element;

  assert.equal(placeAfter({kind: 'move', at: 3, to: 0}), 0);
  assert.equal(placeAfter({kind: 'move', at: 0, to: 6}), 2);
  assert.equal(placeAfter({kind: 'add', at: 1, element: elements[1]}), 4);
  assert.equal(placeAfter({kind: 'remove', at: 0}), 2);
  assert.equal(placeAfter({kind: 'remove', at: 3}), undefined);
});

test('a kept copy has a name of its own and is shown; dropping it shows what is left', () => {
  const two = edited(FIRST_DOCUMENT, {kind: 'keep'});
  const three = edited(two, {kind: 'keep'});

  assert.deepEqual(
    three.lines.map((line) => line.name),
    ['Field day', 'Field day 2', 'Field day 3'],
  );
  assert.equal(three.current, 2);
  assert.equal(edited(three, {kind: 'drop', line: 2}).current, 1);
  assert.equal(edited(FIRST_DOCUMENT, {kind: 'drop', line: 0}), FIRST_DOCUMENT);
});

test('a dragged row lands among the others by where the pointer is', () => {
  const middles = [10, 30, 50, 70];

  assert.equal(landing(0, middles, 2), 0);
  assert.equal(landing(31, middles, 0), 1);
  assert.equal(landing(99, middles, 1), 3);
});

test('a change the core proposes is made in one step, and undone in one', () => {
  const n = {kind: 'joint', family: 'n'};
  const choke = {kind: 'transformer', ratio: 1};
  const edits = [
    {at: 0, element: n, insert: false},
    {at: 2, element: null, insert: false},
    {at: 5, element: choke, insert: true},
    {at: 7, element: n, insert: true},
  ];

  const changed = elementsAfter({kind: 'change', edits});

  assert.deepEqual(changed, [n, elements[1], elements[3], elements[4], choke, elements[5], elements[6], n]);
  assert.deepEqual(elementsAfter({kind: 'change', edits: edits.toReversed()}), changed);
});

test('a preamplifier goes along with a change the core proposes', () => {
  const withIt = edited(FIRST_DOCUMENT, {kind: 'receiver', changes: {preamplifier: {before_element: 5, gain_db: 15}}});
  const placeAfter = (edits) =>
    currentOf(edited(withIt, {kind: 'change', edits})).request.receiver.preamplifier?.before_element;

  assert.equal(placeAfter([{at: 0, element: elements[0], insert: true}]), 6);
  assert.equal(placeAfter([{at: 5, element: {...elements[5], cable: 'rg_58'}, insert: false}]), 5);
  assert.equal(placeAfter([{at: 5, element: null, insert: false}]), undefined);
});

test('what a transmitter is told is kept, and set to nothing it is left out', () => {
  const told = edited(FIRST_DOCUMENT, {kind: 'transmitter', changes: {holds_to_vswr: 3}});
  const usual = edited(told, {kind: 'transmitter', changes: {holds_to_vswr: null}});

  assert.deepEqual(currentOf(told).request.transmitter, {holds_to_vswr: 3});
  assert.deepEqual(currentOf(usual).request.transmitter, {});
});

test('an angle of nothing is an angle given, and one left out is unknown', () => {
  const given = elementless({kind: 'vswr', vswr: 3, angle_deg: 0});
  const unknown = elementless({kind: 'vswr', vswr: 3, angle_deg: null});

  assert.deepEqual(given.load, {kind: 'vswr', vswr: 3, angle_deg: 0});
  assert.deepEqual(unknown.load, {kind: 'vswr', vswr: 3});
  assert.deepEqual(fromLink(toLink({name: 'x', request: given}, null).fragment, TABLE).line?.request, given);
});

test('all that can be added has a name of its own, and a section is a quarter wave of the band', () => {
  const offers = offered(144.3e6).flatMap((group) => group.offers);
  const section = offers.find(({id}) => id === 'section')?.element;

  assert.equal(new Set(offers.map(({id}) => id)).size, offers.length);
  assert.equal(section?.length_m, 0.343);
  assert.equal(newLoads(144.3e6).resonant.resonance_hz, 144.3e6);
});

test('a part is spoken of by what it is', () => {
  assert.equal(groupOf({kind: 'part', what: 'meter'}), 'meter');
  assert.equal(groupOf({kind: 'part', what: 'other'}), 'part');
  assert.equal(groupOf({kind: 'part'}), 'part');
  assert.equal(groupOf({kind: 'joint', what: 'meter'}), 'joint');
});

test('a link brings its line, its name and what is open back', () => {
  const {fragment, whole} = toLink(EXAMPLE, '5');

  assert.equal(whole, true);
  assert.ok(fragment.length <= LONGEST_LINK);
  assert.deepEqual(fromLink(fragment, TABLE), {line: EXAMPLE, open: '5', problem: ''});
});

test('a line too long for a link is left out of it', () => {
  const long = {
    ...EXAMPLE,
    request: {...EXAMPLE.request, elements: [{kind: 'measured', touchstone: 'x'.repeat(2000)}]},
  };

  assert.deepEqual(toLink(long, null), {fragment: 'view=line', whole: false});
});

test('a link cut short, altered or unknown is named in words and brings nothing', () => {
  const {fragment} = toLink(EXAMPLE, null);
  for (const bad of [
    fragment.slice(0, -5),
    'view=line&line=%%%',
    `view=line&line=${btoa('{"elements":[{}]}')}`,
    'view=line&line=bnVsbA',
  ]) {
    const {line, problem} = fromLink(bad, TABLE);
    assert.equal(line, undefined);
    assert.match(problem, /^The line in this link can’t be used: .+\. Your own lines are shown instead\.$/);
  }
  assert.match(fromLink('view=line&colour=blue', TABLE).problem, /colour/);
});

test('an exported file comes back whole', () => {
  assert.deepEqual(fromFile(JSON.stringify(contentOf(FIRST_DOCUMENT.lines)), TABLE), FIRST_DOCUMENT.lines);
});

test('a bad file is refused with field, value and allowed range', () => {
  const refusal = (change) => {
    const file = structuredClone(contentOf(FIRST_DOCUMENT.lines));
    change(file);
    try {
      fromFile(JSON.stringify(file), TABLE);
    } catch (error) {
      assert.ok(error instanceof RangeError);
      return error.message;
    }
    return 'accepted';
  };
  const {request} = {request: (file) => file.lines[0].request};

  assert.equal(
    refusal((file) => (request(file).elements[1].length_m = -2)),
    'lines[0].request.elements[1].length_m is -2; allowed: a number from 0.01 to 10000.',
  );
  assert.equal(
    refusal((file) => delete request(file).elements[1].length_m),
    'lines[0].request.elements[1].length_m is left out; allowed: a number from 0.01 to 10000.',
  );
  assert.equal(
    refusal((file) => (request(file).elements[1].cable = 'string')),
    'lines[0].request.elements[1].cable is "string"; allowed: one of rg_58, rg_213.',
  );
  assert.equal(
    refusal((file) => (request(file).elements[0].colour = 'red')),
    'lines[0].request.elements[0].colour is "red"; allowed: only the fields kind, family, adapter_to, exposure, name.',
  );
  assert.equal(
    refusal((file) => (request(file).elements = {})),
    'lines[0].request.elements is {}; allowed: a list of 0 to 60 elements.',
  );
  assert.equal(
    refusal((file) => (request(file).load = {kind: 'magic'})),
    'lines[0].request.load.kind is "magic"; allowed: one of vswr, resonant, impedance, table, measured, dummy.',
  );
  assert.equal(
    refusal((file) => (request(file).transmitter = {holds_to_vswr: 0.5})),
    'lines[0].request.transmitter.holds_to_vswr is 0.5; allowed: a number from 1 to 100.',
  );
  assert.equal(
    refusal((file) => (request(file).receiver = {preamplifier: {before_element: 7}})),
    'lines[0].request.receiver.preamplifier.before_element is 7; allowed: 0 to 6.',
  );
  assert.equal(
    refusal((file) => (file.version = 2)),
    'version is 2; allowed: 1.',
  );
  assert.equal(
    refusal((file) => (file.lines = [])),
    'lines is []; allowed: a list of 1 to 48 lines.',
  );
  assert.throws(() => fromFile('no json', TABLE), /no JSON/);
});

test('what stands on Object.prototype is no field of a line', () => {
  assert.throws(
    () =>
      checkedRequest(
        JSON.parse(
          '{"elements": [{"kind": "part", "loss_db": 1, "constructor": 1}], "load": {"kind": "vswr", "vswr": 2}}',
        ),
        TABLE,
      ),
    RangeError,
  );
});

function storage(held = {}) {
  return {
    getItem: (key) => held[key] ?? null,
    setItem: (key, text) => (held[key] = text),
    removeItem: (key) => delete held[key],
    held,
  };
}

const keptLines = (store) => new KeptDocument(KEPT_LINES, store, TABLE, FIRST_DOCUMENT);

test('the browser keeps the lines and which one is shown', () => {
  const store = storage();
  const two = edited(FIRST_DOCUMENT, {kind: 'keep'});

  assert.equal(
    KEPT_LINES.remember(() => store, two),
    '',
  );
  const recalled = KEPT_LINES.recalled(() => store, TABLE);
  assert.deepEqual(recalled.document, two);
  assert.equal(recalled.problem, '');
});

test('a spoilt state is set aside, offered, and the page starts anew', () => {
  for (const spoilt of ['{"lines": [{}]}', 'nonsense', '[]', 'null']) {
    const store = storage({'jointwise-lines': spoilt});
    const document = keptLines(() => store);

    assert.deepEqual(document.present, FIRST_DOCUMENT);
    assert.equal(document.spoilt, spoilt);
    assert.match(document.problem, /set aside/);
    assert.equal(store.held['jointwise-lines-set-aside'], spoilt);
  }
});

test('without storage everything works and the loss is told', () => {
  const document = keptLines(() => {
    throw new Error('blocked');
  });
  assert.match(document.problem, /keeps nothing/);

  document.put(edited(document.present, {kind: 'duplicate', at: 1}));
  assert.equal(kinds(document.present).length, 8);
});

test('a full store is told and the line goes on', () => {
  const full = {
    ...storage(),
    setItem: () => {
      throw new DOMException('no room', 'QuotaExceededError');
    },
  };
  const document = keptLines(() => full);

  document.put(edited(document.present, {kind: 'remove', at: 0}));

  assert.match(document.problem, /no room/);
  assert.equal(kinds(document.present).length, 6);
});

test('a line from outside is shown where it is already here, and added where it is not', () => {
  const two = edited(FIRST_DOCUMENT, {kind: 'keep'});
  const other = {name: 'other', request: {...EXAMPLE.request, power_w: 5}};

  assert.deepEqual(taken(two, {...EXAMPLE, name: 'again'}), {kind: 'choose', line: 0});
  assert.deepEqual(edited(two, taken(two, other)).lines, [...two.lines, other]);
});

test('a refusal finds its field', () => {
  const found = placed({field: 'elements[1].length_m', message: 'Why.'});

  assert.deepEqual(found, {group: 'elements', at: 1, field: 'length_m', message: 'Why.'});
  assert.deepEqual(placeOf({field: 'receiver.preamplifier.gain_db'}), {group: 'preamplifier', field: 'gain_db'});
  assert.deepEqual(placeOf({field: 'transmitter.holds_to_vswr'}), {group: 'transmitter', field: 'holds_to_vswr'});
  assert.deepEqual(placeOf({field: 'power_w'}), {group: 'station', field: 'power_w'});
  assert.equal(placeOf({}).group, '');
});

test('only a place in the line, or the method, can be open', () => {
  assert.deepEqual(
    ['0', '6', '7', '-1', '1.5', '', null, 'x'].map((open) => explained(open, 7)),
    [0, 6, ...Array(6).fill(undefined)],
  );
  assert.equal(headingOf('1', ['UHF', 'N']), 'Element 2: N');
  assert.equal(headingOf('methods', []), 'Method');
  assert.equal(headingOf('9', ['UHF']), '');
});

test('pasted rows become points in rising frequency, and a bad row is named', () => {
  const [{value: points}, ...more] = readingsOfPoints('! a comment\n21.2; 60; 12\n14.1\t45 -8.5\n');

  assert.deepEqual(points, [
    {frequency_hz: 14.1e6, resistance_ohm: 45, reactance_ohm: -8.5},
    {frequency_hz: 21.2e6, resistance_ohm: 60, reactance_ohm: 12},
  ]);
  assert.equal(more.length, 0);
  assert.deepEqual(readingsOfPoints(rowsOf(points))[0].value, points);
  assert.throws(() => readingsOfPoints('14 50 0\n15 lots 0'), /Row 2 is “15 lots 0”/);
  assert.throws(() => readingsOfPoints('14 50'), /Row 1/);
  assert.throws(() => readingsOfPoints('14 50 0'), /at least two/);
});

test('pasted rows are read by one decimal mark, told by all of them or asked for', () => {
  const frequencies = (text) => readingsOfPoints(text).map(({value}) => value.map((one) => one.frequency_hz / 1e6));

  assert.deepEqual(frequencies('14,1;45;-8,5\n21,2;60;12'), [[14.1, 21.2]]);
  assert.deepEqual(frequencies('14.1,45,-8.5\n21.2,60,12'), [[14.1, 21.2]]);
  assert.deepEqual(frequencies('14.175 45 -8\n14.2 60 12'), [[14.175, 14.2]]);
  assert.deepEqual(frequencies('14 45 -8\n14.175 45 -8'), [
    [14, 14.175],
    [14, 14175],
  ]);
  assert.deepEqual(
    readingsOfPoints('14 45 -8\n14.175 45 -8').map(({words}) => words),
    ['14.175  45  -8', '14175  45  -8'],
  );
  assert.throws(() => readingsOfPoints('14.1 45 -8\n14,2 45 -8'), /one of them in all rows/);
});

test('rows written from points are read back in one way', () => {
  const points = [
    {frequency_hz: 7.05e6, resistance_ohm: 1.125, reactance_ohm: -12.345},
    {frequency_hz: 14.175e6, resistance_ohm: 50, reactance_ohm: 0},
  ];

  assert.deepEqual(
    readingsOfPoints(rowsOf(points)).map(({value}) => value),
    [points],
  );
});
