/** Fields and words whose choices are entries of the catalogue. */

/** The fields with those that name an entry as a choice; `entries` by the name of the field. */
export const named = (fields, entries = {}) =>
  Object.fromEntries(
    Object.entries(fields).map(([name, field]) => [
      name,
      name in entries ? {...field, type: 'choice', choices: entries[name].map(({id}) => id)} : field,
    ]),
  );

/** Choices of which none may be taken, in words of its own. */
export const optional = (words, entries) => ({
  '': words,
  ...Object.fromEntries(entries.map(({id, name}) => [id, name])),
});
