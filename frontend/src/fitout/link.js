/** A line that travels in the address of its sheets, for readers whose browser does not keep it. */
import {fromLink, toLink} from '../shared/lines/link.js';

const KEYS = ['line', 'line_name'];

/** The fragment with the line in it; `whole` is false where the line is too long for a link. */
export function withLine(fragment, line) {
  const parts = new URLSearchParams(toLink(line, null).fragment);
  if (!parts.has('line')) return {fragment, whole: false};
  return {fragment: `${fragment}&line=${parts.get('line')}&line_name=${encodeURIComponent(line.name)}`, whole: true};
}

/** {line, rest, problem}: the line a fragment holds, the fragment without it, and why it can't be used. */
export function lineIn(fragment, table) {
  const parts = fragment.split('&');
  const rest = parts.filter((part) => !KEYS.includes(part.split('=')[0])).join('&');
  const held = new URLSearchParams(fragment);
  if (!held.has('line')) return {line: undefined, rest, problem: ''};
  const name = encodeURIComponent(held.get('line_name') ?? '');
  const {line, problem} = fromLink(`view=line&line=${held.get('line')}&name=${name}`, table);
  return {line, rest, problem};
}

/** {joint, rest}: the code of the joint that a fragment asks for, empty where it names none; and what is left of it. */
export function jointIn(fragment) {
  const rest = fragment.split('&').filter((part) => !part.startsWith('joint='));
  return {joint: new URLSearchParams(fragment).get('joint') ?? '', rest: rest.join('&')};
}
