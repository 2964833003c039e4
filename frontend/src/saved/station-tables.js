/**
 * The tables that need no script of a page that carries a reader's own station: its matrix, its lines with a fitting
 * sheet for every joint, its kit, and a checklist to tick on paper.
 */
import {checklistOf} from '../shared/checklist/items.js';
import {entriesOf, valuesOf} from '../shared/joints/book.js';
import {dueOf} from '../shared/joints/due.js';
import {jointsOf, spokenCode} from '../shared/joints/identity.js';
import {FIELD_WORDS, saidText} from '../shared/joints/words.js';
import {LIMIT_NAMES} from '../shared/margins/limits.js';
import {decibels, frequency, power, roundedDown} from '../shared/text/format.js';
import {sweptJoint} from '../shared/sweeps/of-joint.js';
import {escaped, listMarkup, tableMarkup} from './markup.js';
import {cautionsMarkup, legendMarkup, matrixMarkup} from './tables.js';

/**
 * @import {FittedLine} from '../shared/checklist/items.js'
 * @import {Book} from '../shared/joints/book.js'
 * @import {Joint} from '../shared/joints/identity.js'
 * @import {KeptSweep} from '../shared/sweeps/history.js'
 *
 * @typedef {FittedLine & {line: any}} LineAnswers - what the core says of one line
 *
 * @typedef {object} StationAnswers
 * @property {string} name - of what is carried
 * @property {string} date
 * @property {string} words - the station in words
 * @property {string} heading - of the matrix
 * @property {any} matrix - null where the core refused it
 * @property {LineAnswers[]} lines
 * @property {{ports: string[], answer: any} | null} kit
 * @property {Book} book - the joint book
 * @property {KeptSweep[]} sweeps
 * @property {string[]} ticked - boxes of the checklist, by their ids
 * @property {string[]} refused - sentences about what could not be computed
 * @property {string[]} cautions
 */

const BOX = '☐ ';
const TICKED = '☑ ';
const NOTHING = '–';

const orNothing = (value, words) => (value === null || value === undefined ? NOTHING : words(value));
const loss = (db) => `${db.toFixed(2)} dB`;

const introduction = ({name, date, words}) =>
  `<h1>${escaped(name || 'My station')}</h1><p>${escaped(date)}. ${escaped(words)}</p>` +
  '<p>Tables of this station as it was saved; with scripts on, the live page stands here.</p>';

function partRow(part, at) {
  const margin = part.refusal || orNothing(part.margin_db, (db) => `${decibels(db)} dB`);
  const limited = part.binding ? (LIMIT_NAMES[part.binding] ?? 'Rated power') : NOTHING;
  const largest = orNothing(part.largest_power_w, (watts) => power(roundedDown(watts, 3)));
  return [`${at + 1} ${part.name}`, margin, limited, largest, orNothing(part.loss_db, loss)];
}

function lineMarkup({name, line}) {
  const heads = ['Part', 'Margin', 'Limited by', 'Largest safe power', 'Loss'];
  const at = `At ${frequency(line.frequency_hz)} with ${power(line.power_w)}`;
  return (
    `<section><h2>Line: ${escaped(name)}</h2><p>${escaped(line.verdict)}</p>` +
    `<p>${escaped(at)}: loss ${loss(line.loss_db)}, SWR at the transmitter ${line.input.vswr.toFixed(2)}.</p>` +
    `${tableMarkup(`Parts of ${name}, from the transmitter`, heads, line.parts.map(partRow))}</section>`
  );
}

const texts = (all) => all.map(({text}) => text);

/** The same wherever the page is saved anew: "2026-11-29 14:05". */
const inUniversalTime = (at) => at.slice(0, 16).replace('T', ' ');

/** What the joint book says of a joint: what counts, every entry, and its sweeps over time. */
function recordMarkup(joint, sheet, line, {book, sweeps}) {
  const entries = entriesOf(book, joint.code);
  const swept = sweptJoint(sweeps, line, joint);
  if (entries.length + swept.length === 0) return '';
  const values = valuesOf(entries);
  const due = dueOf(values, sheet.inspection.interval_months);
  const told = Object.entries(FIELD_WORDS)
    .filter(([field]) => values[field])
    .map(([field, words]) => `${words}: ${saidText(field, values[field])}`);
  const rows = entries.map(({at, field, value}) => [inUniversalTime(at), FIELD_WORDS[field], saidText(field, value)]);
  const excesses = swept.map(({date, excess, verdict}) => [date, orNothing(excess, (one) => one.toFixed(3)), verdict]);
  const table = (caption, heads, all) => (all.length > 0 ? tableMarkup(`${caption} ${joint.code}`, heads, all) : '');
  return (
    `<p><b>Joint book</b></p>${listMarkup([...told, ...(due ? [`Next inspection: ${due}`] : [])])}` +
    table('Every entry of', ['Written (UTC)', 'Of', 'Entry'], rows) +
    table('Sweeps of', ['Day', 'Excess reflection', 'Result of the sweep'], excesses)
  );
}

