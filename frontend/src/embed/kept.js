/** The last good copies, kept in the host page's own store: few, bounded, and none where the browser keeps nothing. */
import {LONGEST_TEXT} from './snapshot.js';

const PREFIX = 'jointwise-matrix ';
/** Of one website. */
const MOST_COPIES = 3;

/**
 * What was kept of an address; undefined when nothing was.
 *
 * @param {string} address
 * @returns {{day: string, text: string} | undefined}
 */
export function recall(address) {
  try {
    const {day, text} = JSON.parse(String(localStorage.getItem(PREFIX + address)));
    return Number.isFinite(Date.parse(day)) && typeof text === 'string' ? {day, text} : undefined;
  } catch {
    return undefined;
  }
}

/**
 * Keep a text; the oldest copies go.
 *
 * @param {string} address
 * @param {string} text
 */
export function keep(address, text) {
  if (text.length > LONGEST_TEXT) return;
  try {
    const kept = Object.keys(localStorage).filter((key) => key.startsWith(PREFIX) && key !== PREFIX + address);
    const oldestFirst = kept.map((key) => [recall(key.slice(PREFIX.length))?.day ?? '', key]).sort();
    for (const [, key] of oldestFirst.slice(0, Math.max(0, kept.length - MOST_COPIES + 1)))
      localStorage.removeItem(key);
    localStorage.setItem(PREFIX + address, JSON.stringify({day: new Date().toISOString(), text}));
  } catch {
    // a browser that keeps nothing shows what the network brings
  }
}
