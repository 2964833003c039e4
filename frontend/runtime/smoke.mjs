/**
 * Boots Pyodide with the committed wheels and checks them there:
 *
 *   npm ci && node smoke.mjs [FOLDER ...]
 *
 * Always: the hashes of wheels.json and of each RECORD, and that Pyodide offers
 * everything the compiled modules import. With folders that hold pytest's
 * wheels and one of numpy: numpy's own tests as well. They are plain Python, so
 * that a wheel for any machine brings them; the one that build_numpy.py leaves
 * (tests/ in its work folder) also has the compiled modules that some need.
 */
import assert from 'node:assert/strict';
import {createHash} from 'node:crypto';
import {readFileSync, readdirSync} from 'node:fs';
import {fileURLToPath} from 'node:url';
import {loadPyodide, version} from 'pyodide';

const here = fileURLToPath(new URL('.', import.meta.url));
const {pyodide: expected, wheels} = JSON.parse(readFileSync(`${here}wheels.json`, 'utf8'));

/** Parts of numpy's test suite that take about a minute together. */
const TESTS = [
  'fft',
  'linalg',
  'matrixlib',
  'polynomial',
  ...['einsum', 'function_base', 'getlimits', 'half', 'umath_accuracy', 'umath_complex'].map(
    (name) => `_core/tests/test_${name}.py`,
  ),
];

/** More, for which numpy compiles modules of their own. */
const TESTS_WITH_MODULES = ['_core/tests/test_umath.py', '_core/tests/test_dtype.py'];

/** What the loader of side modules provides itself, one for each module. */
const FROM_LOADER = new Set(['__memory_base', '__table_base']);

/** Adds what the committed wheel leaves out and what runs the tests; a file that is there stays the committed one. */
const ADD_TESTS = `
import site, zipfile
from pathlib import Path

packages = Path(site.getsitepackages()[0])
for wheel in Path("/archives").iterdir():
    with zipfile.ZipFile(wheel) as archive:
        for name in archive.namelist():
            foreign = name.endswith(".so") and "wasm32" not in name
            if not foreign and not (packages / name).exists() and ".dist-info/" not in name:
                archive.extract(name, packages)
`;

const RUN_TESTS = `
from importlib.util import find_spec

import pytest

# numpy's conftest imports one of these modules, and sets up only what their tests need
has_modules = find_spec("numpy._core._multiarray_tests")
options, chosen = ([], parts + parts_with_modules) if has_modules else (["--noconftest"], parts)
files = [str(packages / "numpy" / part) for part in chosen]
int(pytest.main(["-q", "--disable-warnings", "-p", "no:cacheprovider", *options, *files]))
`;

const SIDE_MODULES = `
import site
from pathlib import Path

[str(path) for path in sorted(Path(site.getsitepackages()[0]).rglob("*.so"))]
`;

const CHECK_RECORDS = `
import base64, hashlib
from importlib.metadata import distribution

for name in ("numpy", "msgspec"):
    files = [file for file in distribution(name).files if file.hash]
    assert len(files) > 1, name
    for file in files:
        digest = hashlib.new(file.hash.mode, file.read_binary()).digest()
        assert base64.urlsafe_b64encode(digest).rstrip(b"=").decode() == file.hash.value, file
`;

/** The spectrum of one cosine period: n/2 = 4 in the first line; and through JSON and back unchanged. */
const CALCULATE = `
import msgspec, numpy as np

spectrum = np.fft.fft(np.cos(2 * np.pi * np.arange(8.0) / 8))
assert abs(spectrum[1] - 4) < 1e-12, spectrum
assert msgspec.json.decode(msgspec.json.encode(spectrum.real.tolist())) == spectrum.real.tolist()
(np.__version__, msgspec.__version__)
`;

assert.equal(version, expected, 'node_modules holds another Pyodide: run npm ci');
const pyodide = await loadPyodide({fullStdLib: true});
for (const {file, sha256} of Object.values(wheels)) {
  assert.equal(
    createHash('sha256')
      .update(readFileSync(here + file))
      .digest('hex'),
    sha256,
    `${file} is not the recorded one`,
  );
  await pyodide.loadPackage(here + file, {checkIntegrity: false, messageCallback: () => {}});
}
pyodide.runPython(CHECK_RECORDS);
console.log('numpy, msgspec:', pyodide.runPython(CALCULATE).toJs().join(', '));

const core = await WebAssembly.compile(readFileSync(`${here}node_modules/pyodide/pyodide.asm.wasm`));
const offered = new Set(
  [...WebAssembly.Module.exports(core), ...WebAssembly.Module.imports(core)].map(({name}) => name),
);
const imported = new Set();
for (const path of pyodide.runPython(SIDE_MODULES).toJs()) {
  const module = await WebAssembly.compile(pyodide.FS.readFile(path));
  const names = WebAssembly.Module.imports(module).map(({name}) => name);
  // A module may look up its own symbols through the loader's table.
  const own = new Set(WebAssembly.Module.exports(module).map(({name}) => name));
  const missing = names.filter((name) => !offered.has(name) && !own.has(name) && !FROM_LOADER.has(name));
  assert.deepEqual(missing, [], `${path} imports what Pyodide does not offer`);
  for (const name of names) imported.add(name);
}
console.log(`${imported.size} different imports of side modules, all offered by Pyodide`);

const folders = process.argv.slice(2);
if (folders.length > 0) {
  pyodide.FS.mkdir('/archives');
  for (const folder of folders) {
    for (const name of readdirSync(folder))
      pyodide.FS.writeFile(`/archives/${name}`, readFileSync(`${folder}/${name}`));
  }
  pyodide.runPython(ADD_TESTS);
  pyodide.globals.set('parts', pyodide.toPy(TESTS));
  pyodide.globals.set('parts_with_modules', pyodide.toPy(TESTS_WITH_MODULES));
  process.exitCode = pyodide.runPython(RUN_TESTS);
}
