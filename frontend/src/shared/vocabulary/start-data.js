/**
 * What the page holds before the core answers, as the build writes it.
 *
 * @typedef {import('../answers.js').Entry} Entry
 *
 * @typedef {object} FieldDescription - what the core takes in a field of a request
 * @property {string} type - number, boolean, choice, text or list
 * @property {boolean} [nullable] - whether null may be sent
 * @property {any} [default]
 * @property {string} [unit]
 * @property {number} [min] - of a number
 * @property {number} [max]
 * @property {any[]} [choices] - of a choice
 * @property {?number} [longest] - of a text, in characters
 * @property {FieldDescription} [items] - of a list
 * @property {number} [least]
 * @property {?number} [most]
 *
 * @typedef {{min: number, max: number}} Range - of a number
 *
 * @typedef {Record<string, FieldDescription>} Fields - by name
 * @typedef {Record<string, Fields>} Groups - fields by the part of a request they belong to
 *
 * @typedef {'matrix' | 'cell' | 'question' | 'snapshot' | 'choose' | 'line' | 'spread' | 'sweep' | 'span' | 'fitout' |
 *   'kit' | 'catalogue'} Operation
 *
 * @typedef {object} StartData
 * @property {string} version - of the project
 * @property {Record<Operation, Fields>} requests
 * @property {Groups} parts - the fields of what requests are made of, by the core's name
 * @property {(Entry & {regions: string[]})[]} bands
 * @property {(Entry & {also_called: string[]})[]} families
 * @property {Mode[]} modes
 * @property {(Entry & {added_resistance_ohm: {value: number}})[]} conditions
 * @property {string[]} cautions
 * @property {Entry[]} cables
 * @property {Entry[]} wire_lines
 * @property {(Entry & {exposure: string, vibration: string, added_sealing: boolean})[]} installations
 * @property {Entry[]} noise_environments
 * @property {Entry[]} antenna_views
 * @property {(Entry & {holds_to_vswr: ?number})[]} transmitters
 * @property {{shapes: Record<string, Record<string, any>>, groups: string[], kinds: string[],
 *   most_bytes: number}} pack - what a pack may hold
 * @property {{families: Record<string, string>, modes: Record<string, string>, names: string[]}} question - how a
 *   question speaks of connectors and modes, by id, and what typed names may be completed to
 * @property {Record<Operation, number>} longest_s - how long an answer may take
 * @property {string[]} first_bands - the columns of a first visit
 * @property {import('../answers.js').Matrix} matrix - that of a first visit
 *
 * @typedef {Entry & {duty_factor: {value: number}, on_time_s: ?number, off_time_s: ?number}} Mode
 */
export {};
