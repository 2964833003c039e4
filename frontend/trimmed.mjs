/**
 * What the build leaves out of the chart library: the words that describe its
 * settings, colour spaces that no chart uses, and the style of its maps.
 */
import {readFileSync} from 'node:fs';
import {fileURLToPath} from 'node:url';
import {parse} from 'acorn';

const COLOURS = fileURLToPath(new URL('src/chart-library/colours.js', import.meta.url));

/** Where the value of each property `description` begins and ends in a script. */
function* descriptions(node) {
  if (node === null || typeof node !== 'object') return;
  const own = node.type === 'ObjectExpression' ? node.properties.filter(({key}) => key?.name === 'description') : [];
  for (const {value} of own) yield [value.start, value.end];
  for (const inner of Object.values(node)) if (!own.includes(inner)) yield* descriptions(inner);
}

/** The script with every `description` empty; the library reads them only to join them. */
export function undescribed(code) {
  const found = [...descriptions(parse(code, {ecmaVersion: 'latest'}))].sort(([one], [other]) => one - other);
  return found.reduceRight((text, [start, end]) => `${text.slice(0, start)}''${text.slice(end)}`, code);
}

export const trimmed = {
  name: 'trimmed',
  setup(build) {
    build.onResolve({filter: /^culori$/}, () => ({path: COLOURS}));
    build.onLoad({filter: /plotly\.js\/src\/.*\.js$/}, ({path}) => ({
      contents: undescribed(readFileSync(path, 'utf8')),
    }));
  },
};
