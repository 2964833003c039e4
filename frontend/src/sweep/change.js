/** What changed between two sweeps of one line. */
import {changes, echoAt} from './places.js';
import {metres, share} from './reading.js';
/** @import {SweepResult} from './result.js' */

/** @typedef {{element: ?number, name: string, distance_m: number}} Spot - a place that a verdict speaks of */

/**
 * The places that a verdict speaks of, the surest first; where no line is described, those of all echoes but the last,
 * which is the line's end.
 *
 * @param {SweepResult} result
 * @returns {Spot[]}
 */
export function spotsOf({line, echoes}) {
  if (echoes) {
    return echoes.echoes.slice(0, -1).map(({distance_m}) => ({element: null, name: metres(distance_m), distance_m}));
  }
  if (!line) return [];
  const named = line.faults.map(({element, part, distance_m}) => ({element, name: part, distance_m}));
  if (named.length > 0) return named;
  const places = [
    ...line.joints.map(({element, name, distance_m}) => ({element, name, distance_m})),
    ...line.cables.map(({element, name, from_m, to_m}) => ({element, name, distance_m: (from_m + to_m) / 2})),
  ];
  return line.apart.flatMap((element) => places.find((place) => place.element === element) ?? []);
}

/**
 * What a second sweep says of the places that the first one named.
 *
 * @param {SweepResult} before
 * @param {SweepResult} after - asked with the first as its earlier sweep
 * @returns {string[]}
 */
export function changeWords(before, after) {
  if (after.part) return after.part.trend ? [after.part.trend.sentence] : ['The second file is not of the same kind.'];
  const check = after.line ?? after.echoes;
  if (!check) return [];
  const spots = spotsOf(before);
  if (spots.length === 0) return [largestChange(check)];
  return [...spots.map((spot) => spotWords(spot, check, after)), ...others(spots, after)];
}

/** One place then and now. */
function spotWords(spot, check, after) {
  const {earlier, measured, change} = echoAt(check.profile, spot.distance_m, check.resolution_m);
  const moved = change > countsFrom(check.profile);
  const numbers = `the echo there went from ${share(earlier)} to ${share(measured)}`;
  const hardly = `${numbers}, no more than two sweeps of one line differ by`;
  if (after.line && ['no fit', 'cannot tell'].includes(after.line.finding))
    return `${spot.name}: ${numbers}, but the second sweep can’t be judged.`;
  if (after.line && spotsOf(after).some(({element}) => element === spot.element))
    return moved ? `${spot.name} changed and still stands out: ${numbers}.` : `${spot.name} is as it was: ${hardly}.`;
  if (after.line) return `${spot.name} no longer stands out: ${moved ? numbers : hardly}.`;
  if (!moved) return `${spot.name} is as it was: ${hardly}.`;
  return `${spot.name} got ${measured > earlier ? 'worse' : 'better'}: ${numbers}.`;
}

/** What the second verdict names that the first one did not. */
function others(spots, after) {
  if (!after.line) return [];
  const fresh = spotsOf(after).filter(({element}) => spots.every((spot) => spot.element !== element));
  if (fresh.length > 0)
    return [
      `What stands out now: ${fresh.map(({name, distance_m}) => `${name} at ${metres(distance_m)}`).join(', ')}.`,
    ];
  return after.line.finding === 'sound' ? ['Nothing else is found.'] : [];
}

/** Where two sweeps differ most, and whether that counts. */
function largestChange({profile}) {
  const gaps = changes(profile);
  const at = gaps.indexOf(Math.max(...gaps));
  const where = `at ${metres(Math.max(profile.distance_m[at], 0))}`;
  return gaps[at] > countsFrom(profile)
    ? `The two sweeps differ most ${where}, by ${share(gaps[at])} of the wave.`
    : 'Nothing changed beyond what two sweeps of one line differ by.';
}

/** How many times the usual difference of two sweeps one place must differ to count. */
const OUTSTANDING = 5;

/** The difference from which on it counts: some times that of half the places, which noise and a new plugging make. */
const countsFrom = (profile) => OUTSTANDING * median(changes(profile));

const median = (values) => values.toSorted((one, other) => one - other)[Math.floor(values.length / 2)] ?? 0;
