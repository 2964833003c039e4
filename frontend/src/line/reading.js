/** Reading a line's answer: what each element does, in numbers and words. */
import {decibels, digits, quantity} from '../shared/text/format.js';
import {lossWords} from '../shared/text/loss.js';
import {limitedBy} from './limits.js';

/**
 * @import {LinePart, LineResult, SpreadResult, TunerPart} from './result.js'
 *
 * @typedef {ReturnType<typeof readElement>} ElementReading
 */

/** The place of an element in the request that was answered; -1 when it has changed since. */
export function placeIn(answered, element, at) {
  if (!answered) return -1;
  return answered.elements[at] === element ? at : answered.elements.indexOf(element);
}

/**
 * The parts of the chain an element became; two for an adapter.
 *
 * @param {LineResult} result
 * @param {number} element - its place
 */
export const partsOf = (result, element) => result.parts.filter((part) => part.element === element);

/** The places of a load's own part follow those of the elements. */
export const numbered = ({element, kind, name}) => (kind === 'load' ? name : `${element + 1}. ${name}`);

/** An SWR; a dash where there is no finite one. */
export const swrWords = (ratio) => (ratio === null ? '–' : digits(ratio, 3));

const meterWords = ([low, high]) => `reads SWR ${swrWords(low)} to ${swrWords(high)}`;

/**
 * What a part says beside its margin, in a word or two.
 *
 * @param {LinePart} part
 */
function briefOf(part) {
  if (part.tuner) return part.tuner.reachable ? 'matched' : 'can’t match this';
  return part.reads_vswr ? meterWords(part.reads_vswr) : '';
}

const lowered = (sentence) => sentence[0].toLowerCase() + sentence.slice(1);

/** @param {TunerPart} part */
const sizeOf = ({henry, farad}) => (henry === null ? quantity(farad ?? 0, 'F', 3) : quantity(henry, 'H', 3));

/**
 * The same in sentences: what a tuner does and how it is set, what a meter reads.
 *
 * @param {LinePart} part
 */
export function saidBy(part) {
  if (part.tuner) {
    const set = part.tuner.parts.map(sizeOf).join(', ');
    return [`${part.name}: ${lowered(part.tuner.sentence)}${set ? ` Set to ${set}, from the transmitter on.` : ''}`];
  }
  return part.reads_vswr ? [`The meter ${meterWords(part.reads_vswr)}, by how good its bridge is.`] : [];
}

const least = (parts, key) => parts.filter((part) => part[key] !== null).sort((a, b) => a[key] - b[key])[0];

/**
 * An element in a row: its smallest margin with what sets it, its loss, and whether it is refused.
 *
 * @param {LineResult} result
 * @param {number} element - its place
 */
export function readElement(result, element) {
  const parts = partsOf(result, element);
  const refused = parts.find((part) => part.refused_by);
  const weakest = least(parts, 'margin_db');
  const losses = parts.map((part) => part.loss_db).filter((loss) => loss !== null);
  return {
    margin: refused ? null : (weakest?.margin_db ?? null),
    loss: losses.length < parts.length ? null : losses.reduce((sum, loss) => sum + loss, 0),
    refusal: refused?.refusal ?? '',
    limited: refused || !weakest ? '' : limitedBy(weakest.binding),
    undecided: parts.some((part) => part.undecided),
    brief: parts.map(briefOf).find(Boolean) ?? '',
    says: parts.flatMap(saidBy),
    marks: [...new Set(parts.flatMap((part) => part.marks))],
    weakest: result.weakest !== null && parts.includes(result.parts[result.weakest]),
  };
}

/** @param {LinePart} part */
export const marginWords = (part) => {
  if (part.refused_by) return 'refused';
  return part.margin_db === null ? '–' : `${decibels(part.margin_db)} dB`;
};

/**
 * A part in one sentence, for those who do not see the drawing.
 *
 * @param {LinePart} part
 * @param {boolean} weakest
 */
export function spokenPart(part, weakest) {
  const margin = part.refused_by
    ? `refused: ${part.refusal}`
    : part.margin_db === null || part.binding === null
      ? 'no margin'
      : `margin ${decibels(part.margin_db)} dB, limited by ${limitedBy(part.binding)}`;
  const end = weakest ? ', the weakest part' : '';
  if (part.kind === 'load') return `${part.name}: ${margin}${end}`;
  return `${part.name}: ${margin}, loses ${lossWords(part.loss_db)}${end}. Open its derivation`;
}

/**
 * How far the VSWR at the transmitter may lie on the band looked at: drawn, by the sum of squares, at the worst.
 *
 * @param {Pick<SpreadResult, 'bands'>} spread
 */
export function boundWords({bands: [here]}) {
  const [low, , , , high] = here.vswr;
  const figure = (value) => (value === null ? 'without bound' : digits(value, 3));
  return (
    `On ${here.column.name} the SWR at the transmitter is ${figure(low)} to ${figure(high)} in nine of ten; ` +
    `by the root of the sum of squares ${figure(here.likely_vswr)}, at the worst ${figure(here.worst_vswr)}.`
  );
}
