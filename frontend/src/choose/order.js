/** The columns of the families that pass, and the order that a tap on one brings. */
import {standsAt} from './reading.js';

/**
 * @import {Choice} from './answer.js'
 *
 * @typedef {object} Column
 * @property {string} id
 * @property {string} head
 * @property {(choice: Choice) => number | string} [by] - what it orders by; without it, it can't
 * @property {boolean} [most] - whether more is better
 *
 * @typedef {{id: string, down: boolean}} Order - a column, and whether its largest come first
 */

/** @type {Column[]} - the first tap on one brings what is best in it to the top */
export const COLUMNS = [
  {id: 'rank', head: 'Rank', by: ({rank}) => rank ?? Infinity},
  {id: 'name', head: 'Connector', by: ({name}) => name},
  {id: 'why', head: 'Why'},
  {id: 'margin', head: 'Margin', by: (one) => one.margin_db ?? one.return_loss_db ?? -Infinity, most: true},
  {id: 'loss', head: 'Loss', by: ({loss_db: loss}) => loss},
  {id: 'size', head: 'Size', by: ({diameter_m: diameter}) => diameter},
  {id: 'coupling', head: 'Coupling', by: ({torque_nm: torque}) => torque},
  {id: 'matings', head: 'Matings', by: ({wear}) => wear.good_for, most: true},
  {id: 'weather', head: 'Weather', by: standsAt, most: true},
];

/** @type {Order} */
export const BY_RANK = {id: 'rank', down: false};

const columnOf = (id) => COLUMNS.find((column) => column.id === id) ?? COLUMNS[0];

/**
 * The order after a tap on a column: by it, the best first, and turned round by the next tap.
 *
 * @param {Order} order
 * @param {string} id
 * @returns {Order}
 */
export const tapped = (order, id) => ({
  id,
  down: order.id === id ? !order.down : columnOf(id).most === true,
});

/**
 * Families in an order; equals stay as they came, and by rank all do: the plan comes first.
 *
 * @param {Choice[]} choices
 * @param {Order} order
 */
export function ordered(choices, {id, down}) {
  const {by} = columnOf(id);
  if (!by || (id === 'rank' && !down)) return choices;
  const sign = down ? -1 : 1;
  return choices.toSorted((one, other) => sign * compared(by(one), by(other)));
}

const compared = (one, other) =>
  typeof one === 'string' ? one.localeCompare(other, 'en', {numeric: true}) : one === other ? 0 : one - other;
