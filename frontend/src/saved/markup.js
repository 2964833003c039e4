/** Text and cells of the tables that need no script. */
import {marginWord, stepNameOf} from '../shared/margins/reading.js';

/** Text as it may stand in markup. */
export const escaped = (text) =>
  String(text).replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

/** A cell: its number, or what stands in its place, on its colour. */
export const cellMarkup = (cell) => `<td data-step=${stepNameOf(cell)}>${escaped(marginWord(cell))}`;

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
