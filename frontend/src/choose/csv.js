/** The families of an answer as comma-separated values, one line each, in the order shown. */
import {valuesOf} from '../shared/export/values.js';
import {figureIn, unitsInForce} from '../shared/text/measures.js';

/** @type {import('../shared/export/values.js').Column[]} */
const COLUMNS = [
  ['family', (one) => one.name],
  ['passes', (one) => one.passes],
  ['rank', (one) => one.rank],
  ['margin_db', (one) => one.margin_db],
  ['margin_high_db', (one) => one.margin_high_db],
  ['undecided', (one) => one.undecided],
  ['set_by', (one) => (one.port_binds ? 'port' : one.binding)],
  ['on', (one) => (one.port_binds ? null : one.binding_column)],
  ['return_loss_db', (one) => one.return_loss_db],
  ['return_loss_high_db', (one) => one.return_loss_high_db],
  ['loss_db', (one) => one.loss_db],
  ['diameter_m', (one) => one.diameter_m],
  ['coupling', (one) => one.coupling],
  ['torque_nm', (one) => one.torque_nm],
  ['needs_adapter', (one) => one.needs_adapter],
  ['has_margin_asked', (one) => one.has_margin_asked],
  ['why', (one) => one.reasons.join('; ')],
  ['dc_stands_a', (one) => one.dc_stands_a],
  ['matings_needed', (one) => one.wear.needed],
  ['matings_good_for', (one) => one.wear.good_for],
  ['wears_out_after_years', (one) => one.wear.runs_out_after_years],
  ['stands', (one) => one.weather.stands],
  ['stands_sealed', (one) => one.weather.stands_sealed],
  ['from_pack', (one) => one.pack],
  ['missed', (one) => one.rejections.map(({sentence}) => sentence).join(' ')],
];

/**
 * Those in US units, in place of those of the same place.
 *
 * @type {Record<string, import('../shared/export/values.js').Column>}
 */
const IN_US_UNITS = {
  diameter_m: ['diameter_in', (one) => figureIn(one.diameter_m * 1e3, 'mm', 3)],
  torque_nm: ['torque_in_lb', (one) => figureIn(one.torque_nm, 'N·m', 3)],
};

export function choicesCsv(result) {
  const isUs = unitsInForce() === 'us';
  const columns = COLUMNS.map((column) => (isUs && IN_US_UNITS[column[0]]) || column);
  return valuesOf(columns, result.choices);
}
