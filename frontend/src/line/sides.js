/** The main numbers of a line as pairs: what is likely, and what comes of it at the worst. */
import {digits, quantity} from '../shared/text/format.js';
import {lossWords} from '../shared/text/loss.js';
import {swrWords} from './reading.js';

/** @import {LineResult, Terminal} from './result.js' */

export const LIKELY = 'Likely';
export const WORST = 'At worst';

export const wattWords = (power_w) => (power_w === null ? '–' : quantity(power_w, 'W', 3));

/**
 * Resistance and reactance; empty where the phase is not known.
 *
 * @param {Terminal} terminal
 */
export function impedanceWords({resistance_ohm: r, reactance_ohm: x}) {
  if (r === null || x === null) return '';
  return `${digits(r, 3)} ${x < 0 ? '−' : '+'} j ${digits(Math.abs(x), 3)} Ω`;
}

/** Of two SWRs the higher; null is without bound. */
export const higherOf = (a, b) => (a === null || b === null ? null : Math.max(a, b));

/** The end of a line whose SWR is the higher: a line that loses more may reflect less. */
const worseOf = (a, b) => (higherOf(a.vswr, b.vswr) === a.vswr ? a : b);

/**
 * What is likely beside what comes at the worst. Nothing is delivered where nothing is sent.
 *
 * @param {LineResult} result
 * @returns {{id: string, term: string, likely: string, worst: string}[]}
 */
export function sides(result) {
  const {input} = result;
  const worst = worseOf(result.input_cautious, input);
  const impedances = [impedanceWords(input), impedanceWords(worst)];
  return [
    ...(result.power_w > 0
      ? [
          {
            id: 'delivered',
            term: 'At the antenna',
            likely: wattWords(result.delivered_w),
            worst: wattWords(result.delivered_low_w),
          },
        ]
      : []),
    {
      id: 'loss',
      term: 'Loss of the line',
      likely: lossWords(result.loss_db),
      worst: lossWords(result.loss_high_db),
    },
    {
      id: 'swr',
      term: 'SWR at the transmitter',
      likely: swrWords(input.vswr),
      worst: swrWords(worst.vswr),
    },
    ...(impedances.some(Boolean)
      ? [{id: 'impedance', term: 'Impedance there', likely: impedances[0], worst: impedances[1]}]
      : []),
  ];
}

/** A pair in one line; one number where both print the same. */
export const pairWords = ({likely, worst}) => (likely === worst ? likely : `${likely}, at worst ${worst}`);
