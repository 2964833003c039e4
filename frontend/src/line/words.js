/** How the form speaks of a line's own fields; those of the station are spoken of as in the matrix. */
import {BANDS, FAMILIES} from '../shared/state/station.js';
import {CABLES, ENVIRONMENTS} from '../shared/lines/table.js';

const WEATHER = {
  '': 'as the site',
  indoor: 'indoors',
  sheltered: 'outdoors, sheltered',
  exposed: 'outdoors, exposed',
  immersed: 'under water',
};
/** Choices of which none may be taken, in words of its own. */
export const optional = (words, entries) => ({'': words, ...Object.fromEntries(entries.map(({id, name}) => [id, name]))});

export const LINE_WORDS = {
  'cable.cable': {label: 'Cable', entries: CABLES},
  'cable.length_m': {label: 'Length', unit: 'm'},
  'cable.name': {label: 'Your name for it'},
  'joint.family': {label: 'Family', entries: FAMILIES},
  'joint.adapter_to': {label: 'Adapter to', options: optional('no adapter', FAMILIES)},
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
  'station.band': {label: 'Band', options: optional('spot frequency', BANDS)},
  'station.frequency_hz': {label: 'Spot frequency', factor: 1e6, unit: 'MHz'},
  'receiver.noise_figure_db': {label: 'Receiver noise figure'},
  'receiver.environment': {label: 'Noise around the antenna', entries: ENVIRONMENTS},
  'preamplifier.before_element': {label: 'Preamplifier'},
  'preamplifier.gain_db': {label: 'Its gain'},
  'preamplifier.noise_figure_db': {label: 'Its noise figure'},
};
