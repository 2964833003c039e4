/** Unpacks a library out of a part of the page, once, when it is first asked for. */
import {runPart} from './part-text.js';

/**
 * @template Library
 * @param {Document} document
 * @param {string} part
 * @param {() => Library | undefined} found - where the library puts itself
 * @param {string} what - what it is called
 * @returns {() => Promise<Library>}
 */
export function packedLibrary(document, part, found, what) {
  let library;
  const load = async () => {
    await runPart(document, part);
    if (!found()) throw new Error(`The ${what} could not be loaded.`);
    return found();
  };
  return () => (library ??= load());
}
