/**
 * What a saved page carries, and the same as a station file: all that the reader made, under a name and a date.
 *
 * @import {Pack} from '../shared/packs/read.js'
 * @import {Kept, Store} from '../shared/state/kept.js'
 */
import {KEPT_PACKS} from '../shared/packs/shelf.js';
import {record, refuse, text} from '../shared/state/check.js';

/** What the browser keeps for the reader, without the word every key begins with. */
export const KEPT_KEYS = ['station', 'lines', 'kit', 'packs', 'sweeps', 'joints', 'checklist'];
const OWN = 'jointwise-';
const FORMAT = 'jointwise station';
const VERSION = 1;

/**
 * @typedef {object} Carried
 * @property {string} format
 * @property {number} version
 * @property {string} name - what the reader calls it
 * @property {string} date - the day it was last changed, as 2026-11-29
 * @property {Record<string, any>} kept - the documents by key
 */

/** The text a saved page carries; nothing where the text is no such page. */
const CARRIED_IN_PAGE = /<script type="application\/json" id="carried">([\s\S]*?)<\/script>/;

/**
 * What a station file or a saved page holds. Throws a RangeError with one sentence for any other text.
 *
 * @param {string} content
 * @returns {Carried}
 */
export function carriedIn(content) {
  let value;
  try {
    value = JSON.parse(CARRIED_IN_PAGE.exec(content)?.[1] ?? content);
  } catch {
    throw new RangeError('The file is neither a station file nor a page saved here.');
  }
  if (value === null) throw new RangeError('This page was saved without a station in it.');
  if (value.format !== FORMAT) refuse('format', value.format, `"${FORMAT}"`);
  if (value.version !== VERSION) refuse('version', value.version, `${VERSION}; this page is older than the file`);
  const {name, date, kept} = value;
  record('kept', kept);
  return {format: FORMAT, version: VERSION, name: text('name', name, 60), date: text('date', date, 10), kept};
}

/**
 * The reader's packs in what is carried; none where they can't be read, which is said when they are taken in.
 *
 * @param {Carried} carried
 * @returns {Pack[]}
 */
export function packsIn({kept: {packs}}) {
  try {
    return KEPT_PACKS.checked(packs).own;
  } catch {
    return [];
  }
}

/**
 * The text of a station file. A website takes it as it is: beside what is kept stands the matrix it shows.
 *
 * @param {Carried} carried
 * @param {object | undefined} snapshot
 */
export function stationFile(carried, snapshot) {
  const alone = JSON.stringify(carried, null, 1);
  return snapshot ? `${alone.slice(0, -2)},\n "snapshot": ${JSON.stringify(snapshot)}\n}` : alone;
}

/**
 * What a page carries; nothing where it is as it was built.
 *
 * @param {Document} document
 * @returns {Carried | null}
 */
export function carriedBy(document) {
  const element = document.getElementById('carried');
  return element ? JSON.parse(element.textContent ?? 'null') : null;
}

/**
 * All that is kept, to be carried; the same as `before` where nothing changed, whatever the day.
 *
 * @param {Store} store
 * @param {string} name
 * @param {string} today
 * @param {Carried | null} before
 * @returns {Carried}
 */
export function gathered(store, name, today, before) {
  const all = KEPT_KEYS.map((key) => [key, JSON.parse(store.getItem(OWN + key) ?? 'null')]);
  const kept = Object.fromEntries(all.filter(([, document]) => document !== null));
  const now = {format: FORMAT, version: VERSION, name, date: today, kept};
  const same = before && JSON.stringify({...now, date: before.date}) === JSON.stringify(before);
  return same ? before : now;
}

/**
 * Where each document is kept, and what it is merged with as if both had begun with nothing; without that it can only
 * be taken whole.
 *
 * @typedef {Record<string, {kept: Kept<any>, nothing?: any}>} Places
 */

/**
 * Takes what is carried into what the browser keeps: lists are merged by name, and nothing is overwritten but what
 * `replaced` names. What it would have to overwrite is named in the answer.
 *
 * @param {Places} places
 * @param {() => Store} storage
 * @param {any} fields - by which documents are read
 * @param {Carried} carried
 * @param {string[]} [replaced]
 * @returns {{asks: string[], problem: string}}
 */
export function takeIn(places, storage, fields, {kept: documents}, replaced = []) {
  const known = Object.entries(documents).filter(([key]) => key in places);
  // all or nothing: the first that can't be read throws before any is kept
  const read = known.map(([key, value]) => ({key, theirs: checked(places[key].kept, key, value, fields)}));
  const asks = [];
  let problem = '';
  for (const {key, theirs} of read) {
    const {kept, nothing} = places[key];
    const {document: mine} = kept.recalled(storage, fields);
    const isSame = JSON.stringify(mine) === JSON.stringify(theirs);
    if (mine === undefined || replaced.includes(key)) problem ||= kept.remember(storage, theirs);
    else if (isSame) continue;
    else if (nothing === undefined) asks.push(key);
    else problem ||= kept.remember(storage, kept.merged({base: nothing, mine, theirs}));
  }
  return {asks, problem};
}

/** What can't be read is refused in a sentence, whatever its reader stumbled over. */
function checked(kept, key, value, fields) {
  try {
    return kept.checked(value, fields);
  } catch (error) {
    if (error instanceof RangeError) throw error;
    throw new RangeError(`The ${key} of the file can’t be read.`, {cause: error});
  }
}
