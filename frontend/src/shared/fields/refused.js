/** Where a refusal belongs in a form, and how it is said there. */

/** The request's field that a refusal names, without what lies inside it; empty when it names none. */
export const refusedField = (refusal) => refusal?.field?.split(/[[.]/)[0] ?? '';

/** The refusal's sentence with the field called by its label. */
export function refusedWords({field, message}, label) {
  const known = Boolean(label) && message.startsWith(field);
  return known ? label + message.slice(field.length) : message;
}
