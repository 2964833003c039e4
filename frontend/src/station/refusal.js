/** Why a value can't stand in a field of the station, in a sentence; empty where it can. */

/**
 * @param {import('../shared/vocabulary/vocabulary.js').Vocabulary} vocabulary
 * @param {string} name - of the control
 * @param {any} value
 */
export function refusalOf(vocabulary, name, value) {
  const {type, min, max} = vocabulary.fieldOf(name);
  if (type !== 'number' || typeof value !== 'number') return '';
  if (value >= /** @type {number} */ (min) && value <= /** @type {number} */ (max)) return '';
  return `${vocabulary.labelOf(name)} is ${vocabulary.spoken(name, value)}; allowed: ${vocabulary.rangeOf(name)}.`;
}
