/** What the elements of a line are called. */
import {digits} from '../text/format.js';

/** @import {Entry} from '../answers.js' */

const nameIn = (entries, id) => entries.find((one) => one.id === id)?.name ?? id;

/**
 * What an element is called, also before the core has answered.
 *
 * @param {import('./document.js').Element} element
 * @param {{cables: Entry[], families: Entry[]}} lists
 */
export function nameOf(element, {cables, families}) {
  if (element.name) return element.name;
  switch (element.kind) {
    case 'cable':
      return `${digits(element.length_m)} m of ${nameIn(cables, element.cable)}`;
    case 'joint':
      return element.adapter_to
        ? `${nameIn(families, element.family)} to ${nameIn(families, element.adapter_to)}`
        : nameIn(families, element.family);
    case 'measured':
      return 'Measured part';
  }
  return 'Part';
}

/**
 * What the elements of a request are called.
 *
 * @param {{elements: import('./document.js').Element[]}} request
 * @param {{cables: Entry[], families: Entry[]}} lists
 */
export const namesOf = ({elements}, lists) => elements.map((element) => nameOf(element, lists));
