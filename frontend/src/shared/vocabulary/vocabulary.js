/**
 * What the page's forms offer and how they speak of it: made once of the start data, the views, and the packs in force.
 */
import {digits, quantity} from '../text/format.js';
import {roundedIn, scaleOf} from '../text/measures.js';
import {listsOf} from './lists.js';

/** The group of the fields whose names have no group in them. */
const UNGROUPED = 'matrix';

const joined = (parts) => Object.assign({}, ...parts);

const defaults = (fields) => Object.fromEntries(Object.entries(fields).map(([name, field]) => [name, field.default]));

/**
 * @import {Entry, Groups, Range, StartData} from './start-data.js'
 * @import {Lists} from './lists.js'
 * @import {Units} from '../text/measures.js'
 *
 * @typedef {object} Words - how a form speaks of a field
 * @property {string} label
 * @property {string} [unit] - where another than the core's is shown
 * @property {number} [factor] - from the number shown to the number sent
 * @property {Record<string, string>} [options] - the words for each choice
 * @property {Entry[]} [entries] - those that can be chosen
 * @property {Entry[]} [named] - those that several can be chosen of
 * @property {string} [slider] - linear or logarithmic
 * @property {number} [step] - of the slider
 * @property {string} [empty] - what it means that none is given
 *
 * @typedef {object} Speaker - a view, or what several views speak of
 * @property {string} [id] - of a view
 * @property {(start: StartData, lists: Lists) => Groups} [fields] - its groups of fields
 * @property {(lists: Lists) => Record<string, Words>} [words] - how its forms speak of them
 */

/** Those of a number that is sent. */
const SENT_DIGITS = 12;
const EDGE_DIGITS = 3;
/** Of a number that was typed in another unit than the one shown. */
const CONVERTED_DIGITS = 6;

/** Whether a number has as many digits as a conversion leaves: "100 m" is read as 328.084 ft, and is 100 m. */
const isConversion = (number) => String(number).replace(/\D|^[0.-]+/g, '').length >= CONVERTED_DIGITS;

/** An edge of a range in words, cut so that what is printed is allowed. */
function within(edge, cut) {
  if (edge === 0) return '0';
  const unit = 10 ** Math.min(Math.floor(Math.log10(Math.abs(edge))) - EDGE_DIGITS + 1, 0);
  return digits(Number((cut(Number((edge / unit).toPrecision(SENT_DIGITS))) * unit).toPrecision(SENT_DIGITS)), 6);
}

/** A control's name is "group.field", or the field's alone for the matrix. Ranges and units are the core's. */
export class Vocabulary {
  #given;
  /** Whether packs count, so that the numbers that came with the page are not those asked for. */
  isPacked;
  /** @type {Units} - what lengths, temperatures and torques are shown and typed in */
  units;
  /** The names of the views in the address. */
  views;
  lists;
  /** @type {Groups} */
  fields;
  /** @type {Record<string, Record<string, any>>} - the values of a first visit, by group and field */
  first;
  /** @type {Record<string, Words>} - by the control's name; a field without words of its own has those of the matrix */
  words;

  /**
   * @param {StartData} start
   * @param {Speaker[]} speakers
   * @param {{text: string}[]} packs - those in force
   * @param {Units} [units]
   */
  constructor(start, speakers, packs, units = 'metric') {
    this.#given = {start, speakers, packs};
    this.isPacked = packs.length > 0;
    this.units = units;
    this.views = speakers.flatMap(({id}) => id ?? []);
    this.lists = listsOf(start, packs, units);
    this.fields = joined(speakers.map(({fields}) => fields?.(start, this.lists)));
    this.first = Object.fromEntries(Object.entries(this.fields).map(([group, fields]) => [group, defaults(fields)]));
    this.words = joined(speakers.map(({words}) => words?.(this.lists)));
  }

  /**
   * The same with more packs laid over it.
   *
   * @param {{text: string}[]} packs
   */
  withPacks(packs) {
    const {start, speakers, packs: before} = this.#given;
    return new Vocabulary(start, speakers, [...before, ...packs], this.units);
  }

  /** @param {string} name */
  wordsOf(name) {
    return this.words[name] ?? this.words[name.split('.')[1]];
  }

  /**
   * The label of a control; undefined where there is none of that name.
   *
   * @param {string} name
   */
  labelOf(name) {
    return this.wordsOf(name)?.label;
  }

  /** @param {string} name */
  fieldOf(name) {
    const [field, group = UNGROUPED] = name.split('.').reverse();
    return this.fields[group]?.[field];
  }

  /** A value of a record, or what the core takes where it is left out. */
  valueOf(record, name) {
    return record?.[name.split('.')[1]] ?? this.fieldOf(name).default;
  }

