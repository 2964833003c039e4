/** Metric or US units: kept by the browser, and named in a link. */

/**
 * @import {Transport} from '../answers.js'
 * @import {Units} from '../text/measures.js'
 * @import {Store} from './kept.js'
 */

const KEPT = 'jointwise-units';
const NAME = 'units';

/** @returns {Units | undefined} */
const read = (text) => (text === 'metric' || text === 'us' ? text : undefined);

/**
 * Those that were chosen last; metric where none were, or where the browser keeps nothing.
 *
 * @param {() => Store} storage - may throw
 */
export function keptUnits(storage) {
  try {
    return read(storage().getItem(KEPT)) ?? 'metric';
  } catch {
    return 'metric';
  }
}

/**
 * Keeps them; whether the browser could.
 *
 * @param {() => Store} storage
 * @param {Units} units
 */
export function keepUnits(storage, units) {
  try {
    storage().setItem(KEPT, units);
    return true;
  } catch {
    return false;
  }
}

/**
 * The units a fragment of the address names.
 *
 * @param {string} fragment
 */
export const unitsIn = (fragment) => read(new URLSearchParams(fragment).get(NAME));

/**
 * A fragment without its units, which are the page's and no view's.
 *
 * @param {string} fragment
 */
export const withoutUnits = (fragment) =>
  fragment
    .split('&')
    .filter((part) => !part.startsWith(`${NAME}=`))
    .join('&');

/**
 * An address that leads to the page in these units; metric ones need no name.
 *
 * @param {string} address
 * @param {Units} units
 */
export function withUnits(address, units) {
  const [place, fragment = ''] = address.split('#');
  const parts = [withoutUnits(fragment), units === 'metric' ? '' : `${NAME}=${units}`].filter(Boolean);
  return parts.length > 0 ? `${place}#${parts.join('&')}` : place;
}

/**
 * A request that is answered in these units.
 *
 * @param {object} request
 * @param {Units} units
 */
export const askedIn = (request, units) => (units === 'metric' ? request : {...request, units});

/**
 * A transport whose answers speak in these units.
 *
 * @param {Transport} transport
 * @param {Units} units
 * @returns {Transport}
 */
export const speaking = (transport, units) =>
  units === 'metric'
    ? transport
    : {ask: (operation, request, options) => transport.ask(operation, askedIn(request, units), options)};
