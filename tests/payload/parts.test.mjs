/** The parts of the payload on their way into the worker. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {fromBase64} from '../../frontend/src/worker/embedded.js';
import {unpacked} from '../../frontend/src/worker/part.js';
import {part} from './channel.mjs';

test('a part comes out as it was packed', async () => {
  const contents = new Uint8Array(300_000).map((_, index) => (index * index) % 251);

  assert.deepEqual(await unpacked(part(contents), 'python'), contents);
});

test('a part of another build is refused by name', async () => {
  const mixed = {...part('one build'), bytes: part('another build').bytes};

  await assert.rejects(unpacked(mixed, 'stdlib'), /part stdlib is not the one this page was built with/);
});

test('a part cut short is refused', async () => {
  const whole = part('x'.repeat(1000));

  await assert.rejects(unpacked({...whole, bytes: whole.bytes.slice(0, -4)}, 'python'), /part python/);
});

test('base64 gives every byte back', () => {
  const bytes = new Uint8Array(256).map((_, index) => index);

  assert.deepEqual(fromBase64(Buffer.from(bytes).toString('base64')), bytes);
});
