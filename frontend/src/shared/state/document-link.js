/** A document in the fragment of the page's address: base64url of its compact JSON, while it is short enough. */
import {fewOf} from '../text/few.js';

/** Longer fragments break in mails and messages. */
export const LONGEST_LINK = 1500;

export function encoded(text) {
  const bytes = new TextEncoder().encode(text);
  return btoa(String.fromCharCode(...bytes))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replace(/=+$/, '');
}

export function decoded(text) {
  const bytes = Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (letter) => letter.charCodeAt(0));
  return new TextDecoder('utf-8', {fatal: true}).decode(bytes);
}

/**
 * {fragment, whole}: `lead` with the document behind it; `short` alone where that would be too long.
 *
 * @param {string} lead
 * @param {string} key - the name the document has in the fragment
 * @param {object} document
 * @param {string} [short]
 */
export function documentLink(lead, key, document, short = lead) {
  const text = JSON.stringify(document);
  const fragment = text.length > LONGEST_LINK ? undefined : `${lead}&${key}=${encoded(text)}`;
  return fragment === undefined || fragment.length > LONGEST_LINK
    ? {fragment: short, whole: false}
    : {fragment, whole: true};
}

/**
 * What is looked for in a fragment.
 *
 * @template Document
 * @typedef {object} Expected
 * @property {string} key - the name of the document in the fragment
 * @property {string[]} names - those that may stand beside it
 * @property {(value: any) => any} [unfolded] - undoes what was done to the document to shorten it
 * @property {(value: any) => Document} read - checks the document; throws a RangeError whose message is for the reader
 * @property {string} what - what the document is called
 * @property {string} instead - what is shown in its place, in a sentence
 */

/**
 * The document of a fragment; `problem` says in words what of it can't be used.
 *
 * @template Document
 * @param {string} fragment
 * @param {Expected<Document>} expected
 * @returns {{document: Document | undefined, problem: string}}
 */
export function documentIn(fragment, {key, names, unfolded = (value) => value, read, what, instead}) {
  const parts = new URLSearchParams(fragment);
  const unknown = [...parts.keys()].filter((name) => name !== key && !names.includes(name));
  const problem = unknown.length > 0 ? `This link holds what the page does not know: ${fewOf(unknown)}.` : '';
  if (!parts.has(key)) return {document: undefined, problem};
  try {
    return {document: read(parsed(parts.get(key), unfolded)), problem};
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return {document: undefined, problem: `The ${what} in this link can’t be used: ${error.message} ${instead}`};
  }
}

function parsed(text, unfolded) {
  try {
    return unfolded(JSON.parse(decoded(text)));
  } catch {
    throw new RangeError('it is cut short or altered.');
  }
}
