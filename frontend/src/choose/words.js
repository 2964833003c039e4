/** How the form speaks of the demands that are not the matrix's own. */
import {optional} from '../shared/vocabulary/choices.js';

export const chooseWords = ({bands, families, installations}) => ({
  'choose.use': {label: 'The joint is for', options: {transmit: 'transmitting', receive: 'receiving only'}},
  'choose.power_w': {label: 'Power, peak envelope'},
  'choose.bands': {label: 'Bands it must carry', named: bands},
  'choose.installation': {label: 'Put up', entries: installations},
  'choose.port': {label: 'Port that can’t be changed', options: optional('none', families)},
  'choose.largest_diameter_m': {label: 'Room for the body', factor: 1e-3, unit: 'mm'},
  'choose.plan': {label: 'Check my plan', options: optional('no plan yet', families)},
});
