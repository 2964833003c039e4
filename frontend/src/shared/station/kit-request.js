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
export function kitRequest(kit, {settings, units}, {fields}) {
  const names = Object.keys(settings).filter((name) => Object.hasOwn(fields.kit, name));
  const said = Object.fromEntries(names.map((name) => [name, settings[name]]));
  return {...said, ...('units' in fields.kit && {units}), ...kit};
}

/**
 * What of the station's settings a kit has its own of, by the fields' names.
 *
 * @param {Record<string, any>} kit
 * @param {Vocabulary} vocabulary
 */
export const ownOfKit = (kit, {fields}) => Object.keys(kit).filter((name) => Object.hasOwn(fields.settings, name));
