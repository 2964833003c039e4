/** A kit in the fragment of the address, each port and adapter as a row of its values. */
import {documentIn, documentLink} from '../shared/state/document-link.js';
import {unknownWords} from '../shared/state/view-link.js';
import {OF_THE_PAST, checkedKit} from './checked.js';

const PORT = ['name', 'family', 'gender', 'highest_frequency_hz', 'power_w', 'impedance_ohm'];
const OWNED = ['one_family', 'one_gender', 'other_family', 'other_gender', 'count'];

/** The values of a record in the order of the names, with nothing where one is left out at the end. */
const row = (names, one) => {
  const values = names.map((name) => one[name] ?? null);
  return values.slice(0, values.findLastIndex((value) => value !== null) + 1);
};

const unrow = (names, values) =>
  Object.fromEntries(names.map((name, at) => [name, values[at] ?? null]).filter(([, value]) => value !== null));

/** What is packed stays here: a link is for a kit. */
const folded = ({ports, owned, ticked: _, ...rest}) => ({
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
export const toLink = (request) => documentLink('view=kit', 'kit', folded(request));

/** What a fragment holds: {request, problem}; `problem` says in words what of it can't be used. */
export function fromLink(fragment, fields) {
  const {document, problem} = documentIn(fragment, {
    key: 'kit',
    names: ['view'],
    unfolded,
    read: (value) => ({request: checkedKit(value, fields), isOfThePast: OF_THE_PAST in value}),
    what: 'kit',
    instead: 'Your own is shown instead.',
  });
  const past = document?.isOfThePast ? unknownWords([OF_THE_PAST]) : '';
  return {request: document?.request, problem: [problem, past].filter(Boolean).join(' ')};
}
