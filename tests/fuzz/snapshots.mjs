/**
 * Spoils the snapshot on standard input so many times, in its data or in its text, and reads it as another page does:
 * `node snapshots.mjs COUNT`. It may be read or refused with a sentence; anything else is a fault.
 */
import {readFileSync} from 'node:fs';
import {readSnapshot} from '../../frontend/src/embed/snapshot.js';
import {Misshapen} from '../../frontend/src/embed/shape.js';

const PATIENCE_MS = 2000;
const HOSTILE = [null, true, 0, -1, 0.5, 1e308, 2 ** 53, '', 'n', '\0', '\ud800', '__proto__', 'x'.repeat(2000), [], {}, [[]], [null], {length: 1}];

const count = Number(process.argv[2]);
const whole = readFileSync(0, 'utf8');

/** The same numbers in every run: a linear congruential generator with the constants of ISO C's example. */
let state = 1;
const below = (end) => {
  state = (state * 1103515245 + 12345) % 2 ** 31;
  return Math.floor((state / 2 ** 31) * end);
};
const one = (list) => list[below(list.length)];

/** Goes down at random, and spoils what it comes to: the deeper the rarer would be, so it turns back at few places. */
function spoil(value) {
  const names = Object.keys(value);
  const name = one(names);
  const inside = value[name];
  if (inside !== null && typeof inside === 'object' && Object.keys(inside).length && below(8)) return spoil(inside);
  const ways = [
    () => { value[name] = structuredClone(one(HOSTILE)); },
    () => { value[name] = structuredClone(value[one(names)]); },
    () => { Array.isArray(value) ? value.splice(Number(name), 1) : delete value[name]; },
    () => { Array.isArray(value) ? value.push(structuredClone(one(HOSTILE))) : (value[one(['more', 'toString', 'constructor'])] = 1); },
  ];
  return one(ways)();
}

/** A piece of the text taken out, doubled, or replaced by a character that means something. */
function tear(text) {
  const at = below(text.length), end = at + below(40);
  return text.slice(0, at) + one(['', text.slice(at, end) + text.slice(at, end), one(['{', '}', '[', ']', '"', ',', '\\', '9', '-', 'e'])]) + text.slice(end);
}

function spoilt() {
  if (below(4) === 0) return tear(whole);
  const made = JSON.parse(whole);
  for (let times = 1 + below(3); times; times -= 1) spoil(made);
  return JSON.stringify(made);
}

const ends = {read: 0, refused: 0};
const faults = new Map();
let slowest = 0;
for (let turn = 0; turn < count; turn += 1) {
  const text = spoilt();
  const begun = process.cpuUsage();
  try {
    readSnapshot(text);
    ends.read += 1;
  } catch (error) {
    if (error instanceof Misshapen) ends.refused += 1;
    else faults.set(String(error), text);
  }
  const {user, system} = process.cpuUsage(begun);
  slowest = Math.max(slowest, (user + system) / 1000);
  if ((user + system) / 1000 > PATIENCE_MS) faults.set('took too long', text);
}
if ({}.polluted !== undefined || Object.keys(Object.prototype).length) faults.set('a prototype was changed', '');
console.log(`${count} spoilt snapshots, ${ends.read} read, ${ends.refused} refused, the slowest ${slowest.toFixed(0)} ms`);
for (const [fault, text] of faults) console.error(fault, text.slice(0, 3000));
process.exit(faults.size ? 1 : 0);
