/** The served page: the core is asked over HTTP, the chart library is a file of its own. */
import './elements/jw-app.js';
import {chartScript} from './chart/script.js';
import {httpTransport} from './transport/http.js';

const app = document.querySelector('jw-app');
app.transport = httpTransport(new URL('api/v1/', document.baseURI));
app.loadCharts = chartScript('charts.js');
