/** Power levels of the matrix, so that a link to one of its cells meets the very power it is about. */

/** The levels with `power` among them, rising. */
export const levelsWith = (levels, power) =>
  levels.includes(power) ? levels : [...levels, power].sort((one, other) => one - other);
