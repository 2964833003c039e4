/** The views of the page: the name in the address, and the one on the switch. */

export const MATRIX = 'matrix';
export const CHOOSE = 'choose';
export const LINE = 'line';
export const KIT = 'kit';
export const FITOUT = 'fitout';
export const SWEEP = 'sweep';
/** Beside the views: its button stands with those of the whole page. */
export const PACKS = 'packs';

export const VIEWS = [
  [MATRIX, 'Matrix'],
  [CHOOSE, 'Choose'],
  [LINE, 'Line'],
  [KIT, 'Kit'],
  [FITOUT, 'Fit-out'],
  [SWEEP, 'Sweep'],
];

/** What leads to a view that was not seen yet. */
export const FIRST_FRAGMENTS = {
  [MATRIX]: '',
  ...Object.fromEntries([CHOOSE, LINE, KIT, FITOUT, SWEEP, PACKS].map((view) => [view, `view=${view}`])),
};

/** The view a fragment belongs to. */
export function viewOf(fragment) {
  const named = new URLSearchParams(fragment).get('view');
  return Object.hasOwn(FIRST_FRAGMENTS, named) ? named : MATRIX;
}
