/** One cell of the matrix: folded into number, range, marks and ladder, or unfolded into a line per power level. */
import {html, nothing, render} from 'lit';
import {ladderClass} from '../shared/margins/ladder.js';
import {rangeClass} from '../shared/margins/range.js';
import {marginWord, printed, readCell, signsOf, spokenCell, stepNameOf} from '../shared/margins/reading.js';
import {stepOf} from '../shared/margins/scale.js';

/** What is marked of the whole row stands on the chosen line alone. */
function rung(cell, chosen) {
  const letters = signsOf({...cell, lowerFromMemory: chosen && cell.lowerFromMemory});
  return html`<span class="rung" data-power=${cell.power} data-step=${stepNameOf(cell)} ?data-chosen=${chosen}
    ?data-undecided=${cell.undecided}>${letters ? html`<small>${letters}</small>` : nothing}${marginWord(cell)}</span>`;
}

const rungs = (levels, p) =>
  html`<span class="rungs" aria-hidden="true">${levels.map((cell, level) => rung(cell, level === p))}</span>`;

/**
 * Draw a bare line and a marked one, out of sight: a page that prints itself
 * is paused, and Lit can then draw no template for the first time.
 */
export function readyForPaper() {
  const bare = {power: 0, margin: 0, marks: []};
  render(rungs([bare, {...bare, lowerFromMemory: true}], 1), document.createDocumentFragment());
}

const bar = (cell) => (cell.margin === null ? nothing : html`<i class=${rangeClass(cell.margin, cell.high)}></i>`);

/** What the style sheet draws around the number of a folded cell; its spoken name says it in words. */
const around = (cell, levels) => ({
  ladder: ladderClass(levels.map(stepNameOf), stepNameOf(cell)),
  letters: signsOf(cell) || nothing,
  high: cell.undecided ? stepOf(cell.high) : nothing,
});

const BARE = {ladder: nothing, letters: nothing, high: nothing};

/**
 * The cell of family `f` in column `c`, at power level `p`; `focusable` is true
 * for the one cell the Tab key reaches.
 */
export function cellTemplate({matrix, f, c, p, shows, focusable, open, unfolded}) {
  const levels = matrix.powers_w.map((_, level) => readCell(matrix, f, c, level));
  const cell = levels[p];
  const word = printed(cell, shows);
  const {ladder, letters, high} = unfolded ? BARE : around(cell, levels);
  return html`<td data-family=${cell.family.id} data-band=${cell.column.id} data-power=${cell.power} ?data-open=${open}>
    <button class=${ladder} data-letters=${letters} data-high=${high} data-row=${f} data-column=${c}
      tabindex=${focusable ? 0 : -1} aria-label=${spokenCell(cell)}
      data-step=${stepNameOf(cell)} ?data-undecided=${cell.undecided}>
      <span class=${word.length > 5 ? 'number long' : 'number'}>${word}</span>
      ${unfolded ? rungs(levels, p) : bar(cell)}
    </button>
  </td>`;
}

/** A cell before the first answer: the same room, no number. */
export const emptyCell = () => html`<td><span class="empty"></span></td>`;
