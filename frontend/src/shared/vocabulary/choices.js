/** Fields and words whose choices are entries of the catalogue. */

/** @import {Entry, Fields} from './start-data.js' */

/**
 * The fields with those that name an entry as a choice.
 *
 * @param {Fields} fields
 * @param {Record<string, Entry[]>} [entries] - by the name of the field
 * @returns {Fields}
 */
export const named = (fields, entries = {}) =>
  Object.fromEntries(
    Object.entries(fields).map(([name, field]) => [
      name,
      name in entries ? {...field, type: 'choice', choices: entries[name].map(({id}) => id)} : field,
    ]),
  );

/**
 * Choices of which none may be taken, in words of its own.
 *
 * @param {string} words
 * @param {Entry[]} entries
 * @returns {Record<string, string>}
 */
export const optional = (words, entries) => ({
  '': words,
  ...Object.fromEntries(entries.map(({id, name}) => [id, name])),
});
