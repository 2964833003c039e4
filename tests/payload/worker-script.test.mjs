/** Rewriting Pyodide's modules for a classic worker. */
import assert from 'node:assert/strict';
import {readFileSync} from 'node:fs';
import {test} from 'node:test';
import {Script} from 'node:vm';
import {PYODIDE} from '../../frontend/payload/python.mjs';
import {rewritten, workerScript} from '../../frontend/payload/worker-script.mjs';

const read = (name) => readFileSync(PYODIDE + name, 'utf8');

test('the pinned Pyodide becomes one classic script', () => {
  const text = workerScript({
    asm: read('pyodide.asm.mjs'),
    loader: read('pyodide.mjs'),
    lock: {info: {}},
    boot: '',
    notice: 'notice',
  });

  assert.doesNotThrow(() => new Script(text));
  assert.doesNotMatch(text, /https?:\/\/cdn/);
});

test('a pattern that is missing or there twice stops the rewriting', () => {
  assert.throws(
    () => rewritten('nothing', [['needle', 'pin']], 'hay.mjs'),
    /hay\.mjs: needle is there 0 times, expected once/,
  );
  assert.throws(() => rewritten('needle needle', [['needle', 'pin']], 'hay.mjs'), /needle is there 2 times/);
  assert.throws(() => rewritten('needle needle', [[/ne+dle/, 'pin']], 'hay.mjs'), /is there 2 times/);
});

test('what only a module may hold stops the rewriting', () => {
  for (const text of ['a = import.meta.url', 'import x from "y"', 'a;\nexport {a}']) {
    assert.throws(() => rewritten(text, [], 'hay.mjs'), /is left over/);
  }
});
