/** What a new element of a line starts as, and another way to give its antenna. */

/** @import {Element} from '../shared/lines/document.js' */

/** Before the first answer says where the line is looked at; the middle of a band most stations have. */
const FIRST_HZ = 14.2e6;
const SPEED_OF_LIGHT_M_PER_S = 299_792_458;
/** Of the usual cable with a solid dielectric. */
const SECTION_VELOCITY = 0.66;
/** A dipole's, to SWR 2, as a share of its resonance. */
const BANDWIDTH_SHARE = 0.03;

const rounded = (value) => Number(value.toPrecision(3));

/** What a tuner starts as; one beside the transmitter as well. */
export const TUNER = {kind: 'tuner', network: 't'};

/**
 * What "add" offers, in groups; a section is a quarter wave long. What follows a name says it in other words.
 *
 * @param {number} [frequencyHz] - looked at
 * @returns {{group: string, offers: {id: string, words: string, more?: string, element: Element}[]}[]}
 */
export const offered = (frequencyHz = FIRST_HZ) => [
  {
    group: 'Line',
    offers: [
      {id: 'cable', words: 'Coaxial cable', element: {kind: 'cable', cable: 'rg_213', length_m: 10}},
      {
        id: 'wires',
        words: 'Open-wire line',
        more: 'ladder or window line, twin lead',
        element: {kind: 'wires', line: 'window_450_stranded', length_m: 10},
      },
      {
        id: 'section',
        words: 'Transformer section',
        more: 'quarter wave, series section',
        element: {
          kind: 'section',
          impedance_ohm: 75,
          length_m: rounded((SECTION_VELOCITY * SPEED_OF_LIGHT_M_PER_S) / frequencyHz / 4),
          velocity_factor: SECTION_VELOCITY,
        },
      },
    ],
  },
  {
    group: 'Connectors',
    offers: [
      {id: 'joint', words: 'Joint', more: 'plug in its jack', element: {kind: 'joint', family: 'n'}},
      {
        id: 'adapter',
        words: 'Adapter',
        more: 'a joint at either end',
        element: {kind: 'joint', family: 'uhf', adapter_to: 'n'},
      },
    ],
  },
  {
    group: 'Matching',
    offers: [
      {id: 'tuner', words: 'Tuner', element: TUNER},
      {
        id: 'balun',
        words: 'Balun, 4:1',
        more: '200 Ω to 50 Ω',
        element: {kind: 'transformer', ratio: 4, loss_db: 0.2, name: 'Balun'},
      },
      {
        id: 'unun',
        words: 'Unun, 9:1',
        more: '450 Ω to 50 Ω',
        element: {kind: 'transformer', ratio: 9, loss_db: 0.5, name: 'Unun'},
      },
      {
        id: 'choke',
        words: 'Choke, 1:1',
        more: 'current balun, common-mode choke',
        element: {kind: 'transformer', ratio: 1, loss_db: 0.1, choking_ohm: 1000, name: 'Choke'},
      },
    ],
  },
  {
    group: 'In the line',
    offers: [
      {
        id: 'arrester',
        words: 'Arrester',
        more: 'gas tube',
        element: {kind: 'part', what: 'arrester', loss_db: 0.1, vswr: 1.1, voltage_limit_v: 600},
      },
      {
        id: 'switch',
        words: 'Switch',
        more: 'or relay',
        element: {kind: 'part', what: 'switch', loss_db: 0.1, vswr: 1.1},
      },
      {
        id: 'meter',
        words: 'SWR meter',
        more: 'or bridge',
        element: {kind: 'part', what: 'meter', loss_db: 0.1, vswr: 1.05, directivity_db: 25},
      },
      {
        id: 'attenuator',
        words: 'Attenuator',
        element: {kind: 'part', what: 'attenuator', loss_db: 3, vswr: 1.1, power_limit_w: 50},
      },
      {id: 'filter', words: 'Filter', element: {kind: 'part', what: 'filter', loss_db: 0.3, vswr: 1.2}},
      {id: 'divider', words: 'Power divider', element: {kind: 'part', what: 'divider', loss_db: 3.2, vswr: 1.2}},
      {id: 'part', words: 'Another part', more: 'by its data sheet', element: {kind: 'part', loss_db: 0.2}},
    ],
  },
];

/**
 * What another way to give the antenna starts from, by its kind; table and file begin with their data.
 *
 * @param {number} [frequencyHz] - looked at
 * @returns {Record<string, Element>}
 */
export const newLoads = (frequencyHz = FIRST_HZ) => ({
  vswr: {kind: 'vswr', vswr: 2},
  resonant: {
    kind: 'resonant',
    resonance_hz: frequencyHz,
    vswr: 1.2,
    bandwidth_hz: rounded(BANDWIDTH_SHARE * frequencyHz),
  },
  impedance: {kind: 'impedance', resistance_ohm: 50, reactance_ohm: 0},
  dummy: {kind: 'dummy', vswr: 1.1, power_limit_w: 300},
});
