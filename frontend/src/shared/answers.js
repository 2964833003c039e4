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
 * @typedef {'contact' | 'cable' | 'voltage'} LimitId - of a joint
 *
 * @typedef {object} Matrix - grids run over family, column and power level
 * @property {Family[]} families
 * @property {Column[]} columns
 * @property {number[]} powers_w
 * @property {LimitId[]} limits
 * @property {Gate[]} gates
 * @property {(?number)[][][]} margin_db - null where refused, and in receive
 * @property {(?number)[][][]} margin_high_db
 * @property {number[][][]} binding - index of a limit; -1 where there is no margin
 * @property {number[][][]} refused_by - index of a gate, or -1
 * @property {number[][][]} marks - a bit for each gate
 * @property {boolean[][][]} undecided
 * @property {boolean[]} rating_below - by family: a power figure from memory or habit is lower
 * @property {(?number)[][]} largest_power_w
 * @property {(?number)[][][]} contact_allowed_w - [family][column], low and high end, as the next three
 * @property {(?number)[][][]} cable_allowed_w
 * @property {(?number)[][][]} voltage_allowed_w
 * @property {(?number)[][][]} return_loss_db - of the joint alone
 *
 * @typedef {object} Limit - of a cell
 * @property {LimitId} id
 * @property {string} name
 * @property {boolean} binding
 * @property {?number} margin_db
 * @property {?number} margin_high_db
 * @property {?number} allowed_w
 * @property {?number} allowed_high_w
 * @property {string} sentence
 * @property {Step[]} steps
 *
 * @typedef {object} Match - the demand on the return loss of the joint alone
 * @property {number} asked_db
 * @property {number} return_loss_db
 * @property {number} return_loss_high_db
 * @property {'holds' | 'depends' | 'misses'} state - depends: on which source one believes
 * @property {string} sentence
 * @property {Step[]} steps
 *
 * @typedef {object} Rating - a published or remembered power, as evidence
 * @property {'contact' | 'cable'} part - what it is of
 * @property {number} power_w
 * @property {number} frequency_hz
 * @property {number} ambient_temperature_c
 * @property {number} hottest_temperature_c - what was allowed to get so hot
 * @property {string} cable - the name of the one it holds on
 * @property {string} source
 * @property {string} kind
 * @property {string} note
 * @property {number} computed_w - by the rating's own conditions, the cautious end
 * @property {number} computed_high_w
 * @property {number} here_w - carried over to the cell
 * @property {'decides' | 'higher' | 'not documented'} role
 * @property {string} sentence
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
 * @property {number} contact_temperature_c
 * @property {number} allowed_temperature_c - of the contact
 * @property {number} cable_temperature_c
 * @property {number} cable_allowed_temperature_c
 * @property {string} cable_id
 * @property {string} cable_name
 * @property {boolean} cable_given - false for the family's customary one
 * @property {number} peak_voltage_v
 * @property {?number} largest_power_w
 * @property {Limit[]} limits
 * @property {Match} match
 * @property {Rating[]} ratings
 * @property {(Gate & {passed: boolean, sentence: string, source: string, kind: string})[]} gates
 * @property {any} losses
 * @property {Step[]} air_breakdown
 * @property {any} curves - margins against frequency and power, return loss against frequency
 * @property {string[]} cautions
 */
export {};
