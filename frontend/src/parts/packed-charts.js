/** Unpacks the chart library out of part `charts` of the page, once, when the first chart opens. */
import {runPart} from './part-text.js';

/**
 * @param {Document} document
 * @returns {() => Promise<any>}
 */
export function embeddedCharts(document) {
  let library;
  const load = async () => {
    await runPart(document, 'charts');
    if (!window.Plotly) throw new Error('The chart library could not be loaded.');
    return window.Plotly;
  };
  return () => (library ??= load());
}
