/** The rooms of the page's code: who may import whom. */
import assert from 'node:assert/strict';
import {existsSync, readFileSync, readdirSync} from 'node:fs';
import {dirname, join, relative} from 'node:path';
import {test} from 'node:test';
import {fileURLToPath} from 'node:url';

const SRC = fileURLToPath(new URL('../../frontend/src', import.meta.url));
const IMPORT = /(?:\bfrom|\bimport)\s*\(?\s*'(\.{1,2}\/[^']+)'/g;

/** The folders of the views: what holds a descriptor. */
const FEATURES = readdirSync(SRC).filter((room) => existsSync(join(SRC, room, 'view.js')));
/** What each room may import beside itself. */
const ALLOWED = {
  ...Object.fromEntries(FEATURES.map((feature) => [feature, ['shared', 'transport', 'worker']])),
  app: [...FEATURES, 'saved', 'shared', 'station'],
  saved: ['shared', 'worker'],
  station: ['shared'],
  embed: ['shared'],
  shared: ['worker'],
  transport: ['shared', 'worker'],
  parts: ['worker'],
  worker: [],
  'chart-library': [],
  'code-library': [],
};

/** The room of a file; the main files, which bring the others together, have none. */
const roomOf = (path) => (path.includes('/') ? path.split('/')[0] : undefined);
/** The same, with each room of shared/ a room of its own. */
const smallRoomOf = (path) => (roomOf(path) === 'shared' ? path.split('/').slice(0, 2).join('/') : roomOf(path));

const FILES = readdirSync(SRC, {recursive: true, encoding: 'utf8'}).filter((path) => path.endsWith('.js'));
const IMPORTS = FILES.flatMap((from) =>
  [...readFileSync(join(SRC, from), 'utf8').matchAll(IMPORT)]
    .map(([, to]) => [from, relative(SRC, join(SRC, dirname(from), to))])
    .filter(([, to]) => !to.startsWith('..')),
);

test('every room imports only what it may', () => {
  const wrong = IMPORTS.filter(([from, to]) => {
    const [room, other] = [roomOf(from), roomOf(to)];
    return room !== undefined && other !== undefined && room !== other && !ALLOWED[room].includes(other);
  });
  assert.deepEqual(wrong, []);
});

test('no room imports itself by way of others', () => {
  const arrows = new Map();
  for (const [from, to] of IMPORTS) {
    const [room, other] = [smallRoomOf(from), smallRoomOf(to)];
    if (room !== undefined && other !== undefined && room !== other)
      arrows.set(room, (arrows.get(room) ?? new Set()).add(other));
  }
  const reached = (room, seen = new Set()) => {
    for (const other of arrows.get(room) ?? []) if (!seen.has(other)) reached(other, seen.add(other));
    return seen;
  };
  assert.deepEqual(
    [...arrows.keys()].filter((room) => reached(room).has(room)),
    [],
  );
});
