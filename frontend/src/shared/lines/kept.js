/** The lines this browser keeps. */
import {Kept} from '../state/kept.js';
import {checkedLines} from './checked.js';

const PLACE = {
  key: 'jointwise-lines',
  blocked: 'This browser keeps nothing for the page: your lines end when it is closed. Export them to keep them.',
  full: 'This browser has no room for all of your lines: the latest changes are not kept. Export them to keep them.',
  spoilt:
    'The lines kept in this browser could not be read and were set aside. ' +
    'Save them as a file to look for what is left.',
};

export const KEPT_LINES = new Kept(PLACE, ({lines, current}, fields) => {
  const checked = checkedLines(lines, fields);
  return {lines: checked, current: Number.isInteger(current) && checked[current] ? current : 0};
});
