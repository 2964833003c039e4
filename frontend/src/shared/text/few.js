/** Texts from outside in a sentence of the page: the first few, each cut short. */

const MOST_SHOWN = 3;
const LONGEST_SHOWN = 60;

/** @param {string} text */
export const cutShort = (text) => (text.length > LONGEST_SHOWN ? `${text.slice(0, LONGEST_SHOWN)}…` : text);

/** @param {string[]} texts */
export function fewOf(texts) {
  const shown = texts.slice(0, MOST_SHOWN).map(cutShort).join(', ');
  return texts.length > MOST_SHOWN ? `${shown} and ${texts.length - MOST_SHOWN} more` : shown;
}
