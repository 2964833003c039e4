/** A kit at this station: what it leaves to it. */

/**
 * @import {Vocabulary} from '../vocabulary/vocabulary.js'
 * @import {Station} from './station.js'
 */

/**
 * The settings of the station that a kit is asked with, where it has none of its own.
 *
 * @template {Record<string, any>} Kit
 * @param {Kit} kit - what is its own
 * @param {Station} station
 * @param {Vocabulary} vocabulary
 * @returns {Kit}
 */
export function kitRequest(kit, {settings}, {fields}) {
  const names = Object.keys(settings).filter((name) => Object.hasOwn(fields.kit, name));
  const said = Object.fromEntries(names.map((name) => [name, settings[name]]));
  return {...said, ...kit};
}

/**
 * What of the station's settings a kit has its own of, and other than the station's: the fields' names.
 *
 * @param {Record<string, any>} kit
 * @param {Station} station
 * @param {Vocabulary} vocabulary
 */
export function ownOfKit(kit, {settings}, {fields, first}) {
  const isOther = (name) => JSON.stringify(kit[name]) !== JSON.stringify(settings[name] ?? first.settings[name]);
  return Object.keys(kit).filter((name) => Object.hasOwn(fields.settings, name) && isOther(name));
}

/**
 * The kit with what is left to the station.
 *
 * @template {Record<string, any>} Kit
 * @param {Kit} kit
 * @param {string[]} names
 */
export const withoutOwn = (kit, names) =>
  /** @type {Kit} */ (Object.fromEntries(Object.entries(kit).filter(([name]) => !names.includes(name))));
