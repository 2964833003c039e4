/** Where a refusal of the core belongs in the form. */

/**
 * @typedef {object} Place - where a refusal belongs
 * @property {string} group - ports, owned, pairs or limits; empty where it names none
 * @property {number} [at] - of a port or an adapter
 * @property {string} field
 *
 * @typedef {Place & {message: string}} Refused - a refusal in its place
 */

/**
 * The place of a refusal's path, such as "ports[2].family".
 *
 * @param {{field?: string}} [refusal]
 * @returns {Place}
 */
export function placeOf(refusal) {
  const path = refusal?.field ?? '';
  const part = /^(ports|owned)\[(\d+)\](?:\.(\w+))?/.exec(path);
  if (part) return {group: part[1], at: Number(part[2]), field: part[3] ?? ''};
  if (/^pairs\b/.test(path)) return {group: 'pairs', field: ''};
  return {group: path === '' ? '' : 'limits', field: path};
}

/**
 * The refusal in its place.
 *
 * @param {import('../shared/answers.js').Refused | undefined} refusal
 * @returns {Refused | undefined}
 */
export const placed = (refusal) => refusal && {...placeOf(refusal), message: refusal.message};
