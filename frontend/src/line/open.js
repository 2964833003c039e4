/** What is open beside the line: an element's derivation by its place, the method, or nothing. */

export const METHODS = 'methods';

/** The place of the element that is derived; undefined when none is. */
export function explained(open, count) {
  const at = open === null || open === '' ? NaN : Number(open);
  return Number.isInteger(at) && at >= 0 && at < count ? at : undefined;
}

/** The heading of the sheet; empty when nothing is open. */
export function headingOf(open, names) {
  if (open === METHODS) return 'Method';
  const at = explained(open, names.length);
  return at === undefined ? '' : `Element ${at + 1}: ${names[at]}`;
}
