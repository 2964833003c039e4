/**
 * Unpacks the chart library out of part `charts` of the page, once, when the first chart opens.
 *
 * The page's policy names the library's hash, so its text may run as a script.
 */
import {takePart} from '../worker/embedded.js';
import {inflated} from '../worker/part.js';

export function embeddedCharts(document) {
  let library;
  const load = async () => {
    const script = document.createElement('script');
    script.textContent = new TextDecoder().decode(await inflated(takePart(document, 'charts')));
    document.head.append(script);
    if (!window.Plotly) throw new Error('The chart library could not be loaded.');
    return window.Plotly;
  };
  return () => (library ??= load());
}
