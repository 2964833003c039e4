/** Starts Python in a classic worker that may reach nothing outside. */

const HOME = 'memory:/';

/**
 * Python from the two files Pyodide asks for: {'pyodide.asm.wasm': bytes, 'python_stdlib.zip': bytes}.
 *
 * `runtime` is what the head of the worker's script holds: loadPyodide and two of its settings.
 */
export async function startPython({loadPyodide, ...settings}, files) {
  self.fetch = async (address) => {
    const name = new URL(/** @type {string | URL} */ (address)).pathname.replace(/^\//, '');
    const bytes = files[name];
    if (bytes === undefined) throw new TypeError(`the core asked for ${address}, and nothing is fetched here`);
    return new Response(bytes, {
      headers: {'Content-Type': name.endsWith('.wasm') ? 'application/wasm' : 'application/zip'},
    });
  };
  return Promise.race([refusedModule(), loadPyodide({indexURL: HOME, ...settings})]);
}

/** Fails when the engine refuses WebAssembly, of which Pyodide only warns and then waits for ever. */
function refusedModule() {
  const instantiate = WebAssembly.instantiateStreaming;
  return new Promise((_, fail) => {
    WebAssembly.instantiateStreaming = (...given) => {
      const instance = instantiate(...given);
      instance.catch(fail);
      return instance;
    };
  });
}
