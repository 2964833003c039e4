/** The fields of a kit with their ranges, from the core by way of the start data; a name of the catalogue is a choice. */
import {named} from '../shared/vocabulary/choices.js';

/** The groups are port, owned, and kit for the request itself. */
export const kitFields = ({kit}, {cable_dielectrics: dielectrics, conditions, families, modes}) => ({
  port: named(kit.port, {family: families}),
  owned: named(kit.owned, {one_family: families, other_family: families}),
  kit: named(kit.kit, {mode: modes, condition: conditions, cable_dielectric: dielectrics}),
});
