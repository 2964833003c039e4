/** How the form speaks of the demands that are not the matrix's own. */
import {BANDS, FAMILIES} from '../shared/state/station.js';
import {optional} from '../line/words.js';
import {CABLES, INSTALLATIONS} from './table.js';

export const CHOOSE_WORDS = {
  'choose.use': {label: 'The joint is for', options: {transmit: 'transmitting', receive: 'receiving only'}},
  'choose.power_w': {label: 'Power, peak envelope'},
  'choose.bands': {label: 'Bands it must carry', named: BANDS},
  'choose.installation': {label: 'Put up', entries: INSTALLATIONS},
  'choose.cable': {label: 'Cable in use', options: optional('not given', CABLES)},
  'choose.port': {label: 'Port that can’t be changed', options: optional('none', FAMILIES)},
  'choose.largest_diameter_m': {label: 'Room for the body', factor: 1e-3, unit: 'mm'},
  'choose.plan': {label: 'Check my plan', options: optional('no plan yet', FAMILIES)},
};
