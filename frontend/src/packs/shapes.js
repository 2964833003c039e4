/**
 * The parts of a pack as the core declares them, and how the page's forms speak of their fields: each number, text and
 * choice is a control named "Part.field", and an interval is two of them.
 */
import {unitTyped} from '../shared/text/units.js';

/**
 * @import {Groups} from '../shared/vocabulary/start-data.js'
 * @import {Words} from '../shared/vocabulary/vocabulary.js'
 *
 * @typedef {object} Facts - of a field of a part
 * @property {string} type - number, quantity, interval, label, text, boolean, choice, list, map or part
 * @property {string} [label]
 * @property {string} [hint]
 * @property {string} [group] - of fields that stand together
 * @property {boolean} [required]
 * @property {any} [default]
 * @property {string} [unit] - the core's
 * @property {string} [sheet_unit] - that of data sheets
 * @property {number} [min]
 * @property {number} [max]
 * @property {Record<string, string>} [choices]
 * @property {string} [table] - of a pack or the catalogue, to choose an entry of
 * @property {number} [shortest] - of a text, in characters
 * @property {?number} [longest]
 * @property {any} [of] - of a list or map, what each entry may be; of a part, its name
 * @property {number} [least] - of a list
 * @property {number} [most]
 * @property {string[]} [keys] - of a map
 *
 * @typedef {Record<string, Record<string, Facts>>} Shapes - by part and field
 */

/** Ends of an interval, and how they follow its label. */
export const ENDS = {low: ', least', high: ', most'};

/** Nobody types these: they follow from the name, or stand once for a whole entry. */
export const HANDLED = new Set(['id', 'source', 'kind', 'order', 'overrides', 'sources']);

/** From the number shown to the core's. */
export function factorOf({unit = '', sheet_unit: shown = unit}) {
  const [from, to] = [shown, unit].map((one) => unitTyped('', one)?.factor ?? 1);
  return Number((from / to).toPrecision(12));
}

/** The unit shown; a plain number has none. */
export const unitOf = ({unit = '', sheet_unit: shown = unit}) => (shown === '1' ? '' : shown);

const isNumber = ({type}) => ['number', 'quantity', 'interval'].includes(type);

/** @returns {[string, string][]} - the names of a field's controls and what follows its label in each */
const endsOf = (name, {type}) =>
  type === 'interval' ? Object.entries(ENDS).map(([end, words]) => [`${name}-${end}`, words]) : [[name, '']];

/** @param {Facts} facts */
function control(facts) {
  const nullable = !facts.required;
  if (isNumber(facts))
    return {type: 'number', nullable, min: facts.min, max: facts.max, unit: unitOf({unit: facts.unit})};
  if (facts.type === 'list') return {type: 'list', items: facts.of, least: facts.least, most: facts.most};
  if (facts.type === 'boolean') return {type: 'boolean'};
  return {type: facts.choices ? 'choice' : 'text', nullable, longest: facts.longest ?? 200};
}

/**
 * @param {Facts} facts
 * @param {string} end
 * @returns {Words}
 */
function spoken(facts, end) {
  const {label = '', choices, required, of} = facts;
  /** @type {Record<string, string>} */
  const none = required ? {} : {'': 'not given'};
  return {
    label: label + end,
    ...(isNumber(facts) ? {unit: unitOf(facts), factor: factorOf(facts)} : {}),
    ...(of?.unit ? {unit: of.unit} : {}),
    ...(choices ? {options: {...none, ...choices}} : {}),
  };
}

const HELD = (facts) => facts.type !== 'map' && facts.type !== 'part' && facts.of?.type !== 'part';

/** @template T @param {Shapes} shapes @param {(name: string, facts: Facts, end: string) => [string, T]} made */
const eachControl = (shapes, made) =>
  Object.entries(shapes).map(([part, fields]) => {
    const controls = Object.entries(fields).filter(([, facts]) => HELD(facts));
    return /** @type {[string, [string, T][]]} */ ([
      part,
      controls.flatMap(([name, facts]) => endsOf(name, facts).map(([ended, end]) => made(ended, facts, end))),
    ]);
  });

/**
 * The controls, by part.
 *
 * @param {Shapes} shapes
 * @returns {Groups}
 */
export const groupsOf = (shapes) =>
  Object.fromEntries(
    eachControl(shapes, (name, facts) => [name, /** @type {any} */ (control(facts))]).map(([part, fields]) => [
      part,
      Object.fromEntries(fields),
    ]),
  );

/**
 * How forms speak of them, by "Part.field".
 *
 * @param {Shapes} shapes
 * @returns {Record<string, Words>}
 */
export const wordsOf = (shapes) =>
  Object.fromEntries(
    eachControl(shapes, (name, facts, end) => [name, spoken(facts, end)]).flatMap(([part, fields]) =>
      fields.map(([name, words]) => [`${part}.${name}`, words]),
    ),
  );

/**
 * The tables of a pack whose entries a form makes, with what each is called.
 *
 * @param {Shapes} shapes
 * @returns {{table: string, part: string, label: string}[]}
 */
export const tablesOf = (shapes) =>
  Object.entries(shapes.Pack)
    .filter(([name, facts]) => facts.of?.type === 'part' && !HANDLED.has(name))
    .map(([table, {of, label = ''}]) => ({table, part: of.of, label}));

/**
 * A part with nothing in it yet: what is left out where it may be, and gaps where something has to be given.
 *
 * @param {Shapes} shapes
 * @param {string} part
 * @returns {any}
 */
export function blankOf(shapes, part) {
  const gaps = {
    text: () => '',
    boolean: () => false,
    list: () => [],
    map: () => ({}),
    part: ({of}) => blankOf(shapes, of),
    interval: () => ({low: null, high: null}),
  };
  const needed = Object.entries(shapes[part]).filter(([, {required}]) => required);
  return Object.fromEntries(needed.map(([name, facts]) => [name, gaps[facts.type]?.(facts) ?? null]));
}
