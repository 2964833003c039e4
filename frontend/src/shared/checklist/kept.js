/** What of the checklist is ticked, as this browser keeps it. */
import {list, record, text} from '../state/check.js';
import {Kept} from '../state/kept.js';
import {mergedLists} from '../state/merge.js';

/** @typedef {{ticked: string[]}} Ticks - the boxes' ids */

/** @type {Ticks} */
export const NO_TICKS = {ticked: []};

const MOST = 5000;
const LONGEST = 400;

const PLACE = {
  key: 'jointwise-checklist',
  blocked: 'This browser keeps nothing for the page: the ticks of the checklist end when it is closed.',
  full: 'This browser has no room for the ticks of the checklist: the last one is not kept.',
  spoilt: 'The ticks of the checklist could not be read and were set aside.',
};

/**
 * Ticks that come from outside. Throws a RangeError whose message is for the reader.
 *
 * @param {any} value
 * @returns {Ticks}
 */
export function checkedTicks(value) {
  const ticked = list('ticked', record('checklist', value).ticked, 0, MOST, 'boxes');
  return {ticked: [...new Set(ticked.map((id, at) => text(`ticked[${at}]`, id, LONGEST)))]};
}

/** The ticks with one box ticked or not. @param {Ticks} ticks @returns {Ticks} */
export const withTick = ({ticked}, id, isTicked) => ({
  ticked: isTicked ? [...new Set([...ticked, id])] : ticked.filter((one) => one !== id),
});

export const KEPT_TICKS = new Kept(PLACE, checkedTicks, ({base, mine, theirs}) => ({
  ticked: mergedLists({base: base.ticked, mine: mine.ticked, theirs: theirs.ticked}, (id) => id),
}));
