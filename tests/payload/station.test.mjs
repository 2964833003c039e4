/** The station: its settings and what follows of them, links and files, what the browser keeps, and undo. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {inPlaceOf, withChanged, withInUse, withOneMore, withoutOne} from '../../frontend/src/shared/station/edits.js';
import {EXAMPLES} from '../../frontend/src/shared/station/examples.js';
import {checkedStation} from '../../frontend/src/shared/station/checked.js';
import {kitRequest, ownOfKit} from '../../frontend/src/shared/station/kit-request.js';
import {lineRequest, ownOf, without} from '../../frontend/src/shared/station/line-request.js';
import {NOTHING_SAID, stationIn, stationPart} from '../../frontend/src/shared/station/link.js';
import {
  FIRST_STATION,
  broughtBack,
  changed,
  changesBetween,
  fromLink,
  loadOf,
  plainSettings,
  withAntenna,
  withRig,
  withSettings,
} from '../../frontend/src/shared/station/station.js';
import {StationStore} from '../../frontend/src/shared/station/store.js';
import {
  addressOf,
  isServed,
  ownAddress,
  recalledAddress,
  refusalOf,
} from '../../frontend/src/shared/station/web-address.js';

const number = (min, max, more = {}) => ({type: 'number', nullable: false, default: null, min, max, ...more});
const text = (longest, more = {}) => ({type: 'text', nullable: false, default: '', longest, ...more});
const choice = (choices) => ({type: 'choice', choices, nullable: true, default: null});

/** @type {any} - the fields of a station and of what is asked with it */
const TABLE = {
  settings: {
    mode: text(40, {default: 'ssb'}),
    vswr: number(1, 20, {default: 1.5}),
    power_w: number(0, 1e5, {default: 100}),
    added_sealing: {type: 'boolean', nullable: false, default: false},
    bands: {type: 'list', nullable: true, default: null, least: 0, most: 100, items: text(40)},
    band: text(40, {nullable: true, default: '20m'}),
    frequency_hz: number(1e5, 5e10, {nullable: true}),
  },
  rig: {
    name: text(60),
    power_w: number(0, 1e5, {default: 100}),
    behaviour: choice(['transceiver']),
    family: choice(['uhf', 'n']),
    gender: choice(['plug', 'jack']),
  },
  antenna: {name: text(60)},
  port: {
    name: text(60),
    family: choice(['uhf', 'n']),
    gender: choice(['plug', 'jack']),
    highest_frequency_hz: number(1e5, 5e10),
    power_w: number(0, 1e5, {default: 100}),
  },
  shack: {name: text(60), address: text(200), units: choice(['metric', 'us'])},
  load_vswr: {vswr: number(1, 100), angle_deg: number(-360, 360, {nullable: true})},
  load_impedance: {resistance_ohm: number(0, 1e5), reactance_ohm: number(-1e5, 1e5)},
  station: {
    mode: text(40, {default: 'ssb'}),
    power_w: number(0, 1e5, {default: 100}),
    band: text(40, {nullable: true}),
    frequency_hz: number(1e5, 5e10, {nullable: true}),
  },
  kit: {mode: text(40), vswr: number(1, 20), most_in_series: number(1, 4, {default: 2})},
};

/** @type {any} */
const VOCABULARY = {
  fields: TABLE,
  first: {settings: Object.fromEntries(Object.entries(TABLE.settings).map(([name, field]) => [name, field.default]))},
};

const DIPOLE = {name: 'Dipole', load: {kind: 'vswr', vswr: 2, angle_deg: 30}};
const LOOP = {name: 'Loop', load: {kind: 'impedance', resistance_ohm: 100, reactance_ohm: 20}};
const SHACK = changed(FIRST_STATION, {
  name: 'Hill hut',
  rigs: [
    {name: 'Transceiver', power_w: 100, behaviour: 'transceiver'},
    {name: 'Amplifier', power_w: 1000},
  ],
  rig: 1,
  antennas: [DIPOLE, LOOP],
  antenna: 0,
  gear: [{name: 'Tuner', family: 'uhf', gender: 'jack', highest_frequency_hz: 54e6, power_w: 1000}],
  cables: ['rg_213'],
  settings: {mode: 'fm', power_w: 1000, vswr: 2},
});

