/** Reading a family's answer: plain words for its rank, margin, wear and weather. */
import {LIMITED_BY} from '../shared/margins/limits.js';
import {returnLossWord} from '../shared/margins/reading.js';
import {stepOf} from '../shared/margins/scale.js';
import {decibels, digits} from '../shared/text/format.js';
import {sizeText, torqueText} from '../shared/text/measures.js';

/** What a mated joint stands, the least first. */
const STANDS = {
  indoor: 'indoors only',
  sheltered: 'damp, no rain',
  exposed: 'weatherproof when mated',
  immersed: 'under water',
};

/** From here a loss is told to a thousandth, below it by its first two digits. */
const THOUSANDTHS_DB = 0.01;

/** "1", or "1=" where another family has the same rank; empty for one that does not pass. */
export function rankWords(choice, choices) {
  if (choice.rank === null) return '';
  const shared = choices.filter(({rank}) => rank === choice.rank).length > 1;
  return `${choice.rank}${shared ? '=' : ''}`;
}

const refusalOf = ({rejections}) => rejections.find(({hard}) => hard);

/** The margin; where the match refuses, and in receive, the return loss. */
export function marginWords(choice) {
  if (choice.margin_db !== null) return `${decibels(choice.margin_db)} dB`;
  return (refusalOf(choice)?.demand ?? 'match') === 'match' ? returnLossWord(choice.return_loss_db) : 'refused';
}

/** The name of its colour: a step of the scale; refused; or holds, which has no margin in receive. */
export function stepNameOf(choice) {
  if (choice.margin_db !== null) return stepOf(choice.margin_db);
  return refusalOf(choice) ? 'refused' : 'holds';
}

/** What the margin may be by the most favourable source, and what sets it where. */
export function rangeWords(choice) {
  if (choice.margin_db === null) return '';
  const up = choice.margin_high_db === null ? '' : `up to ${decibels(choice.margin_high_db)} dB`;
  return [up, choice.undecided ? 'uncertain' : ''].filter(Boolean).join(', ');
}

export function bindingWords(choice) {
  if (choice.margin_db === null) return '';
  if (choice.port_binds) return 'limited by the joint it plugs into';
  return `limited by ${LIMITED_BY[choice.binding]} on ${choice.binding_column}`;
}

export const lossWords = (db) => `${db < THOUSANDTHS_DB ? digits(db, 2) : db.toFixed(3)} dB`;

export const sizeWords = (metres) => sizeText(metres);

export function couplingWords({coupling, torque_nm: torque, by_hand: byHand}) {
  if (byHand) return `${coupling}, by hand`;
  return torque > 0 ? `${coupling}, ${torqueText(torque)}` : coupling;
}

export const wearWords = ({needed, good_for: good}) => `${digits(needed, 4)} matings of ${digits(good, 5)}`;

export function weatherWords({stands, stands_sealed: sealed}) {
  return stands === sealed ? STANDS[stands] : `${STANDS[stands]}; weatherproof once sealed`;
}

/** Why it stands where it does, as a text begins. */
export function reasonWords({reasons}) {
  const words = reasons.join('; ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** Where what it stands of the weather comes in their order. */
export const standsAt = ({weather}) => Object.keys(STANDS).indexOf(weather.stands);

/** How the plan stands, in a sentence; empty where there is none. */
export function planWords(plan, result) {
  const choice = result.choices.find(({family}) => family === plan);
  if (!choice) return '';
  if (!choice.passes) {
    const {length} = choice.rejections;
    return `Your plan, ${choice.name}, misses ${length === 1 ? 'one demand' : `${length} demands`}.`;
  }
  if (choice.rank === 1) return `Your plan, ${choice.name}, meets every demand, and nothing comes before it.`;
  const rank = `rank ${rankWords(choice, result.choices)} of ${result.passing.length}`;
  return `Your plan, ${choice.name}, meets every demand: ${rank} (${choice.reasons.join('; ')}).`;
}
