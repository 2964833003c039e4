/**
 * What the core answers to a question, as the page reads it.
 *
 * @typedef {{typed: string, field: string, value: any, words: string}} ReadWord
 * @typedef {{typed: string, words: string, near: string[]}} UnreadWord
 *
 * @typedef {object} Change - what would be better, computed
 * @property {string} title
 * @property {string} sentence
 * @property {Record<string, any>} changes
 *
 * @typedef {object} Answer
 * @property {?Record<string, any>} asked
 * @property {string} sentence
 * @property {ReadWord[]} read
 * @property {UnreadWord[]} unread
 * @property {string[]} missing
 * @property {?{step: string, headline: string, sentence: string}} verdict
 * @property {?number} margin_db
 * @property {?number} largest_power_w
 * @property {?{id: string, name: string, sentence: string}} limited_by
 * @property {{id: string, name: string, sentence: string}[]} doubts
 * @property {Change[]} better
 */
export {};
