/** What the matrix is asked, and what is open in it: every field that can stand in a link. */

import {ASKED} from './question/changes.js';

/** @typedef {Record<string, any>} State - a value for each field */

const openField = (choices) => ({type: 'choice', choices, nullable: true, default: null});

/** A first visit has the columns that fit a tablet, and the powers of a pack where one gives them. */
export const matrixFields = ({requests: {cell, matrix}, first_bands}, {powers_w}) => ({
  matrix: {
    ...cell,
    ...matrix,
    bands: {...matrix.bands, default: first_bands},
    powers_w: {...matrix.powers_w, default: powers_w},
    shows: {type: 'choice', choices: ['margin', 'largest'], default: 'margin', nullable: false},
    view: openField(['methods', 'website', ASKED]),
  },
});
