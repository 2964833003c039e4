/** A kit's answer in words: verdict, chains, packing list, and what is possible with the owned adapters alone. */
import {frequency, power} from '../../shared/text/format.js';
import {lossWords} from '../../shared/text/loss.js';
import {endWords, pairNumbers} from '../names.js';

const plural = (count, one, many) => `${count} ${count === 1 ? one : many}`;

/** How many adapters to add, and how sure it is that fewer won't do. */
export function proofWords({added, gap, optimal, joined}) {
  if (added === 0) return joined === 0 ? 'No pair can be joined.' : 'Carry what you own: nothing to add.';
  const carry = `Carry ${plural(added, 'more adapter', 'more adapters')}`;
  return optimal ? `${carry}; proven smallest.` : `${carry}; at most ${gap} more than the best possible.`;
}

/** "Radio, UHF jack – UHF plug/N jack adapter – N plug, Load". */
export function chainWords({joints}, [first, second], families) {
  const end = (joint, side) => endWords(families, joint[`${side}_family`], joint[`${side}_gender`]);
  const between = joints.slice(1).map((joint, at) => `${end(joints[at], 'other')}/${end(joint, 'one')} adapter`);
  return [`${first}, ${end(joints[0], 'one')}`, ...between, `${end(joints.at(-1), 'other')}, ${second}`].join(' – ');
}

/** At what, and what it costs. */
export const dutyOf = ({frequency_hz: hertz, power_w: watts}) => `${frequency(hertz)}, ${power(watts)}`;

export const lossOf = ({loss_db: loss}) => `loses ${lossWords(loss)}`;

/** What to mind at the joints of a chain, each sentence once. */
export const notesOf = ({joints}) => [...new Set(joints.flatMap(({notes}) => notes))];

const sameChain = (one, other) => JSON.stringify(one.adapters) === JSON.stringify(other.adapters);

/** How the pair fares with the owned adapters alone. */
export function ownedWords({joined, joined_by_owned: owned}, names, families) {
  if (!joined) return '';
  if (!owned) return 'Not with what you own alone.';
  if (joined.adapters.length === 0) return 'Needs no adapter.';
  if (sameChain(joined, owned)) return 'With what you own already.';
  return `With what you own alone: ${chainWords(owned, names, families)}, ${lossOf(owned)}.`;
}

/** All pairs that the owned adapters join by themselves, in a sentence. */
export function ownedAloneWords({pairs}) {
  const able = pairs.filter(({joined_by_owned: owned}) => owned).map(({ports}) => pairNumbers(ports));
  if (able.length === 0) return 'With what you own alone no pair can be joined.';
  if (able.length === pairs.length) return 'With what you own alone every pair can be joined.';
  const some = `${able.length} of ${plural(pairs.length, 'pair', 'pairs')}`;
  return `With what you own alone ${some} can be joined: ${able.join(', ')}.`;
}

/** What looks as if it fits: {sentence, pairs}, each sentence once with all its pairs. */
export function trapsOf({pairs}) {
  const told = new Map();
  for (const {trap, ports} of pairs) if (trap) told.set(trap, [...(told.get(trap) ?? []), ports]);
  return [...told].map(([sentence, at]) => ({sentence, pairs: at}));
}

/** Ports that no pair asks for. */
export const idlePorts = ({ports}, {pairs}) => {
  const used = new Set(pairs.flatMap((pair) => pair.ports));
  return ports.map((_, at) => at).filter((at) => !used.has(at));
};
