/** What ports, ends and pairs are called. */
import {frequency, power} from '../shared/text/format.js';

/** "N plug"; a family the page does not know is called by its id. */
export const endWords = (families, family, gender) =>
  `${families.find(({id}) => id === family)?.name ?? family} ${gender}`;

/** What a port is called: the reader's own name, else its end. */
export const portName = (families, {name, family, gender}) => name || endWords(families, family, gender);

export const portNames = (families, ports) => ports.map((port) => portName(families, port));

/** "1 Radio – 3 Dummy load", counted from 1. */
export const pairName = ([one, other], names) => `${one + 1} ${names[one]} – ${other + 1} ${names[other]}`;

/** "1–3", where the ports' names stand nearby. */
export const pairNumbers = ([one, other]) => `${one + 1}–${other + 1}`;

/**
 * What a port is used for, as in a row under its name.
 *
 * @param {import('./edits.js').Port} port
 */
export const dutyWords = ({highest_frequency_hz: highest, power_w: watts}) =>
  `up to ${frequency(highest)}, ${watts === undefined ? 'any power' : power(watts)}`;
