/** What of a record is set. */

const without = (values, record) =>
  Object.fromEntries(Object.entries(record).filter(([, value]) => !values.includes(value)));

/** Null means that a field is left out. */
export const given = (record) => without([null, undefined], record);

/** Empty text, too, means that a field is left out. */
export const filled = (record) => without([null, undefined, ''], record);
