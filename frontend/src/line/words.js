/** How the form speaks of a line's own fields; those of the station are spoken of as in the matrix. */
import {optional} from '../shared/vocabulary/choices.js';

const WEATHER = {
  '': 'as the site',
  indoor: 'indoors',
  sheltered: 'outdoors, sheltered',
  exposed: 'outdoors, exposed',
  immersed: 'under water',
};

export const lineWords = ({bands, cables, families, noise_environments: environments, antenna_views: views}) => ({
  'cable.cable': {label: 'Cable', entries: cables},
  'cable.length_m': {label: 'Length', unit: 'm'},
  'cable.name': {label: 'Your name for it'},
  'joint.family': {label: 'Family', entries: families},
  'joint.adapter_to': {label: 'Adapter to', options: optional('no adapter', families)},
  'joint.exposure': {label: 'Weather here', options: WEATHER},
  'joint.name': {label: 'Your name for it'},
  'part.name': {label: 'What it is'},
  'part.loss_db': {label: 'Loss'},
  'part.vswr': {label: 'VSWR of the part'},
  'part.power_limit_w': {label: 'Stands, average'},
  'part.voltage_limit_v': {label: 'Stands, peak'},
  'measured.name': {label: 'What it is'},
  'measured.touchstone': {label: 'Touchstone file, two ports'},
  'load_vswr.vswr': {label: 'VSWR of the antenna'},
  'load_vswr.angle_deg': {label: 'Angle of its reflection'},
  'load_impedance.resistance_ohm': {label: 'Resistance'},
  'load_impedance.reactance_ohm': {label: 'Reactance'},
  'load_measured.touchstone': {label: 'Touchstone file, one port'},
  'station.power_w': {label: 'Transmitter power'},
  'station.band': {label: 'Band', options: optional('spot frequency', bands)},
  'station.frequency_hz': {label: 'Spot frequency', factor: 1e6, unit: 'MHz'},
  'receiver.noise_figure_db': {label: 'Receiver noise figure'},
  'receiver.environment': {label: 'Noise around the antenna', entries: environments},
  'receiver.antenna_view': {label: 'What the antenna looks at', entries: views},
  'receiver.elevation_deg': {label: 'Elevation of its beam'},
  'receiver.antenna_temperature_k': {label: 'Noise temperature of the antenna'},
  'preamplifier.before_element': {label: 'Preamplifier'},
  'preamplifier.gain_db': {label: 'Its gain'},
  'preamplifier.noise_figure_db': {label: 'Its noise figure'},
});
