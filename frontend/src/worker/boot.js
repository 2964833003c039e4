/**
 * The worker: Python with the core inside, told what to do by messages.
 *
 * The build puts this behind a head that defines `runtime`, Pyodide's own code.
 */
/* global runtime */
import {openCore} from './core.js';
import {LOADING, STARTING, UNPACKING} from './messages.js';
import {unpacked} from './part.js';
import {startPython} from './python.js';
import {serve} from './serve.js';

serve(self, async (parts, reached) => {
  reached(UNPACKING);
  const [python, stdlib, packages, core] = await Promise.all(
    ['python', 'stdlib', 'packages', 'core'].map(async (name) => unpacked(await parts[name], name)),
  );
  reached(STARTING);
  const interpreter = await startPython(runtime, {'pyodide.asm.wasm': python, 'python_stdlib.zip': stdlib});
  reached(LOADING);
  return openCore(interpreter, packages, core);
});
