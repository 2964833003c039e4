/**
 * How the form speaks of each field: a short label, and where the page shows
 * another unit than the one sent, its factor. Ranges and units are the core's.
 */
import {optional} from '../shared/vocabulary/choices.js';

export const matrixWords = ({bands, cables, conditions, families, modes}) => ({
  region: {label: 'ITU Region', options: {1: 'Region 1', 2: 'Region 2', 3: 'Region 3'}},
  families: {label: 'Connectors', named: families},
  bands: {label: 'Bands', named: bands},
  frequencies_hz: {label: 'Spot frequencies', factor: 1e6, unit: 'MHz'},
  powers_w: {label: 'Power levels', unit: 'W'},
  power_w: {label: 'Power shown'},
  power_is: {label: 'Powers are', options: {forward: 'forward power', net: 'net power (forward less reflected)'}},
  mode: {label: 'Mode', entries: modes},
  transmit_share: {label: 'Share on the air', step: 0.01},
  on_time_s: {label: 'One over', step: 0.01},
  off_time_s: {label: 'Pause after it', step: 0.01},
  vswr: {label: 'SWR on the line', step: 0.1, slider: 'logarithmic'},
  system_impedance_ohm: {label: 'Line impedance', step: 1},
  return_loss_asked_db: {label: 'Return loss asked for', step: 0.5},
  cable: {label: 'Cable', options: optional('the usual one of each connector', cables)},
  cable_diameter_m: {label: 'Other cable, diameter', step: 0.1, factor: 1e-3, unit: 'mm'},
  ambient_temperature_c: {label: 'Air temperature', step: 1, slider: 'linear'},
  solar_irradiance_w_per_m2: {label: 'Sun on the joint', step: 10},
  altitude_m: {label: 'Altitude', step: 10},
  exposure: {
    label: 'Exposure',
    options: {
      indoor: 'indoors',
      sheltered: 'outdoors, sheltered',
      exposed: 'outdoors, exposed',
      immersed: 'under water',
    },
  },
  added_sealing: {label: 'Sealed with tape or a boot'},
  vibration: {label: 'Vibration', options: {none: 'none', vehicle: 'vehicle', severe: 'severe'}},
  matings_per_year: {label: 'Swaps per year', step: 1},
  service_life_years: {label: 'Years in service', step: 1},
  condition: {label: 'Joint condition', entries: conditions},
  added_resistance_ohm: {label: 'Added contact resistance', step: 0.001},
});
