/**
 * The page's own modules that read and write station files and saved pages, for Node and for any browser: bundled by
 * rounds.mjs, called by the tests.
 */
import START from '../frontend/build/start-data.json';
import {PLACES} from '../frontend/src/app/places.js';
import {PACKS, VIEWS} from '../frontend/src/app/views.js';
import {lineRequest as sheetsRequest} from '../frontend/src/fitout/request.js';
import {withoutTicks} from '../frontend/src/kit/ticks.js';
import {matrixRequest} from '../frontend/src/matrix/requests.js';
import {carriedBy, carriedIn, gathered, packsIn, stationFile, takeIn} from '../frontend/src/saved/carried.js';
import {filledPage} from '../frontend/src/saved/page-file.js';
import {ofStation} from '../frontend/src/shared/station/fields.js';
import {kitRequest} from '../frontend/src/shared/station/kit-request.js';
import {lineRequest} from '../frontend/src/shared/station/line-request.js';
import {withSettings} from '../frontend/src/shared/station/station.js';
import {Vocabulary} from '../frontend/src/shared/vocabulary/vocabulary.js';
import {sweepRequest} from '../frontend/src/sweep/request.js';

const BUILT_IN = new Vocabulary(START, [...VIEWS, PACKS, ofStation], []);

/** What a browser keeps. */
function emptyStore() {
  const texts = {};
  return {
    getItem: (key) => texts[key] ?? null,
    setItem: (key, text) => (texts[key] = text),
    removeItem: (key) => delete texts[key],
  };
}

/** What is carried, taken into an empty browser and gathered there again. */
function throughBrowser(carried) {
  const store = emptyStore();
  const {asks, problem} = takeIn(PLACES, () => store, BUILT_IN.withPacks(packsIn(carried)).fields, carried);
  if (asks.length > 0 || problem) throw new Error(`asked for ${asks}; ${problem}`);
  return gathered(store, carried.name, carried.date, null);
}

/** A station file read and written twice: its content after one round, and whether the second changed a byte. */
export function fileRounds(content) {
  const first = throughBrowser(carriedIn(content));
  const text = stationFile(first, undefined);
  const second = stationFile(throughBrowser(carriedIn(text)), {format: 'jointwise snapshot 2'});
  return {kept: first, same: JSON.stringify(carriedIn(second)) === JSON.stringify(first)};
}

const parsed = (text) => new DOMParser().parseFromString(text, 'text/html');

/** A station in a page, read out of it, and the page written by that page: whether content, bytes and structure stay. */
export async function pageRounds(content, pageText) {
  const built = parsed(pageText);
  const carried = throughBrowser(carriedIn(content));
  const tables = `<h1>${carried.date}</h1>`;
  const first = await filledPage(built, {title: carried.name, tables, carried}).text();
  const page = parsed(first);
  const read = carriedBy(page);
  const again = await filledPage(page, {title: carried.name, tables, carried: throughBrowser(read)}).text();
  const count = (document) =>
    ['script', 'meta', 'link', 'style', 'data', 'img', 'svg'].map((one) => document.querySelectorAll(one).length);
  const before = built.querySelectorAll('jw-app *').length;
  const parts = (document) => [count(document), document.querySelectorAll('*').length];
  const [counts, all] = parts(page);
  const [builtCounts, builtAll] = parts(built);
  return {
    kept: read,
    same: again === first,
    asFile: JSON.stringify(carriedIn(first)) === JSON.stringify(read),
    structure: JSON.stringify(counts) === JSON.stringify(builtCounts) && all === builtAll - before + 1,
    larger: first.length - pageText.length,
    policy: page.querySelector('[http-equiv]').content === built.querySelector('[http-equiv]').content,
    text: first,
  };
}

/** What the page asks the core about a station. */
export function requests(content) {
  const {kept} = throughBrowser(carriedIn(content));
  const vocabulary = BUILT_IN.withPacks(packsIn({kept}));
  const {
    station,
    lines: {lines},
    kit,
    sweeps = [],
  } = kept;
  const state = withSettings({}, station, vocabulary.first.matrix);
  const ofLine = (own) => lineRequest(own, station, vocabulary);
  const swept = ({line, text}) => {
    const found = lines.find(({name}) => name === line);
    const request = found ? ofLine(found.request) : {elements: []};
    return sweepRequest({...vocabulary.first.sweep, window_shape: null}, {request}, {text});
  };
  const spoken = (request) => (station.units === 'metric' ? request : {...request, units: station.units});
  return {
    matrix: spoken(matrixRequest({...state, powers_w: [state.power_w]}, vocabulary)),
    line: lines.map(({request}) => spoken(ofLine(request))),
    fitout: lines.map(({request}) => spoken(sheetsRequest({station: station.name, date: ''}, ofLine(request)))),
    kit: kit && spoken(kitRequest(withoutTicks(kit), station, vocabulary)),
    sweep: sweeps.map((one) => spoken(swept(one))),
  };
}
