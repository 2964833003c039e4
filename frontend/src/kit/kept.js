/** The kit this browser keeps. */
import {Kept} from '../shared/state/kept.js';
import {checkedKit} from './checked.js';

const PLACE = {
  key: 'jointwise-kit',
  blocked: 'This browser keeps nothing for the page: your kit ends when it is closed. Copy its link to keep it.',
  full: 'This browser has no room for your kit: the latest changes are not kept. Copy its link to keep it.',
  spoilt:
    'The kit kept in this browser could not be read and was set aside. Save it as a file to look for what is left.',
};

export const KEPT_KIT = new Kept(PLACE, checkedKit);
