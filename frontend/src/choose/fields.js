/** The demands on a joint with their ranges, from the core by way of the start data. */
import {given} from '../shared/state/given.js';
import {bandsOf} from '../shared/vocabulary/vocabulary.js';
import {placed} from './place.js';

/** @typedef {Record<string, any>} Demands - a value for each field */

export const chooseFields = ({requests: {choose}}) => ({choose});

/**
 * What is asked of the core: the three fields that a place sets say all of it.
 *
 * @param {Demands} state
 * @param {import('../shared/vocabulary/vocabulary.js').Vocabulary} vocabulary
 */
export function chooseRequest(state, vocabulary) {
  const {installation: _, ...demands} = placed(state, vocabulary.lists);
  return {...given(demands), bands: bandsOf(state, vocabulary)};
}

/**
 * What is still to be said before anything can be asked; empty where nothing is.
 *
 * @param {Demands} state
 * @param {import('../shared/vocabulary/vocabulary.js').Vocabulary} vocabulary
 */
export const missingWords = (state, vocabulary) =>
  bandsOf(state, vocabulary).length + state.frequencies_hz.length === 0 ? 'Pick a band, or type a spot frequency.' : '';
