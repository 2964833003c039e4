/**
 * What is drawn in a cell beside its number, where it is asked for: the letters of its marks, the range from the most
 * cautious to the most generous figures on a thread with an upright line at 0 dB, and the ladder with a rung for each
 * power level, the one shown underlined.
 *
 * Nothing here is parsed as markup, and styles are set by script, which a strict policy of a host lets be.
 */
import {signsOf, stepNameOf} from './reading.js';

/** @import {MatrixCell} from './reading.js' */

/** The thread spans this many dB to both sides of the limit. */
const RANGE_DB = 20;

const place = (db) => `${((Math.min(Math.max(db, -RANGE_DB), RANGE_DB) + RANGE_DB) / (2 * RANGE_DB)) * 100}%`;

function made(name, className, ...children) {
  const element = document.createElement(name);
  element.className = className;
  element.append(...children);
  return element;
}

/** @param {MatrixCell} cell - with a margin */
function range({margin, high}) {
  const bar = made('i', '');
  bar.style.setProperty('--low', place(margin));
  bar.style.setProperty('--high', place(high));
  return made('span', 'range', bar);
}

function ladder(levels, p) {
  const rungs = levels.map((cell, level) => {
    const rung = made('i', '');
    rung.dataset.step = stepNameOf(cell);
    rung.toggleAttribute('data-chosen', level === p);
    return rung;
  });
  return made('span', 'ladder', ...rungs);
}

/**
 * The drawing of a cell; its spoken name says it in words.
 *
 * @param {MatrixCell[]} levels - the cell at every power level
 * @param {number} p - the level that is shown
 */
export function marksOf(levels, p) {
  const cell = levels[p];
  const signs = made('b', '');
  // drawn by the style sheet, or they would count as text of the cell
  signs.dataset.signs = signsOf(cell);
  const all = made('span', 'marks', signs);
  if (cell.margin !== null) all.append(range(cell));
  all.append(ladder(levels, p));
  all.ariaHidden = 'true';
  return all;
}

/** Rules for that drawing, which takes the lower part of its cell. */
export const MARK_RULES = `
.marks { display: grid; grid-template-rows: 1em 5px 6px; gap: 1px; padding: 0 3px; font-size: 0.75em; line-height: 1; }
.marks b { overflow: clip; white-space: nowrap; font-weight: 600; letter-spacing: 0.04em; }
.marks b::before { content: attr(data-signs); }
.marks .range {
  grid-row: 2; position: relative; background: linear-gradient(currentColor 0 0) center/1px 100% no-repeat;
}
.marks .range i {
  position: absolute; top: 1px; height: 3px; min-width: 3px; left: var(--low); right: calc(100% - var(--high));
  background: currentColor;
}
.ladder { grid-row: 3; display: flex; gap: 1px; height: 6px; outline: 1px solid var(--card); }
.ladder i { flex: 1; }
.ladder [data-chosen] { box-shadow: inset 0 -2px currentColor; }
`;
