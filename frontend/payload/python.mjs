/** Pyodide under Node, for making and testing the payload. */
import {readFileSync} from 'node:fs';
import {fileURLToPath} from 'node:url';

export const PROJECT = fileURLToPath(new URL('../../', import.meta.url));
export const RUNTIME = `${PROJECT}frontend/runtime/`;
export const PYODIDE = `${RUNTIME}node_modules/pyodide/`;

const {loadPyodide, version} = await import(`${PYODIDE}pyodide.mjs`);
export {version};

/**
 * A fresh Python that sees the project under /project, Pyodide's own files under /pyodide and the wheels under /wheels.
 *
 * `library` is its standard library, by default the whole one. Hashes are not
 * seeded at random, so that the same sources compile to the same bytes.
 */
export async function startPython({library = `${PYODIDE}python_stdlib.zip`} = {}) {
  const python = await loadPyodide({stdLibURL: library, env: {PYTHONHASHSEED: '0', PYTHONNODEBUGRANGES: '1'}});
  for (const [place, folder] of Object.entries({'/project': PROJECT, '/pyodide': PYODIDE, '/wheels': RUNTIME})) {
    python.mountNodeFS(place, folder);
  }
  return python;
}

/** A Python file beside this one, as a module. */
export function module(python, name) {
  python.FS.writeFile(`/home/pyodide/${name}.py`, readFileSync(new URL(`${name}.py`, import.meta.url)));
  return python.pyimport(name);
}
