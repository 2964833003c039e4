/** The range bar of a folded cell: from the most cautious to the most generous figures. */

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

/** Rules that put the bar into its place. */
export const RANGE_RULES = Array.from({length: PLACES + 1}, (_, k) => {
  const share = `${(k / PLACES) * 100}%`;
  return `.from-${k}{margin-left:${share}}.over-${k}{width:${share}}`;
}).join('\n');
