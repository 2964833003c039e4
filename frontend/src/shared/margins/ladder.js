/**
 * The ladder of a folded cell and the thread of its range, drawn as one background of the cell's button: a matrix has
 * too many for an element each, and a slider has the browser lay out and paint all of them in every frame.
 *
 * Ladders are few and come again and again, so each is a rule that its cells
 * share: the browser works it out once.
 */

/** The rules of all ladders met so far. */
export const ladders = new CSSStyleSheet();

/**
 * Where each layer stands, uppermost first: the underline of the chosen level; the rungs and the hatch of those refused
 * in the lowest 7 px, the edge above them; the upright line at 0 dB, the thread from end to end; the hatch of a refused
 * cell.
 */
const LAYERS = [
  ['var(--chosen) 100%', 'calc((100% + 1px) / var(--levels) - 1px) 3px'],
  ['0 100%', '100% 7px'],
  ['0 100%', '100% 7px'],
  ['0 calc(100% - 7px)', '100% 1px'],
  ['50% calc(100% - 10px)', '1px 5px'],
  ['50% calc(100% - 12px)', 'calc(100% - 8px) 1px'],
  ['0 0', 'auto'],
];

const flat = (colour) => `linear-gradient(${colour} 0 0)`;
const inked = (share) => flat(`color-mix(in srgb,currentColor ${share},transparent)`);

/** Rules for every ladder; the room they take is that of the last two rows of the button's grid. */
export const LADDER_RULES = `.ladder{background-repeat:no-repeat;
  background-position:${LAYERS.map(([position]) => position).join()};
  background-size:${LAYERS.map(([, size]) => size).join()}}`;

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

function images(steps, own) {
  const hatch = (there) => (there ? 'var(--hatch)' : 'none');
  const range = hasMargin(own) ? [inked('75%'), inked('30%')] : ['none', 'none'];
  return [
    flat('var(--accent)'),
    gradient(steps),
    hatch(steps.includes('refused')),
    flat('var(--card)'),
    ...range,
    hatch(own === 'refused'),
  ];
}

const hasMargin = (step) => typeof step === 'number';

/**
 * The classes that draw these colours, lowest power first, in a cell of its own colour.
 *
 * @param {(number | string)[]} steps - of the colour scale; or refused, or holds
 * @param {number | string} own - that of the cell; with a margin it has the thread of its range too
 */
export function ladderClass(steps, own) {
  const name = `ladder-${steps.join('-')}-in-${hasMargin(own) ? 'margin' : own}`;
  if (!known.has(name)) {
    known.add(name);
    ladders.insertRule(`.${name}{background-image:${images(steps, own).join()}}`);
  }
  return `ladder ${name}`;
}
