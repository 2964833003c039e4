/** The guided hunt for a fault: its steps, and what the page says at each. */
import {record, refuse, text} from '../shared/state/check.js';
import {spotsOf} from './change.js';
import {metres} from './reading.js';
/** @import {SweepFile} from './request.js' */
/** @import {SweepResult} from './result.js' */

/**
 * @typedef {object} Hunt - how far one has come
 * @property {string} at - the step that is open
 * @property {{file: SweepFile, result: SweepResult}} [before] - the sweep before something was done
 */

/** @type {[string, string][]} - each with its title */
export const STEPS = [
  ['line', 'Choose the line'],
  ['safe', 'Make it safe'],
  ['span', 'Set the analyser'],
  ['calibrate', 'Calibrate'],
  ['end', 'Short or open the far end'],
  ['sweep', 'Sweep, and give the file'],
  ['place', 'Go to the place'],
  ['again', 'Sweep again'],
  ['compare', 'Before and after'],
];

/** @type {Hunt} */
export const FIRST_HUNT = {at: STEPS[0][0]};

/**
 * The step after another one; the last has none.
 *
 * @param {string} at
 */
export const stepAfter = (at) => STEPS[STEPS.findIndex(([id]) => id === at) + 1]?.[0];

/**
 * Whether there is an answer to show at a step.
 *
 * @param {string} at
 */
export const isAnswered = (at) => ['sweep', 'place', 'again', 'compare'].includes(at);

const LONGEST = {of: 20, name: 200, text: 8_000_000};

/**
 * A hunt that was kept: the last step has no sweep to compare with any more, and is that of sweeping again.
 *
 * @param {any} value
 */
export function checkedHunt(value) {
  const {of, at, file} = record('hunt', value);
  if (STEPS.every(([id]) => id !== at)) refuse('hunt.at', at, `one of ${STEPS.map(([id]) => id).join(', ')}`);
  text('hunt.of', of, LONGEST.of);
  if (file !== null) {
    text('hunt.file.name', record('hunt.file', file).name, LONGEST.name);
    text('hunt.file.text', file.text, LONGEST.text);
  }
  return {of, at: at === 'compare' ? 'again' : at, file: file && {name: file.name, text: file.text}};
}

export const MAKE_SAFE = [
  'Transmitter off and locked out: unplug it from the line, and from the mains or take the key along, so that nobody ' +
    'can key it while you are at the line.',
  'Short the line for a moment, inner to outer conductor, before the analyser touches it: it may hold static charge.',
  'A thunderstorm near? Stop here.',
];

export const HANDS_ON =
  'Before your hands touch the line: transmitter off and locked out. Nobody keys while you are there. On a mast: ' +
  'harness, a second person, and no power line within reach.';

/** Why the line ends in this during the sweep, by what it is. */
export const END_REASONS = {
  short:
    'A short sends current through every joint, so a contact that has gone bad shows: the best end for most hunts.',
  open: 'At an open end no current flows: the last joint hides a bad contact. Good against water and crushed cable.',
  matched: 'A matched load keeps the end’s own echo small, so small echoes along the line show; it must be a good one.',
  antenna: 'An antenna hides what is near it, and lets the least be told. Take it off if you can get at it.',
};

/**
 * Where to go by an answer, and what to do there; no places where the answer names none.
 *
 * @param {SweepResult} result
 * @returns {{places: string[], work: string[], why: string}}
 */
export function errand(result) {
  const {line, part, echoes} = result;
  if (part) {
    const why = part.finding === 'failed' ? 'It is the part in your hand.' : 'The part in your hand keeps its limits.';
    return {places: [], work: part.finding === 'failed' ? JOINT_WORK : [], why};
  }
  const spots = spotsOf(result);
  if (echoes) {
    const places = spots.map(({name}) => `${name} from the analyser`);
    const why =
      places.length > 0
        ? 'An echo is no fault yet: a good joint sends one back too. Begin with the strongest, and leave the last, ' +
          'which is the end of the line.'
        : 'No echo stands out but the end of the line.';
    return {places, work: places.length > 0 ? JOINT_WORK : [], why};
  }
  const named = line?.faults ?? [];
  const places =
    named.length > 0
      ? named.map((fault) => `${fault.part}, ${stretchWords(fault)} from the analyser`)
      : spots.map(({name, distance_m}) => `${name}, ${metres(distance_m)} from the analyser`);
  const isCable = named.length > 0 && named.every(({where}) => where === 'cable');
  return {places, work: places.length === 0 ? [] : isCable ? CABLE_WORK : JOINT_WORK, why: WHY[line?.finding ?? '']};
}

/** Where a fault lies: a joint is in one place, damage of a cable within a stretch. */
const stretchWords = ({distance_m, low_m, high_m}) =>
  high_m > low_m ? `${metres(low_m)} to ${metres(high_m)}` : metres(distance_m);

const WHY = {
  suspect: 'The sweep names this place.',
  damage: 'The sweep puts it inside the cable.',
  unclear: 'It is one of these; begin with the one you reach most easily.',
  end: 'The line is good up to here. What is bad is the antenna, or the joint at it.',
  sound: 'The sweep finds nothing to go to.',
  'cannot tell': 'The sweep names no place yet. Do what the answer says, and sweep again.',
  'no fit': 'The sweep is of another line than described. Mend the description, or find out what ends the line.',
};

const JOINT_WORK = [
  'Wiggle it while somebody watches the analyser sweep: if the trace jumps, it is this one.',
  'Open it. Look for water, green copper, a pin that stands back, cut braid, a collar that was never tight.',
  'Clean, remake or exchange it, and seal it.',
];

const CABLE_WORK = [
  'Follow the cable over that stretch, with a tape from the analyser on: crushed, bent tight, chafed, wet, nailed?',
  'Bend it gently while somebody watches the analyser sweep: if the trace jumps, it is here.',
  'Cut it out, or exchange the cable.',
];
