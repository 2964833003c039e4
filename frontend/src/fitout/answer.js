/**
 * What the core answers about fitting a line, as far as the page reads it.
 *
 * @typedef {{text: string, source: string, kind: string}} Advice - one sentence of the trade with where it comes from
 * @typedef {Advice & {at: string}} Step - `at` is the cable it is done on, empty for the pair
 * @typedef {{sentence: string, source: string, kind: string}} Finding
 * @typedef {{sentence: string, sources: string[], kinds: string[]}} SharedFinding - of several sources
 *
 * @typedef {object} Half - of a mated pair
 * @property {string} half
 * @property {string} on
 * @property {?number} cable_diameter_m
 * @property {string} attachment - how it is put on its cable; empty off a cable
 *
 * @typedef {object} Bend - the smallest ones of a cable
 * @property {string} name
 * @property {number} fixed_radius_m
 * @property {string} fixed_source
 * @property {string} fixed_kind
 * @property {?number} repeated_radius_m - null where it may be bent only once
 * @property {string} repeated_source
 * @property {string} repeated_kind
 *
 * @typedef {object} Sealing
 * @property {string} mated - IP code
 * @property {Advice[]} mated_meaning
 * @property {boolean} refused
 * @property {Advice[]} preparation
 * @property {(Advice & {name: string, length_m: number})[]} layers
 * @property {Advice[]} water
 *
 * @typedef {object} Care
 * @property {(SharedFinding & {contact: string, passed: boolean})[]} galvanic
 * @property {{interval_months: number, due: string, note: string, source: string, kind: string,
 *   checks: Advice[]}} inspection
 * @property {Finding} wear
 * @property {(Advice & {name: string, verdict: string})[]} near_relatives
 *
 * @typedef {object} Label
 * @property {string} name
 * @property {string} family
 * @property {string} date
 * @property {number} frequency_hz
 * @property {number} expected_loss_db
 * @property {number} expected_return_loss_db
 * @property {number} least_return_loss_db
 * @property {string} fragment - opens the page at this joint's derivation
 *
 * @typedef {object} Work - on a joint
 * @property {number} number
 * @property {string} heading
 * @property {string} family_name
 * @property {string} pack
 * @property {Half[]} halves
 * @property {Advice} gender
 * @property {string} adapter
 * @property {Advice[]} tools
 * @property {Step[]} steps
 * @property {SharedFinding & {figures: string, notes: string[]}} torque
 * @property {Sealing & Finding} sealing
 * @property {Bend[]} bends
 * @property {Advice[]} relief
 * @property {(Finding & {name: string})[]} warnings
 * @property {Label} label
 *
 * @typedef {Work & Care} Sheet - of one joint
 *
 * @typedef {object} Measurement - the first one
 * @property {number} frequency_hz
 * @property {number} load_ohm
 * @property {?number} expected_loss_db
 * @property {?number} expected_return_loss_db
 * @property {?number} least_return_loss_db
 * @property {?number} shorted_return_loss_db
 * @property {Advice[]} advice
 *
 * @typedef {{what: string, detail: string, quantity: number, unit: string, family: string, cable: string}} Supply
 *
 * @typedef {object} Answer
 * @property {string} station
 * @property {string} date
 * @property {Sheet[]} joints
 * @property {Measurement} measurement
 * @property {Advice[]} bonding
 * @property {string[]} marks
 * @property {Supply[]} quantities - to have ready
 * @property {string[]} cautions
 */
export {};
