/**
 * The tables that need no script of a page that carries a reader's own station: its matrix, its lines with a fitting
 * sheet for every joint, its kit, and a checklist to tick on paper.
 */
import {LIMIT_NAMES} from '../shared/margins/limits.js';
import {decibels, frequency, power, roundedDown} from '../shared/text/format.js';
import {escaped, listMarkup, tableMarkup} from './markup.js';
import {cautionsMarkup, legendMarkup, matrixMarkup} from './tables.js';

/**
 * @typedef {object} LineAnswers - what the core says of one line
 * @property {string} name
 * @property {any} line
 * @property {any} sheets
 *
 * @typedef {object} StationAnswers
 * @property {string} name - of what is carried
 * @property {string} date
 * @property {string} words - the station in words
 * @property {string} heading - of the matrix
 * @property {any} matrix - null where the core refused it
 * @property {LineAnswers[]} lines
 * @property {{ports: string[], answer: any} | null} kit
 * @property {string[]} refused - sentences about what could not be computed
 * @property {string[]} cautions
 */

const BOX = '☐ ';
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

function sheetMarkup(sheet) {
  const part = (heading, lines) => (lines.length > 0 ? `<p><b>${escaped(heading)}</b></p>${listMarkup(lines)}` : '');
  const {inspection, label, sealing, torque} = sheet;
  const due = inspection.due
    ? `Next inspection ${inspection.due}.`
    : `Inspect every ${inspection.interval_months} months.`;
  return (
    `<details><summary>${escaped(sheet.heading)}</summary>` +
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
    part('Inspection', [due, ...texts(inspection.checks)]) +
    '</details>'
  );
}

const sheetsMarkup = ({name, sheets}) =>
  `<section><h2>Fitting sheets: ${escaped(name)}</h2>${sheets.joints.map(sheetMarkup).join('')}</section>`;

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

/** What to pack for these lines and this kit, and what to do on arrival. */
function checklistMarkup({lines, kit}) {
  const joints = lines.flatMap(({name, sheets}) => sheets.joints.map((joint) => ({name, joint})));
  const tools = new Set(joints.flatMap(({joint}) => texts(joint.tools)));
  const adapters = (kit?.answer.adapters ?? []).map(({name, count}) => `${count} × ${name}`);
  const spares = new Set(joints.map(({joint}) => `A spare pair of ${joint.family_name}`));
  const pack = [...adapters, ...tools, ...spares].map((one) => BOX + one);
  const arrival = joints.map(({name, joint}) => `${BOX}${name}, ${joint.heading}: looked at, tightened, dry`);
  if (pack.length + arrival.length === 0) return '';
  return (
    '<section><h2>Checklist</h2>' +
    (pack.length > 0 ? `<h3>To pack</h3>${listMarkup(pack)}` : '') +
    (arrival.length > 0 ? `<h3>On arrival, before power</h3>${listMarkup(arrival)}` : '') +
    '</section>'
  );
}

/** @param {StationAnswers} answers */
export function stationTables(answers) {
  const {heading, words, matrix, lines, kit, refused, cautions} = answers;
  return [
    introduction(answers),
    refused.length > 0 ? `<section><h2>Not computed</h2>${listMarkup(refused)}</section>` : '',
    matrix ? legendMarkup() + matrixMarkup({heading, words, matrix}) : '',
    ...lines.map(lineMarkup),
    kit ? kitMarkup(kit) : '',
    checklistMarkup(answers),
    ...lines.map(sheetsMarkup),
    cautionsMarkup(cautions),
  ].join('');
}
