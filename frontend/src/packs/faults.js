/**
 * What of a pack is still missing, and what the core refuses, by the labels and in the units that the reader sees.
 *
 * @import {Refused} from '../shared/answers.js'
 * @import {PackDocument} from './entries.js'
 * @import {Path} from './paths.js'
 * @import {Facts, Shapes} from './shapes.js'
 *
 * @typedef {object} Fault
 * @property {Path} path - of the control
 * @property {string} words - led by where it is
 * @property {string} [brief] - the same without that, for the place itself
 * @property {boolean} [isTold] - whether the control itself says it
 */
import {digits} from '../shared/text/format.js';
import {at} from './paths.js';
import {ENDS, HANDLED, factorOf, tablesOf, unitOf} from './shapes.js';

/** Names of fields in a sentence of the core, each with the number behind it if there is one. */
const NAMED = /\b([a-z]+(?:_[a-z0-9]+)+)\b(?:, (-?[\d.]+(?:e[+-]?\d+)?))?/g;
const HIGH_END = /the high end, (-?[\d.]+(?:e[+-]?\d+)?)/;

/** Free of the noise that a factor leaves behind. */
const inSheetUnit = (number, facts) => digits(Number((number / factorOf(facts)).toPrecision(12)), 6);

const withUnit = (number, facts) => `${inSheetUnit(number, facts)} ${unitOf(facts)}`.trim();

/**
 * The range of a number as data sheets give it.
 *
 * @param {Facts} facts
 */
const rangeOf = (facts) => `${inSheetUnit(facts.min, facts)} to ${withUnit(facts.max, facts)}`;

/**
 * What an entry is called: by its name, else by what it joins or limits.
 *
 * @param {Record<string, any>} entry
 * @param {(id: string) => string} nameOf - a family by its id
 */
export function titleOf(entry, nameOf) {
  if (typeof entry.name === 'string') return entry.name;
  if ('joins' in entry) return `${nameOf(entry.id)} to others`;
  if ('plug' in entry) return entry.plug && entry.jack ? `${nameOf(entry.plug)} on ${nameOf(entry.jack)}` : 'new';
  return Number.isFinite(entry.power_w) ? `${digits(entry.power_w, 6)} W` : 'new';
}

/**
 * The label at a path, led by what stands around it, and what may stand there.
 *
 * @param {Shapes} shapes
 * @param {PackDocument} document
 * @param {Path} path
 * @param {(id: string) => string} nameOf
 * @returns {{label: string, brief: string, facts: ?Facts}} - `brief` is the label alone
 */
export function placeOf(shapes, document, path, nameOf) {
  /** @type {Facts} */
  let facts = {type: 'part', of: 'Pack'};
  const labels = [];
  path.forEach((key, depth) => {
    if (facts.type === 'part') {
      facts = shapes[facts.of]?.[key] ?? {type: ''};
      // what stands in a part of several has labels that say so themselves
      if (facts.type !== 'part' && facts.type !== 'map') labels.push(facts.label);
    } else if (facts.type === 'list') {
      facts = facts.of;
      const entry = at(document, path.slice(0, depth + 1));
      labels[labels.length - 1] +=
        depth === 1 ? ` ${entry ? titleOf(entry, nameOf) : ''}`.trimEnd() : ` ${Number(key) + 1}`;
    } else if (facts.type === 'map') {
      labels.push(`${facts.label} ${key}`);
      facts = facts.of;
    } else if (ENDS[key]) {
      labels[labels.length - 1] += ENDS[key];
    }
  });
  return {label: labels.join(', '), brief: labels.at(-1) ?? '', facts: facts.type === '' ? null : facts};
}

/** @param {Facts} facts @param {any} value - a number may lie outside the range of its field */
const isBeyond = ({min, max}, value) => Number.isFinite(value) && (value < Number(min) || value > Number(max));

/**
 * What is wrong with a number; empty where nothing is.
 *
 * @param {Facts} facts
 * @param {any} value
 * @param {string} label
 */
export const rangeFault = (facts, value, label) =>
  isBeyond(facts, value) ? `${label} is ${withUnit(value, facts)}; allowed: ${rangeOf(facts)}.` : '';

const isGap = (value) => value === null || value === undefined;

/**
 * @typedef {object} Finding
 * @property {Path} path
 * @property {string} allowed
 * @property {string} [given] - what stands there; left out, nothing does
 */

/** @param {Facts} facts @param {any} value @param {Path} path @returns {Finding[]} */
function numberFindings(facts, value, path) {
  if (isGap(value)) return facts.required ? [{path, allowed: rangeOf(facts)}] : [];
  return isBeyond(facts, value) ? [{path, given: withUnit(value, facts), allowed: rangeOf(facts)}] : [];
}

