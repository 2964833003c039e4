/**
 * The pack under the reader's hands is the document of its file. Entries are added to it, copied, changed and taken
 * away; what the form does not show stays as it was.
 *
 * A figure that the reader changes has the reader's own source. Each entry has one, unless the figure came from a
 * source of the pack before.
 */
import {at, put} from './paths.js';
import {blankOf} from './shapes.js';

/**
 * @import {Path} from './paths.js'
 * @import {Shapes} from './shapes.js'
 *
 * @typedef {Record<string, any>} PackDocument - as the core reads it
 */

const LONGEST_ID = 40;
const FIRST_KIND = 'datasheet';
const FIRST_TITLE = 'My own data';

/** @type {PackDocument} */
export const FIRST_DOCUMENT = {id: '', name: '', version: '1', sources: []};

/** An id of small letters, digits and underscores, as near to a name as can be. */
export const idOf = (name) =>
  name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '_')
    .replace(/^_+|_+$/g, '')
    .slice(0, LONGEST_ID) || 'own';

/**
 * An id made of a name that none has yet.
 *
 * @param {string} name
 * @param {Iterable<string>} taken
 */
export function freeId(name, taken) {
  const ids = new Set(taken);
  const id = idOf(name);
  if (!ids.has(id)) return id;
  for (let count = 2; ; count++) {
    const ending = `_${count}`;
    const numbered = `${id.slice(0, LONGEST_ID - ending.length)}${ending}`;
    if (!ids.has(numbered)) return numbered;
  }
}

const idsOf = (document, table) => (document[table] ?? []).map(({id}) => id);

/**
 * The document with one more entry.
 *
 * @param {PackDocument} document
 * @param {string} table
 * @param {{[field: string]: any}} entry
 * @param {boolean} [replaces] - whether it takes the place of a built-in one
 * @returns {PackDocument}
 */
export function added(document, table, entry, replaces = false) {
  const {overrides = {}} = document;
  const grown = {...document, [table]: [...(document[table] ?? []), entry]};
  if (!replaces) return grown;
  return {...grown, overrides: {...overrides, [table]: [...(overrides[table] ?? []), entry.id]}};
}

/**
 * The document without an entry, and without what only that entry had: its override, a source nothing names any more.
 *
 * @param {PackDocument} document
 * @param {string} table
 * @param {number} index
 * @returns {PackDocument}
 */
export function removed(document, table, index) {
  const {id} = document[table][index];
  const source = ownSourceId(table, id);
  const {overrides = {}, sources} = document;
  const rest = {...document, [table]: document[table].toSpliced(index, 1)};
  const kept = sources.filter((one) => one.id !== source || JSON.stringify(rest).includes(`"source":"${source}"`));
  const isOverride = overrides[table]?.includes(id);
  const named = isOverride ? {...overrides, [table]: overrides[table].filter((one) => one !== id)} : overrides;
  return {...rest, sources: kept, ...(isOverride ? {overrides: named} : {})};
}

/**
 * An entry with nothing in it yet, under an id that none has.
 *
 * @param {Shapes} shapes
 * @param {PackDocument} document
 * @param {string} table
 * @param {string} part
 */
export function blankEntry(shapes, document, table, part) {
  const id = freeId(`${document.name || 'own'} ${part}`.slice(0, LONGEST_ID - 3), idsOf(document, table));
  return {...blankOf(shapes, part), id, source: ownSourceId(table, id), kind: FIRST_KIND};
}

/** The id of the source that an entry's own figures have. */
export const ownSourceId = (table, id) => `own_${table}_${id}`.slice(0, LONGEST_ID);

const sourcesIn = (value) => {
  if (typeof value !== 'object' || value === null) return [];
  const inside = Object.values(value).flatMap(sourcesIn);
  return typeof value.source === 'string' ? [value.source, ...inside] : inside;
};

/**
 * The source of an entry's own figures: one made for it, else the first of the pack's that it names.
 *
 * @param {PackDocument} document
 * @param {Path} path - of the entry, or of something in it
 */
export function sourceOf(document, path) {
  const [table, index] = path;
  const entry = document[table][index];
  const own = ownSourceId(table, entry.id);
  const listed = new Set(document.sources.map(({id}) => id));
  return listed.has(own) ? own : (sourcesIn(entry).find((id) => listed.has(id)) ?? own);
}

