import {ownScripts} from './trusted.js';

/**
 * A worker from its script's text, which has no address of its own on a page from a file.
 *
 * @param {string} text
 */
export function launch(text) {
  const address = URL.createObjectURL(new Blob([text], {type: 'text/javascript'}));
  try {
    return new Worker(ownScripts.createScriptURL(address));
  } finally {
    URL.revokeObjectURL(address);
  }
}
