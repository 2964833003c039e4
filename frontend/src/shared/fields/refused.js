/** Where a refusal belongs in a form. */

/** @import {Refused} from '../answers.js' */

/**
 * The request's field that a refusal names, without what lies inside it; empty when it names none.
 *
 * @param {Refused | undefined} refusal
 */
export const refusedField = (refusal) => refusal?.field?.split(/[[.]/)[0] ?? '';
