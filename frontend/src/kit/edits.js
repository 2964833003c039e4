/**
 * Every edit of a kit, as plain data: the request the core is asked.
 *
 * Ports are named in the pairs by their place, so that pairs follow a port that
 * moves, a copy is joined as its original, and a port that goes takes its pairs
 * along. Every edit gives a new value and leaves the old one whole.
 */
import {given} from '../shared/state/given.js';

/**
 * @typedef {object} Port
 * @property {string} name
 * @property {string} family
 * @property {string} gender
 * @property {number} highest_frequency_hz
 * @property {number} [power_w] - any where it is left out
 * @property {number} [impedance_ohm]
 *
 * @typedef {import('./answer/answer.js').Ends & {count: number}} Adapter - that is owned
 *
 * @typedef {{least: number, most: number}} Bounds - of how many there may be
 *
 * @typedef {object} Joining - what is to be joined
 * @property {Port[]} ports
 * @property {[number, number][]} [pairs] - every two where it is left out
 * @property {Adapter[]} [owned]
 * @property {string[]} [ticked] - rows of the packing list, by their keys
 *
 * @typedef {Joining & {[field: string]: any}} Request - with the limits and the site
 */

const replaced = (list, at, value) => list.map((one, index) => (index === at ? value : one));

/**
 * @param {[number, number]} pair
 * @returns {[number, number]}
 */
const inOrder = ([one, other]) => (one < other ? [one, other] : [other, one]);
/**
 * @param {[number, number]} one
 * @param {[number, number]} other
 */
const byPlace = ([a, b], [c, d]) => a - c || b - d;

/**
 * Every two of so many ports.
 *
 * @param {number} count
 * @returns {[number, number][]}
 */
export const everyPair = (count) =>
  Array.from({length: count}, (_, one) =>
    Array.from({length: count - one - 1}, (_, more) => /** @type {[number, number]} */ ([one, one + 1 + more])),
  ).flat();

/**
 * The pairs of a request: those named, else every two.
 *
 * @param {Request} request
 * @returns {[number, number][]}
 */
export const pairsOf = ({pairs, ports}) => pairs ?? everyPair(ports.length);

/** Ports in another order; `from` lists the old place of each, and one that stands twice is a copy. */
function arranged(request, from) {
  const places = request.ports.map((_, old) => from.flatMap((one, at) => (one === old ? [at] : [])));
  const ports = from.map((old) => request.ports[old]);
  if (!request.pairs) return {...request, ports};
  const pairs = request.pairs.flatMap(([one, other]) =>
    places[one].flatMap((first) => places[other].map((second) => inOrder([first, second]))),
  );
  return {...request, ports, pairs: pairs.sort(byPlace)};
}

const places = ({ports}) => ports.map((_, at) => at);

const inRange = (at, list) => at >= 0 && at < list.length;

const EDITS = {
  set: (request, {at, changes}) => ({
    ...request,
    ports: replaced(request.ports, at, given({...request.ports[at], ...changes})),
  }),
  add: (request, {port}, {ports}) =>
    request.ports.length < ports.most ? {...request, ports: [...request.ports, port]} : request,
  duplicate: (request, {at}, {ports}) =>
    request.ports.length < ports.most ? arranged(request, places(request).toSpliced(at + 1, 0, at)) : request,
  remove: (request, {at}) => arranged(request, places(request).toSpliced(at, 1)),
  move: (request, {at, to}) =>
    at !== to && inRange(to, request.ports)
      ? arranged(request, places(request).toSpliced(at, 1).toSpliced(to, 0, at))
      : request,
  pairs: ({pairs: _, ...request}, {pairs}) => (pairs ? {...request, pairs} : request),
  join: (request, {pair, joined}) => {
    const wanted = inOrder(pair);
    const others = pairsOf(request)
      .map(inOrder)
      .filter(([one, other]) => one !== wanted[0] || other !== wanted[1]);
    return {...request, pairs: (joined ? [...others, wanted] : others).sort(byPlace)};
  },
  own: (request, {at, changes}) => ({
    ...request,
    owned: replaced(request.owned, at, {...request.owned[at], ...changes}),
  }),
  acquire: (request, {adapter}, {owned}) =>
    (request.owned ?? []).length < owned.most ? {...request, owned: [...(request.owned ?? []), adapter]} : request,
  discard: (request, {at}) => ({...request, owned: request.owned.toSpliced(at, 1)}),
  limit: (request, {changes}) => given({...request, ...changes}),
  tick: (request, {key, ticked}) => {
    const others = (request.ticked ?? []).filter((one) => one !== key);
    return {...request, ticked: ticked ? [...others, key] : others};
  },
  replace: (_, {request}) => request,
};

/**
 * The request after one edit: {kind, ...}; the same request where the edit changes nothing.
 *
 * @param {Request} request
 * @param {{kind: string, [what: string]: any}} edit
 * @param {object} limits - the fields of a request, for how many there may be
 * @returns {Request}
 */
export const edited = (request, edit, limits) => EDITS[edit.kind](request, edit, limits);
