/**
 * The views of the page, in the order of the switch; the first is shown where the address names none.
 *
 * @import {TemplateResult} from 'lit'
 * @import {Speaker} from '../shared/vocabulary/vocabulary.js'
 * @import {JwApp} from './jw-app.js'
 *
 * @typedef {object} Shown
 * @property {string} label - what the switch says
 * @property {string} description - what it answers, in a sentence
 * @property {boolean} [upright] - whether paper is held upright for it, and shows no masthead
 * @property {(page: Page) => TemplateResult} element - draws it, from the page's transport, stage and loaders
 *
 * @typedef {Pick<JwApp, 'transport' | 'stage' | 'loadCharts' | 'loadEmbed' | 'shelf' | 'version'>} Page
 *
 * @typedef {Speaker & Shown} ViewDescriptor
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

/**
 * Beside the views: its button stands with those of the whole page.
 *
 * @type {ViewDescriptor}
 */
export const PACKS = packs;
