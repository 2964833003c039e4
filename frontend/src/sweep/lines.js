/** The lines a sweep can be of: the invented examples, and those kept in this browser by the Line view. */
import {EXAMPLES} from './example-sweeps.js';

const OWN = 'own-';

/** Choices for the form: [id, words]. */
export const choices = (document) => [
  ...Object.entries(EXAMPLES).map(([id, {name}]) => [id, `Example: ${name}`]),
  ...document.lines.map(({name}, at) => [`${OWN}${at}`, name || `Line ${at + 1}`]),
];

export const ownId = (at) => `${OWN}${at}`;

export const isExample = (id) => Object.hasOwn(EXAMPLES, id);

/** The line of an id: {name, request, file}; the first example where there is none of that id. */
export function lineOf(id, document) {
  if (isExample(id)) {
    const {name, elements, load, file} = EXAMPLES[id];
    return {name, request: {elements, load}, file};
  }
  const line = document.lines[Number(id.slice(OWN.length))];
  return id.startsWith(OWN) && line ? {...line, file: undefined} : lineOf('line', document);
}
