/** The sweeps this browser keeps, and how far a hunt has come: on the way to a joint a page may be loaded anew. */
import {Kept} from '../shared/state/kept.js';
import {mergedLists} from '../shared/state/merge.js';
import {byDay, checkedEntries, keyOf} from './history.js';
import {checkedHunt} from './hunt.js';
/** @import {SweepFile} from './request.js' */

const PLACE = {
  key: 'jointwise-sweeps',
  blocked: 'This browser keeps nothing for the page: your sweeps end when it is closed. Export them to keep them.',
  full: 'This browser has no room for more sweeps: the last one is not kept. Export the list and remove old ones.',
  spoilt:
    'The sweeps kept in this browser could not be read and were set aside. ' +
    'Save them as a file to look for what is left.',
};

const HUNT_PLACE = {
  key: 'jointwise-hunt',
  blocked: 'This browser keeps nothing for the page: the hunt begins anew when the page is loaded again.',
  full: 'This browser has no room for the sweep of this hunt: give the file again if the page is loaded anew.',
  spoilt: 'The hunt kept in this browser could not be read, and begins anew.',
};

/** @typedef {{of: string, at: string, file: ?SweepFile}} KeptHunt - the line, the step, the sweep it goes by */

/** @type {Kept<KeptHunt>} */
export const KEPT_HUNT = new Kept(HUNT_PLACE, checkedHunt);

export const KEPT_SWEEPS = new Kept(PLACE, checkedEntries, (versions) => byDay(mergedLists(versions, keyOf)));
