/** Where the joint sits: one choice that sets weather, shaking and sealing, each of which may be changed after it. */

/**
 * @import {Lists} from '../shared/vocabulary/lists.js'
 * @import {Demands} from './fields.js'
 */

export const SET_BY_PLACE = ['exposure', 'vibration', 'added_sealing'];

const setBy = (place) => Object.fromEntries(SET_BY_PLACE.map((name) => [name, place[name]]));

const isMild = (demands, mildest) => SET_BY_PLACE.every((name) => demands[name] === mildest[name]);

/**
 * The demands with what the place sets, where a link names the place alone.
 *
 * @param {Demands} demands
 * @param {Pick<Lists, 'installations'>} lists - the first place sets the mildest of all
 * @returns {Demands}
 */
export function placed(demands, {installations: places}) {
  const place = places.find(({id}) => id === demands.installation);
  return place && isMild(demands, places[0]) ? {...demands, ...setBy(place)} : demands;
}

/**
 * Changes with what comes along: a place sets its three fields; one of these set by hand leaves the others as they are
 * shown, and all three at their mildest are the first place.
 *
 * @param {Record<string, any>} changes
 * @param {Demands} demands - as they are
 * @param {Pick<Lists, 'installations'>} lists
 */
export function withPlace(changes, demands, {installations: places}) {
  if ('installation' in changes) {
    const place = places.find(({id}) => id === changes.installation);
    return place ? {...setBy(place), ...changes} : changes;
  }
  if (!SET_BY_PLACE.some((name) => name in changes)) return changes;
  const all = {...setBy(placed(demands, {installations: places})), ...changes};
  return isMild(all, places[0]) ? {...all, installation: places[0].id} : all;
}
