/**
 * All of the one-file page's code that is not packed: starts the core, unpacks
 * the rest, and the licence texts once they are asked for.
 *
 * Python takes longest, so its worker is begun while the browser still reads the
 * file, and before the page has any code: the element finds its transport
 * waiting when it is defined.
 */
import {longest_s as longestS} from '../build/start-data.json';
import {packedEmbed} from './parts/packed-embed.js';
import {packedLibrary} from './parts/packed-library.js';
import {partText, runPart} from './parts/part-text.js';
import './saved/carry-now.js';
import {Shelf} from './shared/packs/shelf.js';
import {browserStore} from './shared/state/browser-store.js';
import {withPacks} from './transport/with-packs.js';
import {workerTransport} from './transport/worker.js';
import {embeddedPayload} from './worker/embedded.js';

const UNABLE = 'The live page cannot start from this file in this browser; only the built-in tables can be shown.';

const app = /** @type {import('./app/jw-app.js').JwApp} */ (document.querySelector('jw-app'));

function sayUnable() {
  const words = document.createElement('p');
  words.role = 'alert';
  words.textContent = UNABLE;
  app.prepend(words);
}

const worker = workerTransport({
  payload: embeddedPayload(document),
  longestS,
  onProgress: (stage) => (app.stage = stage),
});
worker.start();
app.shelf = new Shelf(browserStore);
app.shelf.follow();
app.transport = withPacks({plain: worker, worker, shelf: app.shelf});
app.loadCharts = packedLibrary(document, 'charts', () => window.Plotly, 'chart library');
app.loadCodes = packedLibrary(document, 'codes', () => window.readCodes, 'reader of codes');
app.loadEmbed = packedEmbed(document);

function showPage() {
  // code that was altered is kept from running by the policy, and nothing is thrown
  runPart(document, 'page').then(() => customElements.get('jw-app') ?? sayUnable(), sayUnable);

  // a file that was cut short has none
  const licences = document.getElementById('licences');
  const show = async ({target}) => (target.querySelector('pre').textContent = await partText(document, 'licences'));
  licences?.addEventListener('toggle', show, {once: true});
}

document.addEventListener('DOMContentLoaded', showPage, {once: true});
