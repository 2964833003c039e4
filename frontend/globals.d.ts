/** What the build puts into the page's sources, and the modules that come without types. */

/** In the service worker: the build's version, and its files with their hashes. */
declare const BUILD: {version: string; files: Record<string, string>};

/** In the worker: the runtime's own loader and its settings, which stand in front of its script. */
declare const runtime: {loadPyodide: (settings: object) => Promise<any>; [setting: string]: any};

interface Window {
  /** Where the chart library puts itself. */
  Plotly?: import('./src/shared/charts/jw-chart.js').ChartLibrary;
  /** Where the reader of codes puts itself. */
  readCodes?: import('./src/app/pictures.js').ReadCodes;
}

declare module '*.css' {
  const text: string;
  export default text;
}

declare module '*.html' {
  const text: string;
  export default text;
}

declare module '*/start-data.json' {
  type StartData = import('./src/shared/vocabulary/start-data.js').StartData;
  const start: StartData;
  export default start;
  export const bands: StartData['bands'];
  export const families: StartData['families'];
  export const first_bands: StartData['first_bands'];
  export const version: StartData['version'];
  export const longest_s: StartData['longest_s'];
}

declare module 'plotly.js/src/*';
