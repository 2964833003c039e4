/** A pack under the reader's hands: a plain form's values, and the pack's text made of them. */
import START from '../../build/start-data.json';

/** Units and ranges of a family's values, kinds of figures and ways a source was seen, from the core. */
export const {values: VALUES, kinds: KINDS, seen: SEEN, house_limit: LIMIT_FIELDS} = START.pack;

/**
 * @typedef {object} Limit - of the house
 * @property {number} power_w
 * @property {string} reason
 * @property {string[]} interfaces - none: all
 * @property {string[]} bands - none: all
 *
 * @typedef {object} FamilyNumber - one that the form can change
 * @property {string} field
 * @property {string} end - low or high; empty for a lone one
 * @property {number} value
 * @property {string} unit
 * @property {number} min
 * @property {number} max
 *
 * @typedef {object} Family - made from a built-in one
 * @property {{id: string, name: string, [field: string]: any}} entry - the built-in one
 * @property {string} id
 * @property {string} name
 * @property {FamilyNumber[]} numbers
 *
 * @typedef {object} Draft
 * @property {string} name
 * @property {string} version
 * @property {{title: string, seen: string, address: string, kind: string}} source
 * @property {string} powers - numbers with spaces between
 * @property {Limit[]} limits
 * @property {?Family} family
 */

/** @type {Draft} */
export const FIRST_DRAFT = {
  name: '',
  version: '1',
  source: {title: '', seen: 'read', address: '', kind: 'datasheet'},
  powers: '',
  limits: [],
  family: null,
};

export const NEW_LIMIT = {power_w: 50, reason: '', interfaces: [], bands: []};

const SOURCE = 'own';

/** Of a number whose sources differ. */
const ENDS = ['low', 'high'];

/** An id of small letters, digits and underscores, as near to a name as can be. */
export const idOf = (name) =>
  name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '_')
    .replace(/^_+|_+$/g, '')
    .slice(0, 40) || 'pack';

const isQuantity = (value) => typeof value?.value === 'number' && typeof value.source === 'string';

/**
 * The numbers of a family that the form can change.
 *
 * @param {Record<string, any>} entry
 * @returns {FamilyNumber[]}
 */
export function numbersOf(entry) {
  return Object.entries(VALUES).flatMap(([field, range]) => {
    const value = entry[field];
    if (isQuantity(value)) return [{field, end: '', value: value.value, ...range}];
    return ENDS.filter((end) => isQuantity(value?.[end])).map((end) => ({
      field,
      end,
      value: value[end].value,
      ...range,
    }));
  });
}

/** The name of a field in words, without the unit that stands beside it. */
export function wordsOf({field, end}) {
  const stem = field.replace(/_(ohm|m2|m|hz|rms_v|c|s|nm|matings)$/, '').replaceAll('_', ' ');
  const words = (stem[0].toUpperCase() + stem.slice(1)).replace(/vswr/i, 'VSWR');
  return end ? `${words}, ${end === 'low' ? 'least' : 'most'}` : words;
}

/** The family with the reader's numbers in the place of the built-in ones, each with the reader's source. */
function changed({entry, numbers, id, name}, kind) {
  const family = structuredClone({...entry, id, name});
  for (const {field, end, value} of numbers) {
    const holder = end ? family[field] : family;
    const key = end || field;
    if (holder[key].value !== value) holder[key] = {value, source: SOURCE, kind, note: ''};
  }
  return family;
}

/**
 * The pack as the core takes it; what is missing, the core says.
 *
 * @param {Draft} draft
 */
export function packOf({name, version, source, powers, limits, family}) {
  const {kind, ...listed} = source;
  const id = idOf(name);
  const overrides = family && family.id === family.entry.id ? {interfaces: [family.id]} : {};
  return {
    id,
    name,
    version,
    sources: [{id: SOURCE, ...listed}],
    overrides,
    interfaces: family ? [changed(family, kind)] : [],
    default_powers_w: powers.split(' ').filter(Boolean).map(Number),
    house_limits: limits.map((limit, at) => ({...limit, id: `${id.slice(0, 34)}_${at + 1}`, source: SOURCE, kind})),
  };
}

/**
 * The same as the text of a file.
 *
 * @param {Draft} draft
 */
export const textOf = (draft) => `${JSON.stringify(packOf(draft), null, 2)}\n`;
