/** What ports, ends and pairs are called; ports as the core calls them. */
import {frequency, power} from '../shared/text/format.js';

/** @import {Port} from './edits.js' */

/** "N plug"; a family the page does not know is called by its id. */
export const endWords = (families, family, gender) =>
  `${families.find(({id}) => id === family)?.name ?? family} ${gender}`;

/**
 * What every port is called: the reader's own name, with its number where others have the same; else "port 3 (N jack)".
 *
 * @param {{id: string, name: string}[]} families
 * @param {Pick<Port, 'name' | 'family' | 'gender'>[]} ports
 */
export const portNames = (families, ports) =>
  ports.map(({name, family, gender}, at) => {
    if (!name) return `port ${at + 1} (${endWords(families, family, gender)})`;
    return ports.filter((other) => other.name === name).length > 1 ? `${name} (port ${at + 1})` : name;
  });

/** "Radio – Dummy load". */
export const pairName = ([one, other], names) => `${names[one]} – ${names[other]}`;

/**
 * What a port is used for, as in a row under its name.
 *
 * @param {Port} port
 */
export const dutyWords = ({highest_frequency_hz: highest, power_w: watts}) =>
  `up to ${frequency(highest)}, ${watts === undefined ? 'any power' : power(watts)}`;
