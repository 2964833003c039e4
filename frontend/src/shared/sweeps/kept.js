/** The sweeps this browser keeps. */
import {Kept} from '../state/kept.js';
import {mergedLists} from '../state/merge.js';
import {byDay, checkedEntries, keyOf} from './history.js';

const PLACE = {
  key: 'jointwise-sweeps',
  blocked: 'This browser keeps nothing for the page: your sweeps end when it is closed. Export them to keep them.',
  full: 'This browser has no room for more sweeps: the last one is not kept. Export the list and remove old ones.',
  spoilt:
    'The sweeps kept in this browser could not be read and were set aside. ' +
    'Save them as a file to look for what is left.',
};

export const KEPT_SWEEPS = new Kept(PLACE, checkedEntries, (versions) => byDay(mergedLists(versions, keyOf)));
