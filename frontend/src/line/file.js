/** Lines as a file to take along, and back. */
import {checkedLines} from '../shared/lines/checked.js';
import * as file from '../shared/state/document-file.js';

const KIND = {format: 'jointwise lines', version: 1, key: 'lines'};

/** What a file of the lines holds. */
export const contentOf = (lines) => file.contentOf(KIND, lines);

/** The lines of a file; throws as any document file does. */
export const fromFile = (text, fields) => file.fromFile(KIND, text, (value) => checkedLines(value, fields));
