/** The demands on a joint with their ranges, from the core by way of the start data. */
import {given} from '../shared/state/given.js';
import {bandsOf} from '../shared/vocabulary/vocabulary.js';

export const chooseFields = ({requests: {choose}}) => ({choose});

export const chooseRequest = (state, vocabulary) => ({...given(state), bands: bandsOf(state, vocabulary)});
