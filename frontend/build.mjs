/**
 * Builds the served page into dist/site: `npm ci && node build.mjs`.
 *
 * The same sources give the same bytes. The build stops when the result could
 * reach for an address outside.
 */
import {execFileSync} from 'node:child_process';
import {copyFileSync, existsSync, mkdirSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync} from 'node:fs';
import {fileURLToPath} from 'node:url';
import {build} from 'esbuild';
import {scaleCss} from './src/colour/scale.js';

const here = fileURLToPath(new URL('.', import.meta.url));
const out = fileURLToPath(new URL('../dist/site/', import.meta.url));
const environment = fileURLToPath(new URL('../.venv/bin/python', import.meta.url));
const python = process.env.PYTHON ?? (existsSync(environment) ? environment : 'python3');

/** Addresses that name a vocabulary or a licence text; nothing is ever loaded from them. */
const HARMLESS = [/^http:\/\/www\.w3\.org\//];

/** Services the chart library can talk to when asked; the page never asks, so they go. */
const CHART_SERVICES = ['https://cdn.plot.ly/un/', 'https://cloud.plotly.com/newchart'];

function withoutServices(text) {
  for (const address of CHART_SERVICES) {
    const parts = text.split(address);
    if (parts.length !== 2) throw new Error(`chart library: expected ${address} exactly once`);
    text = parts.join('');
  }
  return text;
}

/** Every outside address in code or markup, comments and links in prose left out. */
function outsideAddresses(text) {
  const quoted = text.match(/["'`(]https?:\/\/[^"'`)\s]+/g) ?? [];
  return quoted.map((match) => match.slice(1)).filter((address) => !HARMLESS.some((known) => known.test(address)));
}

mkdirSync(`${here}build`, {recursive: true});
writeFileSync(`${here}build/snapshot.json`, execFileSync(python, [`${here}snapshot.py`], {maxBuffer: 2 ** 26, stdio: ['ignore', 'pipe', 'inherit']}));

rmSync(out, {recursive: true, force: true});
mkdirSync(out, {recursive: true});
await build({
  absWorkingDir: here,
  entryPoints: ['src/main.js'],
  outfile: `${out}app.js`,
  bundle: true,
  format: 'esm',
  target: ['chrome123', 'firefox121', 'safari17.5'],
  minify: true,
  charset: 'utf8',
  legalComments: 'inline',
  logLevel: 'warning',
});
writeFileSync(`${out}app.css`, readFileSync(`${here}src/theme.css`, 'utf8') + scaleCss());
copyFileSync(`${here}src/index.html`, `${out}index.html`);
copyFileSync(`${here}src/icon.svg`, `${out}icon.svg`);
const charts = readFileSync(`${here}node_modules/plotly.js-basic-dist-min/plotly-basic.min.js`, 'utf8');
writeFileSync(`${out}charts.js`, withoutServices(charts));

for (const name of readdirSync(out).sort()) {
  console.log(`${name.padEnd(12)} ${String(statSync(out + name).size).padStart(8)} bytes`);
}
for (const name of ['index.html', 'app.js', 'app.css']) {
  const found = outsideAddresses(readFileSync(out + name, 'utf8'));
  if (found.length > 0) throw new Error(`${name} names an address outside: ${found.join(', ')}`);
}
