/** How the form speaks of a line's own fields; those of the station are spoken of as in the matrix. */
import {PARTS} from '../shared/lines/kinds.js';
import {optional, spokenFamilies} from '../shared/vocabulary/choices.js';

const WEATHER = {
  '': 'as the site',
  indoor: 'indoors',
  sheltered: 'outdoors, sheltered',
  exposed: 'outdoors, exposed',
  immersed: 'under water',
};

const NAME = {label: 'Your name for it'};
const LENGTH = {label: 'Length', unit: 'm'};
const STANDS = {
  power_limit_w: {label: 'Rated average power', empty: 'not checked'},
  voltage_limit_v: {label: 'Rated peak voltage', empty: 'not checked'},
};
const PICOFARAD = {factor: 1e-12, unit: 'pF'};
const MICROHENRY = {factor: 1e-6, unit: 'µH'};

const PART = {
  name: NAME,
  what: {
    label: 'What it is',
    options: {
      arrester: 'arrester',
      switch: 'switch or relay',
      meter: 'SWR meter',
      attenuator: 'attenuator',
      filter: 'filter',
      divider: 'power divider',
      other: 'another part',
    },
  },
  loss_db: {label: 'Loss'},
  vswr: {label: 'SWR of the part'},
  ...STANDS,
};

const grouped = (group, words) =>
  Object.fromEntries(Object.entries(words).map(([field, own]) => [`${group}.${field}`, own]));

export const lineWords = ({
  bands,
  cables,
  families,
  transmitters,
  noise_environments: environments,
  antenna_views: views,
  wire_lines: wireLines,
}) => ({
  ...grouped('cable', {cable: {label: 'Cable', entries: cables}, length_m: LENGTH, name: NAME}),
  ...grouped('wires', {line: {label: 'Open-wire line', entries: wireLines}, length_m: LENGTH, name: NAME}),
  ...grouped('joint', {
    family: {label: 'Connector', entries: spokenFamilies(families)},
    adapter_to: {label: 'Adapter to', options: optional('no adapter', spokenFamilies(families))},
    exposure: {label: 'Weather here', options: WEATHER},
    name: NAME,
  }),
  ...grouped('tuner', {
    network: {label: 'Network', options: {l: 'L (two parts)', t: 'T (high pass)', pi: 'pi (low pass)'}},
    coil_q: {label: 'Q of the coil'},
    capacitor_q: {label: 'Q of the capacitors'},
    largest_capacitor_f: {label: 'Largest capacitor', ...PICOFARAD, empty: 'as usual'},
    largest_coil_h: {label: 'Largest coil', ...MICROHENRY},
    voltage_limit_v: {label: 'Capacitors, rated peak voltage', empty: 'not checked'},
    current_limit_a: {label: 'Coil, rated current (rms)', empty: 'not checked'},
    name: NAME,
  }),
  ...grouped('transformer', {
    ratio: {label: 'Ratio, antenna : radio', unit: ': 1'},
    loss_db: {label: 'Loss'},
    choking_ohm: {label: 'Choking impedance'},
    ...STANDS,
    name: NAME,
  }),
  ...grouped('section', {
    impedance_ohm: {label: 'Impedance'},
    length_m: LENGTH,
    velocity_factor: {label: 'Velocity factor'},
    loss_db: {label: 'Loss'},
    voltage_limit_v: STANDS.voltage_limit_v,
    name: NAME,
  }),
  ...Object.assign({}, ...['part', ...PARTS].map((group) => grouped(group, PART))),
  'arrester.voltage_limit_v': {label: 'Fires at (peak voltage)', empty: 'not checked'},
  'meter.directivity_db': {label: 'Directivity', empty: 'not known'},
  ...grouped('measured', {touchstone: {label: 'Touchstone file, two ports'}, ...STANDS, name: {label: 'What it is'}}),
  ...grouped('load_vswr', {
    vswr: {label: 'SWR of the antenna'},
    angle_deg: {label: 'Angle of its reflection', empty: 'unknown'},
  }),
  ...grouped('load_resonant', {
    resonance_hz: {label: 'Resonance', factor: 1e6, unit: 'MHz'},
    vswr: {label: 'SWR at resonance'},
    bandwidth_hz: {label: 'Bandwidth', factor: 1e3, unit: 'kHz'},
    bandwidth_vswr: {label: 'SWR at its edges'},
  }),
  ...grouped('load_impedance', {resistance_ohm: {label: 'Resistance'}, reactance_ohm: {label: 'Reactance'}}),
  ...grouped('load_measured', {touchstone: {label: 'Touchstone file, one port'}}),
  ...grouped('load_dummy', {
    vswr: {label: 'SWR of the dummy load'},
    power_limit_w: {label: 'Rated average power', empty: 'not checked'},
  }),
  ...grouped('transmitter', {
    behaviour: {label: 'At a bad SWR', entries: transmitters},
    holds_to_vswr: {label: 'Full power up to SWR', empty: 'as usual'},
  }),
  ...grouped('station', {
    power_w: {label: 'Transmitter power'},
    band: {label: 'Band', options: optional('spot frequency', bands)},
    frequency_hz: {label: 'Spot frequency', factor: 1e6, unit: 'MHz'},
  }),
  ...grouped('receiver', {
    noise_figure_db: {label: 'Receiver noise figure'},
    environment: {label: 'Noise around the antenna', entries: environments},
    antenna_view: {label: 'Where the antenna points', entries: views},
    elevation_deg: {label: 'Elevation of its beam'},
    antenna_temperature_k: {label: 'Noise temperature of the antenna'},
  }),
  ...grouped('preamplifier', {
    before_element: {label: 'Preamplifier'},
    gain_db: {label: 'Its gain'},
    noise_figure_db: {label: 'Its noise figure'},
  }),
});
