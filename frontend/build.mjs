/**
 * Bundles the page's code into frontend/build; `jointwise build` calls it and puts the pages together.
 *
 * The same sources give the same bytes. The build stops when the result could
 * reach for an address outside.
 */
import {copyFileSync, readFileSync, statSync, writeFileSync} from 'node:fs';
import {fileURLToPath} from 'node:url';
import {build} from 'esbuild';
import {packed} from './packed.mjs';
import {trimmed} from './trimmed.mjs';
import {STEP_RULES, scaleCss} from './src/shared/margins/scale.js';

const here = fileURLToPath(new URL('.', import.meta.url));
const out = `${here}build/`;

/** Addresses that name a vocabulary or a licence text; nothing is ever loaded from them. */
const HARMLESS = [/^http:\/\/www\.w3\.org\//];

/** Services the chart library can talk to when asked; the page never asks, so they go. */
const CHART_SERVICES = ['https://cdn.plot.ly/un/', 'https://cloud.plotly.com/newchart'];

function withoutServices(text) {
  return CHART_SERVICES.reduce((left, address) => {
    const parts = left.split(address);
    if (parts.length !== 2) throw new Error(`chart library: expected ${address} exactly once`);
    return parts.join('');
  }, text);
}

/** Every outside address in code or markup, comments and links in prose left out. */
function outsideAddresses(text) {
  const quoted = text.match(/["'`(]https?:\/\/[^"'`)\s]+/g) ?? [];
  return quoted.map((match) => match.slice(1)).filter((address) => !HARMLESS.some((known) => known.test(address)));
}

const read = (path) => readFileSync(`${here}${path}`, 'utf8');

async function bundle(entry, name, format, more = {}) {
  await build({
    absWorkingDir: here,
    entryPoints: [`src/${entry}`],
    outfile: `${out}${name}`,
    bundle: true,
    format,
    target: ['chrome123', 'firefox121', 'safari17.5'],
    minify: true,
    charset: 'utf8',
    legalComments: 'inline',
    loader: {'.css': 'text', '.html': 'text'},
    tsconfigRaw: {}, // the type checker's settings change no byte
    logLevel: 'warning',
    ...more,
  });
}

await bundle('main.js', 'app.js', 'esm');
await bundle('main-file.js', 'file.js', 'iife');
await bundle('start-file.js', 'start.js', 'iife');
await bundle('worker/service-worker.js', 'service-worker.js', 'iife');
await bundle('embed/embed.js', 'embed.js', 'iife');
await bundle('embed/frame.js', 'frame.js', 'iife');
await bundle('code-library/library.js', 'codes.js', 'iife');
copyFileSync(`${here}src/embed/frame.html`, `${out}embed.html`);
copyFileSync(`${here}src/embed/frame.css`, `${out}embed.css`);
writeFileSync(`${out}app.css`, read('src/tokens.css') + read('src/theme.css') + scaleCss() + STEP_RULES);
// the library's sources call the page's own scope by the name it has in Node
await bundle('chart-library/library.js', 'charts.js', 'iife', {
  define: {global: 'window'},
  loader: {'.css': 'empty'},
  plugins: [trimmed],
});
writeFileSync(`${out}charts.js`, withoutServices(read('build/charts.js')));
for (const [part, name] of Object.entries({
  page: 'file.js',
  charts: 'charts.js',
  embed: 'embed.js',
  codes: 'codes.js',
  licences: 'licences.txt',
})) {
  writeFileSync(`${out}${part}.part`, packed(readFileSync(out + name)));
}
for (const name of ['icon.svg', 'icon-192.png', 'icon-512.png', 'manifest.webmanifest'])
  copyFileSync(`${here}src/${name}`, out + name);

for (const name of [
  'app.js',
  'file.js',
  'start.js',
  'service-worker.js',
  'app.css',
  'charts.js',
  'codes.js',
  'embed.js',
  'frame.js',
]) {
  console.log(`${name.padEnd(18)} ${String(statSync(out + name).size).padStart(8)} bytes`);
}
for (const name of [
  'app.js',
  'file.js',
  'start.js',
  'service-worker.js',
  'app.css',
  'codes.js',
  'embed.js',
  'frame.js',
  'embed.html',
]) {
  const found = outsideAddresses(readFileSync(out + name, 'utf8'));
  if (found.length > 0) throw new Error(`${name} names an address outside: ${found.join(', ')}`);
}
