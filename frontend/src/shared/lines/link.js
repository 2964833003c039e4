/** A line in the fragment of the address: base64url of its compact JSON, while it is short enough. */
import {checkedRequest} from './check.js';

/** Longer fragments break in mails and messages. */
export const LONGEST_LINK = 1500;

export function encoded(text) {
  const bytes = new TextEncoder().encode(text);
  return btoa(String.fromCharCode(...bytes)).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

export function decoded(text) {
  const bytes = Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (letter) => letter.charCodeAt(0));
  return new TextDecoder('utf-8', {fatal: true}).decode(bytes);
}

/** The fragment that brings a line and what is open back; without the line where it would be too long. */
export function toLink({name, request}, open) {
  const entries = [['view', 'line'], ['name', name], ['open', open]].filter(([, value]) => value !== null);
  const written = entries.map(([key, value]) => `${key}=${encodeURIComponent(value)}`);
  const text = JSON.stringify(request);
  const whole = [...written, text.length > LONGEST_LINK ? '' : `line=${encoded(text)}`].join('&');
  return whole.length > LONGEST_LINK || text.length > LONGEST_LINK
    ? {fragment: written.filter((part) => !part.startsWith('name=')).join('&'), whole: false}
    : {fragment: whole, whole: true};
}

/** What a fragment holds: {line, open, problem}; `problem` says in words what of it can't be used. */
export function fromLink(fragment, table) {
  const parts = new URLSearchParams(fragment);
  const found = {line: undefined, open: parts.get('open') || null, problem: ''};
  const unknown = [...parts.keys()].filter((name) => !['view', 'name', 'open', 'line'].includes(name));
  if (unknown.length > 0) found.problem = `This link holds what the page does not know: ${unknown.join(', ')}.`;
  if (!parts.has('line')) return found;
  try {
    const request = checkedRequest(read(parts.get('line')), table);
    found.line = {name: (parts.get('name') || 'Line from a link').slice(0, 60), request};
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    found.problem = `The line in this link can’t be used: ${error.message} Your own lines are shown instead.`;
  }
  return found;
}

function read(text) {
  try {
    return JSON.parse(decoded(text));
  } catch {
    throw new RangeError('it is cut short or altered.');
  }
}
