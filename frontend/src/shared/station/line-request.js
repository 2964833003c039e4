/** Lines of this station: what they leave to it, and what of it they have their own. */
import {loadOf, settingOf, transmitterOf} from './station.js';

/**
 * @import {LineRequest} from '../lines/document.js'
 * @import {Vocabulary} from '../vocabulary/vocabulary.js'
 * @import {Station} from './station.js'
 */

/** What of a line the station can give: the settings that lines are asked with, transmitter and antenna. */
const GIVEN = ['transmitter', 'load'];
const LOOKED_AT = ['band', 'frequency_hz'];

/**
 * The request of a line: the station's settings, its rig and its antenna where the line has none of its own.
 *
 * @param {LineRequest} line - what is its own
 * @param {Station} station
 * @param {Vocabulary} vocabulary
 * @returns {LineRequest}
 */
export function lineRequest(line, station, {fields, first}) {
  const {settings} = station;
  const isLookedAt = LOOKED_AT.some((name) => name in line);
  const names = Object.keys(fields.station).filter((name) => !(isLookedAt && LOOKED_AT.includes(name)));
  const said = Object.fromEntries(names.filter((name) => name in settings).map((name) => [name, settings[name]]));
  const band = isLookedAt ? null : settingOf(settings, 'band', first.settings.band);
  const transmitter = transmitterOf(station);
  return {
    ...said,
    ...(band && {band}),
    ...(transmitter && {transmitter}),
    load: loadOf(station, first.settings.vswr),
    ...line,
  };
}

/**
 * What of the station a line has its own of, and other than the station's: the fields' names.
 *
 * @param {LineRequest} line
 * @param {Station} station
 * @param {Vocabulary} vocabulary
 */
export function ownOf(line, station, vocabulary) {
  const {fields} = vocabulary;
  const isGiven = (name) => GIVEN.includes(name) || Object.hasOwn(fields.station, name);
  const names = Object.keys(line).filter(isGiven);
  const given = lineRequest(without(line, names), station, vocabulary);
  const usual = (name) => given[name] ?? fields.station[name]?.default;
  return names.filter((name) => JSON.stringify(line[name]) !== JSON.stringify(usual(name)));
}

/**
 * The line with what is left to the station.
 *
 * @param {LineRequest} line
 * @param {string[]} names
 * @returns {LineRequest}
 */
export const without = (line, names) =>
  /** @type {LineRequest} */ (Object.fromEntries(Object.entries(line).filter(([name]) => !names.includes(name))));
