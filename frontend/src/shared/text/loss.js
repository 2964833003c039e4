/** A loss as the page prints it. */
import {digits} from './format.js';

/** From here a loss is told to a hundredth, below it by its first digit alone. */
const HUNDREDTHS_DB = 0.01;

/** A loss in dB, or a dash. */
export function lossWords(db) {
  if (db === null) return '–';
  return `${Math.abs(db) < HUNDREDTHS_DB ? digits(db, 1) : db.toFixed(2)} dB`;
}
