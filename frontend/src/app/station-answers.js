/** What the core says of all that is kept, for the tables of a saved page. */
import START from '../../build/start-data.json';
import {lineRequest as sheetsRequest} from '../fitout/request.js';
import {EXAMPLE as KIT} from '../kit/example.js';
import {KEPT_KIT} from '../kit/kept.js';
import {portNames} from '../kit/names.js';
import {withoutTicks} from '../kit/ticks.js';
import {matrixRequest} from '../matrix/requests.js';
import {KEPT_TICKS, NO_TICKS} from '../shared/checklist/kept.js';
import {EMPTY_BOOK} from '../shared/joints/book.js';
import {KEPT_JOINTS} from '../shared/joints/kept.js';
import {FIRST_DOCUMENT} from '../shared/lines/document.js';
import {KEPT_LINES} from '../shared/lines/kept.js';
import {levelsWith} from '../shared/state/levels.js';
import {kitRequest} from '../shared/station/kit-request.js';
import {lineRequest} from '../shared/station/line-request.js';
import {withSettings} from '../shared/station/station.js';
import {KEPT_SWEEPS} from '../shared/sweeps/kept.js';

/**
 * @import {Transport} from '../shared/answers.js'
 * @import {FittedLine} from '../shared/checklist/items.js'
 * @import {Store} from '../shared/state/kept.js'
 * @import {Station} from '../shared/station/station.js'
 * @import {Vocabulary} from '../shared/vocabulary/vocabulary.js'
 * @import {StationAnswers} from '../saved/station-tables.js'
 */

/**
 * What is asked, and where the core's refusals go.
 *
 * @typedef {object} Asked
 * @property {Transport} transport
 * @property {() => Store} storage
 * @property {Station} station
 * @property {string[]} refused - a sentence is put in for each
 */

/**
 * @param {Asked} asked
 * @param {string} what
 * @param {string} operation
 * @param {object} request
 * @returns {Promise<any>} - null where it was refused
 */
const ask = ({transport, refused}, what, operation, request) =>
  transport.ask(operation, request).catch(({message}) => {
    refused.push(`${what}: ${message}`);
    return null;
  });

/**
 * The fitting sheets of every kept line, one after the other.
 *
 * @param {Asked} asked
 * @param {Vocabulary} vocabulary
 * @returns {Promise<FittedLine[]>}
 */
export async function lineAnswers(asked, vocabulary) {
  const {document: {lines} = FIRST_DOCUMENT} = KEPT_LINES.recalled(asked.storage, vocabulary.fields);
  const answered = [];
  for (const {name, request: own} of lines) {
    if (own.elements.length === 0) continue;
    const request = lineRequest(own, asked.station, vocabulary);
    const named = sheetsRequest({station: asked.station.name, date: ''}, request);
    const sheets = await ask(asked, `${name}, fitting`, 'fitout', named);
    if (sheets) answered.push({name, request, sheets});
  }
  return answered;
}

/**
 * The kit with what its ports are called; null where it was refused.
 *
 * @param {Asked} asked
 * @param {Vocabulary} vocabulary
 */
export async function kitAnswer(asked, vocabulary) {
  const {document: kit = KIT} = KEPT_KIT.recalled(asked.storage, vocabulary.fields);
  const answer = await ask(asked, 'Kit', 'kit', kitRequest(withoutTicks(kit), asked.station, vocabulary));
  return answer && {ports: portNames(vocabulary.lists.families, kit.ports), answer};
}

/**
 * Asks for everything; what the core refuses is named.
 *
 * @param {Transport} transport
 * @param {() => Store} storage
 * @param {Station} station
 * @param {Vocabulary} vocabulary
 * @param {{name: string, date: string}} called
 * @returns {Promise<StationAnswers>}
 */
export async function stationAnswers(transport, storage, station, vocabulary, {name, date}) {
  const asked = {transport, storage, station, refused: []};
  const {first} = vocabulary;
  const state = withSettings({}, station, first.matrix);
  const matrix = await ask(asked, 'Matrix', 'matrix', matrixRequest({...state, powers_w: [state.power_w]}, vocabulary));
  const lines = [];
  for (const fitted of await lineAnswers(asked, vocabulary)) {
    const line = await ask(asked, fitted.name, 'line', fitted.request);
    if (line) lines.push({...fitted, line});
  }
  const spoken = (field) => vocabulary.spoken(field, state[field]);
  return {
    name,
    date,
    words: [spoken('mode'), `SWR ${spoken('vswr')}`, spoken('ambient_temperature_c'), spoken('exposure')].join(', '),
    heading: `Margins at ${vocabulary.spoken('power_w', state.power_w)}`,
    matrix,
    lines,
    kit: await kitAnswer(asked, vocabulary),
    book: KEPT_JOINTS.recalled(storage).document ?? EMPTY_BOOK,
    sweeps: KEPT_SWEEPS.recalled(storage).document ?? [],
    ticked: (KEPT_TICKS.recalled(storage).document ?? NO_TICKS).ticked,
    refused: asked.refused,
    cautions: START.cautions,
  };
}

/**
 * The matrix of a station with every derivation, as another website shows it.
 *
 * @param {Transport} transport
 * @param {Station} station
 * @param {Vocabulary} vocabulary
 * @returns {Promise<object>}
 */
export function stationSnapshot(transport, station, vocabulary) {
  const {power_w, powers_w, ...state} = withSettings({}, station, vocabulary.first.matrix);
  const request = matrixRequest({...state, powers_w: levelsWith(powers_w, power_w)}, vocabulary);
  return transport.ask('snapshot', {...request, power_w});
}
