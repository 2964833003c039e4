/** The payload's archives as the worker reads them. */
import assert from 'node:assert/strict';
import {execFileSync} from 'node:child_process';
import {test} from 'node:test';
import {entries} from '../../frontend/src/worker/archive.js';

const FILES = {'folder/empty.txt': '', 'folder/größe.txt': 'äöü', 'long.bin': 'x'.repeat(70_000)};

/** A zip of these files as Python's own zipfile writes it. */
function archive(files) {
  const code = `import json, sys, zipfile
with zipfile.ZipFile(sys.stdout.buffer, "w") as opened:
    for name, text in json.load(sys.stdin).items():
        opened.writestr(name, text)`;
  return new Uint8Array(execFileSync('python3', ['-c', code], {input: JSON.stringify(files)}));
}

test('every file of an archive comes out as it went in', () => {
  const read = [...entries(archive(FILES))].map(([name, bytes]) => [name, new TextDecoder().decode(bytes)]);

  assert.deepEqual(Object.fromEntries(read), FILES);
});

test('an empty archive holds nothing', () => {
  assert.deepEqual([...entries(archive({}))], []);
});
