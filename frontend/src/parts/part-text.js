/** Parts of a one-file page that hold text. */
import {takePart} from '../worker/embedded.js';
import {inflated} from '../worker/part.js';
import {ownScripts} from '../worker/trusted.js';

/**
 * The text of part `name`, which goes.
 *
 * @param {Document} document
 * @param {string} name
 */
export async function partText(document, name) {
  return new TextDecoder().decode(await inflated(takePart(document, name)));
}

/**
 * Runs a part's text as a script: the page's policy names its hash.
 *
 * @param {Document} document
 * @param {string} code
 */
export function run(document, code) {
  const script = document.createElement('script');
  script.textContent = ownScripts.createScript(code);
  document.head.append(script);
}

/**
 * Runs part `name` as a script.
 *
 * @param {Document} document
 * @param {string} name
 */
export async function runPart(document, name) {
  run(document, await partText(document, name));
}
