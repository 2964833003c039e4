/**
 * Unpacks the script for other websites out of part `embed` of the page, once, when the panel opens; resolves to its
 * text.
 */
import {partText, run} from './part-text.js';

/**
 * @param {Document} document
 * @returns {() => Promise<string>}
 */
export function packedEmbed(document) {
  let text;
  const load = async () => {
    const code = await partText(document, 'embed');
    run(document, code);
    if (!customElements.get('jointwise-matrix')) throw new Error('The script for other websites could not be loaded.');
    return code;
  };
  return () => (text ??= load());
}
