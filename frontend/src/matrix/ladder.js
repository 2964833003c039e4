/**
 * The ladder of a folded cell: one gradient for all its rungs, as a matrix has too many for an element each.
 *
 * Ladders are few and come again and again, so each is a rule that its cells
 * share: the browser works it out once.
 */

/** The rules of all ladders met so far. */
export const ladders = new CSSStyleSheet();

const known = new Set();

/** Where rung `k` of `count` begins; between two is a gap of one pixel. */
const begin = (k, count) => `calc((100% + 1px)*${k}/${count})`;

function gradient(steps) {
  const stops = steps.map((step, k) => {
    const colour = step === 'refused' ? 'transparent' : `var(--step-${step})`;
    const end = begin(k + 1, steps.length);
    return `${colour} 0 calc(${end} - 1px),var(--card) 0 ${end}`;
  });
  return `linear-gradient(90deg,${stops.join()})`;
}

/** The class that draws these steps of the colour scale, lowest power first. */
export function ladderClass(steps) {
  const name = `ladder-${steps.join('-')}`;
  if (!known.has(name)) {
    known.add(name);
    const images = ['var(--underline)', gradient(steps)];
    if (steps.includes('refused')) images.push('var(--hatch)');
    ladders.insertRule(`.${name}{background-image:${images.join()}}`);
  }
  return name;
}
