/** Numbers as the page prints them: true minus, tabular, unit beside. */

export const MINUS = '−';
/** @type {[number, string][]} */
const PREFIXES = [
  [1e9, 'G'],
  [1e6, 'M'],
  [1e3, 'k'],
  [1, ''],
  [1e-3, 'm'],
  [1e-6, 'µ'],
  [1e-9, 'n'],
  [1e-12, 'p'],
];
const PREFIXED_UNITS = new Set(['Hz', 'm', 'Ω', 'W', 'V', 's', 'A', 'F', 'H', 'J', 'V/m', 'Ω/m', 'Pa', 'S/m']);
/** From here a decimal says nothing and would not fit the cell. */
const WHOLE_DECIBELS = 99.95;

/** A margin in dB with its sign; the sign is the number's own even where it rounds to zero. */
export function decibels(value) {
  const size = Math.abs(value);
  return `${value < 0 ? MINUS : '+'}${size.toFixed(size < WHOLE_DECIBELS ? 1 : 0)}`;
}

/** A number to so many significant digits, plain where it can be read, else with a power of ten. */
export function digits(value, count = 4) {
  if (value === 0) return '0';
  const size = Math.abs(value);
  if (size >= 1e6 || size < 1e-4) {
    const [mantissa, exponent] = value.toExponential(count - 1).split('e');
    return `${signed(String(Number(mantissa)))}·10${superscript(exponent)}`;
  }
  return signed(String(size >= 10 ** count ? Math.round(value) : Number(value.toPrecision(count))));
}

/**
 * A value with its unit, large and small ones with a prefix where the unit takes one.
 *
 * @param {number | string} value - words stand for themselves
 * @param {string} unit
 * @param {number} [count] - significant digits
 */
export function quantity(value, unit, count = 4) {
  if (typeof value === 'string') return value;
  if (unit === '1' || unit === '') return digits(value, count);
  if (!PREFIXED_UNITS.has(unit) || value === 0) return `${digits(value, count)} ${unit}`;
  const size = Math.abs(value);
  const [factor, prefix] = PREFIXES.find(([least]) => size >= least * 0.99999) ?? PREFIXES[PREFIXES.length - 1];
  return `${digits(value / factor, count)} ${prefix}${unit}`;
}

export const frequency = (hertz) => quantity(hertz, 'Hz', 6);

/** A power level in full; zero means that nothing is sent. */
export function power(watts) {
  if (watts === 0) return 'receive';
  return quantity(watts, 'W');
}

/** A power level where room is short, in watts. */
function shortPower(watts) {
  if (watts === 0) return 'Rx';
  return watts >= 1000 ? `${digits(watts / 1e3, 3)}k` : digits(watts, 4);
}

/** The largest power that holds, rounded down so that the printed figure holds too. */
export function largestPower(watts) {
  if (watts >= 9.95e5) return '>1M';
  return shortPower(roundedDown(watts, 2));
}

/** A positive number cut to so many digits: what is printed as still holding must hold. */
export function roundedDown(value, count) {
  const scale = 10 ** (Math.floor(Math.log10(value)) - count + 1);
  return Number((Math.floor(value / scale) * scale).toPrecision(count));
}

const signed = (text) => text.replace('-', MINUS);
const superscript = (exponent) =>
  [...exponent.replace('+', '')].map((digit) => (digit === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'[digit])).join('');
