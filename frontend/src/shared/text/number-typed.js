/**
 * Numbers as people type them, with a point or a comma for the decimals, thousands grouped or not, and a unit. Text
 * that can be read in two ways gives both readings; which of them is meant is the reader's to say.
 */
import {otherUnits, unitTyped} from './units.js';

/**
 * @import {Unit} from './units.js'
 *
 * @typedef {{decimal: string, group: string}} Marks - of a way to write numbers; spaces and apostrophes group in each
 *
 * @typedef {object} Reading
 * @property {any} value - a number, or what was read of several
 * @property {string} words - what is read, with its unit
 * @property {string} converted - what became of another unit than the one shown, as a sentence; empty where none was
 */

/** @type {Marks[]} */
const MARKS = [
  {decimal: '.', group: ','},
  {decimal: ',', group: '.'},
];
/** How several numbers are parted; a comma parts them also without a space, where it is not read as a mark. */
const PARTED = [
  ...MARKS.map((marks) => ({marks, between: /[\s;]+|,\s+|,$/})),
  {marks: {decimal: '.', group: ''}, between: /[\s;,]+/},
];

/** A conversion gives no more digits than were typed, but this many. */
const CONVERTED_DIGITS = 6;
/** Those that a number in binary holds. */
const HELD_DIGITS = 15;
/** More would show the noise of a factor. */
const SHOWN_DIGITS = 12;

/** A unit whose figures go to the thousandth: "14.175" is no thousands there, whatever a comma may be. */
const TO_THE_THOUSANDTH = 'MHz';

