/**
 * Where the page keeps what the reader makes: the browser's storage, or, for a saved page that carries content of its
 * own, a place in it beside that of other pages, in which that content lies already.
 *
 * @import {Store} from './kept.js'
 */
import {sha256} from '@noble/hashes/sha2.js';
import {bytesToHex, utf8ToBytes} from '@noble/hashes/utils.js';

/** What every key of the page begins with. */
const OWN = 'jointwise-';
const MARK_LENGTH = 16;

/** @type {{mark: string, texts: Record<string, string>} | undefined} */
let carried;

/** What a key is called in the browser's storage. */
export const placeOf = (key) => (carried ? key.replace(OWN, `${OWN}${carried.mark}-`) : key);

/**
 * From now on this content is what was kept.
 *
 * @param {Record<string, any>} kept - documents by key, without what all keys begin with
 */
export function carry(kept) {
  const texts = Object.fromEntries(Object.entries(kept).map(([key, value]) => [OWN + key, JSON.stringify(value)]));
  const mark = bytesToHex(sha256(utf8ToBytes(JSON.stringify(texts)))).slice(0, MARK_LENGTH);
  carried = {mark, texts};
}

/** @returns {Store} - throws where the browser keeps nothing, but for a page that carries its own */
export function browserStore() {
  if (!carried) return storage();
  const {texts} = carried;
  return {
    getItem: (key) => storedText(placeOf(key)) ?? texts[key] ?? null,
    setItem: (key, text) => storage().setItem(placeOf(key), text),
    removeItem: (key) => storage().removeItem(placeOf(key)),
  };
}

/** Some browsers that are set to keep nothing refuse to name their storage, some have none. */
function storage() {
  if (!localStorage) throw new Error('the browser has no storage');
  return localStorage;
}

/** Nothing where the browser keeps nothing: what is carried can be read all the same. */
function storedText(place) {
  try {
    return storage().getItem(place);
  } catch {
    return null;
  }
}
