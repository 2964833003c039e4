/** The transport to the worker: every request ends, whatever becomes of the worker. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {Refusal} from '../../frontend/src/transport/refusal.js';
import {workerTransport} from '../../frontend/src/transport/worker.js';
import {payload, workers} from './channel.mjs';

/** Let time pass in short steps, as it does for a page that is awake. */
const pass = (t, ms) => {
  for (let passed = 0; passed < ms; passed += 100) t.mock.timers.tick(100);
};
/** A transport by the core's word on how long each operation may take. */
const transportOf = (parts) =>
  workerTransport({payload, longestS: {echo: 60, deadly: 60, endless: 60, 'endless search': 300}, ...parts});
const quiet = (t) => t.mock.method(console, 'info', () => {}).mock;

test('an answer of 0, null or nothing in a list is an answer', async (t) => {
  const {createWorker} = workers(t, (operation, {value}) => value);
  const transport = transportOf({createWorker});

  for (const value of [0, null, false, [], '']) assert.deepEqual(await transport.ask('echo', {value}), value);
});

test('answers come in the order of the requests and to the one who asked', async (t) => {
  const {born, createWorker} = workers(t, (operation, {value}) => `${operation} ${value}`);
  const transport = transportOf({createWorker});

  const answers = await Promise.all([1, 2, 3].map((value) => transport.ask('echo', {value})));

  assert.deepEqual(answers, ['echo 1', 'echo 2', 'echo 3']);
  assert.equal(born.length, 1);
});

test('the stages of a start are told in order and end with ready', async (t) => {
  const stages = [];
  const {createWorker} = workers(t, () => 1, {
    open: async (parts, reached) => ['unpacking', 'starting Python'].forEach(reached),
  });

  await transportOf({createWorker, onProgress: (name) => stages.push(name)}).ask('echo', {});

  assert.deepEqual(stages, ['unpacking', 'starting Python', 'ready']);
});

test('a request given up while it waits never reaches the worker', async (t) => {
  const {born, createWorker} = workers(t, (operation, {value}) => value);
  const transport = transportOf({createWorker});
  const stop = new AbortController();

  const first = transport.ask('echo', {value: 1});
  const second = transport.ask('echo', {value: 2}, {signal: stop.signal});
  stop.abort('enough');

  await assert.rejects(second, (reason) => reason === 'enough');
  assert.equal(await first, 1);
  assert.equal(await transport.ask('echo', {value: 3}), 3);
  assert.deepEqual(born[0].asked, [{value: 1}, {value: 3}]);
});

test('a request given up before it is made fails with the reason', async (t) => {
  const {createWorker} = workers(t, () => 1);

  const asked = transportOf({createWorker}).ask('echo', {}, {signal: AbortSignal.abort('enough')});

  await assert.rejects(asked, (reason) => reason === 'enough');
});

test('a request given up while the worker is at it fails at once, and the next is answered', async (t) => {
  const stop = new AbortController();
  const {born, createWorker} = workers(t, (operation, {value}) => {
    if (value === 1) stop.abort('enough');
    return value;
  });
  const transport = transportOf({createWorker});

  const first = transport.ask('echo', {value: 1}, {signal: stop.signal});

  await assert.rejects(first, (reason) => reason === 'enough');
  assert.equal(await transport.ask('echo', {value: 2}), 2);
  assert.equal(born.length, 1);
});

test('a worker that dies is replaced, and the request asked again', async (t) => {
  const {born, createWorker} = workers(t, (operation, request, worker) => {
    if (worker === born[0]) throw 'death';
    return 'answered';
  });

  assert.equal(await transportOf({createWorker}).ask('echo', {}), 'answered');
  assert.deepEqual(
    born.map(({ended}) => ended),
    [true, false],
  );
});

test('a request that kills two workers is refused, and the next one is answered', async (t) => {
  const {born, createWorker} = workers(t, (operation) => {
    if (operation === 'deadly') throw 'death';
    return 'answered';
  });
  const transport = transportOf({createWorker});

  const [deadly, harmless] = await Promise.allSettled([transport.ask('deadly', {}), transport.ask('echo', {})]);

  assert.ok(deadly.status === 'rejected' && deadly.reason instanceof Refusal);
  assert.match(deadly.reason.message, /failed on this request/);
  assert.deepEqual(harmless, {status: 'fulfilled', value: 'answered'});
  assert.equal(born.length, 3);
});

/**
 * A transport whose worker has taken a request it will never answer.
 *
 * @param {import('node:test').TestContext} t
 * @param {string} operation
 * @param {import('../../frontend/src/shared/answers.js').Options} [options]
 */
