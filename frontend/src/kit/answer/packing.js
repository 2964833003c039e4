/** The packing list: the adapters to add, and the owned ones that the pairs use. */
import {valuesOf} from '../../shared/export/values.js';
import {endWords, pairName} from '../names.js';
import {adapterKey} from '../ticks.js';

/** How many of a type a chain takes. */
const takes = ({joined}, key) => (joined?.adapters ?? []).filter((one) => adapterKey(one) === key).length;

function typesOwned(owned) {
  const held = new Map();
  for (const one of owned) {
    const key = adapterKey(one);
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
 * @param {{id: string, name: string, also_called?: string[]}[]} families
 * @returns {Row[]}
 */
export function packingOf(result, request, families) {
  const end = (one, side) => endWords(families, one[`${side}_family`], one[`${side}_gender`]);
  const name = (one) => `${end(one, 'one')} to ${end(one, 'other')}`;
  const users = (key) => result.pairs.filter((pair) => takes(pair, key) > 0).map(({ports}) => ports);
  const added = result.adapters.map((one) => ({...one, what: one.name, from: 'add', pairs: users(adapterKey(one))}));
  const owned = [...typesOwned(request.owned ?? [])].map(([key, one]) => {
    const most = Math.max(0, ...result.pairs.map((pair) => takes(pair, key)));
    return {...one, what: name(one), count: Math.min(one.count, most), from: 'own', pairs: users(key), kind: ''};
  });
  return [...added, ...owned.filter(({count}) => count > 0)];
}

/**
 * @param {string[]} names - of the ports
 * @returns {import('../../shared/export/values.js').Column[]}
 */
const columns = (names) => [
  ['adapter', (row) => row.what],
  ['one_family', (row) => row.one_family],
  ['one_gender', (row) => row.one_gender],
  ['other_family', (row) => row.other_family],
  ['other_gender', (row) => row.other_gender],
  ['count', (row) => row.count],
  ['from', (row) => row.from],
  ['joins', (row) => row.pairs.map((pair) => pairName(pair, names)).join('; ')],
  ['known_from', (row) => row.kind],
];

/** The list as a file, its pairs by the names of their ports. */
export const packingCsv = (rows, names) => valuesOf(columns(names), rows);
