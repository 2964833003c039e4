/**
 * How the core is asked, and what several views read of its answers.
 *
 * @typedef {object} Transport
 * @property {(operation: string, request: any, options?: Options) => Promise<any>} ask - resolves to the result; fails
 * with a refusal, or with the signal's own reason when the caller gave up
 *
 * @typedef {{signal?: AbortSignal, packs?: AskedPack[]}} Options - packs take the place of those in force
 * @typedef {{label: string, text: string}} AskedPack
 *
 * @typedef {object} Refused - an answer that is not a result
 * @property {string} message - a sentence for the reader
 * @property {string} [field] - what to change, where a field is at fault
 * @property {any} [value]
 * @property {any} [allowed]
 *
 * @typedef {{id: string, name: string}} Entry - of a table of the catalogue
 * @typedef {{id: string, title: string, seen: string, body: string, year: string, place: string}} Source
 *
 * @typedef {object} Formula
 * @property {string} id
 * @property {string} title
 * @property {string} mathml
 * @property {{symbol: string, meaning: string, unit: string}[]} symbols
 * @property {string} validity
 * @property {string} source
 *
 * @typedef {object} Catalogue
 * @property {Formula[]} formulas
 * @property {Source[]} sources
 * @property {any[]} families - with all their figures
 * @property {any[]} packs
 *
 * @typedef {object} Figure - a number of a derivation
 * @property {string} symbol
 * @property {string} meaning
 * @property {string} unit
 * @property {number|string} value
 * @property {string} source
 * @property {string} kind
 *
 * @typedef {object} Step - of a derivation
 * @property {string} formula
 * @property {string} purpose
 * @property {string} end - low for the cautious figures, high for the generous ones
 * @property {Figure[]} inputs
 * @property {Figure} result
 *
 * @typedef {{id: string, name: string, hard: boolean}} Gate
 * @typedef {Entry & {summary: string, receive_only: boolean, gate_reasons: Record<string, string>, pack: string}}
 *   Family
 * @typedef {Entry & {low_hz: number, high_hz: number, pack: string}} Column
 *
 * @typedef {object} Matrix - grids run over family, column and power level
 * @property {Family[]} families
 * @property {Column[]} columns
 * @property {number[]} powers_w
 * @property {string[]} limits
 * @property {Gate[]} gates
 * @property {number[][][]} margin_db
 * @property {number[][][]} margin_high_db
 * @property {number[][][]} binding - index of a limit
 * @property {number[][][]} refused_by - index of a gate, or -1
 * @property {number[][][]} marks - a bit for each gate
 * @property {boolean[][][]} undecided
 * @property {boolean[][]} heat_disagrees
 * @property {(?number)[][]} largest_power_w
 * @property {(?number)[][][]} heat_allowed_w - [family][column], low and high end, as the next two
 * @property {(?number)[][][]} voltage_allowed_w
 * @property {(?number)[][][]} match_margin_db
 *
 * @typedef {object} Limit - of a cell
 * @property {string} id
 * @property {string} name
 * @property {boolean} binding
 * @property {?number} margin_db
 * @property {?number} margin_high_db
 * @property {?number} allowed_w
 * @property {?number} allowed_high_w
 * @property {string} sentence
 * @property {Step[]} steps
 *
 * @typedef {object} Cell - one family, column and power level with its derivation
 * @property {Family} family
 * @property {Column} column
 * @property {number} power_w
 * @property {number} frequency_hz
 * @property {?number} margin_db
 * @property {?number} margin_high_db
 * @property {boolean} undecided
 * @property {?string} refused_by
 * @property {string} verdict
 * @property {?number} contact_temperature_c
 * @property {number} allowed_temperature_c
 * @property {number} peak_voltage_v
 * @property {?number} largest_power_w
 * @property {Limit[]} limits
 * @property {(Gate & {passed: boolean, sentence: string, source: string, kind: string})[]} gates
 * @property {any} losses
 * @property {any} cross_check
 * @property {Step[]} air_breakdown
 * @property {any} curves - margins against frequency and power
 * @property {string[]} cautions
 */
export {};
