/** How the form speaks of what is fitted. */
import {optional, spokenFamilies} from '../shared/vocabulary/choices.js';

export const fitoutWords = ({bands, cables, families}) => ({
  'fitout.of': {label: 'Sheets for', options: {line: 'the whole line', joint: 'a single joint'}},
  'fitout.station': {label: 'Station'},
  'fitout.date': {label: 'Day of fitting'},
  'fitout.family': {label: 'Connector', entries: spokenFamilies(families)},
  'fitout.adapter_to': {label: 'Adapter to', options: optional('no adapter', spokenFamilies(families))},
  'fitout.name': {label: 'Name on the label'},
  'fitout.cable': {label: 'On this cable', options: optional('no cable', cables)},
  'fitout.length_m': {label: 'Length of the cable', unit: 'm'},
  'fitout.power_w': {label: 'Power, peak envelope'},
  'fitout.band': {label: 'Band', options: optional('spot frequency', bands)},
  'fitout.frequency_hz': {label: 'Spot frequency', factor: 1e6, unit: 'MHz'},
});
