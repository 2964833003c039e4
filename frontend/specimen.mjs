/**
 * Writes frontend/build/specimen.html, which shows every part of the page in every state: open it from disk.
 *
 * It needs what `jointwise build` leaves in frontend/build, and is no part of the page that is shipped.
 */
import {readFileSync, writeFileSync} from 'node:fs';
import {fileURLToPath, pathToFileURL} from 'node:url';
import {build} from 'esbuild';
import {STEP_RULES, scaleCss} from './src/shared/margins/scale.js';

const here = fileURLToPath(new URL('.', import.meta.url));
const page = `${here}build/specimen.html`;

const read = (path) => readFileSync(`${here}src/${path}`, 'utf8');

await build({
  absWorkingDir: here,
  entryPoints: ['src/main-specimen.js'],
  outfile: `${here}build/specimen.js`,
  bundle: true,
  format: 'iife',
  loader: {'.css': 'text', '.html': 'text'},
  tsconfigRaw: {},
  logLevel: 'warning',
});
writeFileSync(
  page,
  `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Parts of the page</title>
<style>${read('tokens.css')}${read('theme.css')}${scaleCss()}${STEP_RULES}</style>
<jw-specimen></jw-specimen>
<script src="specimen.js"></script>
</html>
`,
);
console.log(pathToFileURL(page).href);