/** @param {Shapes} shapes @param {Facts} facts @param {any} value @param {Path} path @returns {Finding[]} */
function findings(shapes, facts, value, path) {
  switch (facts.type) {
    case 'part':
      if (isGap(value)) return [];
      return Object.entries(shapes[facts.of])
        .filter(([name]) => !HANDLED.has(name) || name === 'sources')
        .flatMap(([name, inside]) => findings(shapes, inside, value[name], [...path, name]));
    case 'list': {
      const entries = Array.isArray(value) ? value : [];
      const least = facts.least ?? 0;
      const few = entries.length < least ? [{path, allowed: `at least ${least}`}] : [];
      return [...few, ...entries.flatMap((one, index) => findings(shapes, facts.of, one, [...path, index]))];
    }
    case 'map':
      return Object.entries(value ?? {}).flatMap(([key, one]) => findings(shapes, facts.of, one, [...path, key]));
    case 'interval':
      if (isGap(value) && !facts.required) return [];
      return Object.keys(ENDS).flatMap((end) =>
        numberFindings({...facts, required: true}, value?.[end]?.value, [...path, end]),
      );
    case 'number':
      return numberFindings(facts, value, path);
    case 'quantity':
      return numberFindings(facts, value?.value, path);
    case 'choice':
    case 'label':
      return facts.required && isGap(value) ? [{path, allowed: facts.choices ? 'one of the list' : 'a text'}] : [];
    case 'text': {
      const isShort = (value ?? '').length < (facts.shortest ?? 0);
      return facts.required && isShort ? [{path, allowed: facts.table ? 'one of the list' : 'a text'}] : [];
    }
    default:
      return [];
  }
}

/**
 * Everything that has to be given and is not, and every number outside its range.
 *
 * @param {Shapes} shapes
 * @param {PackDocument} document
 * @param {(id: string) => string} nameOf
 * @returns {Fault[]}
 */
export const faultsOf = (shapes, document, nameOf) =>
  findings(shapes, {type: 'part', of: 'Pack'}, document, []).map(({path, given, allowed}) => {
    const {label, brief} = placeOf(shapes, document, path, nameOf);
    const rest = `is ${given ?? 'empty'}; allowed: ${allowed}.`;
    return {path, words: `${label} ${rest}`, brief: `${brief} ${rest}`, isTold: given !== undefined};
  });

/** A path as the core writes it, "interfaces[0].bead_length_m.value" behind what the pack is called. */
function pathOf(field) {
  const [, inside] = /(?:^|: )([a-z_]+(?:\[\d+\])?(?:[.[][^: ]*)?)$/.exec(field) ?? [];
  const keys = (inside ?? '').split(/[.[\]]+/).filter(Boolean);
  const path = keys.map((key) => (/^\d+$/.test(key) ? Number(key) : key));
  return path.at(-1) === 'value' ? path.slice(0, -1) : path;
}

/** A map's keys are digits too. */
const mapped = (shapes, path) =>
  path.map((key, index) => (index > 0 && path[index - 1] === 'regions' ? String(key) : key));

/** @param {Shapes} shapes @param {string} name @param {string} near - the part it is looked for first in */
const factsNamed = (shapes, name, near) =>
  shapes[near]?.[name] ?? Object.values(shapes).find((fields) => name in fields)?.[name];

/**
 * A refusal of the core as the form says it; of something that no label stands for, as the core says it.
 *
 * @param {Shapes} shapes
 * @param {PackDocument} document
 * @param {Refused} refusal
 * @param {(id: string) => string} nameOf
 * @returns {Fault}
 */
export function refused(shapes, document, {message, field = '', value, allowed = ''}, nameOf) {
  const path = mapped(shapes, pathOf(field));
  const {label, brief, facts} = placeOf(shapes, document, path, nameOf);
  if (!facts || !label) return {path: [], words: message};
  const number = Number(value);
  const isNumber = facts.sheet_unit !== undefined && value !== '' && Number.isFinite(number) && value !== null;
  const part = tablesOf(shapes).find(({table}) => table === path[0])?.part ?? 'Pack';
  const inWords = String(allowed)
    .replace(/^a number from .*/, facts.min === undefined ? '$&' : rangeOf(facts))
    .replace(HIGH_END, (_, high) => `what stands as most, ${withUnit(Number(high), facts)}`)
    .replace(NAMED, (text, name, figure) => {
      const named = factsNamed(shapes, name, part);
      if (!named?.label) return text;
      return figure === undefined ? named.label : `${named.label}, ${withUnit(Number(figure), named)}`;
    });
  const shown = isNumber ? withUnit(number, facts) : value;
  const rest = `is ${shown}; allowed: ${inWords}.`;
  return {path, words: `${label} ${rest}`, brief: `${brief} ${rest}`};
}
