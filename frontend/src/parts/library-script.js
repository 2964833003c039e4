/**
 * Loads a library from a file of its own, once, when it is first asked for.
 *
 * @template Library
 * @param {string} address
 * @param {() => Library | undefined} found - where the library puts itself
 * @param {string} what - what it is called
 * @returns {() => Promise<Library>}
 */
export function libraryScript(address, found, what) {
  let library;
  const load = () =>
    new Promise((resolve, reject) => {
      const script = document.createElement('script');
      script.src = address;
      script.onload = () => resolve(found());
      script.onerror = () => {
        library = undefined;
        script.remove();
        reject(new Error(`The ${what} could not be loaded.`));
      };
      document.head.append(script);
    });
  return () => (library ??= load());
}
