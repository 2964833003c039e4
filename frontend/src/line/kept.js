/** The lines this browser keeps; every failure is a sentence, never an error. */
import {checkedLines} from './check.js';

const KEY = 'jointwise-lines';
const ASIDE = 'jointwise-lines-set-aside';

const BLOCKED = 'This browser keeps nothing for the page: your lines end when it is closed. Export them to keep them.';
const FULL = 'This browser has no room for all of your lines: the latest changes are not kept. Export them to keep them.';
const SPOILT =
  'The lines kept in this browser could not be read and were set aside. Save them as a file to look for what is left.';

/** What was kept: {document, spoilt, problem}; `spoilt` is the text that could not be read. */
export function recalled(storage, table) {
  let text;
  try {
    text = storage().getItem(KEY);
  } catch {
    return {problem: BLOCKED};
  }
  if (text === null) return {problem: ''};
  try {
    const {lines, current} = JSON.parse(text);
    const checked = checkedLines(lines, table);
    return {document: {lines: checked, current: Number.isInteger(current) && checked[current] ? current : 0}, problem: ''};
  } catch {
    setAside(storage(), text);
    return {spoilt: text, problem: SPOILT};
  }
}

function setAside(store, text) {
  try {
    store.removeItem(KEY);
    store.setItem(ASIDE, text);
  } catch {
    // it is still offered as a file
  }
}

/** Keeps the document; the sentence that says why it could not, or nothing. */
export function remember(storage, document) {
  let store;
  try {
    store = storage();
  } catch {
    return BLOCKED;
  }
  try {
    store.setItem(KEY, JSON.stringify(document));
    return '';
  } catch {
    return FULL;
  }
}
