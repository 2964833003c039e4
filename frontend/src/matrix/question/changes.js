/** What a question changes in the matrix: its cell is chosen there, under the conditions it was asked with. */
import {levelsWith, nearestPower} from '../../shared/state/levels.js';

/** The view of a cell that is chosen without its sheet. */
export const ASKED = 'asked';

/**
 * @import {Lists} from '../../shared/vocabulary/lists.js'
 * @import {State} from '../fields.js'
 *
 * @typedef {{family: string, band: ?string, frequency_hz: ?number}} AskedCell
 */

/**
 * The cell of a first visit's question.
 *
 * @type {AskedCell}
 */
export const FIRST_CELL = {family: 'uhf', band: '20m', frequency_hz: null};

/**
 * The cell a state has chosen; undefined where it has none.
 *
 * @param {State} state
 * @returns {AskedCell | undefined}
 */
export function chosenCell({family, band, frequency_hz}) {
  return family !== null && (band !== null || frequency_hz !== null) ? {family, band, frequency_hz} : undefined;
}

/** @param {number[]} levels */
function withLevel(levels, power, most) {
  if (levels.includes(power) || levels.length < most) return levelsWith(levels, power);
  const nearest = nearestPower(levels, power);
  return levelsWith(
    levels.filter((one) => one !== nearest),
    power,
  );
}

/**
 * The changes of the matrix's state that the values of a question's fields make: whatever they name is in it then.
 *
 * @param {Record<string, any>} values
 * @param {AskedCell} cell - the one asked about so far
 * @param {State} state
 * @param {Lists} lists
 * @param {number} mostPowers
 * @returns {Record<string, any>}
 */
export function askedChanges(values, cell, state, lists, mostPowers) {
  const column = values.band ? {frequency_hz: null} : values.frequency_hz ? {band: null} : {};
  /** @type {Record<string, any>} */
  const changes = {...cell, ...values, ...column, view: ASKED};
  const {family, band, frequency_hz, power_w = state.power_w} = changes;
  if (band !== null && !state.bands.includes(band))
    changes.bands = lists.bands.map(({id}) => id).filter((id) => id === band || state.bands.includes(id));
  if (frequency_hz !== null) changes.frequencies_hz = levelsWith(state.frequencies_hz, frequency_hz);
  if (state.families !== null && !state.families.includes(family)) changes.families = [...state.families, family];
  return {...changes, powers_w: withLevel(state.powers_w, power_w, mostPowers)};
}
