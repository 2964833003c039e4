/** Where sentences come from: their kind, and a number that leads to the text in the list under them. */

import {isText, reference} from '../shared/text/source.js';

const isSource = (key) => key === 'source' || key === 'sources' || key.endsWith('_source');

function* sourcesIn(value) {
  for (const [key, one] of Object.entries(value ?? {})) {
    if (isSource(key)) yield* [one].flat();
    else if (typeof one === 'object') yield* sourcesIn(one);
  }
}

/** The texts that an answer or a part of it rests on, by id, numbered in the order they come up. */
export function numbered(...parts) {
  const found = new Set(parts.flatMap((part) => [...sourcesIn(part)]).filter(isText));
  return new Map([...found].map((id, at) => [id, at + 1]));
}

/** What everybody in the trade knows carries no mark. */
const UNMARKED = 'common practice';

/** "handbook [2]"; empty for common practice. */
export function fromWords(kinds, sources, numbers) {
  const known = [...new Set(sources)].map((id) => numbers.get(id)).filter(Boolean);
  const marked = [...new Set(kinds)].filter((kind) => kind !== UNMARKED);
  return [marked.join(', '), known.length > 0 ? `[${known.join(', ')}]` : ''].filter(Boolean).join(' ');
}

export const titlesOf = (catalogue) => new Map(catalogue?.sources.map((source) => [source.id, reference(source)]));
