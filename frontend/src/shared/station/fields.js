/** The fields of a station with their ranges, from the core by way of the start data, and how forms speak of them. */
import {named, optional} from '../vocabulary/choices.js';

/** @import {Speaker} from '../vocabulary/vocabulary.js' */

/** What a cell is asked beside the station's settings. */
const NO_SETTING = ['family'];

/** Where a line is looked at while nobody says: in the middle of the bands most stations have. */
const FIRST_BAND = '20m';

const LONGEST_NAME = 60;
const LONGEST_ADDRESS = 200;

const text = (longest) => ({type: 'text', longest, default: '', nullable: false});

/** As in a record where it may be left out. */
const open = (field) => ({...field, nullable: true, default: null});

const GENDERS = {plug: 'plug (has the nut)', jack: 'jack'};

/**
 * Speaks of a station: of its settings, a rig, an antenna, and of the rest as "shack". A port is one of a kit.
 *
 * @type {Speaker}
 */
export const ofStation = {
  fields: ({requests: {cell, matrix}, parts: {Port, Transmitter}}, {families, transmitters}) => ({
    settings: {
      ...Object.fromEntries(Object.entries(cell).filter(([name]) => !NO_SETTING.includes(name))),
      bands: matrix.bands,
      band: {...cell.band, default: FIRST_BAND},
    },
    rig: {
      name: text(LONGEST_NAME),
      power_w: cell.power_w,
      ...named(
        {behaviour: open(Transmitter.behaviour), family: open(Port.family), gender: open(Port.gender)},
        {behaviour: transmitters, family: families},
      ),
    },
    antenna: {name: text(LONGEST_NAME)},
    shack: {
      name: text(LONGEST_NAME),
      address: text(LONGEST_ADDRESS),
      units: {type: 'choice', choices: ['metric', 'us'], default: 'metric', nullable: false},
    },
  }),
  words: ({bands, families, transmitters}) => ({
    'settings.bands': {label: 'Bands in use', named: bands},
    'settings.band': {label: 'Band looked at', options: optional('spot frequency', bands)},
    'settings.frequency_hz': {label: 'Spot frequency', factor: 1e6, unit: 'MHz'},
    'settings.power_w': {label: 'Power looked at'},
    'rig.name': {label: 'What it is'},
    'rig.power_w': {label: 'Greatest power, peak envelope'},
    'rig.behaviour': {label: 'At a bad SWR', options: optional('not given', transmitters)},
    'rig.family': {label: 'Its output socket', options: optional('not given', families)},
    'rig.gender': {label: 'Plug or jack', options: {'': 'not given', ...GENDERS}},
    'antenna.name': {label: 'What it is'},
    'shack.name': {label: 'Name of the station'},
    'shack.address': {label: 'Address of the page on the web'},
    'shack.cables': {label: 'Cables in use'},
    'shack.units': {label: 'Units', options: {metric: 'metric', us: 'US'}},
  }),
};
