/**
 * Every edit of the lines of the page, as plain data.
 *
 * A request is what the core is asked, without what equals the core's own
 * defaults only where the reader never touched it. Every edit gives a new value
 * and leaves the old one whole, so that the history can keep both.
 */
import {MOST_ELEMENTS, MOST_LINES, currentOf} from '../shared/lines/document.js';
import {EXAMPLE} from '../shared/lines/example.js';
import {filled} from '../shared/state/given.js';

const replaced = (list, at, value) => list.map((one, index) => (index === at ? value : one));

const withRequest = (document, request) => {
  const line = {...currentOf(document), request};
  return {...document, lines: replaced(document.lines, document.current, line)};
};

/** Puts elements in another order; `from` lists the old places, so that a preamplifier stays at its element. */
function reordered(request, elements, from) {
  const {preamplifier} = request.receiver ?? {};
  if (!preamplifier) return {...request, elements};
  const place = from.indexOf(preamplifier.before_element);
  const {preamplifier: _, ...receiver} = request.receiver;
  if (place !== -1) receiver.preamplifier = {...preamplifier, before_element: place};
  return {...request, elements, receiver};
}

const rearranged = (request, from) =>
  reordered(
    request,
    from.map((place) => request.elements[place]),
    from,
  );

const places = (request) => request.elements.map((_, place) => place);

const ELEMENT_EDITS = {
  set: (request, {at, changes}) => ({
    ...request,
    elements: replaced(request.elements, at, filled({...request.elements[at], ...changes})),
  }),
  add: (request, {at, element}) =>
    request.elements.length >= MOST_ELEMENTS
      ? request
      : reordered(request, request.elements.toSpliced(at, 0, element), places(request).toSpliced(at, 0, undefined)),
  duplicate: (request, {at}) => ELEMENT_EDITS.add(request, {at: at + 1, element: request.elements[at]}),
  remove: (request, {at}) =>
    request.elements.length === 1 ? request : rearranged(request, places(request).toSpliced(at, 1)),
  move: (request, {at, to}) =>
    to < 0 || to >= request.elements.length || to === at
      ? request
      : rearranged(request, places(request).toSpliced(at, 1).toSpliced(to, 0, at)),
  change: (request, {edits}) => {
    const rows = request.elements.map((element, from) => ({element, from}));
    // from the far end back, so that the places still to come stay what they were
    for (const {at, element, insert} of edits.toSorted((a, b) => b.at - a.at))
      rows.splice(at, insert ? 0 : 1, ...(element === null ? [] : [{element, from: insert ? undefined : at}]));
    return reordered(
      request,
      rows.map((row) => row.element),
      rows.map((row) => row.from),
    );
  },
  load: (request, {load}) => ({...request, load: filled(load)}),
  leave: (request, {names}) => Object.fromEntries(Object.entries(request).filter(([name]) => !names.includes(name))),
  transmitter: (request, {changes}) => ({...request, transmitter: filled({...request.transmitter, ...changes})}),
  receiver: (request, {changes}) => ({...request, receiver: filled({...request.receiver, ...changes})}),
};

const isExample = ({request}) => JSON.stringify(request) === JSON.stringify(EXAMPLE.request);

const LINE_EDITS = {
  choose: (document, {line}) => ({...document, current: line}),
  rename: (document, {name}) => ({
    ...document,
    lines: replaced(document.lines, document.current, {...currentOf(document), name}),
  }),
  insert: (document, {lines}) => {
    const kept = [...document.lines, ...lines.slice(0, Math.max(MOST_LINES - document.lines.length, 0))];
    return {lines: kept, current: Math.min(document.lines.length, kept.length - 1)};
  },
  empty: (document) => {
    const fresh = {name: 'New line', request: {elements: []}};
    return document.lines.length === 1 && isExample(currentOf(document))
      ? {lines: [fresh], current: 0}
      : LINE_EDITS.insert(document, {lines: [fresh]});
  },
  keep: (document) => LINE_EDITS.insert(document, {lines: [copyOf(document)]}),
  drop: (document, {line}) => {
    if (document.lines.length === 1) return document;
    const current =
      document.current > line || document.current === document.lines.length - 1
        ? document.current - 1
        : document.current;
    return {lines: document.lines.toSpliced(line, 1), current: Math.max(current, 0)};
  },
};

/** A copy of the current line under a name of its own. */
function copyOf(document) {
  const {name, request} = currentOf(document);
  const stem = name.replace(/ \d+$/, '');
  const taken = new Set(document.lines.map((line) => line.name));
  let number = 2;
  while (taken.has(`${stem} ${number}`)) number++;
  return {name: `${stem} ${number}`, request};
}

/** The document after one edit: {kind, ...}; the same document where the edit changes nothing. */
export function edited(document, edit) {
  if (edit.kind in LINE_EDITS) return LINE_EDITS[edit.kind](document, edit);
  const {request} = currentOf(document);
  const next = ELEMENT_EDITS[edit.kind](request, edit);
  return next === request ? document : withRequest(document, next);
}
