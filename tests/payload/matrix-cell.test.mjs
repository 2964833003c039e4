/** What a cell of the matrix prints and says: a margin, a refusal, or the return loss in the place of either. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {matrixCsv} from '../../frontend/src/matrix/csv.js';
import {
  marginWord,
  printed,
  readCell,
  signsOf,
  spokenCell,
  stepNameOf,
} from '../../frontend/src/shared/margins/reading.js';

const GATES = [
  {id: 'te11', name: 'TE11 cutoff', hard: true},
  {id: 'match', name: 'Match', hard: true},
  {id: 'weather', name: 'Weather', hard: false},
  {id: 'match_doubt', name: 'Match in doubt', hard: false},
];
const [WEATHER, DOUBT] = [2 ** 2, 2 ** 3];
const REASONS = {te11: 'A second mode.', weather: 'Not sealed.', match_doubt: 'By the generous sources alone.'};
/** @type {any} - UHF on 2 m, where its match is in doubt, on 70 cm, where it is missed, on 3 cm, refused by a mode */
const MATRIX = {
  families: [{id: 'uhf', name: 'UHF', gate_reasons: REASONS, pack: ''}],
  columns: ['2 m', '70 cm', '3 cm'].map((name) => ({id: name, name, low_hz: 1e6, high_hz: 146e6, pack: ''})),
  powers_w: [0, 100],
  limits: ['contact', 'cable', 'voltage'],
  gates: GATES,
  margin_db: [
    [
      [null, 7.66],
      [null, null],
      [null, null],
    ],
  ],
  margin_high_db: [
    [
      [null, 9],
      [null, null],
      [null, null],
    ],
  ],
  binding: [
    [
      [-1, 1],
      [-1, -1],
      [-1, -1],
    ],
  ],
  refused_by: [
    [
      [-1, -1],
      [1, 1],
      [0, 0],
    ],
  ],
  marks: [
    [
      [DOUBT, DOUBT + WEATHER],
      [0, 0],
      [0, 0],
    ],
  ],
  undecided: [
    [
      [false, false],
      [false, false],
      [false, false],
    ],
  ],
  rating_below: [true],
  return_loss_db: [
    [
      [12.6, 18],
      [8.2, 9.1],
      [null, null],
    ],
  ],
  largest_power_w: [[583, null, null]],
};
const [RECEIVE, TRANSMIT] = [0, 1];
const cell = (column, level) => readCell(MATRIX, 0, column, level);

test('a cell prints its margin, and marks it where a figure from memory is lower', () => {
  const read = cell(0, TRANSMIT);

  assert.deepEqual([printed(read, 'margin'), printed(read, 'largest'), stepNameOf(read)], ['+7.7', '580', 'fine']);
  assert.equal(signsOf(read), 'wm↓');
  assert.equal(
    spokenCell(read),
    'UHF, 2 m, 100 W: margin +7.7 dB, fine, limited by its cable at 146 MHz. between +7.7 and +9.0 dB, by how good ' +
      'the parts are. safe up to 580 watts. ' +
      'A power figure from memory is lower. Weather: Not sealed.. Match in doubt: By the generous sources alone.',
  );
});

test('in receive a cell that is not refused prints its return loss in the look of one that holds', () => {
  const read = cell(0, RECEIVE);

  assert.deepEqual([printed(read, 'margin'), stepNameOf(read), signsOf(read)], ['RL 13', 'holds', 'm']);
  assert.match(spokenCell(read), /^UHF, 2 m, receive: RL 13, return loss in dB; no power to carry\. Match in doubt/);
});

test('a cell that misses the return loss asked for prints it in the look of a refusal', () => {
  for (const level of [RECEIVE, TRANSMIT]) {
    const read = cell(1, level);
    assert.deepEqual(
      [printed(read, 'margin'), printed(read, 'largest'), stepNameOf(read)],
      ['RL 8', 'RL 8', 'refused'],
    );
    assert.match(spokenCell(read), /refused, RL 8, return loss in dB, less than asked for$/);
  }
});

test('any other refusal is told by its word', () => {
  const read = cell(2, TRANSMIT);

  assert.deepEqual([marginWord(read), stepNameOf(read), signsOf(read)], ['TE11', 'refused', '']);
  assert.equal(spokenCell(read), 'UHF, 3 cm, 100 W: refused, TE11, TE11 cutoff. A second mode.');
});

test('the file has margin and return loss apart', () => {
  const [heads, ...rows] = matrixCsv(MATRIX).trim().split('\r\n');
  const columns = heads.split(',');
  const values = (row, ...names) => names.map((name) => rows[row].split(',')[columns.indexOf(name)]);

  assert.equal(rows.length, 6);
  assert.deepEqual(values(1, 'margin_db', 'set_by', 'return_loss_db', 'refused_by'), ['7.66', 'cable', '12.6', '']);
  assert.deepEqual(values(0, 'margin_db', 'set_by', 'return_loss_high_db'), ['', '', '18']);
  assert.deepEqual(values(3, 'margin_db', 'return_loss_db', 'refused_by'), ['', '8.2', 'Match']);
});
