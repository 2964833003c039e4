/** Where a snapshot may come from: a file of its own, or a station file that has it beside the station. */
import {Misshapen} from './shape.js';

/** A station file with a few measured sweeps in it. */
const LONGEST_FILE = 20_000_000;

const PAGE = /^\s*<!doctype html/i;

/**
 * The text of the snapshot in a file. Throws a Misshapen for a station file without one, and for a saved page, which is
 * too large to be fetched by every visitor.
 *
 * @param {string} content
 * @returns {string}
 */
export function snapshotText(content) {
  if (content.length > LONGEST_FILE) throw new Misshapen(`it must have at most ${LONGEST_FILE} characters`);
  if (PAGE.test(content)) throw new Misshapen('it is a page; save a station file, which is small, and name that');
  let value;
  try {
    value = JSON.parse(content);
  } catch {
    return content;
  }
  if (value?.format !== 'jointwise station') return content;
  const {name, date, snapshot} = value;
  if (!snapshot) throw new Misshapen('it is a station file without a matrix; save it anew');
  return JSON.stringify({...snapshot, station: {name, date}});
}
