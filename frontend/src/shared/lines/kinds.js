/** What a line is made of, and what the core calls each of it. */

/** @import {Element} from './document.js' */

export const ELEMENTS = {
  cable: 'CableRun',
  wires: 'WireRun',
  joint: 'Joint',
  tuner: 'Tuner',
  transformer: 'Transformer',
  section: 'Section',
  part: 'Part',
  measured: 'MeasuredPart',
};

export const LOADS = {
  vswr: 'GivenVswr',
  resonant: 'ResonantAntenna',
  impedance: 'GivenImpedance',
  table: 'ImpedanceTable',
  measured: 'MeasuredLoad',
  dummy: 'DummyLoad',
};

/** What a part known by its data sheet may be, beside "other". */
export const PARTS = ['arrester', 'switch', 'meter', 'attenuator', 'filter', 'divider'];

/**
 * The group of an element's fields: a part is spoken of by what it is.
 *
 * @param {Element} element
 */
export const groupOf = ({kind, what}) => (kind === 'part' && PARTS.includes(what) ? what : kind);
