/**
 * What the page reads of the core's answers about a sweep and about the span for one. Units are in the names; null
 * stands where there is no finite number.
 *
 * @import {Step} from '../shared/answers.js'
 *
 * @typedef {object} SweepResult - one of `line`, `part` and `echoes` is given
 * @property {number} ports
 * @property {number} points
 * @property {number} low_hz
 * @property {number} high_hz
 * @property {number} reference_ohm
 * @property {string[]} notes
 * @property {string} verdict - what, where, how sure
 * @property {string[]} advice - what to do next, most useful first
 * @property {?LineCheck} line
 * @property {?PartCheck} part
 * @property {?EchoCheck} echoes - where no line is described
 * @property {Step[]} steps
 * @property {string[]} cautions
 *
 * @typedef {'bad' | 'possible' | 'behind' | 'hidden' | 'sound'} State - of a joint or a cable
 *
 * @typedef {object} LineCheck - reflections are shares of the wave sent
 * @property {'sound' | 'suspect' | 'damage' | 'unclear' | 'end' | 'cannot tell' | 'no fit'} finding
 * @property {?number} suspect - the element named first
 * @property {NamedFault[]} faults - the surest first
 * @property {number[]} apart - the elements that can't be told apart
 * @property {string[]} assumed - what the verdict had to assume
 * @property {number} floor - rms of reflection; smaller faults are not named
 * @property {SweptJoint[]} joints - from the analyser on
 * @property {SweptCable[]} cables
 * @property {Candidate[]} candidates - the best first
 * @property {'low-pass' | 'band-pass'} transform
 * @property {number} side_lobe_db
 * @property {number} resolution_m
 * @property {number} range_m
 * @property {number} noise - what the best explanation leaves of the reflection
 * @property {{element: number, part: string, what: string, share: number, uncertainty: number, usual: number}[]}
 *   deviations
 * @property {Profile} profile
 * @property {ReflectionCurves} curves
 *
 * @typedef {object} NamedFault
 * @property {number} element
 * @property {string} part - name of the joint or cable
 * @property {'joint' | 'cable'} where
 * @property {number} distance_m
 * @property {number} low_m
 * @property {number} high_m
 * @property {string} name - what it does
 * @property {FaultSize[]} sizes
 * @property {number} probability
 * @property {number} reflection - rms that it explains
 *
 * @typedef {object} SweptJoint
 * @property {number} element
 * @property {string} name
 * @property {number} distance_m
 * @property {State} state
 * @property {string} words - the state
 * @property {?number} measured
 * @property {?number} expected
 * @property {?number} excess
 * @property {?number} threshold
 * @property {?number} change - against the earlier sweep
 * @property {?number} nearest_m - to the nearest other joint
 * @property {boolean} separate - farther from every other joint than the resolution
 * @property {?number} least_resistance_ohm - the smallest that would show
 * @property {?number} least_capacitance_f - the same across the line
 *
 * @typedef {{element: number, name: string, from_m: number, to_m: number, state: State, words: string}} SweptCable
 *
 * @typedef {object} Candidate - one fault at one place that explains the sweep
 * @property {number} element
 * @property {string} joint - name of the joint or cable
 * @property {number} distance_m
 * @property {string} name
 * @property {FaultSize[]} sizes
 * @property {number} evidence - natural logarithm of the odds against a sound line
 * @property {number} misfit
 * @property {number} reflection - rms that it explains
 *
 * @typedef {{name: string, unit: string, value: number, low: number, high: number}} FaultSize
 *
 * @typedef {Record<'measured' | 'expected' | 'earlier' | 'threshold', (?number)[]> & {distance_m: number[]}} Profile
 *
 * @typedef {object} EchoCheck
 * @property {number} velocity_factor
 * @property {number} resolution_m
 * @property {number} range_m
 * @property {'low-pass' | 'band-pass'} transform
 * @property {Echo[]} echoes - the nearest first
 * @property {Profile} profile
 *
 * @typedef {object} Echo
 * @property {number} distance_m
 * @property {number} low_m
 * @property {number} high_m
 * @property {number} reflection - loss of the cable not made up for
 * @property {'higher' | 'lower' | 'mixed'} sign - of the impedance there
 * @property {string} words - what it could be
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
 * @property {'passed' | 'failed' | 'cannot tell'} finding
 * @property {boolean} loss_passed
 * @property {boolean} match_passed
 * @property {?number} worst_loss_margin_db
 * @property {?number} worst_loss_at_hz
 * @property {?number} worst_match_margin_db
 * @property {?number} worst_match_at_hz
 * @property {number} loss_uncertainty_db - what a usual calibration leaves
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
 *
 * @typedef {object} SpanResult - how to set the analyser
 * @property {number} low_hz
 * @property {number} high_hz
 * @property {number} points
 * @property {string[]} reasons
 * @property {string[]} cautions
 */
export {};
