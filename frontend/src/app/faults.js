/**
 * The one place where what no code caught arrives: it is said in a sentence, and the view can be drawn anew from what
 * it holds. Lit's elements draw later than they are asked to, so what they throw is a rejection that nobody handles.
 */
import START from '../../build/start-data.json';
import {JwFault} from './jw-fault.js';
import {reportOf} from './report.js';

/** @import {JwApp} from './jw-app.js' */

/** Said again only after the page was drawn anew: a fault may come with every scroll. */
const said = new Set();
/** Lit throws what it could not draw once more at the next try. */
const seen = new WeakSet();

/** The browser's own remark that it lays something out a frame later; nothing is lost by it. */
const isHarmless = (error) => !(error instanceof Error) || error.name === 'AbortError';

/**
 * Begin to listen.
 *
 * @param {JwApp} app
 * @param {() => string} view - the name of the view that is shown, for the reader
 */
export function catchFaults(app, view) {
  const fault = new JwFault();
  const arrived = (error) => {
    if (isHarmless(error) || seen.has(error)) return;
    seen.add(error);
    if (said.has(error.message)) return;
    said.add(error.message);
    fault.show(view(), reportOf(error, {version: START.version, view: view()}));
  };
  fault.addEventListener('jw-again', () => {
    said.clear();
    app.drawAnew();
  });
  window.addEventListener('error', ({error}) => arrived(error));
  window.addEventListener('unhandledrejection', ({reason}) => arrived(reason));
  document.body.append(fault);
}
