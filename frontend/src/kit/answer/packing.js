/** The packing list: the adapters to add, and the owned ones that the pairs use. */
import {valuesOf} from '../../shared/export/values.js';
import {endWords, pairNumbers} from '../names.js';

/** An adapter is the same from either end. */
const keyOf = ({one_family, one_gender, other_family, other_gender}) =>
  [`${one_family} ${one_gender}`, `${other_family} ${other_gender}`].sort().join(' / ');

/** How many of a type a chain takes. */
const takes = ({joined}, key) => (joined?.adapters ?? []).filter((one) => keyOf(one) === key).length;

function typesOwned(owned) {
  const held = new Map();
  for (const one of owned) {
    const key = keyOf(one);
    held.set(key, {...one, count: (held.get(key)?.count ?? 0) + one.count});
  }
  return held;
}

/**
 * @import {Request} from '../edits.js'
 * @import {Answer, Ends} from './answer.js'
 *
 * @typedef {Ends & {what: string, count: number, from: 'add' | 'own', pairs: [number, number][], kind: string,
 *   pack?: string, stated?: string}} Row
 */

/**
 * The rows, what is to be added first; one pair is joined at a time, so the greediest decides the count.
 *
 * @param {Pick<Answer, 'adapters' | 'pairs'>} result
 * @param {Pick<Request, 'owned'>} request
 * @param {{id: string, name: string}[]} families
 * @returns {Row[]}
 */
export function packingOf(result, request, families) {
  const end = (one, side) => endWords(families, one[`${side}_family`], one[`${side}_gender`]);
  const name = (one) => `${end(one, 'one')} to ${end(one, 'other')}`;
  const users = (key) => result.pairs.filter((pair) => takes(pair, key) > 0).map(({ports}) => ports);
  const added = result.adapters.map((one) => ({...one, what: one.name, from: 'add', pairs: users(keyOf(one))}));
  const owned = [...typesOwned(request.owned ?? [])].map(([key, one]) => {
    const most = Math.max(0, ...result.pairs.map((pair) => takes(pair, key)));
    return {...one, what: name(one), count: Math.min(one.count, most), from: 'own', pairs: users(key), kind: ''};
  });
  return [...added, ...owned.filter(({count}) => count > 0)];
}

/** @type {import('../../shared/export/values.js').Column[]} */
const COLUMNS = [
  ['adapter', (row) => row.what],
  ['one_family', (row) => row.one_family],
  ['one_gender', (row) => row.one_gender],
  ['other_family', (row) => row.other_family],
  ['other_gender', (row) => row.other_gender],
  ['count', (row) => row.count],
  ['from', (row) => row.from],
  ['joins', (row) => row.pairs.map(pairNumbers).join(' ')],
  ['known_from', (row) => row.kind],
];

export const packingCsv = (rows) => valuesOf(COLUMNS, rows);
