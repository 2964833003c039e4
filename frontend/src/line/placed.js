/** Where a refusal of the core belongs in the editor. */

/** @import {Refused} from '../shared/answers.js' */

/**
 * Where a refusal belongs: `group` is elements, load, transmitter, receiver, preamplifier or station, or empty; `at` is
 * the place of an element.
 *
 * @typedef {{group: string, at?: number, field: string}} Place
 * @typedef {Place & {message: string}} Placed
 */

/**
 * The place of a refusal's path, such as "elements[2].length_m".
 *
 * @returns {Place}
 */
export function placeOf(refusal) {
  const path = refusal?.field ?? '';
  const element = /^elements\[(\d+)\](?:\.(\w+))?/.exec(path);
  if (element) return {group: 'elements', at: Number(element[1]), field: element[2] ?? ''};
  const [group, ...rest] = path.split('.');
  if (group === 'load') return {group, field: (rest[0] ?? '').replace(/\[.*/, '')};
  if (group === 'transmitter') return {group, field: rest[0] ?? ''};
  if (group === 'receiver') return {group: rest.length > 1 ? rest[0] : group, field: rest.at(-1) ?? ''};
  return {group: path === '' ? '' : 'station', field: path};
}

/**
 * A refusal at its place.
 *
 * @param {Refused | undefined} refusal
 * @returns {Placed | undefined}
 */
export const placed = (refusal) => refusal && {...placeOf(refusal), message: refusal.message};
