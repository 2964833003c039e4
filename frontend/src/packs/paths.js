/** Reading and changing a plain document by paths; what is changed is another document, the rest is shared. */

/** @typedef {(string | number)[]} Path */

/**
 * What stands at a path; undefined where there is nothing.
 *
 * @param {any} document
 * @param {Path} path
 * @returns {any}
 */
export const at = (document, path) => path.reduce((value, key) => value?.[key], document);

/**
 * The document with another value at a path; undefined takes what stands there away.
 *
 * @param {any} document
 * @param {Path} path
 * @param {any} value
 * @returns {any}
 */
export function put(document, path, value) {
  if (path.length === 0) return value;
  const [key, ...rest] = path;
  const inside = put(document?.[key], rest, value);
  if (Array.isArray(document)) {
    const index = Number(key);
    return inside === undefined ? document.toSpliced(index, 1) : document.with(index, inside);
  }
  if (inside !== undefined) return {...document, [key]: inside};
  const {[key]: _, ...others} = document ?? {};
  return others;
}

/** A path as one word, for ids. */
export const word = (path) => path.join('-');
