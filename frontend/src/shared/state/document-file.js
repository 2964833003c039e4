/** A document as a file to take along, and back. */
import {refuse} from './check.js';

/**
 * What a file says it is, and the name of the document in it.
 *
 * @typedef {{format: string, version: number, key: string}} Kind
 */

/**
 * What a file of the document holds.
 *
 * @param {Kind} kind
 */
export const contentOf = ({format, version, key}, document) => ({format, version, [key]: document});

/**
 * The document of a file. Throws a RangeError with one sentence for a file that can't be taken whole.
 *
 * @template Document
 * @param {Kind} kind
 * @param {string} content
 * @param {(value: any) => Document} read - checks the document; throws a RangeError whose message is for the reader
 * @returns {Document}
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
