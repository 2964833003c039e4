/**
 * What the page reads of the core's answers about a line. Units are in the names; null stands where there is no finite
 * number, or no such part.
 *
 * @import {Column, Step} from '../shared/answers.js'
 * @import {Element} from '../shared/lines/document.js'
 *
 * @typedef {object} LineResult
 * @property {Column} column - looked at
 * @property {number} frequency_hz
 * @property {number} power_w
 * @property {TransmitterState} transmitter
 * @property {boolean} phase_known - of the antenna's reflection; else "likely" is the median over all phases and "at
 * worst" the worst of them
 * @property {?number} delivered_w - likely
 * @property {?number} delivered_low_w - at worst
 * @property {?number} loss_db - likely
 * @property {?number} loss_high_db - at worst
 * @property {number} mismatch_db
 * @property {Terminal} input - likely
 * @property {Terminal} input_cautious - at worst
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
 * @property {StandingWave} standing_wave
 * @property {{band: string[], frequency_hz: number[], loss_db: (?number)[], vswr: (?number)[],
 *   margin_db: (?number)[], loss_high_db: (?number)[], vswr_high: (?number)[]}} sweep - points of each band, in order
 * @property {{column: Column, loss_db: ?number}[]} bands
 * @property {Reception} reception
 * @property {Change[]} changes - the best first
 * @property {Step[]} steps - of the element explained
 * @property {string[]} cautions
 *
 * @typedef {{vswr: ?number, resistance_ohm: ?number, reactance_ohm: ?number}} Terminal - one end of the line
 *
 * @typedef {object} TransmitterState
 * @property {string} name
 * @property {?number} holds_to_vswr
 * @property {number} forward_w - likely
 * @property {number} forward_low_w - at worst
 * @property {number} set_w
 * @property {boolean} folded
 * @property {string} sentence
 *
 * @typedef {object} StandingWave
 * @property {number[]} distance_m
 * @property {number[]} voltage_v - the most that a place may come to
 * @property {number[]} current_a
 * @property {?number[]} voltage_low_v - the least, of any phase and, on a long line, within half a wave around; null
 * where all is known and the line is short
 * @property {?number[]} current_low_a
 * @property {number} half_waves
 *
 * @typedef {object} LinePart
 * @property {number} element - place in the request; that of a load's own part follows the last
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
 * @property {?TunerState} tuner
 * @property {?[?number, ?number]} reads_vswr - of a meter whose directivity is known
 *
 * @typedef {{reachable: boolean, parts: TunerPart[], sentence: string}} TunerState
 *
 * @typedef {object} TunerPart
 * @property {'coil' | 'capacitor'} what
 * @property {string} place
 * @property {?number} henry
 * @property {?number} farad
 * @property {?number} peak_voltage_v
 * @property {?number} current_a - rms
 * @property {?number} lost_w
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
 * @typedef {object} Change - one step for the reader, of one exchange or of several that belong together
 * @property {{part: number, element: number, to: ?string, name: string, action: 'exchange' | 'remove' | 'insert'}[]
 *   } steps
 * @property {string} title
 * @property {?number} gained_db - more at the antenna
 * @property {?number} gained_low_db - in nine of ten draws it is more,
 * @property {?number} gained_high_db - and in one of ten more than this
 * @property {boolean} same - no difference, as what is gained is within what is not known
 * @property {?number} margin_gained_db
 * @property {?number} loss_db
 * @property {?number} margin_db
 * @property {string[]} costs
 * @property {{at: number, element: ?Element, insert: boolean}[]} edits - of the elements of the request
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
