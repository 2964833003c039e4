/** One cell of the matrix: folded into number, range, marks and ladder, or unfolded into a line for each power level. */
import {html, nothing, render} from 'lit';
import {stepOf} from '../colour/scale.js';
import {decibels} from '../text/format.js';
import {ladderClass} from './ladder.js';
import {rangeClass} from './range.js';
import {DISAGREES, letterOf, printed, readCell, refusedWord, spokenCell} from './reading.js';

const stepNameOf = (cell) => (cell.refusedBy ? 'refused' : stepOf(cell.margin));

const lettersOf = (cell, disagrees) => cell.marks.map(letterOf).join('') + (disagrees ? DISAGREES : '');

function rung(cell, chosen) {
  const letters = lettersOf(cell, chosen && cell.disagrees);
  const words = cell.refusedBy ? refusedWord(cell.refusedBy) : decibels(cell.margin);
  return html`<span class="rung" data-power=${cell.power} data-step=${stepNameOf(cell)} ?data-chosen=${chosen} ?data-undecided=${cell.undecided}>${
    letters ? html`<small>${letters}</small>` : nothing
  }${words}</span>`;
}

const rungs = (levels, p) => html`<span class="rungs" aria-hidden="true">${levels.map((cell, level) => rung(cell, level === p))}</span>`;

/**
 * Draw a bare line and a marked one, out of sight: a page that prints itself
 * is paused, and Lit can then draw no template for the first time.
 */
export function readyForPaper() {
  const bare = {power: 0, margin: 0, marks: []};
  render(rungs([bare, {...bare, disagrees: true}], 1), document.createDocumentFragment());
}

/** The marks are drawn by the style sheet, as the spoken name of the cell says them in words. */
function folded(cell, levels) {
  const letters = lettersOf(cell, cell.disagrees);
  return html`${letters ? html`<span class="marks" data-letters=${letters}></span>` : nothing}
    ${cell.undecided ? html`<span class="corner" data-step=${stepOf(cell.high)}></span>` : nothing}
    ${cell.refusedBy ? nothing : html`<span class="range"><i class=${rangeClass(cell.margin, cell.high)}></i></span>`}
    <span class="ladder ${ladderClass(levels.map(stepNameOf))}"></span>`;
}

/**
 * The cell of family `f` in column `c`, at power level `p`; `focusable` is true
 * for the one cell the Tab key reaches.
 */
export function cellTemplate({matrix, f, c, p, shows, focusable, open, unfolded}) {
  const levels = matrix.powers_w.map((_, level) => readCell(matrix, f, c, level));
  const cell = levels[p];
  const word = printed(cell, shows);
  return html`<td data-family=${cell.family.id} data-band=${cell.column.id} data-power=${cell.power} ?data-open=${open}>
    <button data-row=${f} data-column=${c} tabindex=${focusable ? 0 : -1} aria-label=${spokenCell(cell)}
      data-step=${stepNameOf(cell)} ?data-undecided=${cell.undecided}>
      <span class=${word.length > 5 ? 'number long' : 'number'}>${word}</span>
      ${unfolded ? rungs(levels, p) : folded(cell, levels)}
    </button>
  </td>`;
}

/** A cell before the first answer: the same room, no number. */
export const emptyCell = () => html`<td><span class="empty"></span></td>`;
