/** A source in words: its title, then who published it, when, and where in it, as far as they are known. */

/** @param {import('../answers.js').Source} [source] */
export function reference(source) {
  if (!source) return '';
  const origin = [source.body, source.year, source.place].filter(Boolean).join(', ');
  return origin ? `${source.title} (${origin})` : source.title;
}
