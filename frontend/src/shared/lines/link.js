/** A line in the fragment of the address, with what is open beside it. */
import {documentIn, documentLink} from '../state/document-link.js';
import {LONGEST_NAME, checkedRequest} from './checked.js';

/** @import {Line} from './document.js' */

/**
 * The fragment that brings a line and what is open back; without the line where it would be too long.
 *
 * @param {Line} line
 * @param {?string} open
 */
export function toLink({name, request}, open) {
  const written = (key, value) => (value === null ? [] : [`${key}=${encodeURIComponent(value)}`]);
  const [view, called, opened] = [written('view', 'line'), written('name', name), written('open', open)];
  return documentLink([...view, ...called, ...opened].join('&'), 'line', request, [...view, ...opened].join('&'));
}

/**
 * What a fragment holds; `problem` says in words what of it can't be used.
 *
 * @param {string} fragment
 * @param {import('../vocabulary/start-data.js').Groups} fields
 * @returns {{line: Line | undefined, open: ?string, problem: string}}
 */
export function fromLink(fragment, fields) {
  const parts = new URLSearchParams(fragment);
  const {document: request, problem} = documentIn(fragment, {
    key: 'line',
    names: ['view', 'name', 'open'],
    read: (value) => checkedRequest(value, fields),
    what: 'line',
    instead: 'Your own lines are shown instead.',
  });
  const line = request && {name: (parts.get('name') || 'Line from a link').slice(0, LONGEST_NAME), request};
  return {line, open: parts.get('open') || null, problem};
}