  /** The unit of a field in metric figures. */
  #metricUnit(name) {
    return this.wordsOf(name).unit ?? this.fieldOf(name).unit ?? '';
  }

  #scale(name) {
    return scaleOf(this.#metricUnit(name), this.units);
  }

  #factor(name) {
    return this.wordsOf(name).factor ?? 1;
  }

  /** @param {string} name */
  unitOf(name) {
    return this.#scale(name).unit;
  }

  /**
   * Whether numbers are shown in another unit than they are sent in.
   *
   * @param {string} name
   */
  isConverted(name) {
    return this.#factor(name) !== 1 || this.#isForeign(name);
  }

  #isForeign(name) {
    return this.unitOf(name) !== this.#metricUnit(name);
  }

  /**
   * From the number shown to the number sent.
   *
   * @param {string} name
   * @param {number} number
   */
  sent(name, number) {
    const exact = this.#scale(name).sent(number) * this.#factor(name);
    return Number(exact.toPrecision(this.#isForeign(name) && isConversion(number) ? CONVERTED_DIGITS : SENT_DIGITS));
  }

  /**
   * What an arrow adds to the number shown.
   *
   * @param {string} name
   */
  stepOf(name) {
    const step = this.wordsOf(name).step ?? 1;
    if (!this.#isForeign(name)) return step;
    const {shown} = this.#scale(name);
    return 10 ** Math.floor(Math.log10(shown(step) - shown(0)));
  }

  /** @param {string} name */
  emptyOf(name) {
    return this.wordsOf(name).empty ?? 'not given';
  }

  /**
   * The number as shown, free of the noise a factor leaves behind, and rounded where it is converted.
   *
   * @param {string} name
   * @param {number} value
   */
  shown(name, value) {
    const number = this.#exactly(name, value);
    return this.#isForeign(name) ? roundedIn(number, this.unitOf(name)) : Number(number.toPrecision(SENT_DIGITS));
  }

  #exactly(name, value) {
    return this.#scale(name).shown(value / this.#factor(name));
  }

  /**
   * A number in the unit shown, with it; a power always in the prefix that makes it shortest.
   *
   * @param {string} name
   * @param {number} value
   */
  figure(name, value) {
    const [unit, number] = [this.unitOf(name), this.shown(name, value)];
    return unit === 'W' ? quantity(number, unit) : `${digits(number)} ${unit}`.trim();
  }

  /**
   * The range of a field, or of the entries of a list, in the unit shown.
   *
   * @param {string} name
   */
  rangeOf(name) {
    const field = this.fieldOf(name);
    const {min, max} = /** @type {Range} */ (field.type === 'list' ? field.items : field);
    const isForeign = this.#isForeign(name);
    const unit = this.unitOf(name);
    if (isForeign) {
      const [low, high] = [within(this.#exactly(name, min), Math.ceil), within(this.#exactly(name, max), Math.floor)];
      return `${low} to ${high} ${unit}`.trim();
    }
    const [low, high] = [min, max].map((edge) => this.figure(name, edge));
    // one unit is enough for both edges
    const [, own = ''] = /^\S+( .+)$/.exec(high) ?? [];
    const isOne = min === 0 || (own && low.endsWith(own));
    return `${isOne ? low.split(' ')[0] : low} to ${high}`;
  }

  /**
   * What a select offers: pairs of value and words.
   *
   * @param {string} name
   * @returns {[string, string][]}
   */
  optionsOf(name) {
    const {options, entries} = this.wordsOf(name);
    if (entries) return entries.map(({id, name: words}) => [id, words]);
    return Object.entries(options ?? {});
  }

  /**
   * What one of a field's choices is called; undefined where it has none of that id.
   *
   * @param {string} name
   * @param {string} id
   * @returns {string | undefined}
   */
  nameOf(name, id) {
    const named = this.wordsOf(name).named?.map((one) => [one.id, one.name]);
    return (named ?? this.optionsOf(name)).find(([one]) => one === id)?.[1];
  }

  /**
   * The names of all that can be chosen in a field.
   *
   * @param {string} name
   */
  namesOf(name) {
    const named = this.wordsOf(name).named?.map((one) => one.name);
    return (
      named ??
      this.optionsOf(name)
        .filter(([id]) => id !== '')
        .map(([, words]) => words)
    );
  }

  /**
   * A field's value in words, for a summary.
   *
   * @param {string} name
   * @param {any} value
   */
  spoken(name, value) {
    const {named, options} = this.wordsOf(name);
    if (value === null) return options?.[''] ?? this.emptyOf(name);
    if (name.endsWith('added_sealing')) return value ? 'yes' : 'no';
    if (named) return value.map((id) => this.nameOf(name, id) ?? id).join(', ');
    if (Array.isArray(value)) return value.map((number) => this.figure(name, number)).join(', ');
    if (typeof value === 'number' && !options) return this.figure(name, value);
    return this.nameOf(name, String(value)) ?? String(value);
  }
}

/** The bands of a state that its Region has; a name the page does not know goes to the core, which says so. */
export function bandsOf(state, {lists}) {
  const known = new Map(lists.bands.map((band) => [band.id, band]));
  return state.bands.filter((id) => known.get(id)?.regions.includes(String(state.region)) ?? true);
}
