/** What a sweep says of one distance along a line. */
import {metres, share} from './reading.js';
/** @import {EchoCheck, LineCheck, Profile} from './result.js' */

/**
 * @typedef {object} Place
 * @property {string} echo - what comes back from there
 * @property {string} part - what of the line lies there, or which echo is nearest
 */

/** The largest of some values, without those that are none. */
const largest = (values) => Math.max(0, ...values.filter((value) => value !== null));

/**
 * What comes back from around a distance, more or less the resolution: the largest echo, what a good line sends back
 * there, and what noise alone may show.
 *
 * @param {Profile} profile
 * @param {number} distance_m
 * @param {number} resolution_m
 */
export function echoAt(profile, distance_m, resolution_m) {
  const near = profile.distance_m.flatMap((at, index) =>
    Math.abs(at - distance_m) <= resolution_m / 2 ? [index] : [],
  );
  // always the nearest place, however fine the resolution is
  if (near.length === 0) near.push(nearestIndex(profile.distance_m, distance_m));
  const moved = changes(profile);
  const at = (values) => largest(near.map((index) => absolute(values[index] ?? null)));
  return {
    measured: at(profile.measured),
    earlier: at(profile.earlier),
    excess: largest(near.map((index) => excess(profile, index))),
    change: largest(near.map((index) => moved[index])),
    threshold: at(profile.threshold),
  };
}

/**
 * What is at a distance, in words.
 *
 * @param {LineCheck | EchoCheck} check
 * @param {number} distance_m
 * @returns {Place}
 */
export function placeAt(check, distance_m) {
  const {profile, range_m, resolution_m} = check;
  const end = profile.distance_m[profile.distance_m.length - 1];
  if (distance_m > range_m)
    return {echo: `This sweep sees no farther than ${metres(range_m)}: take more points, or less span.`, part: ''};
  if (distance_m > end) return {echo: `That is beyond the end of the chart, ${metres(end)}.`, part: ''};
  const {measured, excess: over, threshold} = echoAt(profile, distance_m, resolution_m);
  const stands = over > threshold;
  const back = `${share(measured)} of the wave comes back from there`;
  const echo = stands
    ? `${back}, ${'joints' in check ? 'more than a good line shows' : 'more than noise makes'}.`
    : `${back}: nothing that stands out.`;
  return {echo, part: 'joints' in check ? partWords(check, distance_m) : nearestEcho(check, distance_m)};
}

/** Which cable or joint lies there, and between which joints. */
function partWords({joints, cables, resolution_m}, distance_m) {
  const joint = joints.find((one) => Math.abs(one.distance_m - distance_m) <= resolution_m / 2);
  if (joint) return `That is ${joint.name}, at ${metres(joint.distance_m)}: ${joint.words}.`;
  const cable = cables.find(({from_m, to_m}) => from_m <= distance_m && distance_m <= to_m);
  if (!cable) return 'That is beyond the end of the line.';
  const before = joints.filter((one) => one.distance_m <= distance_m).at(-1);
  const after = joints.find((one) => one.distance_m > distance_m);
  const between = [
    before && `${metres(distance_m - before.distance_m)} after ${before.name}`,
    after && `${metres(after.distance_m - distance_m)} before ${after.name}`,
  ].filter(Boolean);
  return `That is in ${cable.name}, ${between.join(' and ')}: ${cable.words}.`;
}

function nearestEcho({echoes, resolution_m}, distance_m) {
  if (echoes.length === 0) return 'No echo stands out in this sweep.';
  const [nearest] = echoes.toSorted(
    (one, other) => Math.abs(one.distance_m - distance_m) - Math.abs(other.distance_m - distance_m),
  );
  const gap = Math.abs(nearest.distance_m - distance_m);
  const where = `at ${metres(nearest.distance_m)} (${metres(nearest.low_m)} to ${metres(nearest.high_m)})`;
  return gap <= resolution_m
    ? `The echo ${where}: ${nearest.words}`
    : `The nearest echo is ${where}, ${metres(gap)} away: ${nearest.words}`;
}

/**
 * How far two sweeps differ at each distance.
 *
 * @param {Profile} profile
 */
export const changes = ({measured, earlier}) =>
  measured.map((value, at) => Math.abs((value ?? 0) - (earlier[at] ?? value ?? 0)));

const absolute = (number) => (number === null ? null : Math.abs(number));

const excess = ({measured, expected}, index) =>
  measured[index] === null ? null : Math.abs(measured[index] - (expected[index] ?? 0));

const nearestIndex = (distances, wanted) =>
  distances.reduce((best, at, index) => (Math.abs(at - wanted) < Math.abs(distances[best] - wanted) ? index : best), 0);
