/** A finished payload, started under Node. */
import {mkdtempSync, readFileSync, rmSync, writeFileSync} from 'node:fs';
import {tmpdir} from 'node:os';
import {join} from 'node:path';
import {openCore} from '../src/worker/core.js';
import {unpacked} from '../src/worker/part.js';
import {startPython} from './python.mjs';

/**
 * The Python of the payload in `folder`, with its own standard library and nothing else, and its core.
 *
 * `wholeLibrary` gives it Pyodide's instead.
 */
export async function openPayload(folder, {wholeLibrary = false} = {}) {
  const {parts} = JSON.parse(readFileSync(`${folder}/payload.json`, 'utf8'));
  const read = async (wanted) => {
    const {file, sha256} = parts.find(({name}) => name === wanted);
    return unpacked({bytes: readFileSync(`${folder}/${file}`), sha256}, wanted);
  };
  const python = wholeLibrary ? await startPython() : await startWith(await read('stdlib'));
  return {python, core: openCore(python, await read('packages'), await read('core'))};
}

/** Pyodide under Node takes its library from a file only. */
async function startWith(stdlib) {
  const scratch = mkdtempSync(join(tmpdir(), 'jointwise-'));
  try {
    const library = join(scratch, 'stdlib.zip');
    writeFileSync(library, stdlib);
    return await startPython({library});
  } finally {
    rmSync(scratch, {recursive: true});
  }
}
