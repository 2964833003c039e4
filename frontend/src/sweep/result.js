/**
 * What the page reads of the core's answer about a sweep. Units are in the names; null stands where there is no finite
 * number.
 *
 * @import {Step} from '../shared/answers.js'
 *
 * @typedef {object} SweepResult - one of `line` and `part` is given
 * @property {number} ports
 * @property {number} points
 * @property {number} low_hz
 * @property {number} high_hz
 * @property {number} reference_ohm
 * @property {string[]} notes
 * @property {string} verdict
 * @property {string[]} advice
 * @property {?LineCheck} line
 * @property {?PartCheck} part
 * @property {Step[]} steps
 *
 * @typedef {object} LineCheck - reflections are shares of the wave sent
 * @property {'sound' | 'suspect' | 'unclear' | 'no fit'} finding
 * @property {?number} suspect - the element of the joint named
 * @property {number[]} apart - the elements of the joints that can't be told apart
 * @property {SweptJoint[]} joints - from the analyser on
 * @property {Candidate[]} candidates - the best first
 * @property {'low-pass' | 'band-pass'} transform
 * @property {number} side_lobe_db
 * @property {number} resolution_m
 * @property {number} range_m
 * @property {number} noise - what the best explanation leaves of the reflection
 * @property {{element: number, part: string, what: string, share: number, uncertainty: number}[]} deviations
 * @property {Record<'measured' | 'expected' | 'earlier' | 'threshold', (?number)[]> & {distance_m: number[]}} profile
 * @property {ReflectionCurves} curves
 *
 * @typedef {object} SweptJoint
 * @property {number} element
 * @property {string} name
 * @property {number} distance_m
 * @property {?number} measured
 * @property {?number} expected
 * @property {?number} excess
 * @property {?number} threshold
 * @property {?number} change - against the earlier sweep
 * @property {boolean} shadowed - behind the suspect
 * @property {boolean} seen - the excess is above the threshold
 * @property {?number} nearest_m - to the nearest other joint
 * @property {boolean} separate - farther from every other joint than the resolution
 * @property {?number} least_resistance_ohm - the smallest that would show
 *
 * @typedef {object} Candidate - one fault at one joint that explains the sweep
 * @property {number} element
 * @property {string} joint
 * @property {string} name
 * @property {FaultSize[]} sizes
 * @property {number} evidence
 * @property {number} misfit
 *
 * @typedef {{name: string, unit: string, value: number, low: number, high: number}} FaultSize
 *
 * @typedef {object} ReflectionCurves
 * @property {number[]} frequency_hz
 * @property {(?number)[]} measured_db
 * @property {(?number)[]} expected_db
 * @property {(?number)[]} fitted_db
 * @property {(?number)[]} measured_real
 * @property {(?number)[]} measured_imaginary
 * @property {(?number)[]} fitted_real
 * @property {(?number)[]} fitted_imaginary
 *
 * @typedef {object} PartCheck
 * @property {boolean} passed
 * @property {boolean} loss_passed
 * @property {boolean} match_passed
 * @property {?number} worst_loss_margin_db
 * @property {?number} worst_loss_at_hz
 * @property {?number} worst_match_margin_db
 * @property {?number} worst_match_at_hz
 * @property {number} resistance_ohm
 * @property {number} resistance_uncertainty_ohm
 * @property {number} skin_excess_db_at_top
 * @property {?{largest_loss_change_db: number, at_hz: number, sentence: string}} trend
 * @property {number[]} frequency_hz
 * @property {(?number)[]} loss_db
 * @property {(?number)[]} expected_loss_db
 * @property {(?number)[]} limit_loss_db
 * @property {(?number)[]} earlier_loss_db
 * @property {(?number)[]} return_loss_db
 * @property {(?number)[]} limit_return_loss_db
 * @property {(?number)[]} other_return_loss_db - into port 2
 * @property {(?number)[]} measured_real
 * @property {(?number)[]} measured_imaginary
 */
export {};
