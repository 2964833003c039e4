/** The fields of a kit with their ranges, from the core by way of the start data; a catalogue's entry is a choice. */
import {named} from '../shared/vocabulary/choices.js';

/** The groups are port, owned, and kit for the request itself. */
export const kitFields = ({requests, parts}, {cables, conditions, families, modes}) => ({
  port: named(parts.Port, {family: families}),
  owned: named(parts.OwnedAdapter, {one_family: families, other_family: families}),
  kit: named(requests.kit, {mode: modes, condition: conditions, cable: cables}),
});
