/**
 * The lines of the page as one document.
 *
 * @typedef {{kind: string, [field: string]: any}} Element - of a line, or its load
 * @typedef {{elements: Element[], load?: any, [field: string]: any}} LineRequest - a station gives what it leaves out
 * @typedef {{name: string, request: LineRequest}} Line
 * @typedef {{lines: Line[], current: number}} LineDocument
 */
import {EXAMPLE} from './example.js';

export const MOST_LINES = 12;
/** Several tabs may have kept as many each. */
export const MOST_READ = 4 * MOST_LINES;
export const MOST_ELEMENTS = 60;

/** @type {LineDocument} */
export const FIRST_DOCUMENT = {lines: [EXAMPLE], current: 0};

/** @param {LineDocument} document */
export const currentOf = (document) => document.lines[document.current];