const storage = (held = {}) => ({
  getItem: (key) => held[key] ?? null,
  setItem: (key, one) => void (held[key] = one),
  removeItem: (key) => void delete held[key],
  held,
});

const storeOf = (held) => {
  const kept = storage(held);
  return {store: new StationStore(() => kept, TABLE), held: kept.held};
};

test('a setting is changed alone, and taken back to nothing said', () => {
  const loud = changed(SHACK, {settings: {power_w: 400}});

  assert.deepEqual(loud.settings, {mode: 'fm', power_w: 400, vswr: 2});
  assert.deepEqual(changed(loud, {settings: {power_w: null, mode: undefined}}).settings, {vswr: 2});
  assert.equal(changed(SHACK, {name: 'Home'}).settings, SHACK.settings);
});

test('a band takes the place of a spot frequency, and the other way round', () => {
  const spot = changed(FIRST_STATION, {settings: {band: null, frequency_hz: 14.2e6}});
  const band = changed(spot, {settings: {band: '40m', frequency_hz: null}});

  assert.deepEqual(spot.settings, {frequency_hz: 14.2e6});
  assert.equal(withSettings({}, spot, {band: '20m'}).band, null);
  assert.deepEqual(band.settings, {band: '40m'});
  assert.deepEqual(changed(band, {settings: {frequency_hz: 7e6}}).settings, {frequency_hz: 7e6});
});

test('changes lead from one station to another, and back', () => {
  const other = changed(SHACK, {name: 'Home', settings: {mode: null, vswr: 3}});

  assert.deepEqual(changed(SHACK, changesBetween(SHACK, other)), other);
  assert.deepEqual(changed(other, changesBetween(other, SHACK)), SHACK);
  assert.deepEqual(changesBetween(SHACK, SHACK), {});
});

test('a rig gives the power, an antenna the SWR, each until it is changed', () => {
  assert.equal(changed(SHACK, withRig(SHACK, 0)).settings.power_w, 100);
  assert.equal('power_w' in changed(SHACK, withRig(SHACK, -1)).settings, false);
  assert.equal('vswr' in changed(SHACK, withAntenna(SHACK, 1)).settings, false);
  assert.deepEqual(plainSettings(SHACK), {power_w: 1000, vswr: 2});
});

test('a line ends in the antenna in use, at the SWR that was last said', () => {
  assert.deepEqual(loadOf(FIRST_STATION, 1.5), {kind: 'vswr', vswr: 1.5});
  assert.deepEqual(loadOf(changed(SHACK, {settings: {vswr: 3}}), 1.5), {...DIPOLE.load, vswr: 3});
  assert.deepEqual(loadOf(changed(SHACK, {antenna: 1}), 1.5), LOOP.load);
});

test('a line asks with the station, and with its own where it has some', () => {
  const elements = [{kind: 'joint', family: 'n'}];
  const plain = lineRequest({elements}, changed(SHACK, {rig: 0}), VOCABULARY);
  const own = {elements, load: LOOP.load, mode: 'cw', frequency_hz: 7e6};

  assert.deepEqual(plain, {
    elements,
    mode: 'fm',
    power_w: 1000,
    band: '20m',
    load: DIPOLE.load,
    transmitter: {behaviour: 'transceiver'},
  });
  assert.deepEqual(lineRequest(own, SHACK, VOCABULARY), {...own, power_w: 1000});
  assert.deepEqual(ownOf(own, SHACK, VOCABULARY), ['load', 'mode', 'frequency_hz']);
  assert.deepEqual(without(own, ownOf(own, SHACK, VOCABULARY)), {elements});
});

test('a kit asks with the settings it has none of its own of', () => {
  assert.deepEqual(kitRequest({ports: [], vswr: 3}, SHACK, VOCABULARY), {ports: [], mode: 'fm', vswr: 3});
  assert.deepEqual(ownOfKit({ports: [], mode: 'fm', vswr: 3, most_in_series: 1}, SHACK, VOCABULARY), ['vswr']);
});

test('a link holds the settings by name and the rest as one document', () => {
  const part = stationPart(SHACK, []);
  const {rest, changes, unknown, problem} = stationIn(`view=choose&plan=n&${part}`, [], TABLE);

  assert.match(part, /^mode=fm&power_w=1000&vswr=2&setup=[\w-]+$/);
  assert.equal(rest, 'view=choose&plan=n');
  assert.deepEqual([unknown, problem], [[], '']);
  assert.deepEqual(fromLink(FIRST_STATION, changes ?? {}), SHACK);
  assert.equal(stationPart(FIRST_STATION, []), '');
  assert.deepEqual(stationIn(NOTHING_SAID, [], TABLE).changes, {settings: {}});
  assert.equal(stationIn('view=line', [], TABLE).changes, undefined);
});

