/** The line and what is open beside it, in the page's address and its history. */
import {fromLink, toLink} from '../shared/lines/link.js';

/** Marks the page's own entries in the history: their line is the one at hand. */
const OWN = {line: true};

/** Opening something is a step of the history; an edit is not, as it has undo. */
export function writeAddress(line, open, isStep) {
  const fragment = `#${toLink(line, open).fragment}`;
  if (fragment !== location.hash) history[isStep ? 'pushState' : 'replaceState'](OWN, '', fragment);
}

/** All of a link, but of the page's own past only what was open. */
export function readAddress(fragment, fields) {
  const found = fromLink(fragment, fields);
  return history.state?.line ? {...found, line: undefined} : found;
}
