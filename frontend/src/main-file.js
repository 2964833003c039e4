/** The one-file page's elements; `start-file.js` has given the page its transport and charts. */
import './saved/carry-now.js';
import './app/jw-app.js';
