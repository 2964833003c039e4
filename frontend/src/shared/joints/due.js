/** When a joint is to be inspected next, and what that means today. */
import {daysBetween, monthsLater} from '../text/days.js';

/** @import {Values} from './book.js' */

/** Days before an inspection from which it is said to be due. */
const SOON_DAYS = 30;

/**
 * The day of the next inspection: the interval after the last one, or after the fitting; empty where neither is known.
 *
 * @param {Values} values
 * @param {number} months
 */
export function dueOf({inspected_on: inspected, fitted_on: fitted}, months) {
  const last = inspected > fitted ? inspected : fitted;
  return last && monthsLater(last, months);
}

/**
 * What is to be said of a joint today.
 *
 * @param {Values} values
 * @param {string} due
 * @param {string} today
 * @returns {'faulty' | 'overdue' | 'soon' | 'later' | ''}
 */
export function standingOf({state}, due, today) {
  if (state === 'faulty') return 'faulty';
  if (due === '') return '';
  const days = daysBetween(today, due);
  if (days < 0) return 'overdue';
  return days <= SOON_DAYS ? 'soon' : 'later';
}
