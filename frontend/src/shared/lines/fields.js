/**
 * The fields of a line with their ranges, from the core by way of the start data; a name of the catalogue is a choice.
 */
import {named} from '../vocabulary/choices.js';

/**
 * Of the parts of a line and of its station.
 *
 * @param {import('../vocabulary/start-data.js').StartData} start
 * @param {import('../vocabulary/lists.js').Lists} lists
 * @returns {import('../vocabulary/start-data.js').Groups}
 */
export function lineFields({line}, {bands, cables, conditions, families, modes, noise_environments: environments}) {
  const entries = {
    cable: {cable: cables},
    joint: {family: families, adapter_to: families, condition: conditions},
    receiver: {environment: environments},
    station: {mode: modes, band: bands},
  };
  return Object.fromEntries(Object.entries(line).map(([group, fields]) => [group, named(fields, entries[group])]));
}
