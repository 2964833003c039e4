/**
 * The colours of a margin and the words for them, in one place.
 *
 * Ochre below the limit, blue above it, palest at it: told apart in every common kind of colour vision, darker the
 * further away. Each step carries its own ink at a contrast of at least 4.5 to 1.
 */

/** Steps from over the limit to ample, named as the core names them; `from` is the lower edge in dB. */
export const STEPS = [
  {
    ...{id: 'over', words: 'over the limit', from: -Infinity},
    ...{light: ['#dca64f', '#1f1607'], dark: ['#935f1d', '#fffaf2'], print: ['#dcb273', '#000000']},
  },
  {
    ...{id: 'at', words: 'at the limit', from: 0},
    ...{light: ['#f8e8c8', '#2a2010'], dark: ['#d9c79f', '#1c160a'], print: ['#faf0dc', '#000000']},
  },
  {
    ...{id: 'tight', words: 'tight', from: 1},
    ...{light: ['#d3e6f5', '#10202e'], dark: ['#a9c4d8', '#0c161f'], print: ['#e2eef8', '#000000']},
  },
  {
    ...{id: 'fine', words: 'fine', from: 3},
    ...{light: ['#a3caeb', '#0c1c2b'], dark: ['#6f9cc4', '#07121c'], print: ['#c6dff2', '#000000']},
  },
  {
    ...{id: 'ample', words: 'ample', from: 10},
    ...{light: ['#5f9fd4', '#061523'], dark: ['#2f6598', '#ffffff'], print: ['#a0c8e8', '#000000']},
  },
];

/** The step whose colour a cell has that holds with no margin to show. */
const HOLDS = 'fine';

const stepAt = (margin) => STEPS.findLast(({from}) => margin >= from) ?? STEPS[0];

/** Name of the step a margin in dB belongs to. */
export const stepOf = (margin) => stepAt(margin).id;

/** What is said of a margin in dB beside its number. */
export const stepWords = (margin) => stepAt(margin).words;

/** The edges of a step in dB; undefined where it has none. */
export function edgesOf(id) {
  const at = STEPS.findIndex((step) => step.id === id);
  const {from} = STEPS[at];
  return {from: Number.isFinite(from) ? from : undefined, to: STEPS[at + 1]?.from};
}

/** What a step covers, in words for the key. */
export function stepRange(id) {
  const {from, to} = edgesOf(id);
  if (from === undefined) return `below ${to}`;
  return to === undefined ? `above ${from}` : `${from} to ${to}`;
}

/**
 * The steps as custom properties --step-… and --step-…-ink of an element, for light, dark and print; --step-holds as
 * one more.
 */
export function scaleCss(selector = ':root') {
  const screen = STEPS.map(
    ({id, light, dark}) =>
      `--step-${id}:light-dark(${light[0]},${dark[0]});--step-${id}-ink:light-dark(${light[1]},${dark[1]});`,
  );
  const paper = STEPS.map(({id, print}) => `--step-${id}:${print[0]};--step-${id}-ink:${print[1]};`);
  const holds = `--step-holds:var(--step-${HOLDS});--step-holds-ink:var(--step-${HOLDS}-ink);`;
  return `${selector}{${screen.join('')}${holds}}\n@media print{${selector}{${paper.join('')}}}\n`;
}

/** Rules that paint any element by its data-step attribute. */
export const STEP_RULES = [...STEPS.map(({id}) => id), 'holds']
  .map((step) => `[data-step="${step}"]{background-color:var(--step-${step});color:var(--step-${step}-ink)}`)
  .join('\n');
