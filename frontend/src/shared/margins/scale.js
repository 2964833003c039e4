/**
 * The colours of a margin, in one place.
 *
 * Ochre to brown below the limit, blue above it: told apart in every common
 * kind of colour vision, lightest at 0 dB, darker the further away. Each step
 * carries its own ink at a contrast of at least 4.5 to 1.
 */

/** Steps from far below to far above; `from` is the lower edge in dB. */
export const STEPS = [
  {from: -Infinity, light: ['#6e3f0e', '#ffffff'], dark: ['#6a3d10', '#fff4e4'], print: ['#c08a3c', '#000000']},
  {from: -20, light: ['#bf8031', '#1a1005'], dark: ['#935f1d', '#fffaf2'], print: ['#dcb273', '#000000']},
  {from: -10, light: ['#e6bd76', '#1f1607'], dark: ['#bb9148', '#160f04'], print: ['#efd6a9', '#000000']},
  {from: -3, light: ['#f8e8c8', '#2a2010'], dark: ['#d9c79f', '#1c160a'], print: ['#faf0dc', '#000000']},
  {from: 0, light: ['#e4eff8', '#10202e'], dark: ['#c2d2df', '#0c161f'], print: ['#eef5fa', '#000000']},
  {from: 3, light: ['#b0d2ee', '#0c1c2b'], dark: ['#86adcf', '#07121c'], print: ['#d2e5f4', '#000000']},
  {from: 10, light: ['#69a6d8', '#061523'], dark: ['#3f76a8', '#ffffff'], print: ['#a8cdea', '#000000']},
  {from: 20, light: ['#1f5690', '#ffffff'], dark: ['#1f4c7b', '#f0f7ff'], print: ['#7bb0dc', '#000000']},
];

/** The step whose colour a cell has that holds with no margin to show. */
const HOLDS = 5;

/** Index of the step a margin in dB belongs to. */
export function stepOf(margin) {
  return STEPS.findLastIndex((step) => margin >= step.from);
}

/** What a step covers, in words for the legend. */
export function stepRange(index) {
  const low = STEPS[index].from;
  const high = STEPS[index + 1]?.from;
  const signed = (edge) => `${edge > 0 ? '+' : edge < 0 ? '−' : ''}${Math.abs(edge)}`;
  if (low === -Infinity) return `below ${signed(high)}`;
  if (high === undefined) return `${signed(low)} and above`;
  return `${signed(low)} to ${signed(high)}`;
}

/**
 * The steps as custom properties --step-N and --step-N-ink of an element, for light, dark and print; --step-holds as
 * one more.
 */
export function scaleCss(selector = ':root') {
  const screen = STEPS.map(
    ({light, dark}, i) =>
      `--step-${i}:light-dark(${light[0]},${dark[0]});--step-${i}-ink:light-dark(${light[1]},${dark[1]});`,
  );
  const paper = STEPS.map(({print}, i) => `--step-${i}:${print[0]};--step-${i}-ink:${print[1]};`);
  const holds = `--step-holds:var(--step-${HOLDS});--step-holds-ink:var(--step-${HOLDS}-ink);`;
  return `${selector}{${screen.join('')}${holds}}\n@media print{${selector}{${paper.join('')}}}\n`;
}

/** Rules that paint any element by its data-step attribute. */
export const STEP_RULES = [...STEPS.keys(), 'holds']
  .map((step) => `[data-step="${step}"]{background-color:var(--step-${step});color:var(--step-${step}-ink)}`)
  .join('\n');
