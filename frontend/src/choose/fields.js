/** The demands on a joint with their ranges, from the core by way of the start data. */
import {given} from '../shared/state/given.js';
import {bandsOf} from '../shared/vocabulary/vocabulary.js';

/** @typedef {Record<string, any>} Demands - a value for each field */

export const chooseFields = ({requests: {choose}}) => ({choose});

/**
 * @param {Demands} state
 * @param {import('../shared/vocabulary/vocabulary.js').Vocabulary} vocabulary
 */
export const chooseRequest = (state, vocabulary) => ({...given(state), bands: bandsOf(state, vocabulary)});
