/** The core asked in metric or US units. */

/**
 * @import {Transport} from '../answers.js'
 * @import {Units} from '../text/measures.js'
 */

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
