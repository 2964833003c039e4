/** What to change in the form so that a relaxation the core found comes true, where that is one number. */
import {quantity, roundedDown} from '../text/format.js';

/** The core rounds what it offers to this many figures, never up. */
const FIGURES = 3;

const down = (value) => roundedDown(value, FIGURES);
const least = (choices, read) => Math.min(...choices.map(read));

/** By demand, the field and the value with which all the families named pass. */
const CHANGES = {
  power: (helped, request) => ['power_w', down(request.power_w * 10 ** (least(helped, (one) => one.margin_db) / 10))],
  match: (helped, request) => ['return_loss_asked_db', down(request.return_loss_asked_db + least(helped, (one) => one.margin_db))],
  wear: (helped, request) => ['matings_per_year', down(least(helped, (one) => one.wear.good_for) / request.service_life_years)],
  room: (helped) => ['largest_diameter_m', Math.max(...helped.map((one) => one.diameter_m))],
};

/**
 * {field, value} of a relaxation; undefined where no number of the form can do it.
 *
 * @param {object} fields - the ranges of the form
 */
export function changeOf({demand, families}, result, request, fields) {
  const helped = result.choices.filter(({family}) => families.includes(family));
  const [field, value] = CHANGES[demand]?.(helped, request) ?? [];
  if (field === undefined || value < fields[field].min || value > fields[field].max) return undefined;
  return {field, value};
}

/** The words on the button that makes the change. */
export const changeWords = ({field, value}, label, unit) => `${label}: ${quantity(value, unit, FIGURES)}`;
