/** A kit in the fragment of the address: base64url of its compact JSON, while it is short enough. */
import {LONGEST_LINK, decoded, encoded} from '../shared/lines/link.js';
import {checkedKit} from './check.js';

const PORT = ['name', 'family', 'gender', 'highest_frequency_hz', 'power_w', 'impedance_ohm'];
const OWNED = ['one_family', 'one_gender', 'other_family', 'other_gender', 'count'];

/** The values of a record in the order of the names, with nothing where one is left out at the end. */
const row = (names, one) => {
  const values = names.map((name) => one[name] ?? null);
  return values.slice(0, values.findLastIndex((value) => value !== null) + 1);
};

const unrow = (names, values) =>
  Object.fromEntries(names.map((name, at) => [name, values[at] ?? null]).filter(([, value]) => value !== null));

const folded = ({ports, owned, ...rest}) => ({
  ...rest,
  ports: ports.map((port) => row(PORT, port)),
  ...(owned?.length > 0 && {owned: owned.map((adapter) => row(OWNED, adapter))}),
});

const unfolded = ({ports, owned, ...rest}) => ({
  ...rest,
  ports: ports.map((values) => unrow(PORT, values)),
  ...(owned && {owned: owned.map((values) => unrow(OWNED, values))}),
});

/** The fragment that brings a kit back; without the kit where it would be too long. */
export function toLink(request) {
  const text = JSON.stringify(folded(request));
  const whole = `view=kit&kit=${encoded(text)}`;
  return whole.length > LONGEST_LINK ? {fragment: 'view=kit', whole: false} : {fragment: whole, whole: true};
}

/** What a fragment holds: {request, problem}; `problem` says in words what of it can't be used. */
export function fromLink(fragment, table) {
  const parts = new URLSearchParams(fragment);
  const unknown = [...parts.keys()].filter((name) => !['view', 'kit'].includes(name));
  const problem = unknown.length > 0 ? `This link holds what the page does not know: ${unknown.join(', ')}.` : '';
  if (!parts.has('kit')) return {request: undefined, problem};
  try {
    return {request: checkedKit(read(parts.get('kit')), table), problem};
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return {request: undefined, problem: `The kit in this link can’t be used: ${error.message} Your own is shown instead.`};
  }
}

function read(text) {
  try {
    return unfolded(JSON.parse(decoded(text)));
  } catch {
    throw new RangeError('it is cut short or altered.');
  }
}
