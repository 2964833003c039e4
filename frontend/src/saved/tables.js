/**
 * The page that needs no script: matrices as plain coloured tables with short derivations.
 *
 * It stands inside the live page's element: a reader whose device runs no scripts has the tables, and everybody else
 * sees the live page instead. The build and a page that saves itself make it alike, of the core's answers.
 */
import {readCell} from '../shared/margins/reading.js';
import {STEPS, stepRange} from '../shared/margins/scale.js';
import {digits} from '../shared/text/format.js';
import {cellMarkup, escaped, listMarkup} from './markup.js';

/**
 * @import {Matrix} from '../shared/answers.js'
 *
 * @typedef {{heading: string, words: string, matrix: Matrix}} Situation - one table, and the station in words
 * @typedef {{cells: any[], words: string}} Derived - the core's answer about a cell of each family, and which
 */

const INTRODUCTION =
  '<h1>Jointwise</h1>' +
  '<p>How much power a coaxial joint stands: margins in decibels of power, family by family and band by band.' +
  ' These are built-in tables; with scripts on, the live page stands here.</p>' +
  '<p><b>On a tablet that shows a saved file without scripts:</b> open the served page once in the browser' +
  ' and add it to the home screen; it then works with no network.</p>';

const READING =
  '<p>0 dB is at the limit, more is room left. After the number, what limits it: con, heat of the contact;' +
  ' cab, heat of the cable; vol, voltage; ? where sources differ on which side of the limit it lies. Raised' +
  ' signs: f above the customary frequency, w weather, v vibration, s more swaps than it is good for, c cable,' +
  ' t cold, m match in doubt, ↓ a power figure from memory is lower. RL 26: in receive, return loss 26 dB,' +
  ' enough. A refused cell says why: RL 8, return loss 8 dB, less than asked for; freq, no published figure so' +
  ' high; TE11, above the cutoff; rx only; hot; wet.</p>';

/** How the tables are read. */
export function legendMarkup() {
  const unit = (at) => (at > 0 && at < STEPS.length - 1 ? ' dB' : '');
  const steps = STEPS.map((_, at) => `<td data-step=${at}>${stepRange(at)}${unit(at)}</td>`).join('');
  return `<section><h2>Reading the tables</h2>${READING}<table class=plain><tr>${steps}</tr></table></section>`;
}

/** @param {Situation} situation */
export function matrixMarkup({heading, words, matrix}) {
  const heads = matrix.columns.map(({name}) => `<th scope=col>${escaped(name)}`).join('');
  const cells = (f) => matrix.columns.map((_, c) => cellMarkup(readCell(matrix, f, c, 0))).join('');
  const rows = matrix.families.map(({name}, f) => `<tr><th scope=row>${escaped(name)}${cells(f)}`).join('');
  return (
    `<section><h2>${escaped(heading)}</h2><p>${escaped(words)}</p>` +
    `<div class=scroll><table class=plain><caption>Margin in dB, ${escaped(heading)}</caption>` +
    `<thead><tr><th scope=col>Family${heads}<tbody>${rows}</table></div></section>`
  );
}

const named = ({symbol, value, unit}) => `${symbol} = ${digits(value)} ${unit === '1' ? '' : unit}`.trim();
const given = ({inputs}) => inputs.map(({symbol, value}) => `${symbol} ${digits(value)}`).join(', ');

/**
 * A limit or the match: its sentence and the steps of its cautious end but for those told, which it adds to.
 *
 * The heat of a contact begins with that of its cable: told twice they would be a quarter of the page.
 */
function limitMarkup(name, {sentence, steps}, titles, told) {
  const lines = steps
    .filter(({end}) => end === 'low')
    .map((step) => `${titles[step.formula]}: ${named(step.result)} from ${given(step)}`);
  const own = [...new Set(lines)].filter((line) => !told.has(line));
  for (const line of own) told.add(line);
  const list = own.length > 0 ? `<ol>${own.map((line) => `<li>${escaped(line)}`).join('')}</ol>` : '';
  return `<p><b>${escaped(name)}.</b> ${escaped(sentence)}</p>${list}`;
}

function cellDerived(cell, titles) {
  const told = new Set();
  const limits = cell.limits.map((limit) => limitMarkup(limit.name, limit, titles, told)).join('');
  const match = limitMarkup('Return loss', cell.match, titles, told);
  const gates = listMarkup(cell.gates.map(({name, sentence}) => `${name}: ${sentence}`));
  return (
    `<details><summary>${escaped(cell.family.name)}</summary><p>${escaped(cell.verdict)}</p>${limits}${match}` +
    `<p>Gates</p>${gates}</details>`
  );
}

/**
 * @param {Derived} derived
 * @param {{formulas: {id: string, title: string}[]}} catalogue
 */
export function derivationsMarkup({cells, words}, {formulas}) {
  const titles = Object.fromEntries(formulas.map(({id, title}) => [id, title]));
  const sheets = cells.map((cell) => cellDerived(cell, titles)).join('');
  return (
    `<section><h2>Derivations</h2><p>${escaped(words)}, the cautious end of its ratings.` +
    ` A step that several limits share is told once.</p>${sheets}</section>`
  );
}

/** @param {string[]} cautions */
export const cautionsMarkup = (cautions) => `<section><h2>Before you work on it</h2>${listMarkup(cautions)}</section>`;

/**
 * All that the built page holds.
 *
 * @param {{situations: Situation[], derived: Derived, catalogue: any}} answers
 */
export const builtInTables = ({situations, derived, catalogue}) =>
  [
    INTRODUCTION,
    legendMarkup(),
    ...situations.map(matrixMarkup),
    derivationsMarkup(derived, catalogue),
    cautionsMarkup(catalogue.cautions),
  ].join('');
