/** The station this browser keeps. */
import {Kept} from '../state/kept.js';
import {checkedStation} from './checked.js';

const PLACE = {
  key: 'jointwise-station',
  blocked:
    'This browser keeps nothing for the page: your station ends when it is closed. Save it as a file to keep it.',
  full: 'This browser has no room for your station: the latest changes are not kept. Save it as a file to keep it.',
  spoilt:
    'The station kept in this browser could not be read and was set aside. ' +
    'Save it as a file to look for what is left.',
};

export const KEPT_STATION = new Kept(PLACE, checkedStation);
