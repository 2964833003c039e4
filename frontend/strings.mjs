/** Lists what readers may see of the page's sources, as JSON: for each file its texts, with {} for what is put in. */
import {readFileSync, readdirSync} from 'node:fs';
import {fileURLToPath} from 'node:url';
import {parse} from 'acorn';

const SOURCES = fileURLToPath(new URL('src/', import.meta.url));
/** Styles, and a script written by another one. */
const UNREAD = /(?:^|\/)(?:styles|example-sweeps)\.js$/;
/** Whose single words are read too. */
const WORDS = /(?:^|\/)words\.js$/;
const READ_KEYS = ['label', 'title', 'text', 'words', 'heading', 'description', 'placeholder'];

const MARKUP = ['html', 'svg'];
const TAG = /<[^>]*>/;
const SPOKEN = /\b(?:aria-label|aria-roledescription|label|title|placeholder|alt|heading)="([^"]*)"/g;
/** What selectors, styles and paths of drawings have and sentences do not. */
const CODE = /^[.#[(*:@]|[\])] [.#[]|, [\w-]+(?:\[|,)| > |:is\(|\b(?:var|calc|rgba|srgb)\b|\d(?:px|%) |^[Ma-z]\{\}/;

const oneLine = (text) => text.replace(/\s+/g, ' ').trim();
const isRead = (text) => /\p{L}{2}/u.test(text.replaceAll('{}', ''));
const isSentence = (text) => isRead(text) && /\S \S/.test(text) && !CODE.test(text);
const joined = ({quasis}) => quasis.map(({value}) => value.cooked).join('{}');

/** The texts between the tags of markup, and those of its spoken attributes. */
const markupTexts = (markup) =>
  [...markup.split(TAG), ...[...markup.matchAll(SPOKEN)].map(([, spoken]) => spoken)].map(oneLine).filter(isRead);

/** Those of a literal; a string of markup is read by its tags. */
const literalTexts = (text) => (TAG.test(text) ? markupTexts(text) : [oneLine(text)]).filter(isSentence);

/** What is read of a part of a script and of all inside it. */
function* texts(node, wordsAlone) {
  if (node === null || typeof node !== 'object') return;
  if (Array.isArray(node)) {
    for (const one of node) yield* texts(one, wordsAlone);
    return;
  }
  switch (node.type) {
    case 'ImportDeclaration':
    case 'ImportExpression':
    case 'ExportAllDeclaration':
      return;
    case 'TaggedTemplateExpression':
      if (MARKUP.includes(node.tag.name)) yield* markupTexts(joined(node.quasi));
      yield* texts(node.quasi.expressions, wordsAlone);
      return;
    case 'TemplateLiteral':
      yield* literalTexts(joined(node));
      yield* texts(node.expressions, wordsAlone);
      return;
    case 'Literal':
      if (typeof node.value === 'string') yield* literalTexts(node.value);
      return;
    case 'Property':
      if (typeof node.value.value === 'string' && (wordsAlone || READ_KEYS.includes(node.key.name))) {
        yield* [oneLine(node.value.value)].filter(isRead);
        return;
      }
      yield* texts(node.value, wordsAlone);
      return;
  }
  for (const inner of Object.values(node)) yield* texts(inner, wordsAlone);
}

const names = /** @type {string[]} */ (readdirSync(SOURCES, {recursive: true}));
const found = names
  .filter((name) => name.endsWith('.js') && !UNREAD.test(name))
  .map((name) => {
    const program = parse(readFileSync(`${SOURCES}/${name}`, 'utf8'), {ecmaVersion: 'latest', sourceType: 'module'});
    return [`frontend/src/${name}`, [...texts(program.body, WORDS.test(name))]];
  });
process.stdout.write(JSON.stringify(Object.fromEntries(found)));
