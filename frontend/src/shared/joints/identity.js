/**
 * Which joint is which, also after its line was edited.
 *
 * The rule: a joint is known by the name of its line and, in the line, by the name it was given; one without a name by
 * its families and its place among those alike, counted from the transmitter. An adapter has a joint at either end.
 * So a joint stays the same while cables, parts and joints of other kinds are put in, taken out or changed, and one
 * with a name wherever it goes in its line. Where the line or the joint is renamed, or one alike is put before a joint
 * without a name, the reader says whose the record is.
 */
import {sha256} from '@noble/hashes/sha2.js';
import {utf8ToBytes} from '@noble/hashes/utils.js';

/**
 * @import {Line} from '../lines/document.js'
 *
 * @typedef {object} Joint - of a line
 * @property {string} code - its identity, as on its label
 * @property {number} element - of the line, from 0
 * @property {'whole' | 'transmitter' | 'antenna'} end - of an adapter, or the whole of a joint without one
 * @property {string} name - that it was given; empty without one
 */

/** Digits and letters that are not mistaken for one another. */
const LETTERS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const LETTER_BITS = 5;
const CODE_LETTERS = 8;
const GROUP = 4;
/** @type {Joint['end'][]} */
const ENDS = ['transmitter', 'antenna'];

/** What a code may look like, as it is kept. */
export const CODE = new RegExp(`^[${LETTERS}]{${CODE_LETTERS}}$`);

/** A code as people read it: "K7Q4-2MXA". */
export const spokenCode = (code) => `${code.slice(0, GROUP)}-${code.slice(GROUP)}`;

/** A code as it is kept, of one that was typed: letters that look like digits count as these. */
export const typedCode = (text) =>
  text
    .toUpperCase()
    .replace(/[^0-9A-Z]/g, '')
    .replaceAll('O', '0')
    .replace(/[IL]/g, '1');

/** Of a joint's key a code that is as good as unique: forty bits of its hash. */
function codeOf(key) {
  const bytes = sha256(utf8ToBytes(JSON.stringify(key)));
  let bits = 0n;
  for (const byte of bytes.slice(0, (CODE_LETTERS * LETTER_BITS) / 8)) bits = (bits << 8n) | BigInt(byte);
  const letter = (_, at) => LETTERS[Number((bits >> BigInt((CODE_LETTERS - 1 - at) * LETTER_BITS)) & 31n)];
  return Array.from({length: CODE_LETTERS}, letter).join('');
}

/**
 * The joints of a line in order from the transmitter, as the core numbers its sheets.
 *
 * @param {Line} line
 * @returns {Joint[]}
 */
export function jointsOf({name: line, request: {elements}}) {
  const seen = new Map();
  return elements.flatMap(({kind, name = '', family, adapter_to: adapter = null}, element) => {
    if (kind !== 'joint') return [];
    const known = name ? {name} : {family, adapter};
    const text = JSON.stringify(known);
    const nth = (seen.get(text) ?? 0) + 1;
    seen.set(text, nth);
    const ends = adapter === null ? [/** @type {Joint['end']} */ ('whole')] : ENDS;
    return ends.map((end) => ({code: codeOf([line, known, nth, end]), element, end, name}));
  });
}