const TYPED = /^([+-]?) ?((?:\d[\d.,' ]*[\d.,]|\d|[.,]\d+)(?:e[+-]?\d+)?) ?([^\d\s].*)?$/i;

/** One sign for each of those that look alike. */
const plain = (text) =>
  text
    .trim()
    .replace(/\s+/g, ' ')
    .replace(/[−–\u2010\u2011]/g, '-')
    .replace(/[’‘′]/g, "'")
    .replace(/[″“”]/g, '"')
    .replaceAll('\u03bc', '\u00b5')
    .replaceAll('\u2126', '\u03a9')
    .replace(/[º˚]/g, '°');

/**
 * A number without sign or unit, if it is one by these marks.
 *
 * @param {string} text
 * @param {Marks} marks
 */
function numeral(text, {decimal, group}) {
  const [mantissa, exponent = '0'] = text.toLowerCase().split('e');
  const [whole, decimals = '', ...more] = mantissa.split(decimal);
  const [, by = ''] = /^[1-9]\d{0,2}([.,' ])/.exec(whole) ?? [];
  const [first, ...others] = by === '' ? [whole] : whole.split(by);
  const isWhole =
    by === '' ? /^\d*$/.test(whole) : [group, "'", ' '].includes(by) && others.every((one) => /^\d{3}$/.test(one));
  if (!isWhole || more.length > 0 || !/^\d*$/.test(decimals)) return undefined;
  const number = Number(`${[first, ...others].join('')}.${decimals}e${exponent}`);
  return Number.isFinite(number) ? number : undefined;
}

const rounded = (value, count) => Number(value.toPrecision(count));

/**
 * @param {number} number
 * @param {string} typed - its digits
 * @param {Unit} from
 * @param {Unit} to
 */
function inUnit(number, typed, from, to) {
  if (from.name === to.name) return number;
  const digits = typed.replace(/e.*/i, '').replace(/\D|^[^1-9]+/g, '').length;
  const count = Math.min(Math.max(digits, CONVERTED_DIGITS), HELD_DIGITS);
  return rounded((number * from.factor + from.zero - to.zero) / to.factor, count);
}

const withUnit = (number, unit) => `${number} ${unit}`.trim();

/**
 * What a text may mean by one way to write numbers.
 *
 * @param {string} text
 * @param {string} shown - the unit of a number without one, and of what is read
 * @param {Marks} marks
 * @returns {Reading | undefined}
 */
function reading(text, shown, marks) {
  const [, sign, digits, behind = ''] = TYPED.exec(plain(text)) ?? [];
  const [from, to] = [unitTyped(behind, shown), unitTyped('', shown)];
  if (digits === undefined || !from || !to) return undefined;
  const asThousands = from.name === TO_THE_THOUSANDTH && marks.group === '.' && /^\d+\.\d{3}$/.test(digits);
  const size = asThousands ? undefined : numeral(digits, marks);
  if (size === undefined) return undefined;
  const number = sign === '-' && size !== 0 ? -size : size;
  const value = inUnit(number, digits, from, to);
  const words = withUnit(number, from.name);
  return {value, words, converted: from.name === to.name ? '' : `${words} is ${withUnit(value, shown)}`};
}

/**
 * @param {(Reading | undefined)[]} readings
 * @returns {Reading[]}
 */
function distinct(readings) {
  const found = readings.filter((one) => one !== undefined);
  return [...new Map(found.map((one) => [JSON.stringify(one.value), one])).values()];
}

/**
 * What a number typed may mean: none where it can't be read, two where it has to be asked which.
 *
 * @param {string} text
 * @param {string} [shown] - the unit of a number without one, and of what is read
 */
export const readingsOf = (text, shown = '') => distinct(MARKS.map((marks) => reading(text, shown, marks)));

/**
 * What numbers in a row may mean; spaces part them, so that they group no thousands here.
 *
 * @param {string} text
 * @param {string} [shown]
 */
export function readingsOfList(text, shown = '') {
  // a unit belongs to the number before it
  const joined = text.trim().replace(/(\d[.,]?)\s+(?=[^\d\s.,;+−–-])/g, '$1');
  return distinct(
    PARTED.map(({marks, between}) => {
      const words = joined.split(between).filter(Boolean);
      const read = words.map((word) => reading(word, shown, marks)).filter((one) => one !== undefined);
      if (read.length < words.length) return undefined;
      const converted = read.map((one) => one.converted).filter(Boolean);
      return {
        value: read.map((one) => one.value),
        words: read.map((one) => one.words).join(' and '),
        converted: converted.join(', '),
      };
    }),
  );
}

/**
 * What a table of numbers without units may mean, all of it written in one way. Each reading's value is a list for each
 * row; its words are the first row that others read otherwise.
 *
 * @param {string[]} rows
 * @param {number} columns - how many numbers each row has
 * @returns {Reading[]}
 */
export function readingsOfRows(rows, columns) {
  const found = distinct(
    PARTED.map(({marks, between}) => {
      const read = rows.map((row) => row.split(between).map((word) => reading(word, '', marks)?.value));
      const isTable = read.every((row) => row.length === columns && !row.includes(undefined));
      return isTable ? {value: read, words: '', converted: ''} : undefined;
    }),
  );
  const at = rows.findIndex((_, row) => new Set(found.map(({value}) => String(value[row]))).size > 1);
  return found.map((one) => ({...one, words: one.value[at]?.join('  ') ?? ''}));
}

/**
 * A refusal of what was typed.
 *
 * @param {string} label
 * @param {string} text
 * @param {string} range - what is allowed, with its unit
 * @param {string} shown - that unit
 */
export function refusal(label, text, range, shown = '') {
  const others = otherUnits(shown);
  const units = shown === '' ? ', without a unit' : others.length > 0 ? `, also in ${others.join(', ')}` : '';
  return `${label} is ${text.trim() === '' ? 'empty' : `“${text.trim()}”`}; allowed: ${range}${units}.`;
}

/**
 * The question about a text with several readings.
 *
 * @param {string} label
 * @param {string} text
 * @param {Reading[]} readings
 */
export const question = (label, text, readings) =>
  `${label} is “${text.trim()}”: is that ${readings.map(({words}) => words).join(' or ')}?`;

/** A number's text, free of the noise of a factor, that can be read in one way. */
export function unmistakable(number) {
  const text = String(rounded(number, SHOWN_DIGITS));
  return /^-?[1-9]\d{0,2}\.\d{3}$/.test(text) ? `${text}0` : text;
}
