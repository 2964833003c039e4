/** Where a refusal of the core belongs in the editor, and how it is said there. */
import {refusedWords} from '../shared/fields/refused.js';
import {groupOf} from '../shared/lines/kinds.js';

/**
 * @import {Refused} from '../shared/answers.js'
 * @import {LineRequest} from '../shared/lines/document.js'
 */

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

/** What is refused as a whole. */
const WHOLE = {load: 'The antenna'};

/**
 * A refusal at its place, its sentence with element and field named as the reader knows them.
 *
 * @param {Refused | undefined} refusal
 * @param {LineRequest} request
 * @param {(name: string) => string | undefined} labelOf - the label of a control "group.field"
 * @param {string[]} names - of the elements
 * @returns {Placed | undefined}
 */
export function placed(refusal, request, labelOf, names) {
  if (!refusal) return undefined;
  const place = placeOf(refusal);
  const {group, at = -1, field} = place;
  const one = request.elements[at];
  const kind = {elements: one && groupOf(one), load: `load_${request.load.kind}`}[group] ?? group;
  const label = labelOf(`${kind}.${field}`) ?? (field || WHOLE[group] || '');
  const what = group === 'elements' ? `Element ${at + 1}, ${names[at]}: ${label}` : label;
  return {...place, message: refusedWords(refusal, what)};
}
