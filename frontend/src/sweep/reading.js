/** What a sweep's answer says, in words. */
import {digits, quantity} from '../shared/text/format.js';
import {figureIn, lengthText, valueText} from '../shared/text/measures.js';
/** @import {Refused} from '../shared/answers.js' */
/** @import {LineCheck, SweepResult} from './result.js' */

/** The mark of a finding, so that colour is not alone. */
const FINDINGS = {
  sound: {mark: '✓', words: 'Nothing found'},
  suspect: {mark: '!', words: 'Bad joint'},
  damage: {mark: '!', words: 'Damaged cable'},
  unclear: {mark: '?', words: 'One of several places'},
  end: {mark: '?', words: 'Antenna, or the joint at it'},
  'cannot tell': {mark: '?', words: 'Can’t tell'},
  'no fit': {mark: '≠', words: 'Another line'},
  passed: {mark: '✓', words: 'Passed'},
  failed: {mark: '!', words: 'Failed'},
};

const ECHOES = {mark: '∿', words: 'Echoes by distance'};

/** @param {SweepResult} result */
export const findingOf = ({line, part}) => FINDINGS[(line ?? part)?.finding ?? ''] ?? ECHOES;

/** The mark of a joint's or a cable's state. */
export const STATE_MARKS = {bad: '!', possible: '?', behind: '…', hidden: '–', sound: '✓'};

/**
 * Joints and cables in the order of the line, each with where it is.
 *
 * @param {LineCheck} check
 */
export const partsOf = ({joints, cables}) =>
  [
    ...joints.map((joint) => ({...joint, place: `at ${metres(joint.distance_m)}`})),
    ...cables.map((cable) => ({...cable, place: `${figureIn(cable.from_m, 'm', 3)} to ${metres(cable.to_m)}`})),
  ].sort((one, other) => one.element - other.element);

/**
 * Whether an element is one the verdict speaks of.
 *
 * @param {number} element
 * @param {LineCheck} check
 */
export const isAccused = (element, {faults, apart}) =>
  apart.includes(element) || faults.some((fault) => fault.element === element);

/**
 * Why a file can't be used, for someone who has never seen the inside of one.
 *
 * @param {Refused} refusal
 * @param {string} name - of the file
 */
export function refusalWords({field, message, value, allowed}, name) {
  if (field !== 'touchstone' && field !== 'earlier') return message;
  const [, line, needed] = /^on line (\d+), (.*)$/s.exec(allowed) ?? [];
  if (line) return `${name} can’t be read: line ${line} is ${value}. What can stand there: ${needed}.`;
  return `${name} can’t be used: found ${String(value).replaceAll('"', '')}, needed ${allowed}.`;
}

/** A distance as one measures it with a tape. */
export const metres = (distance) => lengthText(distance, 3);

export const sizeWords = ({name, unit, value, low, high}) =>
  `${name} ${valueText(value, unit, 3)} (${valueText(low, unit, 3)} to ${valueText(high, unit, 3)})`;

/** A reflection as a share; 1 is everything. */
export const share = (value) => (value === null ? '–' : digits(value, 2));

/** The smallest faults that would show, in series and across. */
export const leastWords = ({least_resistance_ohm: ohm, least_capacitance_f: farad}) =>
  `${ohm === null ? '–' : quantity(ohm, 'Ω', 2)}, ${farad === null ? '–' : quantity(farad, 'F', 2)}`;

export const percent = (value) => `${digits(value * 100, 2)} %`;

/** Odds to 1 of a candidate against a sound line, as no more than a power of ten where they are long. */
export function oddsWords({evidence}) {
  const tens = evidence / Math.LN10;
  return tens < 3 ? `${digits(Math.exp(evidence), 2)} to 1` : `10^${Math.floor(tens)} to 1`;
}
