/** Where a refusal of the core belongs in the form, and how it is said there. */
import {refusedWords} from '../shared/fields/refused.js';

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

const GROUPS = {ports: 'port', owned: 'owned', limits: 'kit'};

/**
 * The refusal in its place, the sentence with port and field named as the reader knows them.
 *
 * @param {import('../shared/answers.js').Refused | undefined} refusal
 * @param {string[]} names - of the ports
 * @param {(name: string) => string | undefined} labelOf - of a control
 * @returns {Refused | undefined}
 */
export function placed(refusal, names, labelOf) {
  if (!refusal) return undefined;
  const place = placeOf(refusal);
  const {at = 0} = place;
  const label = labelOf(`${GROUPS[place.group]}.${place.field}`) ?? place.field;
  const what = {
    ports: `${names[at]}: ${label}`,
    owned: `Adapter ${at + 1}: ${label}`,
    limits: label,
  }[place.group];
  return {...place, message: refusedWords(refusal, what)};
}
