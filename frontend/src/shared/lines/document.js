/** The lines of the page as one document: {lines: [{name, request}], current}. */
import {EXAMPLE} from './example.js';

export const MOST_LINES = 12;
export const MOST_ELEMENTS = 60;

export const FIRST_DOCUMENT = {lines: [EXAMPLE], current: 0};

export const currentOf = (document) => document.lines[document.current];
