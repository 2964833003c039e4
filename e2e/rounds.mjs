/**
 * `node rounds.mjs bundle START OUT FORMAT` writes rounds.js with all it imports as one script, where START is a file
 * with the page's start data; `node rounds.mjs run BUNDLE FILES` prints what becomes of a list of station files.
 */
import {readFileSync} from 'node:fs';
import {createRequire} from 'node:module';
import {fileURLToPath} from 'node:url';

const HERE = fileURLToPath(new URL('.', import.meta.url));

/** Of a browser, what the page's modules ask for when they are loaded. */
class StyleSheet {
  cssRules = [];

  replaceSync() {}
}

async function bundle(start, outfile, format) {
  const {build} = createRequire(`${HERE}../frontend/`)('esbuild');
  const startData = {
    name: 'start data',
    setup: ({onResolve}) => onResolve({filter: /start-data\.json$/}, () => ({path: start})),
  };
  await build({
    entryPoints: [`${HERE}rounds.js`],
    outfile,
    bundle: true,
    format,
    platform: format === 'iife' ? 'browser' : 'node',
    globalName: format === 'iife' ? 'rounds' : undefined,
    charset: 'utf8',
    loader: {'.css': 'text', '.html': 'text'},
    nodePaths: [`${HERE}../frontend/node_modules`],
    plugins: [startData],
    tsconfigRaw: {},
    logLevel: 'warning',
  });
}

async function run(path, files) {
  Object.assign(globalThis, {matchMedia: () => ({matches: false}), CSSStyleSheet: StyleSheet});
  const {fileRounds, requests} = await import(path);
  const contents = JSON.parse(readFileSync(files, 'utf8'));
  console.log(JSON.stringify(contents.map((one) => ({...fileRounds(one), requests: requests(one)}))));
}

const [command, ...given] = process.argv.slice(2);
await {bundle, run}[command](...given);
