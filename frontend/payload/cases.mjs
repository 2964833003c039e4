/** One list of requests for everything the core can be asked, mistakes included. */
import {readFileSync} from 'node:fs';

export const CASES = JSON.parse(readFileSync(new URL('cases.json', import.meta.url), 'utf8'));

/**
 * Ask an open core some cases, in order; what it answers.
 *
 * Raises an Error when an operation of the core has no case.
 */
export function askAll(python, core, cases) {
  const operations = python.pyimport('jointwise.calc.operations').OPERATIONS.keys();
  const asked = new Set(cases.map(({operation}) => operation));
  const forgotten = [...operations].filter((name) => !asked.has(name));
  if (forgotten.length > 0) throw new Error(`cases.json has no request for ${forgotten.join(', ')}`);
  python.setStderr({batched: () => {}}); // one case fails on purpose
  const encoder = new TextEncoder();
  return cases.map(({operation, body, packs}) => core(operation, encoder.encode(body), packs));
}
