/**
 * The lists of the catalogue that the page's forms offer, with packs laid over them as the core lays them over its
 * catalogue; an entry of a pack says so in its name.
 */

import {prose} from '../text/measures.js';

/** Whose names may hold a size. */
const SIZED = ['cables', 'wire_lines'];

const ENTRY = {
  families: ({id, name, also_called}) => ({id, name, also_called}),
  cables: ({id, name}) => ({id, name}),
  wire_lines: ({id, name}) => ({id, name}),
  bands: ({id, name, regions}) => ({id, name, regions: Object.keys(regions).sort()}),
  modes: (mode) => mode,
};
const OF_PACK = {families: 'interfaces', cables: 'cables', wire_lines: 'wire_lines', bands: 'bands', modes: 'modes'};

function laidOver(list, builtIn, packs) {
  const entries = new Map(builtIn.map((entry) => [entry.id, entry]));
  for (const pack of packs) {
    for (const entry of pack[OF_PACK[list]] ?? []) {
      const {name, ...rest} = ENTRY[list](entry);
      entries.set(entry.id, {...rest, name: `${name} (pack ${pack.name})`});
    }
  }
  return [...entries.values()];
}

const spoken = (list, entries, units) =>
  SIZED.includes(list) ? entries.map((entry) => ({...entry, name: prose(entry.name, units)})) : entries;

/**
 * @import {StartData} from './start-data.js'
 * @import {Units} from '../text/measures.js'
 *
 * @typedef {Pick<StartData, 'families' | 'cables' | 'wire_lines' | 'bands' | 'modes' | 'conditions'
 *   | 'installations' | 'noise_environments' | 'antenna_views' | 'transmitters'>
 *   & {powers_w: number[]}} Lists
 *
 * @param {StartData} start
 * @param {{text: string}[]} packs - those in force, which the core has taken
 * @param {Units} [units] - in which lengths and sizes in names are told
 * @returns {Lists}
 */
export function listsOf(start, packs, units = 'metric') {
  const read = packs.map(({text}) => JSON.parse(text));
  const {conditions, installations, noise_environments, antenna_views, transmitters} = start;
  const powers = read.findLast(({default_powers_w: given}) => given?.length)?.default_powers_w;
  const overlaid = Object.keys(OF_PACK).map((list) => [list, spoken(list, laidOver(list, start[list], read), units)]);
  return {
    .../** @type {Pick<StartData, keyof typeof OF_PACK>} */ (Object.fromEntries(overlaid)),
    conditions,
    installations,
    noise_environments,
    antenna_views,
    transmitters,
    powers_w: powers ?? start.requests.matrix.powers_w.default,
  };
}
