/** What ports, ends and pairs are called; ports as the core calls them. */
import {frequency, power} from '../shared/text/format.js';
import {BETWEEN_ENDS, everydayNames} from '../shared/vocabulary/choices.js';

/** @import {Port} from './edits.js' */

/** "N plug", "UHF plug (PL-259)"; a family the page does not know is called by its id. */
export function endWords(families, family, gender) {
  const known = families.find(({id}) => id === family);
  const [plug, jack] = everydayNames(known).split(BETWEEN_ENDS);
  const everyday = gender === 'plug' ? plug : jack;
  return `${known?.name ?? family} ${gender}${everyday ? ` (${everyday})` : ''}`;
}

/**
 * What every port is called: the reader's own name, with its number where others have the same; else "port 3 (N jack)".
 *
 * @param {{id: string, name: string, also_called?: string[]}[]} families
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
