/** Days as 2026-11-29, by the reader's own clock; they sort as text. */

const MONTHS = 12;
/** A day that a month may lack moves to one that every month has, as in the core. */
const SHORTEST_MONTH = 28;
const DAY_MS = 86_400_000;
const DAY = /^\d{4}-\d{2}-\d{2}$/;

/** Whether a text is a day that the calendar has. */
export function isDay(text) {
  if (typeof text !== 'string' || !DAY.test(text)) return false;
  const time = Date.parse(text);
  return !Number.isNaN(time) && written(time) === text;
}

/** Today. */
export const today = () => new Date().toLocaleDateString('sv-SE');

const written = (time) => new Date(time).toISOString().slice(0, 10);

/**
 * The same day some months later.
 *
 * @param {string} day
 * @param {number} months
 */
export function monthsLater(day, months) {
  const [year, month, date] = day.split('-').map(Number);
  const at = month - 1 + months;
  const later = (of) => Date.UTC(year + Math.floor(at / MONTHS), at % MONTHS, of);
  const wanted = later(date);
  return written(new Date(wanted).getUTCDate() === date ? wanted : later(SHORTEST_MONTH));
}

/**
 * Days from one day to another; negative where the other was before.
 *
 * @param {string} from
 * @param {string} to
 */
export const daysBetween = (from, to) => Math.round((Date.parse(to) - Date.parse(from)) / DAY_MS);
