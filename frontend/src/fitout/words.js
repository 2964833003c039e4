/** How the form speaks of what is fitted. */
import {CABLES} from '../shared/lines/table.js';
import {optional} from '../line/words.js';
import {BANDS, FAMILIES} from '../shared/state/station.js';

export const FITOUT_WORDS = {
  'fitout.of': {label: 'Sheets for', options: {line: 'the whole line', joint: 'a single joint'}},
  'fitout.station': {label: 'Station'},
  'fitout.date': {label: 'Day of fitting'},
  'fitout.family': {label: 'Family', entries: FAMILIES},
  'fitout.adapter_to': {label: 'Adapter to', options: optional('no adapter', FAMILIES)},
  'fitout.name': {label: 'Name on the label'},
  'fitout.cable': {label: 'On this cable', options: optional('no cable', CABLES)},
  'fitout.length_m': {label: 'Length of the cable', unit: 'm'},
  'fitout.power_w': {label: 'Power, peak envelope'},
  'fitout.band': {label: 'Band', options: optional('spot frequency', BANDS)},
  'fitout.frequency_hz': {label: 'Spot frequency', factor: 1e6, unit: 'MHz'},
};
