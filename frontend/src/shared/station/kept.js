/** The station this browser keeps. */
import {Kept} from '../state/kept.js';
import {mergedLists} from '../state/merge.js';
import {checkedStation} from './checked.js';
import {changed, changesBetween} from './station.js';

/** @import {Station} from './station.js' */

const PLACE = {
  key: 'jointwise-station',
  blocked:
    'This browser keeps nothing for the page: your station ends when it is closed. Save it as a file to keep it.',
  full: 'This browser has no room for your station: the latest changes are not kept. Save it as a file to keep it.',
  spoilt:
    'The station kept in this browser could not be read and was set aside. ' +
    'Save it as a file to look for what is left.',
};

/** @param {{name: string}} one */
const nameOf = ({name}) => name;

/**
 * What two tabs changed of one station: each what it changed, and of what both did this tab's. Rigs, antennas and gear
 * are told apart by their names.
 *
 * @param {import('../state/kept.js').Versions<Station>} versions
 * @returns {Station}
 */
function merged({base, mine, theirs}) {
  const next = changed(theirs, changesBetween(base, mine));
  const lists = {
    rigs: mergedLists({base: base.rigs, mine: mine.rigs, theirs: theirs.rigs}, nameOf),
    antennas: mergedLists({base: base.antennas, mine: mine.antennas, theirs: theirs.antennas}, nameOf),
    gear: mergedLists({base: base.gear, mine: mine.gear, theirs: theirs.gear}, nameOf),
  };
  const place = (list, at) => {
    const chosen = (mine[list][at] ?? theirs[list][at])?.name;
    return at === -1 ? -1 : lists[list].findIndex(({name}) => name === chosen);
  };
  return {...next, ...lists, rig: place('rigs', next.rig), antenna: place('antennas', next.antenna)};
}

export const KEPT_STATION = new Kept(PLACE, checkedStation, merged);
