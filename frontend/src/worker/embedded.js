/**
 * The payload inside a one-file page.
 *
 * Element `payload` holds payload.json, and the value of `part-<name>` each part in base64.
 * A value, not a text: WebKit takes ten times as long to read a long text.
 */

/**
 * Bytes of a base64 text; space around it does no harm.
 *
 * @param {string} text
 */
export function fromBase64(text) {
  if (Uint8Array.fromBase64) return Uint8Array.fromBase64(text);
  return Uint8Array.from(atob(text), (character) => character.charCodeAt(0));
}

/** Where the text of a part that was taken lies: on its element, as the page's scripts share no variables. */
const TEXT = Symbol.for('jointwise text');

/**
 * The text of a part's element, also of one that was taken.
 *
 * @param {HTMLDataElement} element
 */
export const textOf = (element) => element[TEXT] ?? element.value;

/**
 * The bytes in element `part-<name>`, which loses them: its text would lie in memory twice.
 *
 * @param {Document} document
 * @param {string} name
 */
export function takePart(document, name) {
  const element = /** @type {?HTMLDataElement} */ (document.getElementById(`part-${name}`));
  if (!element?.value) throw new Error(`this page holds no part ${name}`);
  const bytes = fromBase64(element.value);
  element[TEXT] = new Blob([element.value]);
  element.removeAttribute('value');
  return bytes;
}

/**
 * Waits until the browser has read as far as part `name`, or to the document's end.
 *
 * @param {Document} document
 * @param {string} name
 * @returns {Promise<void>}
 */
function reached(document, name) {
  return new Promise((resolve) => {
    const look = () => {
      if (document.readyState === 'loading' && !document.getElementById(`part-${name}`)) return;
      watch.disconnect();
      document.removeEventListener('readystatechange', look);
      resolve();
    };
    const watch = new MutationObserver(look);
    watch.observe(document.body, {childList: true});
    document.addEventListener('readystatechange', look);
    look();
  });
}

/**
 * The payload source of a one-file page.
 *
 * @param {Document} document
 * @returns {import('./part.js').Payload}
 */
export function embeddedPayload(document) {
  let parts;
  const read = async ({name, sha256}) => {
    await reached(document, name);
    return {bytes: takePart(document, name), sha256};
  };
  return {
    async read() {
      const described = /** @type {HTMLElement} */ (document.getElementById('payload'));
      parts ??= JSON.parse(described.textContent).parts.map((one) => [one.name, read(one)]);
      return Object.fromEntries(parts);
    },
  };
}
