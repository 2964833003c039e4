/** Power levels of the matrix, so that a link to one of its cells meets the very power it is about. */

/** The levels with `power` among them, rising. */
export const levelsWith = (levels, power) =>
  levels.includes(power) ? levels : [...levels, power].sort((one, other) => one - other);

/** The power level printed: the one chosen, or the nearest the matrix has. */
export const nearestPower = (levels, wanted) =>
  levels.reduce((best, one) => (Math.abs(one - wanted) < Math.abs(best - wanted) ? one : best));
