/**
 * The fields of a line with their ranges, from the core by way of the start data; a name of the catalogue is a choice.
 */
import {named} from '../vocabulary/choices.js';

/** The parts of a line by the names of their groups, and what the core calls them. */
const PARTS = {
  cable: 'CableRun',
  joint: 'Joint',
  part: 'Part',
  measured: 'MeasuredPart',
  transformer: 'Transformer',
  section: 'Section',
  wires: 'WireRun',
  load_vswr: 'GivenVswr',
  load_impedance: 'GivenImpedance',
  load_table: 'ImpedanceTable',
  load_measured: 'MeasuredLoad',
  point: 'ImpedancePoint',
  receiver: 'Receiver',
  preamplifier: 'Preamplifier',
};

/** What a request holds beside the settings of its station. */
const LINE = ['elements', 'load', 'receiver', 'explain'];

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
export function lineFields(
  {requests, parts},
  {
    bands,
    cables,
    conditions,
    families,
    modes,
    noise_environments: environments,
    antenna_views: views,
    wire_lines: wireLines,
  },
) {
  const entries = {
    cable: {cable: cables},
    wires: {line: wireLines},
    joint: {family: families, adapter_to: families, condition: conditions},
    receiver: {environment: environments, antenna_view: views},
    station: {mode: modes, band: bands},
  };
  const fields = {station: withoutLine(requests.line)};
  for (const [group, part] of Object.entries(PARTS)) fields[group] = parts[part];
  return Object.fromEntries(Object.entries(fields).map(([group, own]) => [group, named(own, entries[group])]));
}
