/**
 * What the page reads of the core's answers about a line. Units are in the names; null stands where there is no finite
 * number, or no such part.
 *
 * @import {Column, Step} from '../shared/answers.js'
 *
 * @typedef {object} LineResult
 * @property {Column} column - looked at
 * @property {number} frequency_hz
 * @property {number} power_w
 * @property {?number} delivered_w
 * @property {?number} delivered_low_w
 * @property {?number} loss_db
 * @property {?number} loss_high_db
 * @property {number} mismatch_db
 * @property {Terminal} input - as expected
 * @property {Terminal} input_cautious
 * @property {Terminal} antenna
 * @property {?number} margin_db
 * @property {?number} margin_high_db
 * @property {boolean} undecided
 * @property {?number} weakest - place in `parts`
 * @property {?number} largest_power_w
 * @property {?number} largest_power_set_by - place in `parts`
 * @property {string} verdict
 * @property {string[]} notes
 * @property {LinePart[]} parts - along the chain from the transmitter; two for an adapter
 * @property {{distance_m: number[], voltage_v: number[], current_a: number[]}} standing_wave
 * @property {{band: string[], frequency_hz: number[], loss_db: (?number)[], vswr: (?number)[],
 *   margin_db: (?number)[]}} sweep - points of each band, in order
 * @property {{column: Column, loss_db: ?number}[]} bands
 * @property {Reception} reception
 * @property {Change[]} changes
 * @property {Step[]} steps - of the element explained
 * @property {string[]} cautions
 *
 * @typedef {{vswr: ?number, resistance_ohm: ?number, reactance_ohm: ?number}} Terminal - one end of the line
 *
 * @typedef {object} LinePart
 * @property {number} element - place in the request
 * @property {string} kind
 * @property {string} name
 * @property {string} pack
 * @property {number} distance_m - from the transmitter, along the cables
 * @property {?number} loss_db
 * @property {?number} matched_loss_db
 * @property {?number} lost_w
 * @property {?number} forward_w
 * @property {?number} reflected_w
 * @property {?number} vswr
 * @property {?number} peak_voltage_v
 * @property {?number} allowed_voltage_v
 * @property {?number} peak_current_a
 * @property {?number} temperature_c
 * @property {?number} allowed_temperature_c
 * @property {?number} margin_db
 * @property {?number} margin_high_db
 * @property {boolean} undecided
 * @property {?LimitId} binding
 * @property {Partial<Record<LimitId, ?number>>} margin_by_limit_db - of the limits it has
 * @property {?number} return_loss_db - of the part alone, the cautious one; null for a cable
 * @property {?number} largest_power_w
 * @property {?string} refused_by
 * @property {string} refusal
 * @property {string[]} marks
 *
 * @typedef {'contact' | 'cable' | 'voltage' | 'rating'} LimitId
 *
 * @typedef {object} Reception - costs are of signal over noise
 * @property {string} environment
 * @property {string} heard - what the noise that comes in is taken from, in words
 * @property {?number} external_noise_db
 * @property {?number} system_noise_db
 * @property {?number} antenna_temperature_k - the external noise as a temperature
 * @property {?number} system_temperature_k
 * @property {{part: ?number, name: string, cost_db: ?number}[]} costs
 * @property {?number} whole_cost_db
 * @property {(?number)[]} whole_cost_by_band_db
 * @property {(?number)[]} half_decibel_cost_by_band_db
 *
 * @typedef {object} Change - one part exchanged for another
 * @property {number} part - place in `parts`
 * @property {string} to
 * @property {string} name
 * @property {?number} gained_db
 * @property {?number} margin_gained_db
 *
 * @typedef {object} SpreadBand - percentiles, the least first
 * @property {Column} column
 * @property {(?number)[]} vswr
 * @property {(?number)[]} loss_db
 * @property {(?number)[]} margin_db
 * @property {?number} likely_vswr
 * @property {?number} worst_vswr
 *
 * @typedef {{draws: number, bands: SpreadBand[]}} SpreadResult
 */
export {};
