/**
 * The served page: the core is asked over HTTP, and in this browser when the
 * server is away; the chart library is a file of its own.
 */
import {longest_s as longestS} from '../build/start-data.json';
import './app/jw-app.js';
import {embedScript} from './parts/embed-script.js';
import {libraryScript} from './parts/library-script.js';
import {Shelf} from './shared/packs/shelf.js';
import {browserStore} from './shared/state/browser-store.js';
import {eitherTransport, serverAnswers} from './transport/either.js';
import {httpTransport} from './transport/http.js';
import {packsOfServer, withPacks} from './transport/with-packs.js';
import {workerTransport} from './transport/worker.js';
import {ofBuild} from './worker/build.js';
import {fetchedPayload} from './worker/fetched.js';
import {keepForOffline} from './worker/register.js';

const app = /** @type {import('./app/jw-app.js').JwApp} */ (document.querySelector('jw-app'));
const api = new URL('api/v1/', document.baseURI);
const worker = workerTransport({
  payload: fetchedPayload(new URL('payload/', document.baseURI)),
  longestS,
  onProgress: (stage) => (app.stage = stage),
});
const plain = eitherTransport({http: httpTransport(api), worker, answers: serverAnswers(api)});
app.shelf = new Shelf(browserStore);
app.shelf.follow();
app.transport = withPacks({plain, worker, shelf: app.shelf});
// without a network the packs it last told count on
packsOfServer(api).then(
  (texts) => app.shelf.takeServer(texts),
  (error) => console.info(String(error)),
);
app.loadCharts = libraryScript(ofBuild('charts.js'), () => window.Plotly, 'chart library');
app.loadCodes = libraryScript(ofBuild('codes.js'), () => window.readCodes, 'reader of codes');
app.loadEmbed = embedScript(ofBuild('embed.js'));
app.file = ofBuild('jointwise.html');
// the page does without where the browser refuses to keep it
keepForOffline('service-worker.js', (apply) => app.offerUpdate(apply)).catch((error) => console.info(String(error)));
