/** Parts of a one-file page that hold text. */
import {takePart} from './worker/embedded.js';
import {inflated} from './worker/part.js';

/** The text of part `name`, which goes. */
export async function partText(document, name) {
  return new TextDecoder().decode(await inflated(takePart(document, name)));
}

/** Runs part `name` as a script: the page's policy names the hash of its text. */
export async function runPart(document, name) {
  const script = document.createElement('script');
  script.textContent = await partText(document, name);
  document.head.append(script);
}
