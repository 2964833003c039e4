/**
 * The text of the worker: Pyodide's two modules rewritten to stand in one
 * classic script, then the bundled boot code.
 *
 * Chromium refuses module workers from a blob on a page from a file, so it is
 * a classic one; Pyodide refuses those, but only by trying importScripts.
 */

/** Each place of pyodide.asm.mjs that only a module may hold, and what stands there instead. */
const ASM = [
  ['createRequire(import.meta.url)', 'createRequire(self.location.href)'],
  ['_scriptName=import.meta.url', '_scriptName=self.location.href'],
  ['new URL("pyodide.asm.wasm",import.meta.url)', 'new URL("pyodide.asm.wasm",self.location.href)'],
  ['export default _createPyodideModule;', 'return _createPyodideModule;'],
];

/** The same of pyodide.mjs, and the one address it would fetch packages from. */
const LOADER = [
  [/export\{(\w+) as loadPyodide,\w+ as version\};/, 'return $1;'],
  [/`https:\/\/cdn\.jsdelivr\.net\/pyodide\/v\$\{\w+\}\/full\/`/, '"memory:/"'],
  [/\/\/# sourceMappingURL=\S+/, ''],
];

/** Code that stays behind in a branch a browser never takes, but that only a module may hold. */
const MODULE_ONLY = /\bimport\.meta\b|^\s*(import|export)\b/m;

/** `text` with each pattern replaced. Raises an Error unless each is there exactly once. */
export function rewritten(text, changes, name) {
  let script = text;
  for (const [pattern, replacement] of changes) {
    const found =
      typeof pattern === 'string'
        ? script.split(pattern).length - 1
        : [...script.matchAll(new RegExp(pattern, 'g'))].length;
    if (found !== 1) throw new Error(`${name}: ${pattern} is there ${found} times, expected once`);
    script = script.replace(pattern, replacement);
  }
  const left = script.match(MODULE_ONLY);
  if (left) throw new Error(`${name}: ${left[0]} is left over`);
  return script;
}

/** A module's code as an expression; modules are strict, so this is too. */
const enclosed = (code) => `(() => {\n'use strict';\n${code}\n})()`;

/**
 * The worker's script from the texts of pyodide.asm.mjs, pyodide.mjs and the bundled boot code.
 *
 * Of Pyodide's lock file only what it says about itself goes along: there are no packages to fetch.
 */
export function workerScript({asm, loader, lock, boot, notice}) {
  return `/*! ${notice} */
self.importScripts = undefined;
const runtime = {
createPyodideModule: ${enclosed(rewritten(asm, ASM, 'pyodide.asm.mjs'))},
lockFileContents: ${JSON.stringify({info: lock.info, packages: {}})},
loadPyodide: ${enclosed(rewritten(loader, LOADER, 'pyodide.mjs'))},
};
${boot}`;
}
