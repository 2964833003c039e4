/** The key to the colours of an embedded matrix, in one line above it. */
import {STEPS, edgesOf} from '../shared/margins/scale.js';
import {el} from './dom.js';

/** @import {Words} from './words.js' */

/** @param {Words} words */
function range(words, id) {
  const {from, to} = edgesOf(id);
  if (from === undefined) return words.below(to);
  return to === undefined ? words.above(from) : words.between(from, to);
}

/** @param {Words} words */
export const key = (words) =>
  el(
    'div',
    {class: 'key'},
    el('span', {id: 'key'}, words.key),
    el(
      'ul',
      {'aria-labelledby': 'key'},
      STEPS.map(({id}) => el('li', {'data-step': id}, el('b', {}, words.steps[id]), ` ${range(words, id)}`)),
    ),
  );
