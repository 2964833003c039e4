/** The joint book this browser keeps. */
import {Kept} from '../state/kept.js';
import {checkedBook, mergedBooks} from './book.js';

const PLACE = {
  key: 'jointwise-joints',
  blocked:
    'This browser keeps nothing for the page: what you enter in the joint book ends when it is closed. ' +
    'Save a station file to keep it.',
  full:
    'This browser has no room for the joint book: the last entry is not kept. ' +
    'Save a station file and remove what you no longer need.',
  spoilt:
    'The joint book kept in this browser could not be read and was set aside. ' +
    'Save it as a file to look for what is left.',
};

export const KEPT_JOINTS = new Kept(PLACE, checkedBook, mergedBooks);
