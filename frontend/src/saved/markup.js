/** Text and cells of the tables that need no script. */
import {marginWord, signsOf, stepNameOf} from '../shared/margins/reading.js';

/** Text as it may stand in markup. */
export const escaped = (text) =>
  String(text).replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

/** What limits a margin, short. */
const LIMITS = {contact: 'con', cable: 'cab', voltage: 'vol'};

const raised = (signs) => (signs ? `<sup>${escaped(signs)}</sup>` : '');

/** A cell with its colour, what limits it and its signs. */
export function cellMarkup(cell) {
  const word = escaped(marginWord(cell));
  if (cell.refusedBy) return `<td data-step=refused>${word}`;
  if (cell.margin === null) return `<td data-step=holds>${word}${raised(signsOf(cell))}`;
  const limit = `<small>${LIMITS[cell.limit]}${cell.undecided ? '?' : ''}</small>`;
  return `<td data-step=${stepNameOf(cell)}>${word}${limit}${raised(signsOf(cell))}`;
}

/**
 * A table of plain text: heads of the columns, and rows whose first cell heads them.
 *
 * @param {string} caption
 * @param {string[]} heads
 * @param {any[][]} rows
 */
export function tableMarkup(caption, heads, rows) {
  const head = heads.map((one) => `<th scope=col>${escaped(one)}`).join('');
  const body = rows.map(
    ([first, ...rest]) => `<tr><th scope=row>${escaped(first)}${rest.map((one) => `<td>${escaped(one)}`).join('')}`,
  );
  return (
    `<div class=scroll><table class=plain><caption>${escaped(caption)}</caption>` +
    `<thead><tr>${head}<tbody>${body.join('')}</table></div>`
  );
}

export const listMarkup = (items) => `<ul>${items.map((one) => `<li>${escaped(one)}`).join('')}</ul>`;
