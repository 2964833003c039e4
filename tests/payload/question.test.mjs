/** What a question changes in the matrix, and what typed words may become. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {FIRST_CELL, askedChanges, chosenCell} from '../../frontend/src/matrix/question/changes.js';
import {completed} from '../../frontend/src/matrix/question/completions.js';

const LISTS = /** @type {any} */ ({bands: ['80m', '20m', '10m', '2m'].map((id) => ({id}))});
/** @type {Record<string, any>} */
const STATE = {
  ...{families: null, bands: ['80m', '20m', '2m'], frequencies_hz: [50e6], powers_w: [0, 5, 100], power_w: 100},
  ...{family: null, band: null, frequency_hz: null, view: null},
};
const changes = (values, state = STATE, most = 24) => askedChanges(values, FIRST_CELL, state, LISTS, most);

test('the cell asked about is chosen, its sheet stays shut', () => {
  const {family, band, frequency_hz, view, mode} = changes({family: 'n', band: '2m', mode: 'fm'});

  assert.deepEqual([family, band, frequency_hz, view, mode], ['n', '2m', null, 'asked', 'fm']);
});

test('what is not said is that of the cell asked about before', () => {
  assert.equal(changes({vswr: 3}).family, FIRST_CELL.family);
  assert.equal(changes({vswr: 3}).band, FIRST_CELL.band);
});

test('the matrix gets the power among its levels, and no more levels than it may have', () => {
  assert.deepEqual(changes({power_w: 50}).powers_w, [0, 5, 50, 100]);
  assert.deepEqual(changes({power_w: 100}).powers_w, [0, 5, 100]);
  assert.deepEqual(changes({power_w: 6}, STATE, 3).powers_w, [0, 6, 100]);
});

test('a band, a frequency or a family that the matrix leaves out joins it in its place', () => {
  assert.deepEqual(changes({band: '10m'}).bands, ['80m', '20m', '10m', '2m']);
  assert.equal(changes({band: '2m'}).bands, undefined);
  assert.deepEqual(changes({frequency_hz: 14e6}).frequencies_hz, [14e6, 50e6]);
  assert.equal(changes({frequency_hz: 14e6}).band, null);
  assert.deepEqual(changes({family: 'n'}, {...STATE, families: ['bnc', 'uhf']}).families, ['bnc', 'uhf', 'n']);
});

test('a state has chosen a cell where it names a family and a column', () => {
  assert.equal(chosenCell(STATE), undefined);
  assert.equal(chosenCell({...STATE, family: 'n'}), undefined);
  assert.deepEqual(chosenCell({...STATE, family: 'n', frequency_hz: 1e7}), {
    family: 'n',
    band: null,
    frequency_hz: 1e7,
  });
});

const NAMES = ['SO-239', 'key down', 'in the rain', 'FT8', 'FT4', 'FM', '10 m'];

test('the last words are completed, what stands before them stays', () => {
  assert.deepEqual(completed('1 kW f', NAMES), ['1 kW FT8', '1 kW FT4', '1 kW FM']);
  assert.deepEqual(completed('so', NAMES), ['SO-239']);
  assert.deepEqual(completed('n 2 m in the r', NAMES), ['n 2 m in the rain']);
  assert.deepEqual(completed('n 2 m ', NAMES), []);
  assert.deepEqual(completed('zorp', NAMES), []);
  assert.deepEqual(completed('', NAMES), []);
});
