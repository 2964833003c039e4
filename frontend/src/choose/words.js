/** How the form speaks of the demands that are not the matrix's own. */
import {optional, spokenFamilies} from '../shared/vocabulary/choices.js';

export const chooseWords = ({bands, families, installations}) => ({
  'choose.use': {label: 'The joint is for', options: {transmit: 'transmitting', receive: 'receiving only'}},
  'choose.power_w': {label: 'Power, peak envelope'},
  'choose.bands': {label: 'Bands it must carry', named: bands},
  'choose.margin_asked_db': {label: 'Margin asked for'},
  'choose.dc_current_a': {label: 'Direct current up the coax'},
  'choose.dc_voltage_v': {label: 'Direct voltage up the coax'},
  'choose.installation': {label: 'Where', entries: installations},
  'choose.port': {label: 'What it plugs into', options: optional('nothing yet', spokenFamilies(families))},
  'choose.largest_diameter_m': {label: 'Largest diameter that fits', factor: 1e-3, unit: 'mm'},
  'choose.plan': {label: 'Check my plan', options: optional('no plan yet', spokenFamilies(families))},
});
