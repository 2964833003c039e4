/** The transport of the served page: the server first, the browser's own core when it is away. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {eitherTransport} from '../../frontend/src/transport/either.js';
import {Refusal} from '../../frontend/src/transport/refusal.js';
import {Unreachable} from '../../frontend/src/transport/unreachable.js';

const gone = () => {
  throw new Unreachable('gone');
};

/** A transport whose answers come from `answer`, and the count of what it was asked. */
function transport(answer) {
  const made = {count: 0, answer, ask: async () => (made.count++, made.answer())};
  return made;
}

test('the server is asked while it answers', async () => {
  const [http, worker] = [transport(() => 'server'), transport(() => 'browser')];
  const either = eitherTransport({http, worker, answers: async () => true});

  assert.equal(await either.ask('matrix', {}), 'server');
  assert.equal(worker.count, 0);
});

test('a refusal by the server is the answer', async () => {
  const http = transport(() => {
    throw new Refusal({detail: 'vswr is 0', field: 'vswr'});
  });
  const worker = transport(() => 'browser');

  await assert.rejects(eitherTransport({http, worker, answers: async () => true}).ask('matrix', {}), {field: 'vswr'});
  assert.equal(worker.count, 0);
});

test('without a network the browser answers, and the server is left alone for a while', async () => {
  const [http, worker] = [transport(gone), transport(() => 'browser')];
  const either = eitherTransport({http, worker, answers: async () => assert.fail('asked too soon')});

  assert.equal(await either.ask('matrix', {}), 'browser');
  assert.equal(await either.ask('matrix', {}), 'browser');
  assert.equal(http.count, 1);
});

test('the server is asked again once it is well', async (t) => {
  t.mock.timers.enable({apis: ['Date']});
  const [http, worker] = [transport(gone), transport(() => 'browser')];
  const either = eitherTransport({http, worker, answers: async () => true});
  await either.ask('matrix', {});
  http.answer = () => 'server';

  t.mock.timers.tick(15_000);

  assert.equal(await either.ask('matrix', {}), 'browser');
  assert.equal(await either.ask('matrix', {}), 'server');
});

test('a browser whose core is lost while the server is away asks the server again', async () => {
  const [http, worker] = [transport(gone), transport(() => 'browser')];
  const either = eitherTransport({http, worker, answers: async () => false});
  await either.ask('matrix', {});
  worker.answer = () => {
    throw new Unreachable('no core in this browser');
  };

  await assert.rejects(either.ask('matrix', {}), {message: 'gone'});
  http.answer = () => 'server';

  assert.equal(await either.ask('matrix', {}), 'server');
});

test('several requests that neither the server nor the browser can answer are all told of the server', async () => {
  const [http, worker] = [
    transport(gone),
    transport(() => {
      throw new Unreachable('no core in this browser');
    }),
  ];
  const either = eitherTransport({http, worker, answers: async () => false});

  const asked = await Promise.allSettled([either.ask('matrix', {}), either.ask('cell', {})]);

  assert.deepEqual(
    asked.map((one) => one.status === 'rejected' && one.reason.message),
    ['gone', 'gone'],
  );
});
