/** The range bar of a folded cell: from the most cautious to the most generous figures. */
import {STEPS} from './scale.js';

/** The bar spans this many dB to both sides of the limit. */
const RANGE_DB = 20;
/** Places along the bar, less than a pixel apart. A rule for each costs the browser less than a style in every cell. */
const PLACES = 80;

const place = (db) => Math.round(((Math.min(Math.max(db, -RANGE_DB), RANGE_DB) + RANGE_DB) / (2 * RANGE_DB)) * PLACES);

/** The classes that put the bar into its place. */
export function rangeClass(low, high) {
  const [from, to] = [place(low), place(high)];
  return `from-${from} over-${to - from}`;
}

/** The corner of an undecided cell, in the colour of its generous end. */
const CORNERS = STEPS.map(
  (_, i) =>
    `[data-high="${i}"]::after{color:var(--step-${i}-ink);` +
    `background:linear-gradient(to bottom left,var(--step-${i}) 50%,transparent calc(50% + 0.5px))}`,
).join('');

/**
 * Rules for the corner; for the bar: element i on its thread in the third row of the cell's grid, and those that put it
 * into its place.
 */
export const RANGE_RULES = `${CORNERS}
.number,td>button::before,td>button::after{grid-column:1/-1}
i{grid-area:3/2;height:3px;min-width:3px;margin-top:1px;background:currentColor}
${Array.from({length: PLACES + 1}, (_, k) => {
  const share = `${(k / PLACES) * 100}%`;
  return `.from-${k}{margin-left:${share}}.over-${k}{width:${share}}`;
}).join('\n')}`;
