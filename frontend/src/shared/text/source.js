/** A source in words: its title, then who published it, when, and where in it, as far as they are known. */

/** Origins that are no text to look up. */
const NO_TEXT = new Set(['common_practice', 'memory', '']);

/** Whether there is a text behind the id of a source. */
export const isText = (id) => !NO_TEXT.has(id);

/** @param {import('../answers.js').Source} [source] */
export function reference(source) {
  if (!source) return '';
  const origin = [source.body, source.year, source.place].filter(Boolean).join(', ');
  return origin ? `${source.title} (${origin})` : source.title;
}
