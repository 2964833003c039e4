/** What a sweep's answer says, in words. */
import {digits, quantity} from '../shared/text/format.js';

/** The mark of a finding, so that colour is not alone. */
export const FINDINGS = {
  sound: {mark: '✓', words: 'Nothing found'},
  suspect: {mark: '!', words: 'Bad joint'},
  unclear: {mark: '?', words: 'Not decided'},
  'no fit': {mark: '≠', words: 'Another line'},
};

/**
 * Why a file can't be used, for someone who has never seen the inside of one.
 *
 * @param {import('../shared/answers.js').Refused} refusal
 * @param {string} name - of the file
 */
export function refusalWords({field, message, value, allowed}, name) {
  if (field !== 'touchstone' && field !== 'earlier') return message;
  const [, line, needed] = /^on line (\d+), (.*)$/s.exec(allowed) ?? [];
  if (line) return `${name} can’t be read: line ${line} is ${value}. What can stand there: ${needed}.`;
  return `${name} can’t be used: found ${String(value).replaceAll('"', '')}, needed ${allowed}.`;
}

export const partFinding = (part) => (part.passed ? {mark: '✓', words: 'Passed'} : {mark: '!', words: 'Failed'});

export const sizeWords = ({name, unit, value, low, high}) =>
  `${name} ${quantity(value, unit, 3)} (${quantity(low, unit, 3)} to ${quantity(high, unit, 3)})`;

/** A reflection as a share; 1 is everything. */
export const share = (value) => (value === null ? '–' : digits(value, 2));

/** What stands in the last column of a joint's row. */
export function jointWords(joint, check) {
  if (check.suspect === joint.element) return 'bad';
  if (check.apart.includes(joint.element)) return 'one of these';
  if (joint.shadowed) return 'behind the fault';
  if (joint.seen) return 'echo above threshold';
  return joint.least_resistance_ohm === null ? 'not to be judged with this end' : 'no sign of a fault';
}

export const leastWords = ({least_resistance_ohm: ohm}) => (ohm === null ? '–' : quantity(ohm, 'Ω', 2));

export const percent = (value) => `${digits(value * 100, 2)} %`;
