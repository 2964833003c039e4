/**
 * A refusal of the core in the reader's words: label, value and what is allowed.
 *
 * @import {Refused} from '../answers.js'
 * @import {Vocabulary} from '../vocabulary/vocabulary.js'
 */
import {groupOf} from '../lines/kinds.js';

/** The group of an operation's own fields; those of the matrix and a cell have none. */
const GROUPS = {
  choose: 'choose',
  line: 'station',
  spread: 'station',
  fitout: 'fitout',
  sweep: 'sweep',
  span: 'sweep',
  kit: 'kit',
};
/** Lists of parts that have fields of their own: what one of them is called, and its group. */
const LISTS = {
  elements: ['Element', (one) => one && groupOf(one)],
  ports: ['Port', () => 'port'],
  owned: ['Adapter', () => 'owned'],
};
const LOAD = {load: 'The antenna'};
const UNITS = /_(w|hz|m|db|ohm|c|v|a|s|f|h|k|deg|w_per_m2)$/;
const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth'];

/** A path in a request; what else a refusal names, such as a pack's file, is said in the core's own words. */
const PATH = /^\w+(\[\d+\]|\.\w+)*$/;

/**
 * The sentence for the reader.
 *
 * @param {Refused} refusal
 * @param {Vocabulary} vocabulary
 * @param {string} operation
 * @param {any} request
 */
export function refusedWords({field = '', value, allowed, message}, vocabulary, operation, request) {
  if (!PATH.test(field) || field === 'request') return message;
  const {lead, name, index} = placeOf(field, operation, request);
  const own = name.split('.').at(-1);
  const label = vocabulary.labelOf(name) ?? LOAD[own] ?? humanised(own);
  const entry = index === undefined ? '' : `, ${ORDINALS[index] ?? `${index + 1}th`} entry`;
  const declared = vocabulary.fieldOf(name);
  const described = index === undefined ? declared : declared?.items;
  const received = parsed(value);
  const words = vocabulary.labelOf(name) && described ? {vocabulary, name} : undefined;
  const can = allowedWords(received, described, words, allowed);
  return `${lead}${label}${entry}: ${valueWords(received, words)}; allowed: ${can}.`;
}

/** The control a path means, what leads to it, and which entry of its list. */
function placeOf(field, operation, request) {
  const steps = field.match(/\w+/g);
  const [list, at] = steps;
  const index = /\[\d+\]$/.test(field) ? Number(steps.at(-1)) : undefined;
  const names = steps.filter((step) => !/^\d+$/.test(step));
  const own = names.at(-1);
  if (list in LISTS && /^\d+$/.test(at) && names.length > 1) {
    const [called, group] = LISTS[list];
    const one = request[list]?.[at];
    return {lead: `${one?.name || `${called} ${Number(at) + 1}`}, `, name: `${group(one) ?? list}.${own}`, index};
  }
  if (list === 'load' && names.length > 1) return {lead: '', name: `load_${request.load?.kind}.${own}`, index};
  if (names.length > 1) return {lead: '', name: names.slice(-2).join('.'), index};
  const group = GROUPS[operation];
  return {lead: '', name: group ? `${group}.${own}` : own, index};
}

function parsed(value) {
  try {
    return JSON.parse(value);
  } catch {
    return String(value);
  }
}

function valueWords(value, words) {
  if (value === null || value === undefined) return 'not given';
  if (typeof value === 'number') return words ? words.vocabulary.spoken(words.name, value) : String(value);
  if (typeof value === 'string') return words?.vocabulary.nameOf(words.name, value) ?? `“${value}”`;
  return Array.isArray(value) && value.length === 0 ? 'none' : JSON.stringify(value);
}

/** The field's own range in the unit shown where that is what was missed, else what the core says. */
function allowedWords(value, described, words, allowed) {
  if (!words || value === null) return allowed;
  const {vocabulary, name} = words;
  if (described.type === 'number') {
    const isWithin = typeof value === 'number' && value >= described.min && value <= described.max;
    return isWithin ? allowed : vocabulary.rangeOf(name);
  }
  const names = vocabulary.namesOf(name);
  const isUnknown = typeof value === 'string' && names.length > 0 && vocabulary.nameOf(name, value) === undefined;
  return isUnknown ? `one of ${names.join(', ')}` : allowed;
}

/** A name of the core's as words, for what has no label. */
function humanised(name) {
  const words = name.replace(UNITS, '').replaceAll('_', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}
