/** The fields of a kit with their ranges, from the core by way of the snapshot; a name of the catalogue is a choice. */
import snapshot from '../../build/snapshot.json';
import {tableOf} from '../shared/lines/table.js';

const {families, modes, conditions, cable_dielectrics: dielectrics, kit} = snapshot;

const NAMES = {
  port: {family: families},
  owned: {one_family: families, other_family: families},
  kit: {mode: modes, condition: conditions, cable_dielectric: dielectrics},
};

/** The groups are port, owned, and kit for the request itself. */
export const TABLE = tableOf(kit, NAMES);

/** The field a control's name "group.field" means. */
export const kitField = (name) => {
  const [group, field] = name.split('.');
  return TABLE[group]?.[field];
};

/** A value of the request or one of its parts, or what the core takes where it is left out. */
export const valueOf = (fields, name) => fields[name.split('.')[1]] ?? kitField(name).default;
