/**
 * The fields of a line with their ranges, from the core by way of the start data; a name of the catalogue is a choice.
 */
import {named} from '../vocabulary/choices.js';
import {ELEMENTS, LOADS, PARTS} from './kinds.js';

/** The parts of a line by the names of their groups, and what the core calls them. */
const GROUPS = {
  ...ELEMENTS,
  ...Object.fromEntries(PARTS.map((what) => [what, ELEMENTS.part])),
  ...Object.fromEntries(Object.entries(LOADS).map(([kind, struct]) => [`load_${kind}`, struct])),
  point: 'ImpedancePoint',
  transmitter: 'Transmitter',
  receiver: 'Receiver',
  preamplifier: 'Preamplifier',
};

/** What a request holds beside the settings of its station. */
const LINE = ['elements', 'load', 'transmitter', 'receiver', 'explain'];

/**
 * The fields of a request but for the line itself: those of its station.
 *
 * @param {import('../vocabulary/start-data.js').Fields} fields
 * @returns {import('../vocabulary/start-data.js').Fields}
 */
export const withoutLine = (fields) =>
  Object.fromEntries(Object.entries(fields).filter(([name]) => !LINE.includes(name)));

/**
 * Of the parts of a line and of its station.
 *
 * @param {import('../vocabulary/start-data.js').StartData} start
 * @param {import('../vocabulary/lists.js').Lists} lists
 * @returns {import('../vocabulary/start-data.js').Groups}
 */
export function lineFields({requests, parts}, lists) {
  const {bands, cables, conditions, families, modes, transmitters, wire_lines: wireLines} = lists;
  const {noise_environments: environments, antenna_views: views} = lists;
  const entries = {
    cable: {cable: cables},
    wires: {line: wireLines},
    joint: {family: families, adapter_to: families, condition: conditions},
    transmitter: {behaviour: transmitters},
    receiver: {environment: environments, antenna_view: views},
    station: {mode: modes, band: bands},
  };
  const fields = {station: withoutLine(requests.line)};
  for (const [group, part] of Object.entries(GROUPS)) fields[group] = parts[part];
  return Object.fromEntries(Object.entries(fields).map(([group, own]) => [group, named(own, entries[group])]));
}
