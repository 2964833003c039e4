/** The lines a sweep can be of: the invented examples, and those kept in this browser by the Line view. */
import {EXAMPLES} from './example-sweeps.js';

const OWN = 'own-';

/** Of no described line: echoes by distance are all there is. */
export const NO_LINE = 'none';

/** Choices for the form: [id, words]. */
export const choices = (document) => [
  ...Object.entries(EXAMPLES).map(([id, {name}]) => [id, `Example: ${name}`]),
  ...document.lines.map(({name}, at) => [`${OWN}${at}`, name || `Line ${at + 1}`]),
  [NO_LINE, 'No line described: echoes by distance'],
];

export const ownId = (at) => `${OWN}${at}`;

/** Whether an id is that of a line kept in this browser. */
export const isOwn = (id) => id.startsWith(OWN);

export const isExample = (id) => Object.hasOwn(EXAMPLES, id);

const UNDESCRIBED = {name: 'a line not described', request: {elements: []}, file: undefined, after: undefined};

/**
 * The line of an id: {name, request, file, after}; the first example where there is none of that id. Files are there
 * only where they are invented; `after` is the sweep after the fault was mended.
 */
export function lineOf(id, document) {
  if (id === NO_LINE) return UNDESCRIBED;
  if (isExample(id)) {
    const {name, elements, load, file, after} = EXAMPLES[id];
    return {name, request: {elements, load}, file, after};
  }
  const line = document.lines[Number(id.slice(OWN.length))];
  return isOwn(id) && line ? {...line, file: undefined, after: undefined} : lineOf('line', document);
}
