/**
 * A one-file page written anew, with other content in it.
 *
 * Nothing of it is kept twice: code, style and policy are read from the page, its packed parts from where they lie or
 * were put aside. What is written is byte for byte what the build writes but for the content.
 */
import START from '../../build/start-data.json';
import TEMPLATE from '../index.html';
import {textOf} from '../worker/embedded.js';
import LICENCES from './licences.html';
import {escaped} from './markup.js';

const PLACEHOLDER = /\{\{([a-z_]+)\}\}/;

/** JSON that may stand inside a script element: nothing in it ends the element or opens a comment. */
const inert = (value) => JSON.stringify(value).replaceAll('<', '\\u003c');

const part = (element) => [`<data id="${element.id}" hidden value="`, textOf(element), '"></data>'];

/**
 * What a page is filled with.
 *
 * @typedef {object} Filling
 * @property {string} title - plain text
 * @property {string} tables - markup that needs no script
 * @property {object | null} carried - the reader's own
 */

/**
 * @param {Document} document - a one-file page, running or parsed
 * @param {Filling} filling
 */
export function filledPage(document, {title, tables, carried}) {
  const one = (selector) => /** @type {HTMLElement} */ (document.querySelector(selector));
  const text = (selector) => one(selector).textContent;
  const parts = [...document.querySelectorAll('data[id^="part-"]')].flatMap((element) => ['\n', ...part(element)]);
  const pieces = {
    policy: `<meta http-equiv="Content-Security-Policy" content="${one('[http-equiv]').getAttribute('content')}">`,
    title: escaped(title),
    head: `<link rel="icon" href="${one('link[rel=icon]').getAttribute('href')}">\n<style>${text('style')}</style>`,
    tables,
    carried: `<script type="application/json" id="carried">${inert(carried)}</script>`,
    code:
      `<script type="application/json" id="payload">${text('#payload')}</script>\n` +
      `<script>${text('body > script:not([type])')}</script>`,
    payload: parts.slice(1),
    version: START.version,
    licences: LICENCES.trimEnd(),
  };
  const written = TEMPLATE.split(PLACEHOLDER).map((piece, at) => (at % 2 ? pieces[piece] : piece));
  return new Blob(written.flat(), {type: 'text/html'});
}
