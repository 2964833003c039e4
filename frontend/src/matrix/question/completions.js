/** What the words that are being typed may become. */

/** More would hide the page. */
const MOST = 8;
/** Of a name. */
const MOST_WORDS = 3;

/**
 * The whole text with each of the names that its last words begin, as a list of a field's own offers them.
 *
 * @param {string} text
 * @param {string[]} names
 */
export function completed(text, names) {
  const words = text.split(/(?<=\s)/);
  for (let count = Math.min(words.length, MOST_WORDS); count > 0; count--) {
    const begun = words.slice(-count).join('').toLowerCase();
    const found = names.filter((name) => begun.trim() !== '' && name.toLowerCase().startsWith(begun));
    if (found.length > 0) return found.slice(0, MOST).map((name) => words.slice(0, -count).join('') + name);
  }
  return [];
}