test('a setting whose name means something else in a fragment travels in the document', () => {
  const station = changed(FIRST_STATION, {settings: {band: '40m', mode: 'cw'}});
  const part = stationPart(station, ['band']);
  const {rest, changes} = stationIn(`family=n&band=20m&${part}`, ['band'], TABLE);

  assert.equal(rest, 'family=n&band=20m');
  assert.deepEqual(changes?.settings, {band: '40m', mode: 'cw'});
});

test('a link without a station of its own changes the settings alone', () => {
  const {changes} = stationIn('mode=rtty&vswr=3', [], TABLE);
  const next = fromLink(SHACK, changes ?? {});

  assert.deepEqual(next, {...SHACK, rig: -1, antenna: -1, settings: {mode: 'rtty', vswr: 3}});
});

test('what a link holds that is no station is told, and the station at hand stays', () => {
  const cut = stationPart(SHACK, []).slice(0, -9);
  const {changes, problem} = stationIn(cut, [], TABLE);
  const odd = stationIn('vswr=high', [], TABLE);

  assert.deepEqual(changes, {settings: {mode: 'fm', power_w: 1000, vswr: 2}});
  assert.match(problem, /cut short or altered/);
  assert.deepEqual(odd.unknown, ['vswr=high']);
  assert.equal(odd.changes, undefined);
});

test('the address of the page is not the matter of a link', () => {
  const served = changed(SHACK, {address: 'https://example.org/'});

  assert.equal(stationPart(served, []), stationPart(SHACK, []));
  assert.equal(fromLink(served, {name: 'Other'}).address, served.address);
});

test('the way back brings the settings of then, and takes nothing that was described', () => {
  assert.deepEqual(broughtBack(SHACK, {settings: {mode: 'cw'}}), {...SHACK, settings: {mode: 'cw'}});
  assert.deepEqual(broughtBack(SHACK, undefined).settings, {});
});

test('a station from outside is taken whole, and a wrong one is refused in a sentence', () => {
  assert.deepEqual(checkedStation(JSON.parse(JSON.stringify(SHACK)), TABLE), SHACK);

  const wrong = [
    [{rigs: [{name: 'x', power_w: -1}]}, /^rigs\[0\]\.power_w is -1; allowed: a number from 0 to 100000\.$/],
    [{rig: 3}, /^rig is 3; allowed: a place from -1 to -1\.$/],
    [{antennas: [{name: 'x', load: {kind: 'wet string'}}]}, /^antennas\[0\]\.load\.kind is "wet string"/],
    [{settings: {mode: 5}}, /^settings\.mode is 5/],
    [{colour: 'blue'}, /^colour is "blue"; allowed: only the fields/],
    [{version: 9}, /^version is 9; allowed: 1\.$/],
  ];
  for (const [station, message] of wrong) {
    assert.throws(() => checkedStation(station, TABLE), {name: 'RangeError', message});
  }
});

test('the browser keeps the station, also with a number the core refuses', () => {
  const {store, held} = storeOf({});
  store.change('matrix', {settings: {vswr: 50}});

  assert.equal(storeOf(held).store.present.settings.vswr, 50);
  assert.equal(storeOf({'jointwise-station': '{"rigs": 1}'}).store.spoilt, '{"rigs": 1}');
});

test('each view takes back its own steps and those of the station, in their order', () => {
  const {store} = storeOf({});
  store.change('matrix', {settings: {mode: 'fm'}});
  store.change('matrix', {settings: {vswr: 3}}, {before: 'a', after: 'b'});
  store.change('choose', {}, {before: 1, after: 2});

  assert.deepEqual(store.turn('undo', 'choose'), {own: {from: 2, to: 1}});
  assert.deepEqual(store.turn('undo', 'choose'), {});
  assert.deepEqual(store.present.settings, {vswr: 3});
  assert.equal(store.canUndo('choose'), false);
  assert.deepEqual(store.turn('undo', 'matrix'), {own: {from: 'b', to: 'a'}});
  assert.deepEqual(store.present.settings, {});
  assert.equal(store.turn('undo', 'matrix'), undefined);
  assert.deepEqual(store.turn('redo', 'matrix'), {own: {from: 'a', to: 'b'}});
  assert.deepEqual(store.turn('redo', 'line'), {});
  assert.deepEqual(store.present.settings, {mode: 'fm', vswr: 3});
});

