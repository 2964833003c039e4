/** The report of a fault: what happened where, and nothing of the reader's own. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {reportOf} from '../../frontend/src/app/report.js';

const WHERE = {version: '1.2.3', view: 'Line'};

function thrown(message, stack) {
  const error = new TypeError(message);
  error.stack = stack;
  return error;
}

test('it holds version, view, message and the calls', () => {
  const stack = 'TypeError: x.map is no function\n    at draw (app.js:1:20)\n    at async Object.go (app.js:2:3)';

  assert.equal(
    reportOf(thrown('x.map is no function', stack), WHERE),
    [
      'Jointwise 1.2.3',
      'View: Line',
      'Message: TypeError: x.map is no function',
      'at draw (app.js:1:20)',
      'at async Object.go (app.js:2:3)',
    ].join('\n'),
  );
});

test('it says neither where the page lies nor what is set in it', () => {
  const stack = [
    'draw@file:///home/jo.bloggs/ham%20radio/jointwise.html#view=line&name=my%20hut:3:40',
    '    at go (file:///home/jo.bloggs/jointwise.html:7:8)',
    'other@https://hut.example/jointwise/app.js?key=1:5:6',
    '    at blob:null/0f3e:1:2',
  ].join('\n');

  const report = reportOf(thrown('failed at file:///home/jo.bloggs/x.html', stack), WHERE);

  assert.doesNotMatch(report, /bloggs|hut|ham|key/);
  assert.match(report, /jointwise\.html:7:8/);
});

test('what an engine quotes of a text is left out, and a long message is cut', () => {
  assert.doesNotMatch(reportOf(thrown('Unexpected token "my call", "{my call" is not valid', ''), WHERE), /my call/);
  assert.ok(reportOf(thrown('x'.repeat(5000), 'at y (app.js:1:1)\n'.repeat(500)), WHERE).length < 1000);
});
