/**
 * What a page carries as a few texts, each short enough for a QR code on paper, and back.
 *
 * It is packed by DEFLATE (RFC 1951) and written in Base45 (RFC 9285), whose letters a code holds in five and a half
 * bits each. Before the letters stand what they are, which text of how many, and a check of the whole:
 * "JW1:2:5:0F3C9A21:…". Sweeps stay out: a measured file alone is longer than a sheet of codes.
 */
import {sha256} from '@noble/hashes/sha2.js';
import {bytesToHex, utf8ToBytes} from '@noble/hashes/utils.js';
import {carriedIn} from './carried.js';

/** @import {Carried} from './carried.js' */

const MARK = 'JW1';
const HEADER = /^JW1:(\d{1,2}):(\d{1,2}):([0-9A-F]{8}):([0-9A-Z $%*+\-./:]+)$/;
const CHECK_LETTERS = 8;
/** On one sheet. */
export const MOST_CODES = 12;
/** Letters of Base45 in one code: with its head it fits a code of version 20 with fifteen per cent to spare. */
const LETTERS_PER_CODE = 945;
/** More than any station that fits on paper unpacks to. */
const MOST_UNPACKED = 1_000_000;
const LEFT_OUT = 'sweeps';

const ALPHABET = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:';
const BASE = 45;
const BYTE = 256;

/** Base45: two bytes are three letters, a last one two. @param {Uint8Array} bytes */
export function base45(bytes) {
  let text = '';
  for (let at = 0; at < bytes.length; at += 2) {
    const isPair = at + 1 < bytes.length;
    let rest = isPair ? bytes[at] * BYTE + bytes[at + 1] : bytes[at];
    for (let letters = isPair ? 3 : 2; letters > 0; letters--) {
      text += ALPHABET[rest % BASE];
      rest = Math.floor(rest / BASE);
    }
  }
  return text;
}

/** The bytes of Base45; throws a RangeError for text that is none. @param {string} text */
export function fromBase45(text) {
  const bytes = [];
  for (let at = 0; at < text.length; at += 3) {
    const values = [...text.slice(at, at + 3)].map((letter) => ALPHABET.indexOf(letter));
    const number = values.reduceRight((sum, value) => sum * BASE + value, 0);
    const isPair = values.length === 3;
    if (values.length === 1 || values.includes(-1) || number >= (isPair ? BYTE * BYTE : BYTE))
      throw new RangeError('A code holds what no page wrote.');
    bytes.push(...(isPair ? [Math.floor(number / BYTE), number % BYTE] : [number]));
  }
  return Uint8Array.from(bytes);
}

/** @param {Uint8Array<ArrayBuffer>} bytes @param {CompressionStream | DecompressionStream} stream */
async function through(bytes, stream) {
  const writer = stream.writable.getWriter();
  // what ends the reading ends the writing; the reader is told once
  writer
    .write(bytes)
    .then(() => writer.close())
    .catch(() => {});
  const reader = stream.readable.getReader();
  const parts = [];
  let length = 0;
  for (;;) {
    const {done, value} = await reader.read();
    if (done) break;
    length += value.length;
    if (length > MOST_UNPACKED) {
      await reader.cancel();
      throw new RangeError(`The codes unpack to more than ${MOST_UNPACKED / 1e6} MB, which no page wrote.`);
    }
    parts.push(value);
  }
  const whole = new Uint8Array(length);
  parts.reduce((at, part) => (whole.set(part, at), at + part.length), 0);
  return whole;
}

const checkOf = (bytes) => bytesToHex(sha256(bytes)).slice(0, CHECK_LETTERS).toUpperCase();
const kilobytes = (bytes) => `${(bytes / 1000).toFixed(1)} kB`;

/**
 * The texts of the codes. Throws a RangeError that names the sizes where they are too many for one sheet.
 *
 * @param {Carried} carried
 * @returns {Promise<string[]>}
 */
export async function codeTexts(carried) {
  const kept = Object.fromEntries(Object.entries(carried.kept).filter(([key]) => key !== LEFT_OUT));
  const bytes = utf8ToBytes(JSON.stringify({...carried, kept}));
  const packed = await through(bytes, new CompressionStream('deflate-raw'));
  const letters = base45(packed);
  const total = Math.ceil(letters.length / LETTERS_PER_CODE);
  if (total > MOST_CODES) {
    const room = Math.floor((MOST_CODES * LETTERS_PER_CODE * 2) / 3);
    const sizes = Object.entries(kept).map(([key, value]) => [key, JSON.stringify(value).length]);
    sizes.sort(([, one], [, other]) => Number(other) - Number(one));
    const largest = sizes.slice(0, 2).map(([key, size]) => `${key} ${kilobytes(Number(size))}`);
    throw new RangeError(
      `This station is too big for a sheet of codes: packed it takes ${kilobytes(packed.length)}, and ` +
        `${MOST_CODES} codes hold ${kilobytes(room)}. Most of it before packing: ${largest.join(', ')}. ` +
        'Save it as a station file instead.',
    );
  }
  const share = Math.ceil(letters.length / total);
  const check = checkOf(packed);
  const piece = (at) => `${MARK}:${at + 1}:${total}:${check}:${letters.slice(at * share, (at + 1) * share)}`;
  return Array.from({length: total}, (_, at) => piece(at));
}

/**
 * What was read of a sheet of codes.
 *
 * @typedef {object} Collected
 * @property {number} total - 0 where none was a station's
 * @property {number[]} missing - their numbers
 * @property {boolean} isMixed - whether some were of another station, and left out
 * @property {string[]} texts - those that count, by number
 */

/**
 * Codes that belong together, in any order and however often; of several stations the one with most codes.
 *
 * @param {string[]} texts
 * @returns {Collected}
 */
export function collected(texts) {
  const stations = new Map();
  for (const text of texts) {
    const [, number, total, check] = HEADER.exec(text) ?? [];
    if (!number || Number(number) < 1 || Number(number) > Number(total)) continue;
    const key = `${total}:${check}`;
    stations.set(key, (stations.get(key) ?? new Map()).set(Number(number), text));
  }
  const most = [...stations.entries()].sort(([, one], [, other]) => other.size - one.size)[0];
  if (!most) return {total: 0, missing: [], isMixed: false, texts: []};
  const [key, found] = most;
  const total = Number(key.split(':')[0]);
  const numbers = Array.from({length: total}, (_, at) => at + 1);
  return {
    total,
    missing: numbers.filter((number) => !found.has(number)),
    isMixed: stations.size > 1,
    texts: numbers.filter((number) => found.has(number)).map((number) => found.get(number)),
  };
}

/**
 * What the texts of a whole sheet hold. Throws a RangeError whose message is for the reader.
 *
 * @param {string[]} texts - by number, none missing
 * @returns {Promise<Carried>}
 */
export async function fromTexts(texts) {
  const parts = texts.map((text) => /** @type {RegExpExecArray} */ (HEADER.exec(text)));
  const packed = fromBase45(parts.map(([, , , , letters]) => letters).join(''));
  if (checkOf(packed) !== parts[0][3])
    throw new RangeError('The codes do not fit together: the check of the whole fails.');
  let bytes;
  try {
    bytes = await through(packed, new DecompressionStream('deflate-raw'));
  } catch (error) {
    if (error instanceof RangeError) throw error;
    throw new RangeError('The codes hold what no page wrote.', {cause: error});
  }
  return carriedIn(new TextDecoder().decode(bytes));
}