test('a drag is one step, and a change of nothing is none', () => {
  const {store, held} = storeOf({});
  for (const vswr of [2, 2.5, 3]) store.change('matrix', {settings: {vswr}}, undefined, true);
  assert.equal(held['jointwise-station'], undefined);
  store.change('matrix', {settings: {vswr: 3}});
  store.change('matrix', {settings: {vswr: 3}});

  store.turn('undo', 'matrix');
  assert.deepEqual(store.present.settings, {});
  assert.equal(store.canUndo('matrix'), false);
});

test('the station of a link can be taken back where there was one', () => {
  const {store} = storeOf({});
  assert.equal(store.bring('matrix', SHACK), '');
  assert.equal(store.canUndo('matrix'), false);

  assert.match(store.bring('matrix', changed(SHACK, {name: 'Other'})), /Undo brings back yours/);
  store.turn('undo', 'line');
  assert.equal(store.present.name, 'Hill hut');
});

test('only a web address can be the one that links lead to', () => {
  assert.equal(refusalOf('https://example.org/jointwise/'), '');
  assert.equal(refusalOf(''), '');
  for (const bad of [
    'example.org',
    'javascript:alert(1)',
    'https://example.org/#x',
    `https://example.org/${'x'.repeat(200)}`,
  ]) {
    assert.match(refusalOf(bad), /^Address of the page is .* allowed: a web address/);
  }
  assert.deepEqual([isServed('http://10.0.0.2:8000/'), isServed('file:///tmp/page.html')], [true, false]);
  assert.equal(ownAddress({href: 'http://host/page?x#view=fitout'}), 'http://host/page');
});

test('the address that an older version kept is the station’s, and a spoilt one is not', () => {
  const old = (address) => storeOf({'jointwise-address': address}).store.present.address;

  assert.equal(old('https://example.org/'), 'https://example.org/');
  assert.equal(old('nonsense'), '');
  assert.equal(
    recalledAddress(() => {
      throw new Error('blocked');
    }),
    '',
  );
});

test('links lead to the station’s address, else to where the page is', () => {
  const here = {href: 'file:///home/me/jointwise.html#mode=fm'};

  assert.equal(addressOf(FIRST_STATION, here), 'file:///home/me/jointwise.html');
  assert.equal(addressOf({address: 'https://example.org/'}, here), 'https://example.org/');
});

test('a rig or antenna that is added, changed or taken away keeps what is in use', () => {
  const first = changed(FIRST_STATION, withOneMore(FIRST_STATION, 'rigs', {name: 'One', power_w: 50}));
  const two = changed(first, withOneMore(first, 'rigs', {name: 'Two', power_w: 400}));
  const used = changed(two, withInUse(two, 'rigs', 1));

  assert.deepEqual([first.rig, first.settings.power_w, two.rig, used.settings.power_w], [0, 50, 0, 400]);
  assert.equal(changed(used, withChanged(used, 'rigs', 1, {power_w: 300})).settings.power_w, 300);
  assert.equal(changed(used, withChanged(used, 'rigs', 0, {power_w: 5})).settings.power_w, 400);
  assert.equal(changed(used, withoutOne(used, 'rigs', 0)).rig, 0);
  assert.equal(changed(used, withoutOne(used, 'rigs', 1)).rig, -1);
});

test('another station takes the whole place of this one, but for address and units', () => {
  const reader = changed(SHACK, {address: 'https://example.org/', units: 'us'});

  const empty = changed(reader, inPlaceOf(reader));

  assert.deepEqual(empty, {...FIRST_STATION, address: 'https://example.org/', units: 'us'});
  for (const {station} of EXAMPLES) {
    const next = changed(reader, inPlaceOf(reader, station));
    assert.deepEqual(next.settings, station.settings);
    assert.equal(next.settings.power_w, next.rigs[next.rig].power_w);
    assert.equal(next.settings.vswr ?? 1.5, next.antennas[next.antenna].load.vswr);
  }
});
