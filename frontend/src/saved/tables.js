/**
 * The page that needs no script: matrices as plain coloured tables with short derivations.
 *
 * It stands inside the live page's element: a reader whose device runs no scripts has the tables, and everybody else
 * sees the live page instead. The build and a page that saves itself make it alike, of the core's answers.
 */
import {readCell, signedWords} from '../shared/margins/reading.js';
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
  '<p>How much power each coaxial connector takes on each band: margins in decibels of power.' +
  ' These are built-in tables; with scripts on, the live page stands here.</p>' +
  '<p><b>On a tablet that shows a saved file without scripts:</b> open the served page once in the browser' +
  ' and add it to the home screen; it then works with no network.</p>';

const READING =
  '<p>A margin is the power a joint takes over the power asked for, in dB, by the most cautious figures.' +
  ' RL 26: on receive, return loss 26 dB, enough. A refused cell says why: RL 8, return loss 8 dB, less than' +
  ' asked for; freq, no published figure so high; TE11, above the cutoff; rx only; hot; wet. What a number' +
  ' leaves open is listed under its table.</p>';

/** How the tables are read: the key to the colours in one line. */
export function legendMarkup() {
  const steps = STEPS.map(({id, words}) => `<td data-step=${id}><b>${words}</b> ${stepRange(id)}</td>`).join('');
  const key = `<table class="plain key"><caption>Margin, dB</caption><tr>${steps}</tr></table>`;
  return `<section><h2>Reading the tables</h2>${key}${READING}</section>`;
}

/** The marks of a matrix, each with its words and the cells that have it. */
function marksMarkup(matrix) {
  const {families, columns} = matrix;
  /** @type {Map<string, string[]>} */
  const found = new Map();
  for (const [f, {name}] of families.entries()) {
    const bands = new Map();
    for (const [c, column] of columns.entries())
      for (const [, words] of signedWords(readCell(matrix, f, c, 0)))
        bands.set(words, [...(bands.get(words) ?? []), column.name]);
    for (const [words, on] of bands) {
      const where = on.length === columns.length ? 'all bands' : on.join(', ');
      found.set(words, [...(found.get(words) ?? []), `${name} on ${where}`]);
    }
  }
  if (found.size === 0) return '';
  const lines = [...found].map(([words, where]) => `${words}: ${where.join('; ')}`);
  return `<details><summary>What to know beside the numbers</summary>${listMarkup(lines)}</details>`;
}

/** @param {Situation} situation */
export function matrixMarkup({heading, words, matrix}) {
  const heads = matrix.columns.map(({name}) => `<th scope=col>${escaped(name)}`).join('');
  const cells = (f) => matrix.columns.map((_, c) => cellMarkup(readCell(matrix, f, c, 0))).join('');
  const rows = matrix.families.map(({name}, f) => `<tr><th scope=row>${escaped(name)}${cells(f)}`).join('');
  return (
    `<section><h2>${escaped(heading)}</h2><p>${escaped(words)}</p>` +
    `<div class=scroll><table class=plain><caption>Margin in dB, ${escaped(heading)}</caption>` +
    `<thead><tr><th scope=col>Connector${heads}<tbody>${rows}</table></div>${marksMarkup(matrix)}</section>`
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
    `<section><h2>Derivations</h2><p>${escaped(words)}, by the cautious end of its ratings.` +
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
