/** The five steps of a margin, and the steps of a derivation sorted by what they are for. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {byPurpose} from '../../frontend/src/shared/margins/purposes.js';
import {STEPS, stepOf, stepRange, stepWords} from '../../frontend/src/shared/margins/scale.js';

test('a margin is over the limit, at it, tight, fine or ample', () => {
  const margins = [-30, -0.01, 0, 0.99, 1, 2.99, 3, 9.99, 10, 40];
  const steps = ['over', 'over', 'at', 'at', 'tight', 'tight', 'fine', 'fine', 'ample', 'ample'];

  assert.deepEqual(margins.map(stepOf), steps);
  assert.deepEqual([stepWords(-1), stepWords(0.5), stepWords(12)], ['over the limit', 'at the limit', 'ample']);
  assert.deepEqual(
    STEPS.map(({id}) => stepRange(id)),
    ['below 0', '0 to 1', '1 to 3', '3 to 10', 'above 10'],
  );
});

test('steps are sorted by purpose in the order of their first, and what has none comes last', () => {
  /** @type {any[]} */
  const steps = ['the cable', '', 'the joint', 'the cable', ''].map((purpose, at) => ({purpose, formula: `f${at}`}));

  const groups = byPurpose(steps, 'the margin').map(({purpose, steps: of}) => [
    purpose,
    ...of.map(({formula}) => formula),
  ]);

  assert.deepEqual(groups, [
    ['The cable', 'f0', 'f3'],
    ['The joint', 'f2'],
    ['The margin', 'f1', 'f4'],
  ]);
  assert.deepEqual(byPurpose([], 'the margin'), []);
});
