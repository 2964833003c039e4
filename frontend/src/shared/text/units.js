/** The units a number can be typed in, by kind: any of a kind can be typed where one of it is shown. */

/**
 * @typedef {object} Unit
 * @property {string} name - as it is printed
 * @property {number} factor - how many of the kind's base unit it is
 * @property {number} zero - where its zero lies, in the base unit
 */

const INCH_M = 0.0254;
const FOOT_M = 12 * INCH_M;
const POUND_FORCE_N = 0.45359237 * 9.80665;
const FAHRENHEIT_K = 5 / 9;

/**
 * Each unit: its factor, its printed name, other names. A lone prefix stands for the unit with it, as in "2 k".
 *
 * @type {[factor: number, ...names: string[]][][]}
 */
const KINDS = [
  [
    [1, 'm', 'metre', 'metres', 'meter', 'meters'],
    [1e3, 'km'],
    [1e-2, 'cm'],
    [1e-3, 'mm'],
    [1e-6, 'µm', 'um'],
    [FOOT_M, 'ft', 'foot', 'feet', "'"],
    [INCH_M, 'in', 'inch', 'inches', '"'],
    [3 * FOOT_M, 'yd', 'yard', 'yards'],
    [5280 * FOOT_M, 'mi', 'mile', 'miles'],
  ],
  [
    [1, 'Hz'],
    [1e3, 'kHz', 'k', 'K'],
    [1e6, 'MHz', 'mhz', 'M'],
    [1e9, 'GHz', 'G'],
  ],
  [
    [1, 'W', 'w', 'watt', 'watts'],
    [1e-6, 'µW', 'uW'],
    [1e-3, 'mW'],
    [1e3, 'kW', 'k', 'K'],
    [1e6, 'MW'],
  ],
  [
    [1, 'V', 'v', 'volt', 'volts'],
    [1e-3, 'mV'],
    [1e3, 'kV', 'k', 'K'],
  ],
  [
    [1, 'A', 'a', 'amp', 'amps'],
    [1e-3, 'mA'],
    [1e3, 'kA'],
  ],
  [
    [1, 'Ω', 'ohm', 'ohms', 'R'],
    [1e-6, 'µΩ', 'uohm'],
    [1e-3, 'mΩ', 'mohm'],
    [1e3, 'kΩ', 'kohm', 'k', 'K'],
    [1e6, 'MΩ', 'Mohm', 'M'],
  ],
  [
    [1, 'F'],
    [1e-12, 'pF', 'p'],
    [1e-9, 'nF', 'n'],
    [1e-6, 'µF', 'uF', 'µ', 'u'],
  ],
  [
    [1, 'H'],
    [1e-9, 'nH', 'n'],
    [1e-6, 'µH', 'uH', 'µ', 'u'],
    [1e-3, 'mH'],
  ],
  [
    [1, 's', 'sec', 'second', 'seconds'],
    [1e-3, 'ms'],
    [60, 'min', 'minute', 'minutes'],
    [3600, 'h', 'hr', 'hour', 'hours'],
  ],
  [
    [1, 'years', 'year', 'yr', 'yrs', 'y'],
    [1 / 12, 'months', 'month'],
  ],
  [
    [1, 'N·m', 'Nm'],
    [POUND_FORCE_N * INCH_M, 'in-lb', 'in-lbs', 'in-lbf', 'lb-in', 'lbf-in'],
    [POUND_FORCE_N * FOOT_M, 'ft-lb', 'ft-lbs', 'ft-lbf', 'lb-ft', 'lbf-ft'],
  ],
  [
    [1, 'K', 'kelvin'],
    [1, '°C', 'C', 'c', 'degC', 'celsius'],
    [FAHRENHEIT_K, '°F', 'F', 'f', 'degF', 'fahrenheit'],
  ],
  [
    [1, 'm²', 'm2'],
    [1e-6, 'mm²', 'mm2'],
  ],
  [
    [1, 'Ω/m', 'ohm/m'],
    [1e-3, 'Ω/km', 'ohm/km'],
    [1e-3 / FOOT_M, 'Ω/1000 ft', 'ohm/1000 ft'],
  ],
  [
    [1, 'F/m'],
    [1e-12, 'pF/m'],
    [1e-12 / FOOT_M, 'pF/ft'],
  ],
  [
    [1, 'dB/m'],
    [1e-2, 'dB/100 m'],
    [1e-2 / FOOT_M, 'dB/100 ft'],
  ],
  [
    [1, '1/Hz'],
    [1e-9, '1/GHz'],
  ],
  [[1, 'dB']],
  [[1, '°', 'deg', 'degree', 'degrees']],
  [[1, 'W/m²', 'W/m2']],
  [[1, 'matings', 'mating']],
  [
    [1, '', ': 1'],
    [0.01, '%'],
  ],
];

const ZEROS_K = {'°C': 273.15, '°F': 459.67 * FAHRENHEIT_K};

/** Without what is written in many ways: spaces, the marks between the parts of a unit, the point behind it. */
const bare = (text) => text.replace(/\s/g, '').replace(/(?<=[a-z])(?:[.·*-](?=[a-z])|\.$)/gi, '');

const isSame = (one, other) => bare(one) === bare(other);

/** In a symbol the first m tells milli from mega. */
const SYMBOL_IN_M = /^m(.|Hz|ohm)$/i;

/** Whatever its case, but for lone letters. */
const isLike = (one, other) => {
  const [a, b] = [bare(one), bare(other)];
  const isOther = SYMBOL_IN_M.test(a) && a[0] !== b[0];
  return a.length > 1 && !isOther && a.toLowerCase() === b.toLowerCase();
};

/** @returns {[factor: number, ...names: string[]][]} */
const kindOf = (shown) => KINDS.find((kind) => kind.some(([, name]) => isSame(name, shown))) ?? [[1, shown]];

/**
 * The unit typed, where it is of one kind with that shown; none typed is the one shown.
 *
 * @param {string} typed
 * @param {string} shown
 * @returns {Unit | undefined}
 */
export function unitTyped(typed, shown) {
  const kind = kindOf(shown);
  const [found] = [isSame, isLike].flatMap((fits) =>
    kind.filter(([, ...names]) => names.some((one) => fits(one, typed === '' ? shown : typed))),
  );
  if (!found) return undefined;
  const [factor, name] = found;
  return {name, factor, zero: ZEROS_K[name] ?? 0};
}

/**
 * Names of the other units that can be typed where one is shown.
 *
 * @param {string} shown
 */
export const otherUnits = (shown) =>
  shown === ''
    ? []
    : kindOf(shown)
        .map(([, name]) => name)
        .filter((name) => name !== '' && !isSame(name, shown));
