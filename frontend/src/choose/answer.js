/**
 * What the core answers about the families for one joint, as far as the page reads it.
 *
 * @import {Column, LimitId} from '../shared/answers.js'
 *
 * @typedef {object} Choice - one family against all demands
 * @property {string} family
 * @property {string} name
 * @property {string[]} also_called
 * @property {string} pack - that the family comes from; empty for a built-in one
 * @property {boolean} passes
 * @property {?number} rank - 1 is best; equal ranks are ties; null where it does not pass
 * @property {?number} margin_db - the smallest cautious one over all columns and limits; null where it is refused, and
 * in receive
 * @property {?number} margin_high_db
 * @property {boolean} undecided
 * @property {?LimitId} binding
 * @property {?string} binding_column
 * @property {?number} return_loss_db - the smallest cautious one over all columns, of the joint alone
 * @property {?number} return_loss_high_db
 * @property {boolean} port_binds - whether the port's own joint has less room than this family's
 * @property {number} loss_db - of the mated pair at the highest frequency
 * @property {number} diameter_m
 * @property {string} coupling
 * @property {number} torque_nm
 * @property {boolean} by_hand - whether it is tightened without a torque wrench
 * @property {boolean} needs_adapter
 * @property {boolean} has_margin_asked
 * @property {string[]} reasons - why it stands where it does; empty where it does not pass
 * @property {number} dc_stands_a - direct current that heat allows
 * @property {{demand: string, name: string, hard: boolean, sentence: string}[]} rejections - the demands it misses
 * @property {{needed: number, good_for: number, runs_out_after_years: ?number}} wear - matings
 * @property {{stands: string, stands_sealed: string, asked: string}} weather
 *
 * @typedef {object} Relaxation - one demand that, relaxed alone, lets families pass
 * @property {string} demand
 * @property {string} sentence
 * @property {?string} field - of the request, that can be set to `value`
 * @property {any} value
 *
 * @typedef {object} Answer
 * @property {Column[]} columns
 * @property {number} power_w
 * @property {Choice[]} choices
 * @property {string[]} passing
 * @property {string[]} port_doubts
 * @property {string} place - what weather, shaking and sealing are counted on
 * @property {string[]} notes - on the direct current
 * @property {string} rule
 * @property {string} verdict
 * @property {Relaxation[]} relaxations
 * @property {string[]} cautions
 */
export {};
