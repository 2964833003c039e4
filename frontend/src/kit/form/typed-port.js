/**
 * A port as one types it: "Handheld SMA plug 450 5W". Connector names are the catalogue's, "PL-259" and "SO-239" among
 * them; what is left in front of the connector is the name; after it come the highest frequency in MHz and the power.
 */
import {question, readingsOf, refusal} from '../../shared/text/number-typed.js';

/**
 * @import {Port} from '../edits.js'
 *
 * @typedef {{id: string, name: string, also_called: string[]}} Family
 * @typedef {{family: string, gender?: string, from: number, to: number}} Connector - where it stands among the words
 * @typedef {{min: number, max: number}} Range
 */

const GENDERS = {plug: 'plug', male: 'plug', jack: 'jack', socket: 'jack', female: 'jack'};
const RECEIVE = ['rx', 'receive'];
const UNIT = /^(?:[kMG]?Hz|[mk]?W|watts?)$/i;
const HERTZ_PER_MHZ = 1e6;
/** Words of the longest name of a connector. */
const LONGEST = 4;
/** What the page adds to a name. */
const OF_PACK = / \(pack .*\)$/;
const EXAMPLES = 'as SO-239, PL-259, N jack or SMA plug';

const bare = (text) =>
  text
    .toLowerCase()
    .replace(/ohms?/g, 'ω')
    .replaceAll('\u2126', 'ω')
    .replace(/[^\p{L}\p{N}]/gu, '');

/**
 * Of names that stand for the two ends, as "PL-259 / SO-239", the plug comes first.
 *
 * @param {Family} family
 * @returns {{key: string, family: string, gender?: string}[]}
 */
function namesOf({id, name, also_called: others}) {
  return [name.replace(OF_PACK, ''), ...others].flatMap((one) => {
    const ends = one.split(' / ').map(bare);
    return ends.map((key, at) => ({key, family: id, gender: ends.length > 1 ? ['plug', 'jack'][at] : undefined}));
  });
}

/**
 * Every connector that the words may name.
 *
 * @param {string[]} words
 * @param {Family[]} families
 * @returns {Connector[]}
 */
function connectorsIn(words, families) {
  const names = new Map(families.flatMap(namesOf).map((one) => [one.key, one]));
  return words.flatMap((_, from) =>
    Array.from({length: Math.min(LONGEST, words.length - from)}, (_none, more) => from + more + 1).flatMap((to) => {
      const found = names.get(bare(words.slice(from, to).join('')));
      if (!found) return [];
      if (found.gender) return [{...found, from, to}];
      const behind = GENDERS[bare(words[to] ?? '')];
      const before = GENDERS[bare(words[from - 1] ?? '')];
      if (behind) return [{...found, gender: behind, from, to: to + 1}];
      return [{...found, gender: before, from: before ? from - 1 : from, to}];
    }),
  );
}

/** One that says which end it is comes before one that does not, a longer name before a shorter, a later one first. */
const surest = (connectors) =>
  connectors.toSorted(
    (a, b) => Number(b.gender !== undefined) - Number(a.gender !== undefined) || b.to - b.from - a.to + a.from,
  )[0];

/** A number and its unit are one word. */
function joined(words) {
  return words.reduce((all, word) => {
    if (UNIT.test(word) && /^[\d.,]+$/.test(all.at(-1) ?? '')) return [...all.slice(0, -1), `${all.at(-1)}${word}`];
    return [...all, word];
  }, /** @type {string[]} */ ([]));
}

/**
 * One number of a port.
 *
 * @param {string} label
 * @param {string} word
 * @param {string} unit
 * @param {number} factor
 * @param {Range} range
 * @returns {{value?: number, problem?: string}}
 */
function number(label, word, unit, factor, {min, max}) {
  const readings = readingsOf(word, unit);
  if (readings.length > 1) return {problem: question(label, word, readings)};
  const value = readings[0]?.value * factor;
  if (value >= min && value <= max) return {value};
  return {problem: refusal(label, word, `${min / factor} to ${max / factor} ${unit}`, unit)};
}

const isPower = (word) => /[wk]$|watts?$/i.test(word) && readingsOf(word, 'W').length > 0;
const isFrequency = (word) => /[a-z]$/i.test(word) && readingsOf(word, 'MHz').length > 0;

/**
 * The port that was typed, or why it could not be read. What is not typed is as in `before`.
 *
 * @param {string} text
 * @param {Family[]} families
 * @param {{highest_frequency_hz: Range, power_w: Range}} ranges
 * @param {Pick<Port, 'highest_frequency_hz' | 'power_w'>} before
 * @returns {{port?: Port, problem?: string}}
 */
export function typedPort(text, families, ranges, before) {
  const words = joined(text.split(/[\s,;]+(?!\d)|\s+/).filter(Boolean));
  const connector = surest(connectorsIn(words, families));
  if (!connector) return {problem: `No connector in “${text.trim()}”; name one, ${EXAMPLES}.`};
  const {family, gender, from, to} = connector;
  if (!gender) return {problem: `“${words.slice(from, to).join(' ')}”: plug or jack?`};
  const name = words.slice(0, from);
  const port = {family, gender, highest_frequency_hz: before.highest_frequency_hz, power_w: before.power_w};
  const given = new Set();
  for (const word of words.slice(to)) {
    const isBare = /^[\d.,]+$/.test(word);
    let read;
    if (RECEIVE.includes(bare(word))) read = {field: 'power_w', value: 0};
    else if (isPower(word) || (isBare && given.has('highest_frequency_hz')))
      read = {field: 'power_w', ...number('Power', word, 'W', 1, ranges.power_w)};
    else if (isFrequency(word) || isBare)
      read = {
        field: 'highest_frequency_hz',
        ...number('Used up to', word, 'MHz', HERTZ_PER_MHZ, ranges.highest_frequency_hz),
      };
    else if (!/\d/.test(word)) {
      name.push(word);
      continue;
    } else return {problem: `“${word}” after the connector: give the highest frequency in MHz, and the power in W.`};
    if (read.problem) return {problem: read.problem};
    if (given.has(read.field)) return {problem: `“${word}”: there is one frequency and one power before it already.`};
    given.add(read.field);
    port[read.field] = read.value;
  }
  return {port: {name: name.join(' '), ...port}};
}
