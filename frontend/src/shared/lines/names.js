/** What the elements of a line are called. */
import {digits} from '../text/format.js';
import {lengthText} from '../text/measures.js';

/**
 * @import {Entry} from '../answers.js'
 *
 * @typedef {{cables: Entry[], families: Entry[], wire_lines: Entry[]}} NamedLists - what elements are called after
 */

const PARTS = {
  arrester: 'Arrester',
  switch: 'Switch',
  meter: 'Meter',
  attenuator: 'Attenuator',
  filter: 'Filter',
  divider: 'Divider',
};

const nameIn = (entries, id) => entries.find((one) => one.id === id)?.name ?? id;

/**
 * What an element is called, also before the core has answered.
 *
 * @param {import('./document.js').Element} element
 * @param {NamedLists} lists
 */
export function nameOf(element, {cables, families, wire_lines: wireLines}) {
  if (element.name) return element.name;
  switch (element.kind) {
    case 'cable':
      return `${lengthText(element.length_m)} of ${nameIn(cables, element.cable)}`;
    case 'joint':
      return element.adapter_to
        ? `${nameIn(families, element.family)} to ${nameIn(families, element.adapter_to)}`
        : nameIn(families, element.family);
    case 'wires':
      return `${lengthText(element.length_m)} of ${nameIn(wireLines, element.line)}`;
    case 'tuner':
      return 'Tuner';
    case 'transformer':
      return 'Transformer';
    case 'section':
      return `${lengthText(element.length_m)} section of ${digits(element.impedance_ohm)} Ω`;
    case 'measured':
      return 'Measured part';
  }
  return PARTS[element.what] ?? 'Part';
}

/**
 * What the elements of a request are called.
 *
 * @param {{elements: import('./document.js').Element[]}} request
 * @param {NamedLists} lists
 */
export const namesOf = ({elements}, lists) => elements.map((element) => nameOf(element, lists));
