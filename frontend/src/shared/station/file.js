/** A station as a file to take along, and back. */
import * as file from '../state/document-file.js';
import {checkedStation} from './checked.js';
import {VERSION} from './station.js';

const KIND = {format: 'jointwise station', version: VERSION, key: 'station'};

/** What a file of the station holds. */
export const contentOf = (station) => file.contentOf(KIND, station);

/** The station of a file; throws as any document file does. */
export const fromFile = (text, table) => file.fromFile(KIND, text, (value) => checkedStation(value, table));
