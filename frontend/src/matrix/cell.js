/** One cell of the matrix: number, range, ladder, marks. */
import {html, nothing} from 'lit';
import {stepOf} from '../colour/scale.js';
import {decibels} from '../text/format.js';
import {DISAGREES, letterOf, printed, readCell, refusedWord, spokenCell} from './reading.js';

/** The range bar spans this many dB to both sides of the limit. */
const RANGE_DB = 20;

const along = (db) => 50 + (Math.min(Math.max(db, -RANGE_DB), RANGE_DB) / RANGE_DB) * 50;

function rung(cell, chosen) {
  const step = cell.refusedBy ? 'refused' : stepOf(cell.margin);
  const words = cell.refusedBy ? refusedWord(cell.refusedBy) : decibels(cell.margin);
  const letters = cell.marks.map(letterOf).join('') + (chosen && cell.disagrees ? DISAGREES : '');
  return html`<span class="rung" data-power=${cell.power} data-step=${step} ?data-chosen=${chosen} ?data-undecided=${cell.undecided}>
    <b><small>${letters}</small>${words}</b></span>`;
}

function range(cell) {
  const [from, to] = [along(cell.margin), along(cell.high)];
  return html`<span class="range"><i style="left:${from}%;width:${Math.max(to - from, 1)}%"></i></span>`;
}

/** Drawn by the style sheet, as the spoken name of the cell says them in words. */
function marks(cell) {
  const letters = cell.marks.map(letterOf).join('') + (cell.disagrees ? DISAGREES : '');
  const corner = cell.undecided ? html`<span class="corner" data-step=${stepOf(cell.high)}></span>` : nothing;
  return html`<span class="marks" data-letters=${letters}></span>${corner}`;
}

/**
 * The cell of family `f` in column `c`, at power level `p`; `focusable` is true
 * for the one cell the Tab key reaches.
 */
export function cellTemplate({matrix, f, c, p, shows, focusable, open}) {
  const cell = readCell(matrix, f, c, p);
  const word = printed(cell, shows);
  return html`<td data-family=${cell.family.id} data-band=${cell.column.id} data-power=${cell.power} ?data-open=${open}>
    <button data-row=${f} data-column=${c} tabindex=${focusable ? 0 : -1} aria-label=${spokenCell(cell)}
      data-step=${cell.refusedBy ? 'refused' : stepOf(cell.margin)} ?data-undecided=${cell.undecided}>
      ${marks(cell)}
      <span class=${word.length > 5 ? 'number long' : 'number'}>${word}</span>
      ${cell.refusedBy ? html`<span class="range none"></span>` : range(cell)}
      <span class="ladder" aria-hidden="true">${matrix.powers_w.map((_, level) => rung(readCell(matrix, f, c, level), level === p))}</span>
    </button>
  </td>`;
}

/** A cell before the first answer: the same room, no number. */
export const emptyCell = () => html`<td><span class="empty"></span></td>`;
