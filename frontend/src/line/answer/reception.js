/** What a line costs on receive, in sentences with the line's own numbers. */
import {decibels, digits} from '../../shared/text/format.js';
import {lossWords} from '../../shared/text/loss.js';

/** @import {LineResult, Reception} from '../result.js' */

/** From here a noise temperature is no number that anybody would say. */
const LARGEST_KELVIN = 1e5;

/** Below this the ear and the log book notice nothing. */
const NOTICED_DB = 0.1;

/**
 * The bands that show best that loss costs little below and much above: [{name, loss, cost, half}, …].
 *
 * @param {LineResult} result
 */
export function contrast(result) {
  const {whole_cost_by_band_db: costs, half_decibel_cost_by_band_db: halves} = result.reception;
  const rows = result.bands
    .map(({column, loss_db}, at) => ({
      id: column.id,
      name: column.name,
      loss: loss_db,
      cost: costs[at],
      half: halves[at],
    }))
    .filter(({loss, cost}) => loss !== null && cost !== null && loss > 0);
  const prefer = (id, otherwise) => rows.find((row) => row.id === id) ?? otherwise;
  const [low, high] = [prefer('40m', rows[0]), prefer('70cm', rows.at(-1))];
  return low && high && low !== high ? [low, high] : [];
}

function sentenceOf({name, loss, cost}) {
  const felt = Math.abs(cost) < NOTICED_DB ? 'nothing audible' : `${cost.toFixed(1)} dB`;
  return `on ${name} this line loses up to ${loss.toFixed(1)} dB and costs ${felt} on receive (${lossWords(cost)})`;
}

/**
 * Why the same loss matters on one band and not on another; empty where the bands do not show it.
 *
 * @param {LineResult} result
 */
export function contrastWords(result) {
  const [low, high] = contrast(result);
  if (!low) return '';
  return (
    `${capital(sentenceOf(low))}; ${sentenceOf(high)}. ` +
    `Half a decibel more at the antenna takes ${lossWords(low.half)} of signal over noise on ${low.name}, where the ` +
    `noise around the antenna is weakened along with the signal, and ${lossWords(high.half)} on ${high.name}, where ` +
    'the noise of line and receiver rules.'
  );
}

/**
 * What of the noise comes in by the antenna, and what it makes with line and receiver; empty where it is unknown.
 *
 * @param {Reception} reception
 */
export function noiseWords({
  heard,
  external_noise_db: around,
  system_noise_db: all,
  antenna_temperature_k: antenna,
  system_temperature_k: system,
}) {
  if (around === null || all === null || system === null) return '';
  const kelvins =
    system < LARGEST_KELVIN
      ? `Noise at the antenna ${digits(antenna, 3)} K, with line and receiver ${digits(system, 3)} K. `
      : '';
  const levels = `${decibels(around)} dB at the antenna, ${decibels(all)} dB with line and receiver`;
  return `${heard}. ${kelvins}Over k·T₀·b: ${levels}.`;
}

const capital = (text) => text[0].toUpperCase() + text.slice(1);
