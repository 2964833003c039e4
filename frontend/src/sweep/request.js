/** What the core is asked about a sweep. */
import {given} from '../shared/state/given.js';
/** @import {LineRequest} from '../shared/lines/document.js' */

/** @typedef {{name: string, text: string}} SweepFile */
/**
 * @typedef {object} SweepState - of the form
 * @property {string} of - the line
 * @property {'judge' | 'hunt'} way - a file to judge, or step by step
 * @property {string} end - what the line ended in
 * @property {number} length_tolerance
 * @property {?number} window_shape
 * @property {number} length_m - of a line not described
 * @property {number} velocity_factor
 * @property {number} lowest_hz - of the analyser
 * @property {number} highest_hz
 * @property {number} most_points
 */

/** Of a line's request what a sweep does not ask for. */
const LINE_ONLY = ['load', 'receiver', 'explain', 'power_w', 'band', 'frequency_hz', 'transmitter'];

/** The longest file that is read, as the core takes no more. */
export const MOST_BYTES = 8_000_000;

const ownOf = (line) => Object.fromEntries(Object.entries(line.request).filter(([name]) => !LINE_ONLY.includes(name)));

const loadOf = (end, line) => (end === 'antenna' ? line.request.load : {kind: 'end', what: end});

/**
 * The request of the form as it stands.
 *
 * @param {SweepState} state
 * @param {{request: Pick<LineRequest, 'elements'>}} line
 * @param {{text: string}} file
 * @param {{text: string}} [earlier]
 * @returns {Record<string, any>}
 */
export function sweepRequest({end, length_tolerance, window_shape, velocity_factor}, line, file, earlier) {
  const {elements} = line.request;
  const told = elements.length > 0 ? {load: loadOf(end, line), length_tolerance} : {velocity_factor};
  return {...ownOf(line), ...told, touchstone: file.text, ...given({window_shape, earlier: earlier?.text})};
}

/**
 * How to set the analyser for the line of the form.
 *
 * @param {SweepState} state
 * @param {{request: Pick<LineRequest, 'elements'>}} line
 * @returns {Record<string, any>}
 */
export function spanRequest({length_m, velocity_factor, lowest_hz, highest_hz, most_points}, line) {
  return {...ownOf(line), length_m, velocity_factor, lowest_hz, highest_hz, most_points};
}

/** Why a file is not read; empty where it may be. */
export function tooLarge({name, size}) {
  if (size <= MOST_BYTES) return '';
  return `${name} has ${(size / 1e6).toFixed(0)} MB; allowed: a Touchstone file of at most ${MOST_BYTES / 1e6} MB.`;
}
