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

/** Between the everyday names of plug and jack: "PL-259 / SO-239". */
export const BETWEEN_ENDS = ' / ';

/**
 * The everyday names of plug and jack; empty where they have none of their own.
 *
 * @param {{also_called?: string[]}} [family]
 */
export const everydayNames = (family) => family?.also_called?.find((name) => name.includes(BETWEEN_ENDS)) ?? '';

/**
 * Connectors to choose among, by their names with the everyday ones: "UHF (PL-259 / SO-239)".
 *
 * @template {Entry & {also_called?: string[]}} Family
 * @param {Family[]} families
 * @returns {Family[]}
 */
export const spokenFamilies = (families) =>
  families.map((family) => {
    const everyday = everydayNames(family);
    return everyday ? {...family, name: `${family.name} (${everyday})`} : family;
  });
