/** What stands at the foot of paper. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {footRule} from '../../frontend/src/app/paper-foot.js';

const DAY = new Date(2026, 10, 29, 12);

test('the foot says whose paper it is, of which day, and which sheet', () => {
  const rule = footRule('Hill hut', DAY);

  assert.match(rule, /content: "Hill hut · 29 November 2026 · Jointwise";/);
  assert.match(rule, /content: "Sheet " counter\(page\) " of " counter\(pages\);/);
  assert.match(footRule('', DAY), /content: "29 November 2026 · Jointwise";/);
});

test('a name never ends the text it stands in', () => {
  const rule = footRule('a"; } body { display: none } \\\n"', DAY);

  assert.match(rule, /content: "a\\"; } body { display: none } \\\\ \\" · 29/);
});
