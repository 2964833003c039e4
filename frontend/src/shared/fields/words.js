/**
 * How the form speaks of each field: a short label, and where the page shows
 * another unit than the one sent, its factor. Ranges and units are the core's.
 */
import {BANDS, CABLE_DIELECTRICS, CONDITIONS, FAMILIES, FIELDS, MODES} from '../state/station.js';
import {chooseField} from '../../choose/table.js';
import {CHOOSE_WORDS} from '../../choose/words.js';
import {fitoutField} from '../../fitout/table.js';
import {FITOUT_WORDS} from '../../fitout/words.js';
import {kitField} from '../../kit/table.js';
import {KIT_WORDS} from '../../kit/words.js';
import {lineField} from '../lines/table.js';
import {LINE_WORDS} from '../../line/words.js';
import {sweepField} from '../../sweep/table.js';
import {SWEEP_WORDS} from '../../sweep/words.js';
import {digits} from '../text/format.js';

export const WORDS = {
  region: {label: 'ITU Region', options: {1: 'Region 1', 2: 'Region 2', 3: 'Region 3'}},
  families: {label: 'Families', named: FAMILIES},
  bands: {label: 'Bands', named: BANDS},
  frequencies_hz: {label: 'Spot frequencies', factor: 1e6, unit: 'MHz'},
  powers_w: {label: 'Power levels', unit: 'W'},
  power_w: {label: 'Power in the cells'},
  power_is: {label: 'Powers are', options: {forward: 'forward power', net: 'net power (forward less reflected)'}},
  mode: {label: 'Mode', entries: MODES},
  transmit_share: {label: 'Share on the air', step: 0.01},
  on_time_s: {label: 'One over', step: 0.01},
  off_time_s: {label: 'Pause after it', step: 0.01},
  vswr: {label: 'VSWR on the line', step: 0.1, slider: 'logarithmic'},
  system_impedance_ohm: {label: 'Line impedance', step: 1},
  return_loss_asked_db: {label: 'Return loss asked for', step: 0.5},
  cable_dielectric: {label: 'Cable insulation', entries: CABLE_DIELECTRICS},
  cable_diameter_m: {label: 'Cable diameter', step: 0.1, factor: 1e-3, unit: 'mm'},
  ambient_temperature_c: {label: 'Air in the shade', step: 1, slider: 'linear'},
  solar_irradiance_w_per_m2: {label: 'Sun on the joint', step: 10},
  altitude_m: {label: 'Altitude', step: 10},
  exposure: {
    label: 'Exposure',
    options: {indoor: 'indoors', sheltered: 'outdoors, sheltered', exposed: 'outdoors, exposed', immersed: 'under water'},
  },
  added_sealing: {label: 'Taped or booted against water'},
  vibration: {label: 'Vibration', options: {none: 'none', vehicle: 'vehicle', severe: 'severe'}},
  matings_per_year: {label: 'Swaps per year', step: 1},
  service_life_years: {label: 'Years in service', step: 1},
  condition: {label: 'Joint condition', entries: CONDITIONS},
  added_resistance_ohm: {label: 'Added contact resistance', step: 0.001},
};

/** Another view's "group.field" has words of its own, or those of the field in the matrix. */
export const wordsOf = (name) =>
  WORDS[name] ?? LINE_WORDS[name] ?? CHOOSE_WORDS[name] ?? FITOUT_WORDS[name] ?? KIT_WORDS[name] ?? SWEEP_WORDS[name] ?? WORDS[name.split('.')[1]];

export const fieldOf = (name) => FIELDS[name] ?? lineField(name) ?? chooseField(name) ?? fitoutField(name) ?? kitField(name) ?? sweepField(name);

/** Factor from the number shown to the number sent. */
export const factorOf = (name) => wordsOf(name).factor ?? 1;

export const unitOf = (name) => wordsOf(name).unit ?? fieldOf(name).unit ?? '';

/** The number as shown, free of the noise a factor leaves behind. */
export const shown = (name, value) => Number((value / factorOf(name)).toPrecision(12));

/** The range of a field, or of the entries of a list, in the unit shown. */
export function rangeOf(name) {
  const field = fieldOf(name);
  const {min, max} = field.type === 'list' ? field.items : field;
  const [low, high] = [min, max].map((edge) => digits(shown(name, edge)));
  return `${low} to ${high}${unitOf(name) ? ` ${unitOf(name)}` : ''}`;
}

/** What a select offers: pairs of value and words. */
export function optionsOf(name) {
  const {options, entries} = wordsOf(name);
  if (entries) return entries.map(({id, name: words}) => [id, words]);
  return Object.entries(options);
}

/** A field's value in words, for the summary of the scenario. */
export function spoken(name, value) {
  if (value === null) return 'not given';
  if (name.endsWith('added_sealing')) return value ? 'yes' : 'no';
  const {named} = wordsOf(name);
  if (named) return value.map((id) => named.find((one) => one.id === id)?.name ?? id).join(', ');
  if (Array.isArray(value)) return `${value.map((item) => digits(shown(name, item))).join(', ')} ${unitOf(name)}`;
  if (typeof value === 'number' && !wordsOf(name).options) return `${digits(shown(name, value))} ${unitOf(name)}`.trim();
  return optionsOf(name).find(([id]) => id === String(value))?.[1] ?? String(value);
}
