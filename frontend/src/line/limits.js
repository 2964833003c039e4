/** What limits a part of a line: a joint or a cable as in the matrix, any other part by what it is rated for. */
import {LIMIT_NAMES} from '../shared/margins/limits.js';

const NAMES = {...LIMIT_NAMES, rating: 'Rated power'};

/** @param {import('./result.js').LimitId} id */
export const limitName = (id) => NAMES[id];

/**
 * After "limited by".
 *
 * @param {import('./result.js').LimitId} id
 */
export const limitedBy = (id) => NAMES[id].toLowerCase();
