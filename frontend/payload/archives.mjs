/** The archives of the payload, made by pack.py inside Pyodide. */
import {readFileSync} from 'node:fs';
import {RUNTIME, module} from './python.mjs';

/** Where the names of the modules that go along are kept, of the standard library and of the wheels. */
export const LISTS = {
  stdlib: new URL('stdlib-modules.txt', import.meta.url),
  packages: new URL('package-modules.txt', import.meta.url),
};

/** File names of the committed wheels in frontend/runtime. */
const wheels = () =>
  Object.values(JSON.parse(readFileSync(`${RUNTIME}wheels.json`, 'utf8')).wheels).map(({file}) => file);

const listed = (name) => readFileSync(LISTS[name], 'utf8').trim().split('\n');

/** Bytes out of Python, whose own copy is let go. */
function taken(proxy) {
  const bytes = proxy.toJs();
  proxy.destroy();
  return bytes;
}

/** What pack.py makes in `python`, as bytes. */
export function packer(python) {
  const pack = module(python, 'pack');
  const path = python.pyimport('pathlib').Path;

  return {
    /** The standard library with its listed modules only. */
    stdlib() {
      return taken(pack.archive(pack.library(path('/pyodide/python_stdlib.zip'), python.toPy(listed('stdlib')))));
    },
    /** The wheels as a tree of site-packages; the listed modules only, or all. */
    packages({whole = false} = {}) {
      const modules = whole ? undefined : python.toPy(listed('packages'));
      const files = python.toPy(new Map());
      for (const file of wheels()) files.update(pack.wheel(path(`/wheels/${file}`), modules));
      return taken(pack.archive(files));
    },
    /** The package `jointwise`, apart from the libraries, which change less often. */
    core() {
      return taken(pack.archive(pack.core(path('/project/calc'), path('/project/frontend/src/worker/worker.py'))));
    },
  };
}
