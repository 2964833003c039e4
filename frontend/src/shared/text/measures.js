/**
 * Lengths, temperatures and torques as the reader measures them: metric, or in US units. The page sets which when the
 * reader does, so that no function has to pass them on; another can be named.
 */
import {digits, quantity} from './format.js';
import {unitTyped} from './units.js';

/**
 * @typedef {'metric' | 'us'} Units
 *
 * @typedef {object} Scale - how figures in one unit become those in the unit shown
 * @property {string} unit - the one shown
 * @property {(value: number) => number} shown
 * @property {(number: number) => number} sent - back again
 */

/** @type {Record<string, string>} - every other unit stays as it is */
const US = {m: 'ft', cm: 'in', mm: 'in', '°C': '°F', 'N·m': 'in-lb', 'dB/100 m': 'dB/100 ft'};
const FOOT_M = 0.3048;
/** Loss goes with length: less of it in a hundred feet. */
const OF_LOSS = {'dB/100 m': FOOT_M};

/** Of a converted figure, at most: what is measured is not known better. */
const FIGURES = 3;
/** From here on a converted figure is told to the whole unit. */
const WHOLE = 100;
/** A figure with no more decimals than these was given in that unit, and is told as it was given. */
const TYPED_DECIMALS = {ft: 2, in: 4, '°F': 1, 'in-lb': 1};
/** Of a figure that went to SI and back. */
const NOISE = 1e-9;
/** A text's "51 mm" is known to the millimetre at best: 2 in. */
const PROSE_FIGURES = 2;

/** Of a figure that is rounded already. */
const HELD = 6;
/** Whole degrees in prose. */
const FAHRENHEIT = '°F';

/** @type {Units} */
let inForce = 'metric';

export const unitsInForce = () => inForce;

/** @param {Units} units */
export const speakIn = (units) => {
  inForce = units;
};

const same = (value) => value;

/**
 * How figures in a metric unit are shown.
 *
 * @param {string} unit
 * @param {Units} [units]
 * @returns {Scale}
 */
export function scaleOf(unit, units = inForce) {
  const other = units === 'us' ? US[unit] : undefined;
  if (other === undefined) return {unit, shown: same, sent: same};
  if (unit in OF_LOSS) {
    const factor = OF_LOSS[unit];
    return {unit: other, shown: (value) => value * factor, sent: (number) => number / factor};
  }
  const [from, to] = [unit, other].map((one) => /** @type {import('./units.js').Unit} */ (unitTyped(one, unit)));
  return {
    unit: other,
    shown: (value) => (value * from.factor + from.zero - to.zero) / to.factor,
    sent: (number) => (number * to.factor + to.zero - from.zero) / from.factor,
  };
}

/** The unit shown in place of a metric one. */
export const unitIn = (unit, units = inForce) => scaleOf(unit, units).unit;

const isTyped = (value, decimals) =>
  Math.abs(value - Number(value.toFixed(decimals))) <= NOISE * Math.max(Math.abs(value), 1);

/**
 * A converted figure as a person prints it; one that was given in that unit stays as it was given.
 *
 * @param {number} value
 * @param {string} unit - the one shown
 * @param {number} [figures]
 */
export function roundedIn(value, unit, figures = FIGURES) {
  const decimals = TYPED_DECIMALS[unit];
  if (decimals !== undefined && isTyped(value, decimals)) return Number(value.toFixed(decimals));
  return Math.abs(value) >= WHOLE ? Math.round(value) : Number(value.toPrecision(Math.min(figures, FIGURES)));
}

/**
 * A figure in the unit shown, without that unit.
 *
 * @param {number} value
 * @param {string} unit - the metric one it is in
 * @param {number} [figures]
 * @param {Units} [units]
 */
export function figureIn(value, unit, figures, units = inForce) {
  const scale = scaleOf(unit, units);
  if (scale.unit === unit) return digits(value, figures);
  return digits(roundedIn(scale.shown(value), scale.unit, figures), HELD);
}

/**
 * A figure with the unit it is shown in: "17 m", "55.8 ft".
 *
 * @param {number} value
 * @param {string} unit - the metric one it is in
 * @param {number} [figures]
 * @param {Units} [units]
 */
export const measureText = (value, unit, figures, units = inForce) =>
  `${figureIn(value, unit, figures, units)} ${unitIn(unit, units)}`;

/**
 * A length in metres or feet.
 *
 * @param {number} metres
 * @param {number} [figures]
 * @param {Units} [units]
 */
export const lengthText = (metres, figures, units = inForce) => measureText(metres, 'm', figures, units);

/**
 * A length that may be short: 60 mm, 1.2 m; 2.4 in, 3.9 ft.
 *
 * @param {number} metres
 * @param {number} [figures]
 * @param {Units} [units]
 */
export function shortLengthText(metres, figures = FIGURES, units = inForce) {
  const least = units === 'us' ? FOOT_M : 1;
  return Math.abs(metres) < least ? sizeText(metres, figures, units) : lengthText(metres, figures, units);
}

/**
 * A diameter or another small length in millimetres or inches.
 *
 * @param {number} metres
 * @param {number} [figures]
 * @param {Units} [units]
 */
export const sizeText = (metres, figures = FIGURES, units = inForce) => measureText(metres * 1e3, 'mm', figures, units);

/**
 * A temperature in °C or °F.
 *
 * @param {number} celsius
 * @param {number} [figures]
 * @param {Units} [units]
 */
export const temperatureText = (celsius, figures = FIGURES, units = inForce) =>
  measureText(celsius, '°C', figures, units);

/**
 * A torque in N·m or in-lb.
 *
 * @param {number} newtonMetres
 * @param {number} [figures]
 * @param {Units} [units]
 */
export const torqueText = (newtonMetres, figures = FIGURES, units = inForce) =>
  measureText(newtonMetres, 'N·m', figures, units);

/**
 * A value in whatever unit, as `quantity` prints it; metres as a length that may be short.
 *
 * @param {number | string} value
 * @param {string} unit
 * @param {number} [figures]
 * @param {Units} [units]
 */
export function valueText(value, unit, figures, units = inForce) {
  if (typeof value === 'string' || scaleOf(unit, units).unit === unit) return quantity(value, unit, figures);
  return unit === 'm' ? shortLengthText(value, figures, units) : measureText(value, unit, figures, units);
}

const IN_PROSE =
  /(?<![\w.])(-?\d+(?:\.\d+)?)(?: to (-?\d+(?:\.\d+)?))? (mm|cm|m|°C|N·m)(?![\p{L}\d_])(?: \([^()]*in-lb\))?/gu;

/**
 * A name or text of the catalogue with the sizes in it as they are measured; no band's name and no quotation.
 *
 * @param {string} text
 * @param {Units} [units]
 */
export function prose(text, units = inForce) {
  if (units === 'metric') return text;
  return text.replace(IN_PROSE, (_, low, high, unit) => {
    const ends = [low, high].filter(Boolean);
    const figures = Math.max(PROSE_FIGURES, ...ends.map((end) => end.replace(/[.-]|^0+|0+$/g, '').length));
    const {unit: shown, shown: of} = scaleOf(unit, units);
    const words = ends.map((end) => {
      const value = of(Number(end));
      return String(
        Math.abs(value) >= WHOLE || shown === FAHRENHEIT ? Math.round(value) : Number(value.toPrecision(figures)),
      );
    });
    return `${words.join(' to ')} ${shown}`;
  });
}
