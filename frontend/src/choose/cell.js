/** From a family's row to the matrix: the fragment that opens the derivation of the cell that binds. */
import {toFragment} from '../shared/state/fragment.js';
import {levelsWith} from '../shared/state/levels.js';

/**
 * @import {Answer, Choice} from './answer.js'
 * @import {Demands} from './fields.js'
 */

/** What the matrix asks of a joint, too; the rest of the demands it does not know. */
const DEMANDS_ONLY = [
  'use',
  'bands',
  'frequencies_hz',
  'installation',
  'port',
  'largest_diameter_m',
  'plan',
  'power_w',
  'margin_asked_db',
  'dc_current_a',
  'dc_voltage_v',
];

const isSpot = (column) => column.low_hz === column.high_hz;

/** The row whose cell binds: the port's own joint where that has less room. */
function bindingRow(choice, request, result) {
  return choice.port_binds ? result.choices.find(({family}) => family === request.port) : choice;
}

/** The column that binds; where no number is shown, the highest. */
function bindingColumn(row, {columns}) {
  const highest = columns.reduce((best, one) => (one.high_hz > best.high_hz ? one : best));
  return columns.find(({name}) => name === row.binding_column) ?? highest;
}

/** The station around the joint. */
const station = (request) =>
  Object.fromEntries(Object.entries(request).filter(([name]) => !DEMANDS_ONLY.includes(name)));

/**
 * @param {Choice} choice
 * @param {Demands} request
 * @param {Pick<Answer, 'columns' | 'power_w' | 'choices'>} result
 * @param {Record<string, any>} first - the matrix's state on a first visit
 * @param {string[]} [bands] - the matrix's columns
 */
export function cellFragment(choice, request, result, first, bands = first.bands) {
  const row = bindingRow(choice, request, result);
  const column = bindingColumn(row, result);
  const place = isSpot(column)
    ? {frequency_hz: column.high_hz, frequencies_hz: [column.high_hz]}
    : {band: column.id, bands: bands.includes(column.id) ? bands : [...bands, column.id]};
  const levels = {power_w: result.power_w, powers_w: levelsWith(first.powers_w, result.power_w)};
  return toFragment({...first, ...station(request), ...place, ...levels, family: row.family}, first);
}
