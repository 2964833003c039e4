/** A kit's answer in words: chains, what is possible with the owned adapters alone, and the two goals. */
import {frequency, power} from '../../shared/text/format.js';
import {lossWords} from '../../shared/text/loss.js';
import {endWords} from '../names.js';

/** "Radio, UHF jack – UHF plug/N jack adapter – N plug, Load". */
export function chainWords({joints}, [first, second], families) {
  const end = (joint, side) => endWords(families, joint[`${side}_family`], joint[`${side}_gender`]);
  const between = joints.slice(1).map((joint, at) => `${end(joints[at], 'other')}/${end(joint, 'one')} adapter`);
  return [`${first}, ${end(joints[0], 'one')}`, ...between, `${end(joints.at(-1), 'other')}, ${second}`].join(' – ');
}

/** At what, and what it costs. */
export const dutyOf = ({frequency_hz: hertz, power_w: watts}) => `${frequency(hertz)}, ${power(watts)}`;

export const lossOf = ({loss_db: loss, return_loss_db: match}) =>
  `loses ${lossWords(loss)}, return loss ${match.toFixed(0)} dB at worst`;

/** What to mind at the joints of a chain, each sentence once. */
export const notesOf = ({joints}) => [...new Set(joints.flatMap(({notes}) => notes))];

const sameChain = (one, other) => JSON.stringify(one.adapters) === JSON.stringify(other.adapters);

/** How the pair fares with the owned adapters alone. */
export function ownedWords({joined, joined_by_owned: owned}, names, families) {
  if (!joined) return '';
  if (!owned) return 'What you own is not enough.';
  if (joined.adapters.length === 0) return 'Needs no adapter.';
  if (sameChain(joined, owned)) return 'With what you own already.';
  return `With what you own alone: ${chainWords(owned, names, families)}, ${lossOf(owned)}.`;
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

const GOALS = {fewest: 'Fewest adapters', best_joints: 'Best joints'};

/**
 * The two goals with how many adapters each takes, and beside the one not chosen what it costs or brings.
 *
 * @param {Pick<import('./answer.js').Answer, 'goal' | 'added' | 'optimal' | 'price'>} result
 */
export function goalsOf({goal, added, optimal, price}) {
  const count = (number, isSmallest) => `${isSmallest ? '' : 'at most '}${number}`;
  return Object.entries(GOALS).map(([id, words]) => {
    const isChosen = id === goal;
    const how = isChosen ? count(added, optimal) : count(price.added, price.optimal);
    return {id, isChosen, words: `${words}: ${how}`, price: isChosen ? '' : price.sentence};
  });
}
