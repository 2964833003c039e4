/** What the core is asked about a sweep. */
import {given} from '../shared/state/given.js';
/** @import {LineRequest} from '../shared/lines/document.js' */

/** @typedef {{name: string, text: string}} SweepFile */
/** @typedef {{of: string, end: string, length_tolerance: number, window_shape: ?number}} SweepState - of the form */

/** Of a line's request what a sweep does not ask for. */
const LINE_ONLY = ['load', 'receiver', 'explain', 'power_w', 'band', 'frequency_hz'];

/** The longest file that is read, as the core takes no more. */
export const MOST_BYTES = 8_000_000;

const loadOf = (end, line) => (end === 'antenna' ? line.request.load : {kind: 'end', what: end});

/**
 * The request of the form as it stands.
 *
 * @param {SweepState} state
 * @param {{request: LineRequest}} line
 * @param {{text: string}} file
 * @param {{text: string}} [earlier]
 * @returns {Record<string, any>}
 */
export function sweepRequest({end, length_tolerance, window_shape}, line, file, earlier) {
  const own = Object.fromEntries(Object.entries(line.request).filter(([name]) => !LINE_ONLY.includes(name)));
  return {
    ...own,
    load: loadOf(end, line),
    touchstone: file.text,
    ...given({length_tolerance, window_shape, earlier: earlier?.text}),
  };
}

/** Why a file is not read; empty where it may be. */
export function tooLarge({name, size}) {
  if (size <= MOST_BYTES) return '';
  return `${name} has ${(size / 1e6).toFixed(0)} MB; allowed: a Touchstone file of at most ${MOST_BYTES / 1e6} MB.`;
}
