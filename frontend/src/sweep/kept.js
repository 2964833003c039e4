/** How far a hunt has come, as this browser keeps it: on the way to a joint a page may be loaded anew. */
import {Kept} from '../shared/state/kept.js';
import {checkedHunt} from './hunt.js';
/** @import {SweepFile} from './request.js' */

const HUNT_PLACE = {
  key: 'jointwise-hunt',
  blocked: 'This browser keeps nothing for the page: the hunt begins anew when the page is loaded again.',
  full: 'This browser has no room for the sweep of this hunt: give the file again if the page is loaded anew.',
  spoilt: 'The hunt kept in this browser could not be read, and begins anew.',
};

/** @typedef {{of: string, at: string, file: ?SweepFile}} KeptHunt - the line, the step, the sweep it goes by */

/** @type {Kept<KeptHunt>} */
export const KEPT_HUNT = new Kept(HUNT_PLACE, checkedHunt);
