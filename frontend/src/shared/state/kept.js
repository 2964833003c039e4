/**
 * What the browser keeps for the page under one key; every failure is a sentence, never an error.
 *
 * @typedef {{key: string, blocked: string, full: string, spoilt: string}} Place - the key, and the sentences for a
 * browser that keeps nothing, has no room, or holds what can't be read
 */

/**
 * What was kept: {document, spoilt, problem}; `spoilt` is the text that could not be read.
 *
 * @param {function(): Storage} storage - may throw where the browser keeps nothing
 * @param {Place} place
 * @param {function(any): object} read - the document of the parsed text; throws where it is none
 */
export function recalled(storage, place, read) {
  let text;
  try {
    text = storage().getItem(place.key);
  } catch {
    return {problem: place.blocked};
  }
  if (text === null) return {problem: ''};
  try {
    return {document: read(JSON.parse(text)), problem: ''};
  } catch {
    setAside(storage(), place.key, text);
    return {spoilt: text, problem: place.spoilt};
  }
}

function setAside(store, key, text) {
  try {
    store.removeItem(key);
    store.setItem(`${key}-set-aside`, text);
  } catch {
    // it is still offered as a file
  }
}

/** Keeps the document; the sentence that says why it could not, or nothing. */
export function remember(storage, place, document) {
  let store;
  try {
    store = storage();
  } catch {
    return place.blocked;
  }
  try {
    store.setItem(place.key, JSON.stringify(document));
    return '';
  } catch {
    return place.full;
  }
}
