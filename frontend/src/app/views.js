/**
 * The views of the page, in the order of the switch; the first is shown where the address names none.
 *
 * @typedef {object} ViewDescriptor
 * @property {string} id - its name in the address
 * @property {string} label - what the switch says
 * @property {function(object, object): object} [fields] - its groups of fields, from the start data and the lists
 * @property {function(object): object} [words] - how its forms speak of them, from the lists
 * @property {boolean} [upright] - whether paper is held upright for it, and shows no masthead
 * @property {function(object): TemplateResult} element - draws it, from the page's transport, stage and loaders
 */
import {choose} from '../choose/view.js';
import {fitout} from '../fitout/view.js';
import {kit} from '../kit/view.js';
import {line} from '../line/view.js';
import {matrix} from '../matrix/view.js';
import {packs} from '../packs/view.js';
import {sweep} from '../sweep/view.js';

/** @type {ViewDescriptor[]} */
export const VIEWS = [matrix, choose, line, kit, fitout, sweep];

/** Beside the views: its button stands with those of the whole page. */
export const PACKS = packs;
