/**
 * Where a refusal belongs in a form, and how it is said there.
 *
 * @import {Refused} from '../answers.js'
 */

/**
 * The request's field that a refusal names, without what lies inside it; empty when it names none.
 *
 * @param {Refused | undefined} refusal
 */
export const refusedField = (refusal) => refusal?.field?.split(/[[.]/)[0] ?? '';

/**
 * The refusal's sentence with the field called by its label.
 *
 * @param {Refused} refusal
 * @param {string | undefined} label
 */
export function refusedWords({field = '', message}, label) {
  const known = label && field && message.startsWith(field);
  return known ? label + message.slice(field.length) : message;
}
