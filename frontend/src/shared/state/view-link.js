/** The fragment of a view that has a name in it: "view=choose", then what differs from a first visit. */
import {fewOf} from '../text/few.js';
import {LONGEST_FRAGMENT, fromFragment, toFragment} from './fragment.js';

export const viewFragment = (view, state, first) =>
  [`view=${view}`, toFragment(state, first)].filter(Boolean).join('&');

/** The state in a view's fragment, and the parts that name no field or hold no value of its kind. */
export function viewState(fragment, fields, first) {
  const parts = fragment.split('&').filter((part) => !part.startsWith('view='));
  return fromFragment(parts.join('&'), fields, first);
}

/** The view a fragment belongs to: the first of `views` where it names none of them. */
export function viewOf(fragment, views) {
  const named = new URLSearchParams(fragment.slice(0, LONGEST_FRAGMENT)).get('view');
  return views.includes(named) ? named : views[0];
}

export const unknownWords = (unknown) =>
  `This link holds what the page does not know: ${fewOf(unknown)}. Everything else is restored.`;

/** {fragment, problem}: what of an address is read, which is nothing of one that is too long, and what is said then. */
export const readable = (fragment) =>
  fragment.length > LONGEST_FRAGMENT
    ? {fragment: '', problem: `This link is longer than ${LONGEST_FRAGMENT} characters and is not read.`}
    : {fragment, problem: ''};
