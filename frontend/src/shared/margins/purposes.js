/** The steps of a limit, sorted by what they are for. */

/**
 * Groups of steps in the order in which each purpose comes first; what has none leads to what is said `last`.
 *
 * @template {{purpose: string}} S
 * @param {S[]} steps
 * @param {string} last
 * @returns {{purpose: string, steps: S[]}[]}
 */
export function byPurpose(steps, last) {
  /** @type {Map<string, S[]>} */
  const groups = new Map();
  for (const step of [...steps.filter(({purpose}) => purpose), ...steps.filter(({purpose}) => !purpose)]) {
    const purpose = step.purpose || last;
    groups.set(purpose, [...(groups.get(purpose) ?? []), step]);
  }
  return [...groups].map(([purpose, of]) => ({purpose: purpose[0].toUpperCase() + purpose.slice(1), steps: of}));
}