/** The document with the source of an entry among its sources. */
export function withSource(document, path) {
  const id = sourceOf(document, path);
  if (document.sources.some((one) => one.id === id)) return document;
  return {...document, sources: [...document.sources, {id, title: FIRST_TITLE, seen: 'read'}]};
}

const isOwn = (document, source) => document.sources.some(({id}) => id === source);

/**
 * What kind the figures of an entry are that are the reader's own.
 *
 * @param {PackDocument} document
 * @param {Path} path
 */
export function kindOf(document, path) {
  const [table, index] = path;
  const kinds = (value) => {
    if (typeof value !== 'object' || value === null) return [];
    const inside = Object.values(value).flatMap(kinds);
    return value.kind && isOwn(document, value.source) ? [value.kind, ...inside] : inside;
  };
  return kinds(document[table][index])[0] ?? FIRST_KIND;
}

/**
 * The document with all own figures of an entry of another kind.
 *
 * @param {PackDocument} document
 * @param {Path} path
 * @param {string} kind
 */
export function ofKind(document, path, kind) {
  const [table, index] = path;
  const changed = (value) => {
    if (Array.isArray(value)) return value.map(changed);
    if (typeof value !== 'object' || value === null) return value;
    const inside = Object.fromEntries(Object.entries(value).map(([name, one]) => [name, changed(one)]));
    return value.kind && isOwn(document, value.source) ? {...inside, kind} : inside;
  };
  return put(document, [table, index], changed(document[table][index]));
}

/**
 * The document with another figure or word at a sourced value; null leaves it out.
 *
 * @param {PackDocument} document
 * @param {Path} path - of the sourced value
 * @param {any} value
 * @param {string} kind - of a value that was none of the reader's own
 * @returns {PackDocument}
 */
export function withFigure(document, path, value, kind) {
  const before = at(document, path);
  if (before?.value === value) return document;
  if (value === null) return put(document, path, undefined);
  if (before && isOwn(document, before.source)) return put(document, path, {...before, value, note: ''});
  const credited = withSource(document, path);
  return put(credited, path, {value, source: sourceOf(credited, path), kind, note: ''});
}

/**
 * The document with another value in a field that has no source of its own; the part it stands in may have one.
 *
 * @param {PackDocument} document
 * @param {Path} path
 * @param {any} value - undefined leaves the field out
 * @param {string} kind
 * @returns {PackDocument}
 */
export function withField(document, path, value, kind) {
  const changed = put(document, path, value);
  const holder = path.slice(0, -1);
  const part = at(changed, holder);
  if (typeof part?.source !== 'string' || isOwn(changed, part.source)) return changed;
  const credited = withSource(changed, path);
  return put(credited, holder, {...part, source: sourceOf(credited, path), kind});
}

/**
 * One more row of a table: what the row above says of its circumstances, without its first two figures and its note.
 *
 * @param {Shapes} shapes
 * @param {PackDocument} document
 * @param {Path} path - of the table
 * @param {string} part
 * @param {string} kind
 * @returns {PackDocument}
 */
export function withRow(shapes, document, path, part, kind) {
  const rows = at(document, path) ?? [];
  const [first, second, ...carried] = Object.entries(shapes[part])
    .filter(([, {type}]) => type === 'number')
    .map(([name]) => name);
  const above = rows.at(-1) ?? {};
  const alike = Object.fromEntries(carried.filter((name) => name in above).map((name) => [name, above[name]]));
  const credited = withSource(document, path);
  const row = {...blankOf(shapes, part), ...alike, [first]: null, [second]: null};
  return put(credited, path, [...rows, {...row, source: sourceOf(credited, path), kind}]);
}

/**
 * The document with a part that was left out, with nothing in it yet.
 *
 * @param {Shapes} shapes
 * @param {PackDocument} document
 * @param {Path} path
 * @param {string} part
 * @param {string} kind
 * @returns {PackDocument}
 */
export function withPart(shapes, document, path, part, kind) {
  const blank = blankOf(shapes, part);
  if (!('source' in blank)) return put(document, path, blank);
  const credited = withSource(document, path);
  return put(credited, path, {...blank, source: sourceOf(credited, path), kind});
}

/**
 * The text of the pack's file.
 *
 * @param {PackDocument} document
 */
export const textOf = (document) => `${JSON.stringify(document, null, 2)}\n`;

/** Figures are never changed by being read: the document of a text is what stands in it. */
export const documentOf = (text) => ({sources: [], ...JSON.parse(text)});
