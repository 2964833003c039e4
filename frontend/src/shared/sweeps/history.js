/** Sweeps kept by line and day, as plain data. */
import {list, record, refuse, text} from '../state/check.js';
import * as documentFile from '../state/document-file.js';

/**
 * @typedef {object} KeptSweep
 * @property {string} date
 * @property {string} line - its name
 * @property {number} ports
 * @property {string} name - of the file
 * @property {string} text - the file
 * @property {string} verdict
 * @property {{element: number, name: string, excess: number | null}[]} joints - of a line, their excess reflections
 * @property {number | null} resistance_ohm - of a part
 */

export const MOST_KEPT = 200;
const KIND = {format: 'jointwise sweeps', version: 1, key: 'sweeps'};
const LONGEST = {line: 60, name: 200, verdict: 2000, text: 8_000_000};
const DAY = /^\d{4}-\d{2}-\d{2}$/;

/**
 * A sweep to keep, of the core's answer.
 *
 * @returns {KeptSweep}
 */
export function entryOf({date, line, file, result}) {
  const joints = (result.line?.joints ?? []).map(({element, name, excess}) => ({element, name, excess}));
  return {
    date,
    line,
    ports: result.ports,
    name: file.name,
    text: file.text,
    verdict: result.verdict,
    joints,
    resistance_ohm: result.part?.resistance_ohm ?? null,
  };
}

/** What tells a sweep from the others: its line, day and file. */
export const keyOf = ({line, date, name}) => JSON.stringify([line, date, name]);

/** By day, the newest last; the oldest go where there are too many. */
export const byDay = (entries) =>
  [...entries].sort((one, other) => one.date.localeCompare(other.date)).slice(-MOST_KEPT);

/** The list with one more, by day, the newest last; one of the same line, day and file takes the old one's place. */
export function added(entries, entry) {
  return byDay([...entries.filter((one) => keyOf(one) !== keyOf(entry)), entry]);
}

/** What is drawn of one line's sweeps over time; nothing where fewer than two are kept. */
export function historyOf(entries, line) {
  const own = entries.filter((entry) => entry.line === line);
  const part = own.filter(({ports}) => ports === 2);
  if (part.length > 1) {
    return {
      title: 'resistance, Ω',
      series: [
        {name: 'in series', dates: part.map(({date}) => date), values: part.map(({resistance_ohm: ohm}) => ohm)},
      ],
    };
  }
  const swept = own.filter(({ports}) => ports === 1);
  if (swept.length < 2) return undefined;
  const joints = new Map(swept.flatMap((entry) => entry.joints.map(({element, name}) => [element, name])));
  const series = [...joints].map(([element, name]) => ({
    name: `${element + 1} · ${name}`,
    dates: swept.map(({date}) => date),
    values: swept.map((entry) => entry.joints.find((joint) => joint.element === element)?.excess ?? null),
  }));
  return {title: 'excess reflection', series};
}

const orNumber = (at, value) => {
  if (value !== null && !Number.isFinite(value)) refuse(at, value, 'a number or null');
};

function checkedJoint(at, joint) {
  const {element, name, excess} = record(at, joint);
  if (!Number.isInteger(element) || element < 0 || element > 59)
    refuse(`${at}.element`, element, 'a whole number from 0 to 59');
  text(`${at}.name`, name, LONGEST.line);
  orNumber(`${at}.excess`, excess);
  return {element, name, excess};
}

/** Entries that come from outside. Throws a RangeError whose message is for the reader. */
export function checkedEntries(value) {
  return list('sweeps', value, 0, MOST_KEPT, 'sweeps').map((entry, at) => {
    const path = `sweeps[${at}]`;
    const {date, ports, joints, resistance_ohm, ...texts} = record(path, entry);
    if (typeof date !== 'string' || !DAY.test(date) || Number.isNaN(Date.parse(date)))
      refuse(`${path}.date`, date, 'a day as 2026-11-25');
    if (ports !== 1 && ports !== 2) refuse(`${path}.ports`, ports, '1 or 2');
    for (const [name, longest] of Object.entries(LONGEST)) text(`${path}.${name}`, texts[name], longest);
    orNumber(`${path}.resistance_ohm`, resistance_ohm);
    const read = list(`${path}.joints`, joints, 0, 60, 'joints').map((joint, place) =>
      checkedJoint(`${path}.joints[${place}]`, joint),
    );
    return {
      date,
      line: texts.line,
      ports,
      name: texts.name,
      text: texts.text,
      verdict: texts.verdict,
      joints: read,
      resistance_ohm,
    };
  });
}

/** What a file of the entries holds. */
export const contentOf = (sweeps) => documentFile.contentOf(KIND, sweeps);

/** The entries of a file; throws as any document file does. */
export const fromFile = (content) => documentFile.fromFile(KIND, content, checkedEntries);
