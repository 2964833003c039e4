/** What the core says of all that is kept, for the tables of a saved page. */
import START from '../../build/start-data.json';
import {lineRequest as sheetsRequest} from '../fitout/request.js';
import {EXAMPLE as KIT} from '../kit/example.js';
import {KEPT_KIT} from '../kit/kept.js';
import {portNames} from '../kit/names.js';
import {withoutTicks} from '../kit/ticks.js';
import {matrixRequest} from '../matrix/requests.js';
import {FIRST_DOCUMENT} from '../shared/lines/document.js';
import {KEPT_LINES} from '../shared/lines/kept.js';
import {levelsWith} from '../shared/state/levels.js';
import {kitRequest} from '../shared/station/kit-request.js';
import {lineRequest} from '../shared/station/line-request.js';
import {withSettings} from '../shared/station/station.js';

/**
 * @import {Transport} from '../shared/answers.js'
 * @import {Store} from '../shared/state/kept.js'
 * @import {Station} from '../shared/station/station.js'
 * @import {Vocabulary} from '../shared/vocabulary/vocabulary.js'
 * @import {StationAnswers} from '../saved/station-tables.js'
 */

/**
 * Asks for everything, one after the other; what the core refuses is named.
 *
 * @param {Transport} transport
 * @param {() => Store} storage
 * @param {Station} station
 * @param {Vocabulary} vocabulary
 * @param {{name: string, date: string}} called
 * @returns {Promise<StationAnswers>}
 */
export async function stationAnswers(transport, storage, station, vocabulary, {name, date}) {
  const {fields, first, lists} = vocabulary;
  const refused = [];
  const ask = (what, operation, request) =>
    transport.ask(operation, request).catch(({message}) => {
      refused.push(`${what}: ${message}`);
      return null;
    });
  const {document: {lines} = FIRST_DOCUMENT} = KEPT_LINES.recalled(storage, fields);
  const {document: kit = KIT} = KEPT_KIT.recalled(storage, fields);

  const state = withSettings({}, station, first.matrix);
  const matrix = await ask('Matrix', 'matrix', matrixRequest({...state, powers_w: [state.power_w]}, vocabulary));
  const answered = [];
  for (const {name: called, request: own} of lines) {
    const request = lineRequest(own, station, vocabulary);
    const line = await ask(called, 'line', request);
    const named = sheetsRequest({station: station.name, date: ''}, request);
    const sheets = line && (await ask(`${called}, fitting`, 'fitout', named));
    if (line && sheets) answered.push({name: called, line, sheets});
  }
  const request = kitRequest(withoutTicks(kit), station, vocabulary);
  const answer = await ask('Kit', 'kit', request);
  const spoken = (field) => vocabulary.spoken(field, state[field]);
  return {
    name,
    date,
    words: [spoken('mode'), `SWR ${spoken('vswr')}`, spoken('ambient_temperature_c'), spoken('exposure')].join(', '),
    heading: `Margins at ${vocabulary.spoken('power_w', state.power_w)}`,
    matrix,
    lines: answered,
    kit: answer && {ports: portNames(lists.families, kit.ports), answer},
    refused,
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
