/**
 * Reading a snapshot: text that came from anywhere into data of a known shape, or a sentence why not.
 *
 * @typedef {object} Ends - what the limits of a matrix allow, and the return loss, at its cautious and its generous end
 * @property {[?number, ?number][][]} contact_allowed_w
 * @property {[?number, ?number][][]} cable_allowed_w
 * @property {[?number, ?number][][]} voltage_allowed_w
 * @property {[?number, ?number][][]} return_loss_db
 *
 * @typedef {object} Snapshot
 * @property {Record<string, any>} request
 * @property {Record<string, string>} names - of what the request names by an id
 * @property {import('../shared/answers.js').Matrix & Ends} matrix
 * @property {any} derivations - the steps of all cells, each thing in them kept once
 * @property {string[]} cautions
 * @property {{name: string, date: string}} [station] - whose it is, and of what day, as 2026-11-29
 */
import {
  Misshapen,
  boolean,
  day,
  dictionary,
  exactly,
  index,
  list,
  number,
  oneOf,
  optional,
  orNull,
  places,
  record,
  text,
} from './shape.js';

/** The core packs all families on all bands into three quarters of it. */
export const LONGEST_TEXT = 1_000_000;
const MOST_ROWS = 100;
const MOST_COLUMNS = 300;
const MOST_LEVELS = 24;
/** More than any table of steps has. */
const MANY = 50_000;

const name = text(200);
const sentence = text(1000);
const LIMITS = ['contact', 'cable', 'voltage'];
/** A cell has a chain of steps for each limit and one for the match. */
const CHAINS = LIMITS.length + 1;

const plain = (value, path) => {
  if (Array.isArray(value)) return list(plainOne, 0, MOST_COLUMNS)(value, path);
  return plainOne(value, path);
};
const plainOne = (value, path) => {
  if (value === null || typeof value === 'boolean') return value;
  return typeof value === 'number' ? number(value, path) : name(value, path);
};

const family = record({
  id: name,
  name,
  summary: sentence,
  receive_only: boolean,
  gate_reasons: dictionary(sentence, 50),
});
const column = record({id: name, name, low_hz: number, high_hz: number});
const gate = record({id: name, name, hard: boolean});

/** Tables [family][column] of something, in the size of the matrix they belong to. */
const perCell =
  (check) =>
  (value, path, {families, columns}) =>
    list(list(check, columns.length), families.length)(value, path);
const perPower = (check) => (value, path, matrix) => perCell(list(check, matrix.powers_w.length))(value, path, matrix);
const ends = perCell(list(orNull(number), 2));

const matrix = record({
  families: list(family, 1, MOST_ROWS),
  columns: list(column, 1, MOST_COLUMNS),
  powers_w: list(number, 1, MOST_LEVELS),
  limits: list(oneOf(LIMITS), LIMITS.length),
  gates: list(gate, 0, 31),
  margin_db: perPower(orNull(number)),
  margin_high_db: perPower(orNull(number)),
  binding: perPower(index(LIMITS.length, -1)),
  refused_by: (value, path, made) => perPower(index(made.gates.length, -1))(value, path, made),
  marks: (value, path, made) => perPower(index(2 ** made.gates.length))(value, path, made),
  undecided: perPower(boolean),
  rating_below: (value, path, {families}) => list(boolean, families.length)(value, path),
  contact_allowed_w: ends,
  cable_allowed_w: ends,
  voltage_allowed_w: ends,
  return_loss_db: ends,
  largest_power_w: perCell(orNull(number)),
});

const symbol = record({symbol: name, meaning: sentence, unit: name});
const formula = record({
  id: name,
  title: name,
  mathml: text(20_000),
  source: sentence,
  inputs: list(symbol, 0, 30),
  result: symbol,
});

const derivations = (value, path, {matrix: {families, columns}}) =>
  record({
    formulas: list(formula, 1, 300),
    purposes: list(name, 0, 300),
    sources: list(sentence, 0, 1000),
    kinds: list(name, 0, 50),
    values: (all, where, {sources, kinds}) =>
      list(places(number, index(sources.length, -1), index(kinds.length, -1)), 0, MANY)(all, where),
    steps: (all, where, made) => list(step(made), 0, MANY)(all, where),
    chains: (all, where, made) => list(list(index(made.steps.length), 0, 200), 0, MANY)(all, where),
    cells: (all, where, made) =>
      list(list(list(index(made.chains.length), CHAINS), columns.length), families.length)(all, where),
  })(value, path);

/** A step has as many values as its formula has inputs. */
const step =
  ({formulas, purposes, values}) =>
  (value, path) => {
    const [which] = places(
      index(formulas.length),
      (any) => any,
      (any) => any,
      number,
    )(value, path);
    const inputs = list(index(values.length), formulas[which].inputs.length);
    return places(index(formulas.length), index(purposes.length), inputs, number)(value, path);
  };

/** What the page and a station file add to the core's answer; a server's snapshot has none. */
const station = optional(record({name, date: day}));

const snapshot = record({
  format: exactly('jointwise snapshot 2'),
  request: dictionary(plain, 60),
  names: dictionary(name, 10),
  matrix,
  derivations,
  cautions: list(sentence, 0, 30),
  station,
});

/**
 * The snapshot in a text. Throws a Misshapen whose message says what is wrong with it.
 *
 * @param {string} given
 * @returns {Snapshot}
 */
export function readSnapshot(given) {
  if (given.length > LONGEST_TEXT) throw new Misshapen(`it must have at most ${LONGEST_TEXT} characters`);
  let value;
  try {
    value = JSON.parse(given);
  } catch {
    throw new Misshapen('it must be JSON');
  }
  return /** @type {Snapshot} */ (snapshot(value, ''));
}
