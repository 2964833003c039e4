/** What of the packing list is packed: it goes with the kit, and the core is not told of it. */

/** An adapter is the same from either end. */
export const adapterKey = ({one_family, one_gender, other_family, other_gender}) =>
  [`${one_family} ${one_gender}`, `${other_family} ${other_gender}`].sort().join(' / ');

/** A row of the packing list, whatever else is on it. */
export const rowKey = (row) => `${row.from} ${adapterKey(row)}`;

/** @import {Request} from './edits.js' */

/** @type {WeakMap<Request, Request>} */
const STRIPPED = new WeakMap();

/**
 * What the core is asked about a kit; of one kit always the same object.
 *
 * @param {Request} kit
 * @returns {Request}
 */
export function withoutTicks(kit) {
  const {ticked, ...request} = kit;
  if (ticked === undefined) return kit;
  const known = STRIPPED.get(kit) ?? /** @type {Request} */ (request);
  STRIPPED.set(kit, known);
  return known;
}

/**
 * Whether two kits differ in nothing but what is ticked.
 *
 * @param {Request} one
 * @param {Request} other
 */
export function areAlikeButTicks(one, other) {
  const [a, b] = [withoutTicks(one), withoutTicks(other)];
  const names = Object.keys(a);
  return names.length === Object.keys(b).length && names.every((name) => a[name] === b[name]);
}
