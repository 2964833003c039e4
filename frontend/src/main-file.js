/** The one-file page: the core and the chart library lie in the page itself, and nothing is asked of a network. */
import './elements/jw-app.js';
import {embeddedCharts} from './chart/embedded.js';
import {workerTransport} from './transport/worker.js';
import {embeddedPayload} from './worker/embedded.js';

const app = document.querySelector('jw-app');
app.transport = workerTransport({
  payload: embeddedPayload(document),
  onProgress: (stage) => (app.stage = stage),
});
app.loadCharts = embeddedCharts(document);