/**
 * @param {any} sheet
 * @param {Joint} joint
 * @param {string} line
 * @param {StationAnswers} answers
 */
function sheetMarkup(sheet, joint, line, answers) {
  const part = (heading, lines) => (lines.length > 0 ? `<p><b>${escaped(heading)}</b></p>${listMarkup(lines)}` : '');
  const {inspection, label, sealing, torque} = sheet;
  return (
    `<details><summary>${escaped(sheet.heading)} <small>${spokenCode(joint.code)}</small></summary>` +
    recordMarkup(joint, sheet, line, answers) +
    part('Tools', texts(sheet.tools)) +
    part(
      'Steps',
      sheet.steps.map(({at, text}) => BOX + (at ? `${at}: ${text}` : text)),
    ) +
    part('Tightening', torque.tightened ? [torque.sentence] : []) +
    part('Sealing', [sealing.sentence, ...sealing.layers.map(({text}) => BOX + text)]) +
    part('Expect', [
      `${frequency(label.frequency_hz)}: loss ${loss(label.expected_loss_db)},` +
        ` return loss at least ${label.least_return_loss_db.toFixed(0)} dB`,
    ]) +
    part('Inspection', [`Inspect every ${inspection.interval_months} months.`, ...texts(inspection.checks)]) +
    '</details>'
  );
}

/** @param {LineAnswers} line @param {StationAnswers} answers */
function sheetsMarkup(line, answers) {
  const joints = jointsOf(line);
  const sheets = line.sheets.joints.map((sheet, at) => sheetMarkup(sheet, joints[at], line.name, answers));
  return `<section><h2>Fitting sheets: ${escaped(line.name)}</h2>${sheets.join('')}</section>`;
}

/**
 * When each joint that the book knows is to be inspected, the soonest first; the reader's clock is not known here.
 *
 * @param {StationAnswers} answers
 */
function dueMarkup({book, lines}) {
  const rows = lines.flatMap((line) => {
    const joints = jointsOf(line);
    return line.sheets.joints.flatMap(({inspection, label}, at) => {
      const values = valuesOf(entriesOf(book, joints[at].code));
      const due = dueOf(values, inspection.interval_months);
      const state = values.state ? saidText('state', values.state) : NOTHING;
      return due || values.state ? [[`${line.name}, ${label.name}`, due || NOTHING, state]] : [];
    });
  });
  if (rows.length === 0) return '';
  rows.sort(([, one], [, other]) => (one < other ? -1 : 1));
  const heads = ['Joint', 'Next inspection', 'State'];
  return `<section><h2>Joint book</h2>${tableMarkup('When each joint is to be inspected', heads, rows)}</section>`;
}

function kitMarkup({ports, answer}) {
  const adapters = answer.adapters.map(({name, count}) => [`${BOX}${name}`, count]);
  const pairs = answer.pairs.map(({ports: [one, other], joined}) => [
    `${ports[one]} to ${ports[other]}`,
    joined === null ? 'can’t be joined' : joined.adapters.map(({name}) => name).join(', ') || 'directly',
  ]);
  return (
    `<section><h2>Kit</h2><p>${escaped(answer.verdict)}</p>` +
    (adapters.length > 0 ? tableMarkup('Adapters to carry', ['Adapter', 'How many'], adapters) : '') +
    `${tableMarkup('How each pair is joined', ['Pair', 'By'], pairs)}</section>`
  );
}

/**
 * What to pack for these lines and this kit, and what to do on arrival, ticked as it was.
 *
 * @param {StationAnswers} answers
 */
function checklistMarkup({lines, kit, ticked}) {
  const {pack, arrival} = checklistOf(lines, kit?.answer);
  const box = ({id, words}) => (ticked.includes(id) ? TICKED : BOX) + words;
  const groups = (all) =>
    all.map(({heading, items}) => `<p><b>${escaped(heading)}</b></p>${listMarkup(items.map(box))}`);
  const part = (heading, all) => (all.length > 0 ? `<h3>${heading}</h3>${groups(all).join('')}` : '');
  if (pack.length + arrival.length === 0) return '';
  return (
    `<section><h2>Checklist</h2>${part('To pack', pack)}` + `${part('On arrival, before power', arrival)}</section>`
  );
}

/** @param {StationAnswers} answers */
export function stationTables(answers) {
  const {heading, words, matrix, lines, kit, refused, cautions} = answers;
  return [
    introduction(answers),
    refused.length > 0 ? `<section><h2>Not computed</h2>${listMarkup(refused)}</section>` : '',
    matrix ? legendMarkup() + matrixMarkup({heading, words, matrix}) : '',
    dueMarkup(answers),
    ...lines.map(lineMarkup),
    kit ? kitMarkup(kit) : '',
    checklistMarkup(answers),
    ...lines.map((line) => sheetsMarkup(line, answers)),
    cautionsMarkup(cautions),
  ].join('');
}
