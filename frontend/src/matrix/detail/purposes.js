/** The steps of a limit, sorted by what they are for. */

/** @import {Step} from '../../shared/answers.js' */

/** What steps without a purpose of their own lead to. */
const LAST = 'what it allows, and the margin';

/**
 * Groups of steps in the order in which each purpose comes first; what has none comes last.
 *
 * @param {Step[]} steps
 * @returns {{purpose: string, steps: Step[]}[]}
 */
export function byPurpose(steps) {
  /** @type {Map<string, Step[]>} */
  const groups = new Map();
  for (const step of [...steps.filter(({purpose}) => purpose), ...steps.filter(({purpose}) => !purpose)]) {
    const purpose = step.purpose || LAST;
    groups.set(purpose, [...(groups.get(purpose) ?? []), step]);
  }
  return [...groups].map(([purpose, of]) => ({purpose: purpose[0].toUpperCase() + purpose.slice(1), steps: of}));
}
