/** What the page asks of a line when its view is left and come back to. */
import assert from 'node:assert/strict';
import test from 'node:test';
import {Answers} from '../../frontend/src/line/answers.js';

const LINE = {elements: [{kind: 'joint'}]};

/** A view that can be left, and what the core was asked; an answer comes when it is given. */
function followed() {
  const controllers = [];
  const asked = [];
  const host = {addController: (one) => controllers.push(one), requestUpdate: () => {}};
  const ask = (operation, request, {signal}) =>
    new Promise((resolve, reject) => {
      asked.push({operation, request, give: () => resolve({})});
      signal.addEventListener('abort', () => reject(signal.reason));
    });
  const answers = new Answers(/** @type {any} */ (host), /** @type {any} */ (ask));
  const leave = () => {
    answers.giveUp();
    for (const one of controllers) one.hostDisconnected();
  };
  return {answers, asked, leave, operations: () => asked.map(({operation}) => operation)};
}

const settled = () => new Promise((resolve) => setTimeout(resolve));

test('a line that was left before its answer came is asked about again', async () => {
  const {answers, asked, leave, operations} = followed();
  answers.follow(LINE);
  leave();
  answers.follow(LINE);
  asked[1].give();
  await settled();

  assert.deepEqual(operations(), ['line', 'line']);
  assert.ok(answers.current(LINE));
});

test('an answered line is not asked about again, but a spread that was given up is', async () => {
  const {answers, asked, leave, operations} = followed();
  answers.follow(LINE);
  asked[0].give();
  await settled();
  answers.follow(LINE);
  leave();
  answers.follow(LINE);

  assert.deepEqual(operations(), ['line', 'spread', 'spread']);
  assert.equal(answers.spreadShown, undefined);
});
