/** A document as a file to take along, and back. */
import {refuse} from './check.js';

/** @typedef {{format: string, version: number, key: string}} Kind - what the file says it is, and the name of the document in it */

/** @param {Kind} kind */
export const asFile = ({format, version, key}, document) => JSON.stringify({format, version, [key]: document}, null, 1);

/**
 * The document of a file. Throws a RangeError with one sentence for a file that can't be taken whole.
 *
 * @param {Kind} kind
 * @param {function(any): object} read - checks the document; throws a RangeError whose message is for the reader
 */
export function fromFile({format, version, key}, content, read) {
  let value;
  try {
    value = JSON.parse(content);
  } catch {
    throw new RangeError(`The file is no JSON; allowed: a file of ${key} exported here.`);
  }
  if (value?.format !== format) refuse('format', value?.format, `"${format}"`);
  if (value.version !== version) refuse('version', value.version, `${version}`);
  return read(value[key]);
}
