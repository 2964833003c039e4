/** The fields of a line with their ranges, from the core by way of the snapshot; a name of the catalogue is a choice. */
import snapshot from '../../../build/snapshot.json';
import {nameOf} from '../../line/reading.js';

export const {cables: CABLES, noise_environments: ENVIRONMENTS} = snapshot;
const {bands, families, conditions, modes} = snapshot;

const NAMES = {
  cable: {cable: CABLES},
  joint: {family: families, adapter_to: families, condition: conditions},
  receiver: {environment: ENVIRONMENTS},
  station: {mode: modes, band: bands},
};

/** A choice of entries that packs may add to. */
const choiceOf = (field, entries) =>
  Object.defineProperty({...field, type: 'choice'}, 'choices', {enumerable: true, get: () => entries.map(({id}) => id)});

const named = (fields, names = {}) =>
  Object.fromEntries(
    Object.entries(fields).map(([name, field]) => {
      const entries = names[name];
      return [name, entries ? choiceOf(field, entries) : field];
    }),
  );

/** {group: {field: description}} of parts with their fields; what is named by the catalogue is a choice of its entries. */
export const tableOf = (parts, names) =>
  Object.fromEntries(Object.entries(parts).map(([group, fields]) => [group, named(fields, names[group])]));

export const TABLE = tableOf(snapshot.line, NAMES);

/** The field a control's name "group.field" means. */
export const lineField = (name) => {
  const [group, field] = name.split('.');
  return TABLE[group]?.[field];
};

/** A value of the request, or what the core takes where it is left out. */
export const valueOf = (fields, name) => fields?.[name.split('.')[1]] ?? lineField(name).default;

/** What the elements of a request are called. */
export const namesOf = ({elements}) => elements.map((element) => nameOf(element, {cables: CABLES, families}));
