/**
 * Prints what the page offers as it starts, as JSON: `node switch.mjs`, after the start data are in frontend/build.
 *
 * {switch: the markup of the switch between the views, views: their names, fields: {group: [field, ...]}}
 */
import {mkdtempSync, readFileSync, rmSync} from 'node:fs';
import {createRequire} from 'node:module';
import {tmpdir} from 'node:os';
import {join} from 'node:path';
import {fileURLToPath} from 'node:url';

const FRONTEND = fileURLToPath(new URL('../../frontend/', import.meta.url));
const {build} = createRequire(FRONTEND)('esbuild');

const SOURCES = `
import './src/app/jw-masthead.js';
export {PACKS, VIEWS} from './src/app/views.js';
export {Vocabulary} from './src/shared/vocabulary/vocabulary.js';
`;

/** Of a browser, what the page's modules ask for when they are loaded. */
class StyleSheet {
  cssRules = [];

  replaceSync() {}
}
Object.assign(globalThis, {matchMedia: () => ({matches: false}), CSSStyleSheet: StyleSheet});

async function loaded() {
  const folder = mkdtempSync(join(tmpdir(), 'switch-'));
  const outfile = join(folder, 'page.mjs');
  try {
    await build({
      stdin: {contents: SOURCES, resolveDir: FRONTEND},
      outfile,
      bundle: true,
      platform: 'node',
      format: 'esm',
      loader: {'.css': 'text'},
      tsconfigRaw: {},
    });
    return await import(outfile);
  } finally {
    rmSync(folder, {recursive: true});
  }
}

/** The markup of a template, without listeners. */
function markup(part) {
  if (Array.isArray(part)) return part.map(markup).join('');
  if (part?.strings) return part.strings.map((text, at) => text + markup(part.values[at] ?? '')).join('');
  return ['string', 'number', 'boolean'].includes(typeof part) ? String(part) : '';
}

const {PACKS, VIEWS, Vocabulary} = await loaded();
const start = JSON.parse(readFileSync(join(FRONTEND, 'build/start-data.json'), 'utf8'));
const {fields, views} = new Vocabulary(start, [...VIEWS, PACKS], []);
const Masthead = /** @type {any} */ (globalThis.customElements.get('jw-masthead'));
console.log(
  JSON.stringify({
    switch: markup(new Masthead().render()),
    views,
    fields: Object.fromEntries(Object.entries(fields).map(([group, own]) => [group, Object.keys(own)])),
  }),
);