async function withEndless(t, operation, options = {}) {
  t.mock.timers.enable({apis: ['setTimeout']});
  let begin;
  const begun = new Promise((resolve) => (begin = resolve));
  const core = (asked) => {
    if (asked !== 'echo') throw 'silence';
    return 'answered';
  };
  const {born, createWorker} = workers(t, core, {heard: (kind) => kind === 'taken' && begin()});
  const transport = transportOf({createWorker});
  const endless = transport.ask(operation, {}, options);
  await begun;
  return {born, transport, endless};
}

test('a worker that takes a request and never answers is ended, and the request refused', async (t) => {
  const {born, transport, endless} = await withEndless(t, 'endless');

  pass(t, 60_000);

  await assert.rejects(endless, /No answer came within 60 seconds/);
  assert.equal(await transport.ask('echo', {}), 'answered');
  assert.deepEqual(
    born.map(({ended}) => ended),
    [true, false],
  );
});

test('how long an answer may take is told by the operation', async (t) => {
  const {born, endless} = await withEndless(t, 'endless search');

  pass(t, 299_000);
  assert.deepEqual(
    born.map(({ended}) => ended),
    [false],
  );
  pass(t, 1_000);

  await assert.rejects(endless, /No answer came within 300 seconds/);
});

test('a request given up that the worker does not come back from holds up the next for a moment only', async (t) => {
  const stop = new AbortController();
  const {born, transport, endless} = await withEndless(t, 'endless search', {signal: stop.signal});

  stop.abort('enough');
  await assert.rejects(endless, (reason) => reason === 'enough');
  const next = transport.ask('echo', {});
  pass(t, 3_000);

  assert.equal(await next, 'answered');
  assert.deepEqual(
    born.map(({ended}) => ended),
    [true, false],
  );
});

test('a worker that does not even say that it has a request is replaced', async (t) => {
  t.mock.timers.enable({apis: ['setTimeout']});
  let begin;
  const ready = new Promise((resolve) => (begin = resolve));
  const {born, createWorker} = workers(t, () => 'answered', {heard: (kind) => kind === 'stage' && begin()});
  const gone = () => Object.assign(createWorker(), born.length === 1 && {mute: true});
  const transport = transportOf({createWorker: gone});

  const asked = transport.ask('echo', {});
  await ready;
  pass(t, 20_000);

  assert.equal(await asked, 'answered');
  assert.deepEqual(
    born.map(({ended}) => ended),
    [true, false],
  );
});

test('a page that slept over a request takes the answer it wakes to', async (t) => {
  let overdue;
  t.mock.method(globalThis, 'setTimeout', (work) => {
    overdue = work;
    return 0;
  });
  const {born, createWorker} = workers(t, () => 'answered', {heard: (kind) => kind === 'taken' && overdue()});

  const answer = await transportOf({createWorker}).ask('echo', {});

  assert.equal(answer, 'answered');
  assert.deepEqual(
    born.map(({ended}) => ended),
    [false],
  );
});

test('without a worker every waiting request is refused plainly, and the next one tries again', async (t) => {
  const log = quiet(t);
  let works = false;
  const {createWorker} = workers(t, () => 'answered', {
    open: async () => {
      if (!works) throw new Error('no memory');
    },
  });
  const transport = transportOf({createWorker});

  const refused = await Promise.allSettled([transport.ask('echo', {}), transport.ask('echo', {})]);
  works = true;

  for (const one of refused)
    assert.match(one.status === 'rejected' && one.reason.message, /only the built-in tables can be shown/);
  assert.match(log.calls[0].arguments[0], /no memory/);
  assert.equal(await transport.ask('echo', {}), 'answered');
});

test('a start that comes to nothing takes its last stage back', async (t) => {
  quiet(t);
  const stages = [];
  const open = async (parts, reached) => {
    reached('unpacking');
    throw new Error('no memory');
  };
  const {createWorker} = workers(t, () => 1, {open});

  await assert.rejects(transportOf({createWorker, onProgress: (name) => stages.push(name)}).ask('echo', {}));

  assert.deepEqual(stages, ['unpacking', '']);
});

test('an engine that refuses workers or streams is told apart from a fault in the request', async (t) => {
  quiet(t);
  const createWorker = () => {
    throw new Error('blocked by policy');
  };

  const asked = transportOf({createWorker}).ask('echo', {});

  await assert.rejects(asked, (error) => error instanceof Refusal && error.field === undefined);
});
