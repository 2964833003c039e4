/**
 * Makes everything the core needs in a browser: `node payload.mjs FOLDER`.
 *
 * FOLDER gets worker.part, python.part, stdlib.part, packages.part and
 * core.part, each packed with gzip, and payload.json, which tells what they hold. The same
 * sources give the same bytes. `node payload.mjs --derive` writes the lists of
 * modules that go along; do it when the core imports something new.
 */
import {createHash} from 'node:crypto';
import {mkdirSync, readFileSync, writeFileSync} from 'node:fs';
import {build} from 'esbuild';
import {packed} from '../packed.mjs';
import {openCore} from '../src/worker/core.js';
import {packer} from './archives.mjs';
import {derive} from './derive.mjs';
import {PROJECT, PYODIDE, startPython, version} from './python.mjs';
import {workerScript} from './worker-script.mjs';

const read = (path) => readFileSync(path, 'utf8');
const lock = JSON.parse(read(`${PYODIDE}pyodide-lock.json`));

/** The worker's own code, bundled. */
async function bootCode() {
  const {outputFiles} = await build({
    absWorkingDir: `${PROJECT}frontend`,
    entryPoints: ['src/worker/boot.js'],
    bundle: true,
    write: false,
    format: 'iife',
    target: ['chrome123', 'firefox121', 'safari17.5'],
    minify: true,
    charset: 'utf8',
    legalComments: 'inline',
    tsconfigRaw: {}, // the type checker's settings change no byte
    logLevel: 'warning',
  });
  return outputFiles[0].text;
}

async function script() {
  const text = workerScript({
    asm: read(`${PYODIDE}pyodide.asm.mjs`),
    loader: read(`${PYODIDE}pyodide.mjs`),
    lock,
    boot: await bootCode(),
    notice:
      `Holds Pyodide ${version} (Mozilla Public License 2.0), ` +
      "changed only where a module's text can't stand in a classic script",
  });
  return new TextEncoder().encode(text);
}

/** The versions of all that goes along, the libraries' as they name themselves. */
function versions(python, {packages, core}) {
  openCore(python, packages, core);
  const project = read(`${PROJECT}pyproject.toml`);
  const [jointwise] = /** @type {RegExpMatchArray} */ (project.match(/(?<=^version = ").+(?=")/m));
  const [numpy, msgspec] = ['numpy', 'msgspec'].map((name) => python.pyimport(name).__version__);
  return {jointwise, python: lock.info.python, pyodide: version, numpy, msgspec};
}

async function payload(folder) {
  const python = await startPython();
  const pack = packer(python);
  const contents = {
    worker: await script(),
    python: new Uint8Array(readFileSync(`${PYODIDE}pyodide.asm.wasm`)),
    stdlib: pack.stdlib(),
    packages: pack.packages(),
    core: pack.core(),
  };
  mkdirSync(folder, {recursive: true});
  const parts = Object.entries(contents).map(([name, unpacked]) => {
    const bytes = packed(unpacked);
    const file = `${name}.part`;
    writeFileSync(`${folder}/${file}`, bytes);
    return {
      name,
      file,
      bytes: bytes.length,
      unpacked_bytes: unpacked.length,
      sha256: createHash('sha256').update(bytes).digest('hex'),
    };
  });
  writeFileSync(
    `${folder}/payload.json`,
    `${JSON.stringify({versions: versions(python, contents), parts}, null, 1)}\n`,
  );
  for (const {name, bytes, unpacked_bytes} of parts) {
    console.log(`${name.padEnd(9)} ${String(bytes).padStart(9)} bytes, ${unpacked_bytes} unpacked`);
  }
}

const [what] = process.argv.slice(2);
if (what === undefined) {
  console.error('usage: node payload.mjs FOLDER | --derive');
  process.exitCode = 2;
} else if (what === '--derive') await derive();
else await payload(what);
